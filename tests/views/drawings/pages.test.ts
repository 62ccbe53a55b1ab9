// Every picture on the project's own pages has what it needs and draws at phone and desk width.
import { readdirSync, readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, test } from "vitest";
import { openPage } from "../../../src/engine/open-page.ts";
import "../../../src/methods/index.ts";
import { isProblem, sentence } from "../../../src/problem.ts";
import { answer } from "./drawn.ts";
import { usePlainDocument } from "./plain-document.ts";

beforeAll(usePlainDocument);

const folder = fileURLToPath(new URL("../../../notebooks/", import.meta.url));
const pages = readdirSync(folder).filter((name) => name.endsWith(".yaml"));

describe("pictures on pages", () => {
  test.each(pages)("%s", async (name) => {
    const live = openPage(readFileSync(`${folder}${name}`, "utf8"), name);
    if (Array.isArray(live) || !("lines" in live)) throw new Error(`${name} did not open`);
    await live.settle();
    for (const { value } of live.lines()) {
      if (isProblem(value) || value.type !== "picture") continue;
      const drawing = await answer(value.picture, value.inputs);
      if (isProblem(drawing)) throw new Error(`${value.picture}: ${sentence(drawing)}`);
      expect(drawing.sentence.length).toBeGreaterThan(20);
      if (process.env["SAY"]) console.log(name, value.picture, "::", drawing.sentence);
      for (const width of [288, 890]) drawing.draw(width);
    }
    live.dispose();
  });
});
