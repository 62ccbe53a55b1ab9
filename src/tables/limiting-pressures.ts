// Limiting surface pressure under heads, nuts and washers. Second-hand: the guideline itself was
// not seen. The values hold for holes without chamfer; a chamfer takes away bearing area.

import type { Problem } from "../problem.ts";
import { type Source, source } from "../source.ts";
import { notInTable, plainKey, type TableInfo } from "./table.ts";

export interface LimitingPressure {
  readonly material: string;
  readonly pressure_MPa: number;
  readonly source: Source;
}

const guideline = source({
  body: "VDI",
  title: "VDI 2230 Part 1, limiting surface pressures",
  edition: "2003",
  at: "holes without chamfer",
  known: "second-hand",
});

export const limitingPressureTable: TableInfo = {
  title: "Limiting surface pressure",
  units: { material: "", pressure: "MPa" },
  sources: [guideline],
};

export const limitingPressures: readonly LimitingPressure[] = [
  { material: "GJL-250", pressure_MPa: 900, source: guideline },
  { material: "GJS-400-15", pressure_MPa: 700, source: guideline },
  { material: "GJS-500", pressure_MPa: 900, source: guideline },
  { material: "GJS-600", pressure_MPa: 1000, source: guideline },
];

/** "GJS-400-15", "EN-GJS-400-15". A neighbouring grade is never taken instead. */
export function limitingPressure(material: string): LimitingPressure | Problem {
  const wanted = plainKey(material).replace(/^en-/, "");
  const found = limitingPressures.find((row) => plainKey(row.material) === wanted);
  return (
    found ??
    notInTable({
      code: "unknown-material",
      what: "limiting pressure",
      got: material.trim() || "nothing",
      choices: limitingPressures.map((row) => row.material),
      hint: "the owner or design engineer may set a limit of their own",
    })
  );
}
