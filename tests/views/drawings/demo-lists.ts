// The demo files as a page hands them to pictures: lists of rows. Runs in Node and in the browser.
import { csvParse } from "d3";
import boltsCsv from "../../../demo-data/bolts.csv?raw";
import gapsCsv from "../../../demo-data/gaps.csv?raw";
import holesCsv from "../../../demo-data/holes.csv?raw";
import recordCsv from "../../../demo-data/torque-record.csv?raw";
import type { OutputValue, ScalarOutput } from "../../../src/methods/field.ts";
import { solve } from "../../../src/methods/index.ts";
import type { Solution } from "../../../src/methods/solution.ts";
import { isProblem, sentence } from "../../../src/problem.ts";
import type { Kind } from "../../../src/units/kind.ts";

export type Row = Readonly<Record<string, ScalarOutput>>;
export type List = Extract<OutputValue, { kind: "list" }>;

export const list = (rows: readonly Row[]): List => ({ kind: "list", rows });
export const text = (words: string): ScalarOutput => ({ kind: "text", text: words });
export const si = (kind: Kind, value: number): ScalarOutput => ({ kind, si: value });
export const mm = (value: number): ScalarOutput => si("length", value / 1000);

/** A row without the cells that were not read. */
const row = (cells: Readonly<Record<string, ScalarOutput | undefined>>): Row =>
  Object.fromEntries(
    Object.entries(cells).flatMap(([name, cell]) => (cell === undefined ? [] : [[name, cell] as const])),
  );

function solved(id: string, inputs: Parameters<typeof solve>[1]): Solution {
  const found = solve(id, inputs);
  if (isProblem(found)) throw new Error(sentence(found));
  return found;
}

function listIn(solution: Solution, name: string): List {
  const output = solution.outputs[name];
  if (output?.kind !== "list") throw new Error(`${name} is no list`);
  return output;
}

export const holesFile = csvParse(holesCsv);
const boltsFile = csvParse(boltsCsv);
const gapsFile = csvParse(gapsCsv);
const recordFile = csvParse(recordCsv);

const found = holesFile.filter((hole) => hole["stage"] === "found");
const reworked = holesFile.filter((hole) => hole["stage"] === "after rework");

export const positions = list(
  found.map((hole) => ({
    position: text(hole["hole_no"] ?? ""),
    x: mm(Number(hole["x_mm"])),
    y: mm(hole["side"] === "left" ? -203 : 203),
    kind: text((hole["kind"] ?? "").split(" ")[0] ?? ""),
  })),
);

const depths = ["up_outer", "up_split", "lo_split", "lo_outer"];
const directions = ["along", "across"];

type Line = Readonly<Record<string, string | undefined>>;

/** At 20 degC, mm: casing iron 11.0e-6, steel ring 11.5e-6 1/K. */
function boreReadings(hole: Line): readonly { depth: string; direction: string; value: number }[] {
  const correction =
    25 * (11.5e-6 * (Number(hole["ring_temp_C"]) - 20) - 11e-6 * (Number(hole["casing_temp_C"]) - 20));
  return depths.flatMap((depth) =>
    directions.flatMap((direction) => {
      const typed = hole[`${depth}_${direction}_mm`] ?? "";
      return typed === "" ? [] : [{ depth, direction, value: Number(typed) + correction }];
    }),
  );
}

function shankReadings(bolt: Line): readonly { depth: string; direction: string; value: number }[] {
  const correction = 25 * 11.5e-6 * (Number(bolt["mic_temp_C"]) - Number(bolt["bolt_temp_C"]));
  return ["head", "mid", "tip"].flatMap((depth) =>
    ["a", "b"].flatMap((direction) => {
      const typed = bolt[`${depth}_${direction}_mm`] ?? "";
      return typed === "" ? [] : [{ depth, direction, value: Number(typed) + correction }];
    }),
  );
}

const typed = (readings: readonly { depth: string; direction: string; value: number }[]) =>
  readings.map(({ depth, direction, value }) => ({ depth, direction, value: `${value} mm` }));

const fitted = found.filter((hole) => (hole["kind"] ?? "").startsWith("fitted"));
const boltAt = (tag: string): Line => {
  const bolt = boltsFile.find((each) => each["bolt_no"] === tag);
  if (!bolt) throw new Error(`no bolt ${tag}`);
  return bolt;
};

const scalars = (solution: Solution): Row =>
  row(
    Object.fromEntries(
      Object.entries(solution.outputs).map(([name, value]) => [
        name,
        value.kind === "list" ? undefined : value,
      ]),
    ),
  );

