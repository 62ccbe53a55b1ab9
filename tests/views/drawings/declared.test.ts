// What the pictures declare is what they draw: nothing undeclared is read, and every declared input and
// column changes what is drawn or said.
import { beforeAll, describe, expect, test } from "vitest";
import type { PictureInputs } from "../../../src/engine/line.ts";
import type { ScalarOutput } from "../../../src/methods/field.ts";
import "../../../src/methods/index.ts";
import { pictures } from "../../../src/pictures/index.ts";
import type { Declared } from "../../../src/pictures/picture.ts";
import { isProblem, sentence } from "../../../src/problem.ts";
import { list, mm, type Row, si, text } from "./demo-lists.ts";
import { answer } from "./drawn.ts";
import { drawnText, PlainElement, usePlainDocument } from "./plain-document.ts";
import { samples } from "./samples.ts";

beforeAll(usePlainDocument);

const sampleOf = (name: string): PictureInputs => samples.find((each) => each.name === name)?.inputs ?? {};
const newton = (value: number) => si("force", value);
const window = {
  separationLoad: newton(60e3),
  scatter: si("ratio", 0.2),
  proofLoad: newton(225e3),
  nutFactor: si("ratio", 0.14),
  diameter: mm(24),
  separationFactor: si("ratio", 1.2),
  tripLoad: newton(70e3),
  tripFactor: si("ratio", 1.1),
  tripThermalChange: newton(-5e3),
  relaxation: si("ratio", 0.05),
  assemblyShare: si("ratio", 0.7),
  warmUpChange: newton(4e3),
  torque: si("torque", 450),
};
const joint = {
  preload: newton(100e3),
  externalLoad: newton(20e3),
  minimum: newton(80e3),
  maximum: newton(120e3),
  proofLoad: newton(200e3),
};
const lever = { wrenchLength: mm(650), adapterLength: mm(60), adapterAngle: si("angle", 0.7) };
const limits = list(
  [0, 1, 2, 3, 4, 5, 6, 7, 8].map((step) => ({
    step: text(`${step}`),
    value: si("ratio", 5e-4 + step * 1e-5),
  })),
);
const limitsByName = list(
  limits.rows.map(({ step, value }) => ({ step: step ?? text(""), tiltLimit: value ?? mm(0) })),
);
const nut = (position: string, angle: number): Row => ({
  position: text(position),
  angle: si("angle", angle / 60),
  stretch: mm(0.2 + angle / 100),
});
const found = sampleOf("fit-map as found");
const remarked = sampleOf("hole-section oval")["readings"];

/** Together they hold every declared input and column at least once. */
const full: Readonly<Record<(typeof pictures)[number]["id"], readonly PictureInputs[]>> = {
  "joint-diagram": [
    { ...joint, loadFactor: si("ratio", 0.2) },
    { ...joint, boltStiffness: si("stiffness", 5e8), clampedStiffness: si("stiffness", 2e9) },
  ],
  "preload-window": [window],
  wrench: [
    { ...lever, targetTorque: si("torque", 500) },
    { ...lever, targetTorque: si("torque", 500), setting: si("torque", 470) },
  ],
  "fit-bar": [
    {
      size: mm(25),
      holeMax: mm(25.021),
      holeMin: mm(25),
      shaftMax: mm(25.015),
      shaftMin: mm(25.002),
      hole: mm(25.01),
      shaft: mm(25.008),
    },
  ],
  "fit-map": [
    { ...found, exaggeration: si("ratio", 900), yRuns: text("up") },
    {
      ...found,
      readings: list(
        // the first place is read twice, so that its direction has a say in the mean
        [...rowsIn(found["readings"]).slice(0, 1), ...rowsIn(found["readings"])].map(
          ({ diameter, ...row }, i) => ({ ...row, value: i === 0 ? mm(25.2) : (diameter ?? mm(0)) }),
        ),
      ),
    },
  ],
  "gap-map": [
    { ...sampleOf("gap-map stuck corner"), tiltLimit: limits, yRuns: text("up") },
    { ...sampleOf("gap-map stuck corner"), tiltLimit: limitsByName },
    { ...sampleOf("gap-map stuck corner"), tiltLimit: si("ratio", 4e-4) },
    sampleOf("gap-map last step"),
  ],
  "dowel-limit": [sampleOf("dowel-limit")],
  "tightening-map": [{ ...sampleOf("tightening-map third pass"), pass: text("2"), yRuns: text("up") }],
  "angle-by-nut": [
    sampleOf("angle-by-nut third pass"),
    {
      band: si("angle", 0.07),
      record: list([10, 12, 11].map((angle, i) => nut(`${i + 1}`, angle))),
    },
  ],
  "torque-against-angle": [
    sampleOf("torque-against-angle third pass"),
    {
      band: si("angle", 0.07),
      record: list(
        [10, 12, 11].map((angle, i) => ({ ...nut(`${i + 1}`, angle), torque: si("torque", 500) })),
      ),
    },
  ],
  "trial-spread": [
    sampleOf("trial-spread"),
    {
      ...sampleOf("trial-spread"),
      trial: list([140e3, 150e3].map((value) => ({ value: newton(value) }))),
    },
  ],
  "fits-against-limits": [sampleOf("fits-against-limits as found")],
  "hole-section": [
    { ...sampleOf("hole-section half read"), exaggeration: si("ratio", 900) },
    {
      nominal: mm(25),
      readings: list(
        rowsIn(remarked).map(({ diameter, ...row }, i) => ({
          ...row,
          value: diameter ?? mm(0),
          readingState: text(i === 0 ? "odd" : "entered"),
        })),
      ),
    },
  ],
  assignment: [
    sampleOf("assignment after rework"),
    {
      ...sampleOf("assignment after rework"),
      bolts: list([{ bolt: text("X1") }]),
    },
  ],
  "run-on-bars": [sampleOf("run-on-bars")],
};

