// Run-on torque nut by nut in the band that a locking nut has to keep.
import type { UnitChoice } from "../../methods/solution.ts";
import { isProblem, type Problem } from "../../problem.ts";
import { roundDecimal } from "../../units/format.ts";
import { inUnit } from "../../units/in-unit.ts";
import { unitLabel } from "../../units/unit.ts";
import { svg } from "../dom.ts";
import { forReading, setText } from "../figure.ts";
import type { Drawing, PictureInputs } from "./drawing.ts";
import { markAt } from "./flange.ts";
import { numbersOf } from "./inputs.ts";
import { byName, numberIn, positionIn, rowsOf } from "./lists.ts";
import { picture, text } from "./marks.ts";
import { panel, rowHeight, rowLabels, rowsTop } from "./row-chart.ts";
import { listed } from "./words.ts";

interface Nut {
  readonly position: string;
  readonly runOn: number | undefined;
}

interface Nuts {
  readonly nuts: readonly Nut[];
  readonly least: number;
  readonly most: number;
}

export function runOnBars(inputs: PictureInputs, unitOf: UnitChoice): Drawing | Problem {
  const limits = numbersOf("run-on-bars", inputs);
  if (isProblem(limits)) return limits;
  const rows = rowsOf("run-on-bars", inputs, "nuts");
  if (isProblem(rows)) return rows;
  const nuts = rows
    .map((row): Nut => ({ position: positionIn(row), runOn: numberIn(row, "runOn") }))
    .toSorted((a, b) => byName(a.position, b.position));
  const all: Nuts = { nuts, ...limits };
  const torque = (si: number) => setText(si, "torque", unitOf("torque"));
  return {
    draw: (width) => draw(all, width, unitOf),
    sentence: sentenceOf(all, torque),
    table: {
      title: "run-on torque as a table",
      head: ["position", "run-on torque", "band"],
      rows: nuts.map((nut) => [
        nut.position,
        nut.runOn === undefined ? "missing" : torque(nut.runOn),
        words(nut, all),
      ]),
    },
  };
}

function words({ runOn }: Nut, { least, most }: Nuts): string {
  if (runOn === undefined) return "missing";
  if (runOn < least) return "below";
  return runOn > most ? "above" : "inside";
}

function sentenceOf(all: Nuts, torque: (si: number) => string): string {
  const { nuts, least, most } = all;
  const by = (word: string) => nuts.filter((nut) => words(nut, all) === word);
  const named = (found: readonly Nut[]) =>
    listed(found.map(({ position, runOn }) => `${position} (${runOn === undefined ? "" : torque(runOn)})`));
  const [below, above, missing] = [by("below"), by("above"), by("missing")];
  return [
    `${by("inside").length} of ${nuts.length} nuts have a run-on torque between ${torque(least)} and ${torque(most)}.`,
    ...(below.length > 0 ? [`Below: ${named(below)}.`] : []),
    ...(above.length > 0 ? [`Above: ${named(above)}.`] : []),
    ...(missing.length > 0 ? [`Missing: ${listed(missing.map(({ position }) => position))}.`] : []),
  ].join(" ");
}

function draw(all: Nuts, width: number, unitOf: UnitChoice): SVGSVGElement {
  const { nuts, least, most } = all;
  const shown = unitOf("torque");
  const number = (si: number) => forReading(roundDecimal(inUnit(si, shown), { decimals: 0 }));
  const largest = Math.max(most, ...nuts.map(({ runOn }) => runOn ?? 0)) * 1.02;
  const root = picture(width, rowsTop + nuts.length * rowHeight + 8);
  const [left, right] = [34, Math.min(width - 86, 34 + 620)];
  const chart = panel({
    left,
    right,
    from: 0,
    to: largest,
    title: `run-on torque, ${unitLabel(shown)}`,
    band: { low: least, high: most, lowWords: number(least), highWords: number(most) },
    rows: nuts.length,
  });
  root.append(
    ...chart.back,
    ...rowLabels(
      nuts.map(({ position }) => position),
      left - 8,
      right,
    ),
  );
  for (const [i, nut] of nuts.entries()) {
    const y = chart.y(i);
    const state = words(nut, all);
    if (nut.runOn === undefined) {
      root.append(
        markAt("no answer", left + 10, y),
        text("missing", left + 22, y + 4.5, "start", "limit-text"),
      );
      continue;
    }
    const end = chart.x(nut.runOn);
    root.append(
      svg("rect", {
        class: state === "inside" ? "bar" : "bar out",
        x: left,
        y: y - 5,
        width: end - left,
        height: 10,
      }),
      ...(state === "inside"
        ? [text(number(nut.runOn), end + 6, y + 4.5)]
        : [
            markAt("fails", end + 11, y),
            text(`${number(nut.runOn)} ${state}`, end + 21, y + 4.5, "start", "limit-text"),
          ]),
    );
  }
  return root;
}