export const boreList = (holes: readonly Line[]): List =>
  list(
    holes.flatMap((hole) =>
      boreReadings(hole).map(({ depth, direction, value }) => ({
        position: text(hole["hole_no"] ?? ""),
        depth: text(depth),
        direction: text(direction),
        diameter: mm(value),
      })),
    ),
  );

const tagged = (hole: Line, cells: Row): Row => ({ position: text(hole["hole_no"] ?? ""), ...cells });

const formsOf = (holes: readonly Line[]): List =>
  list(
    holes.map((hole) => tagged(hole, scalars(solved("hole-form", { readings: typed(boreReadings(hole)) })))),
  );

const limits = {
  tightestAllowed: "-10 um",
  loosestAllowed: "15 um",
  holeUncertainty: "3 um",
  shankUncertainty: "2 um",
};

const pairsOf = (holes: readonly Line[], boltFor: (hole: Line) => Line): List =>
  list(
    holes.map((hole) =>
      tagged(
        hole,
        scalars(
          solved("fit-of-pair", {
            hole: typed(boreReadings(hole)),
            shank: typed(shankReadings(boltFor(hole))),
            ...limits,
          }),
        ),
      ),
    ),
  );

const verdict = (yes: boolean): ScalarOutput => text(yes ? "proven" : "fails");
const formNumber = (forms: List, hole: Line, name: string): number => {
  const cell = forms.rows.find(
    ({ position }) => position?.kind === "text" && position.text === hole["hole_no"],
  )?.[name];
  return cell && "si" in cell ? cell.si : Number.NaN;
};

/** As found: pairs, forms and the checks that no diameter shows. */
export function foundFit() {
  const forms = formsOf(fitted);
  const check = (passes: (hole: Line) => boolean) =>
    list(fitted.map((hole) => tagged(hole, { state: verdict(passes(hole)) })));
  return {
    positions,
    pairs: pairsOf(fitted, (hole) => boltAt(hole["hole_no"] ?? "")),
    forms,
    readings: boreList(fitted),
    oval: check((hole) => formNumber(forms, hole, "ovality") <= 10e-6),
    taper: check((hole) => formNumber(forms, hole, "taper") <= 10e-6),
    pin: check((hole) => hole["through_pin_25000"] === "passes"),
    class: check((hole) => boltAt(hole["hole_no"] ?? "")["head_mark"] === "8.8"),
    tightestAllowed: mm(-0.01),
    loosestAllowed: mm(0.015),
  };
}

const stations = ["de_left", "de_right", "mid_left", "mid_right", "nde_left", "nde_right"].map((name) => ({
  name,
  x: name.startsWith("de") ? -0.5 : name.startsWith("mid") ? 0 : 0.5,
  y: name.endsWith("left") ? -0.3 : 0.3,
}));

export function gaps(change: (name: string, step: string, gap: number) => number = (_, __, gap) => gap) {
  const gapAt = (line: Line, name: string): number =>
    change(name, line["step"] ?? "", Number(line[`${name}_mm`]));
  const steps = gapsFile.map((line) => line["step"] ?? "");
  const planes = list(
    gapsFile.map((line) => ({
      step: text(line["step"] ?? ""),
      ...scalars(
        solved("gap-plane", {
          stations: stations.map(({ name, x, y }) => ({
            x: `${x} m`,
            y: `${y} m`,
            gap: `${gapAt(line, name)} mm`,
          })),
        }),
      ),
    })),
  );
  const tiltLimit = list(
    planes.rows.map((plane) => {
      const mean = plane["mean"] && "si" in plane["mean"] ? plane["mean"].si : 0;
      const engaged = 0.03 - mean;
      const step = plane["step"] ?? text("");
      return engaged > 0
        ? {
            step,
            ...scalars(
              solved("dowel-jam", {
                clearance: "12 um",
                engagedLength: { si: engaged, kind: "length", dimension: lengthDimension },
              }),
            ),
          }
        : { step, problem: text("the dowels are clear") };
    }),
  );
  return {
    stations: list(
      gapsFile.flatMap((line) =>
        stations.map(({ name, x, y }) => ({
          step: text(line["step"] ?? ""),
          station: text(name),
          x: si("length", x),
          y: si("length", y),
          gap: mm(gapAt(line, name)),
        })),
      ),
    ),
    planes,
    tiltLimit,
    steps,
  };
}

const lengthDimension = { length: 1, mass: 0, time: 0, temperature: 0 };

export const order = listIn(
  solved("tightening-order", {
    arrangement: "split line",
    positions: found.map((hole) => ({
      position: hole["hole_no"] ?? "",
      side: hole["side"] ?? "",
      x: `${hole["x_mm"]} mm`,
    })),
  }),
  "order",
);

