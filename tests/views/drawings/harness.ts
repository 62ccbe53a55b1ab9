// Draws the samples in a page, as the page would: picture, sentence, table.
import type { PictureInputs } from "../../../src/engine/line.ts";
import { isProblem, sentence } from "../../../src/problem.ts";
import { el, replace } from "../../../src/views/dom.ts";
import { answer } from "./drawn.ts";
import { samples } from "./samples.ts";

declare global {
  interface Window {
    sampleNames: readonly string[];
    drawSample: (name: string, width: number) => Promise<string>;
    drawInputs: (picture: string, inputs: PictureInputs, width: number) => Promise<string>;
  }
}

window.sampleNames = samples.map(({ name }) => name);

window.drawSample = async (name, width) => {
  const sample = samples.find((each) => each.name === name);
  if (!sample) throw new Error(`no sample ${name}`);
  return window.drawInputs(sample.picture, sample.inputs, width);
};

window.drawInputs = async (name, inputs, width) => {
  const drawing = await answer(name, inputs);
  if (isProblem(drawing)) throw new Error(sentence(drawing));
  const { head, rows } = drawing.table;
  const cells = (tag: "th" | "td", texts: readonly string[]) =>
    el("tr", {}, ...texts.map((t) => el(tag, {}, t)));
  const figure = el(
    "figure",
    { class: "drawn" },
    drawing.draw(width),
    el("figcaption", {}, drawing.sentence),
    drawing.source !== undefined && el("p", { class: "quiet" }, `Limits: ${drawing.source}`),
    el(
      "div",
      { class: "scroll" },
      el(
        "table",
        { class: "readings" },
        el("thead", {}, cells("th", head)),
        el("tbody", {}, ...rows.map((row) => cells("td", row))),
      ),
    ),
  );
  replace(document.body, el("main", { class: "page" }, figure));
  return drawing.sentence;
};
