// Friction coefficients: the classes of threads and bearing faces, and interference fits.
// Ranges are printed because the scatter is large; the middle of a range is not a value.

import type { Problem } from "../problem.ts";
import type { Source } from "../source.ts";
import { given, notInTable, once, plainKey, readRows, sourceNamed, type TableInfo } from "./table.ts";

export interface FrictionRow {
  /** "A" to "E" for threads and bearing faces; a short name for interference fits. */
  readonly name: string;
  readonly where: "thread and bearing face" | "interference fit";
  readonly condition: string;
  readonly low?: number;
  readonly typical?: number;
  readonly high?: number;
  readonly source: Source;
  readonly note?: string;
}

const sources = {
  classes: {
    body: "VDI",
    title: "VDI 2230 Part 1, friction classes",
    edition: "reprint of the table",
    known: "second-hand",
  },
  pressed: {
    body: "textbooks",
    title: "Range for steel press fits; DIN 7190-1 has a table of its own, not seen",
    known: "memory",
  },
  shrunk: {
    body: "DIN",
    title: "DIN 7190-1, guide value 0.18 to 0.20",
    known: "memory",
  },
} as const satisfies Record<string, Source>;

export const frictionTable: TableInfo = {
  title: "Friction coefficients of threads, bearing faces and interference fits",
  units: {
    name: "",
    where: "",
    condition: "",
    low: "1",
    typical: "1",
    high: "1",
  },
  sources: Object.values(sources),
};

const text = `
name,where,condition,low,typical,high,source,note
A,thread and bearing face,"bare, black, phosphated, plated with Zn, ZnFe or ZnNi, or zinc flake, with solid lubricant (MoS2, graphite, PTFE) in topcoat or paste, wax melts or dispersions",0.04,,0.10,classes,
B,thread and bearing face,"surfaces of class A with lubricant, wax, grease, oil or as delivered; Al and Mg alloys; hot-dip galvanised with MoS2, graphite or wax; organic coating with integral lubricant; austenitic steel with solid lubricant, wax or paste",0.08,,0.16,classes,
C,thread and bearing face,"bare or phosphated, slightly oiled as delivered; plated or zinc flake without lubricant; adhesive; austenitic steel with wax dispersion or paste",0.14,,0.24,classes,
D,thread and bearing face,"plated Zn or ZnFe or hot-dip galvanised, without lubricant; austenitic steel with oil",0.20,,0.35,classes,
E,thread and bearing face,"plated ZnFe or ZnNi without lubricant; austenitic steel or Al and Mg alloys, dry",0.30,,,classes,lower bound only
press fit,interference fit,"steel on steel, pressed in, oiled (low) to dry (high)",0.05,,0.15,pressed,use measured data where holding force matters
shrink fit,interference fit,"steel on steel, degreased, joined by temperature",,0.20,,shrunk,
`;

export const frictionRows = once(() =>
  readRows(
    text,
    (cell): FrictionRow => ({
      name: cell.text("name"),
      where: cell.text("where") === "interference fit" ? "interference fit" : "thread and bearing face",
      condition: cell.text("condition"),
      ...given({
        low: cell.optional("low"),
        typical: cell.optional("typical"),
        high: cell.optional("high"),
        note: cell.text("note"),
      }),
      source: sourceNamed(sources, cell.text("source")),
    }),
  ),
);

/** "B", "class B", "press fit". */
export function friction(name: string): FrictionRow | Problem {
  const wanted = plainKey(name.replace(/^\s*class\s+/i, ""));
  const found = frictionRows().find((row) => plainKey(row.name) === wanted);
  return (
    found ??
    notInTable({
      code: "unknown-condition",
      what: "friction class",
      got: name.trim() || "nothing",
      choices: frictionRows().map((row) => row.name),
    })
  );
}