const wordOf = (cell: ScalarOutput | undefined): string => (cell?.kind === "text" ? cell.text : "");
const passLines = recordFile.filter((line) => (line["pass"] ?? "").startsWith("pass"));

export const passes = listIn(
  solved("pass-torques", {
    finalTorque: "500 N.m",
    fractions: ["0.3", "0.6", "1"].map((fraction) => ({ fraction })),
    order: order.rows.map((each) => ({ position: wordOf(each["position"]) })),
    runOn: passLines
      .filter((line) => line["pass"] === "pass 1")
      .map((line) => ({ position: line["position"] ?? "", torque: `${line["run_on_Nm"]} N.m` })),
    adapters: ["9", "12"].map((position) => ({ position, length: "60 mm" })),
    wrenchLength: "650 mm",
  }),
  "passes",
);

/** What is written in the record, up to so many rows of it. */
export const done = (rows = passLines.length): List =>
  list(
    passLines.slice(0, rows).map((line) => ({
      position: text(line["position"] ?? ""),
      pass: text(line["pass"] ?? ""),
    })),
  );

export const record = list(
  recordFile.map((line) => {
    const number = (name: string, kind: Kind, factor: number) =>
      (line[name] ?? "") === "" ? undefined : si(kind, Number(line[name]) * factor);
    const lever = line["adapter"] === "none" ? 1 : 710 / 650;
    return row({
      pass: text(line["pass"] ?? ""),
      position: text(line["position"] ?? ""),
      torque: si("torque", Number(line["wrench_read"]) * lever - Number(line["run_on_Nm"])),
      angle: number("angle_deg", "angle", Math.PI / 180),
      stretch: number("stretch_mm", "length", 1e-3),
    });
  }),
);

export const nuts = list(
  boltsFile
    .filter((bolt) => bolt["stage"] === "found")
    .map((bolt) => ({
      position: text(bolt["bolt_no"] ?? ""),
      runOn: si("torque", Number(bolt["nut_run_on_Nm"])),
    })),
);

export function chosen() {
  const holes = fitted.map((hole) => reworked.find((each) => each["hole_no"] === hole["hole_no"]) ?? hole);
  const newBolt = (tag: string): boolean => ["3", "8", "13"].includes(tag);
  const usable = fitted
    .map((hole) => hole["hole_no"] ?? "")
    .filter((tag) => tag !== "15")
    .concat(["N3", "N8", "N13"]);
  const sizes = (line: Line) => {
    const values = shankReadings(line).map(({ value }) => value);
    return { largest: Math.max(...values), mean: values.reduce((a, b) => a + b, 0) / values.length };
  };
  const selected = solved("select-bolts", {
    holes: holes.map((hole) => {
      const form = solved("hole-form", { readings: typed(boreReadings(hole)) }).outputs;
      const at = (name: string) => {
        const cell = form[name];
        return `${cell && "si" in cell ? cell.si * 1000 : 0} mm`;
      };
      const tag = hole["hole_no"] ?? "";
      return {
        tag,
        bolt: newBolt(tag) ? `N${tag}` : tag,
        smallest: at("smallest"),
        largestDepthMean: at("largestDepthMean"),
      };
    }),
    bolts: usable.map((tag) => {
      const { largest, mean } = sizes(boltAt(tag));
      return { tag, largest: `${largest} mm`, mean: `${mean} mm` };
    }),
    ...limits,
  });
  return {
    pairs: listIn(selected, "pairs"),
    bolts: list([...usable, "15"].map((tag) => ({ tag: text(tag) }))),
  };
}

/** Eight readings of one hole, some not yet taken. */
export const oneHole = (tag: string, without: readonly string[] = []): List =>
  list(
    found
      .filter((hole) => hole["hole_no"] === tag)
      .flatMap((hole) =>
        boreReadings(hole)
          .filter(({ depth, direction }) => !without.includes(`${depth} ${direction}`))
          .map(({ depth, direction, value }) => ({
            position: text(tag),
            depth: text(depth),
            direction: text(direction),
            diameter: mm(value),
          })),
      ),
  );

/** The same holes on a circle, for pictures that must not know a split line. */
export const circle = (count: number, radius: number): List =>
  list(
    Array.from({ length: count }, (_, i) => {
      const angle = (i / count) * 2 * Math.PI - Math.PI / 2;
      return {
        position: text(String(i + 1)),
        x: si("length", radius * Math.cos(angle)),
        y: si("length", radius * Math.sin(angle)),
      };
    }),
  );