function rowsIn(input: PictureInputs[string] | undefined): readonly Row[] {
  return input !== undefined && !isProblem(input) && input.kind === "list" ? input.rows : [];
}

async function told(name: string, inputs: PictureInputs): Promise<string> {
  const drawing = await answer(name, inputs);
  if (isProblem(drawing)) return sentence(drawing);
  const root: unknown = drawing.draw(890);
  if (!(root instanceof PlainElement)) throw new Error("drawn in another document");
  return [drawing.sentence, JSON.stringify(drawing.table), drawnText(root), attributes(root)].join("\n");
}

/** Lines and bars have their places in attributes only. */
const attributes = (root: PlainElement): string =>
  [
    ...root.attributes.values(),
    ...root.nodes.map((node) => (typeof node === "string" ? node : attributes(node))),
  ]
    .join(" ")
    .replaceAll(/[a-z]+-?\d+(?=\)|")/g, "");

function other(cell: ScalarOutput): ScalarOutput {
  if (cell.kind === "yes/no") return { kind: "yes/no", yes: !cell.yes };
  if (cell.kind === "text") return { kind: "text", text: flipped[cell.text] ?? "x" };
  return { ...cell, si: cell.si * 1.3 + 1e-6 };
}

const flipped: Readonly<Record<string, string>> = { up: "down", down: "up", yes: "no", no: "yes" };

/** The inputs with one of them, or one of its columns, changed throughout. */
function changed(inputs: PictureInputs, name: string, named?: string): PictureInputs | undefined {
  const input = inputs[name];
  if (input === undefined || isProblem(input)) return undefined;
  if (input.kind !== "list") return named === undefined ? { ...inputs, [name]: other(input) } : undefined;
  if (named === undefined) return { ...inputs, [name]: list(input.rows.filter((_, i) => i % 2 === 0)) };
  const held = (each: string) => input.rows.some((row) => row[each] !== undefined);
  const column = named === "position" && !held(named) ? "hole" : named;
  if (!held(column)) return undefined;
  const rows = input.rows.map((row) => {
    const cell = row[column];
    return cell === undefined ? row : { ...row, [column]: other(cell) };
  });
  return { ...inputs, [name]: list(rows) };
}

const declared = pictures.map((picture): readonly [string, Declared] => [picture.id, picture]);
const everything = declared.flatMap(([name, { of }]) =>
  Object.entries(of).flatMap(([input, field]) => [
    [name, input, undefined] as const,
    ...(field.is === "list"
      ? Object.keys({ ...field.must, ...field.may }).map((column) => [name, input, column] as const)
      : []),
  ]),
);

const isPicture = (name: string): name is keyof typeof full => Object.hasOwn(full, name);
const fullOf = (name: string): readonly PictureInputs[] => (isPicture(name) ? full[name] : []);

describe("every declared input is drawn", () => {
  test.each(everything)("%s: %s %s", async (name, input, column) => {
    const tries = fullOf(name).flatMap((inputs) => {
      const now = changed(inputs, input, column);
      return now === undefined ? [] : [[inputs, now] as const];
    });
    expect(tries.length, "no sample holds it").toBeGreaterThan(0);
    const differ: boolean[] = [];
    for (const [before, after] of tries)
      differ.push((await told(name, before)) !== (await told(name, after)));
    expect(differ).toContain(true);
  });
});

describe("nothing undeclared is drawn", () => {
  test.each(declared.map(([name]) => name))("%s", async (name) => {
    const { of, further }: Declared = pictures.find(({ id }) => id === name) ?? pictures[0];
    const strange = new Set<string>();
    for (const inputs of fullOf(name)) {
      const watched = Object.fromEntries(
        Object.entries(inputs).map(([input, value]) => {
          const field = of[input];
          const columns = field ? (field.is === "list" ? field : undefined) : further;
          return [
            input,
            columns ? watchedRows(value, { ...columns.must, ...columns.may }, input, strange) : value,
          ];
        }),
      );
      await told(name, only(watched, of, further !== undefined, strange));
    }
    expect([...strange]).toEqual([]);
  });
});

function only(
  inputs: PictureInputs,
  of: Readonly<Record<string, unknown>>,
  further: boolean,
  strange: Set<string>,
): PictureInputs {
  return new Proxy(inputs, {
    get: (target, key) => {
      if (typeof key === "string" && !Object.hasOwn(of, key) && !further) strange.add(key);
      return typeof key === "string" ? target[key] : undefined;
    },
  });
}

/** Rows that note which columns are asked for beside the declared ones; a hole is a position as well. */
function watchedRows(
  value: PictureInputs[string],
  columns: Readonly<Record<string, unknown>>,
  input: string,
  strange: Set<string>,
): PictureInputs[string] {
  if (isProblem(value) || value.kind !== "list") return value;
  const known = (key: string) => Object.hasOwn(columns, key === "hole" ? "position" : key);
  return list(
    value.rows.map(
      (row) =>
        new Proxy(row, {
          get: (target, key) => {
            if (typeof key === "string" && !known(key)) strange.add(`${input}.${key}`);
            return typeof key === "string" ? target[key] : undefined;
          },
        }),
    ),
  );
}
