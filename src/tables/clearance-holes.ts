// Clearance holes for metric bolts: ISO 273 (fine, medium, coarse) and BS 4186 (close, medium, free).
// The two are not mixed: at M12, M14 and M16 they differ, and "medium" is a series of both.
import type { Problem } from "../problem.ts";
import type { Source } from "../source.ts";
import { nearestTo, notInTable, once, plainKey, readRows, sourceNamed, type TableInfo } from "./table.ts";

export interface ClearanceHole {
  readonly standard: "ISO 273" | "BS 4186";
  readonly diameter_mm: number;
  readonly series: string;
  readonly hole_mm: number;
  /** Tolerance class the standard gives the series, where it gives one. */
  readonly toleranceClass?: string;
  readonly source: Source;
}

const clearanceHoleSources = {
  iso273: { body: "ISO", title: "ISO 273, clearance holes", edition: "1979, reprint", known: "second-hand" },
  iso273m: { body: "ISO", title: "ISO 273, clearance holes", edition: "1979", known: "memory" },
  bs4186: {
    body: "BSI",
    title: "BS 4186:1967, clearance holes, as printed in Machinery's Handbook",
    edition: "31st (2020)",
    at: "p. 2173, Table 8",
    known: "second-hand",
  },
} as const satisfies Record<string, Source>;

export const clearanceHoleTable: TableInfo = {
  title: "Clearance holes for metric bolts M1.6 to M64",
  units: { d: "mm", tight: "mm", medium: "mm", wide: "mm" },
  sources: Object.values(clearanceHoleSources),
  checked:
    "ISO 273 and BS 4186 differ at M12, M14 and M16 and agree at the other sizes both have: 13.5 mm against 14 mm for M12 medium. M6, M10 and M12 of ISO 273 were seen, the other rows are from memory",
};

const text = `
standard,d,tight,medium,wide,source
ISO 273,1.6,1.7,1.8,2,iso273m
ISO 273,1.8,2,2.1,2.2,iso273m
ISO 273,2,2.2,2.4,2.6,iso273m
ISO 273,2.5,2.7,2.9,3.1,iso273m
ISO 273,3,3.2,3.4,3.6,iso273m
ISO 273,3.5,3.7,3.9,4.2,iso273m
ISO 273,4,4.3,4.5,4.8,iso273m
ISO 273,4.5,4.8,5,5.3,iso273m
ISO 273,5,5.3,5.5,5.8,iso273m
ISO 273,6,6.4,6.6,7,iso273
ISO 273,7,7.4,7.6,8,iso273m
ISO 273,8,8.4,9,10,iso273m
ISO 273,10,10.5,11,12,iso273
ISO 273,12,13,13.5,14.5,iso273
ISO 273,14,15,15.5,16.5,iso273m
ISO 273,16,17,17.5,18.5,iso273m
ISO 273,18,19,20,21,iso273m
ISO 273,20,21,22,24,iso273m
ISO 273,22,23,24,26,iso273m
ISO 273,24,25,26,28,iso273m
ISO 273,27,28,30,32,iso273m
ISO 273,30,31,33,35,iso273m
ISO 273,33,34,36,38,iso273m
ISO 273,36,37,39,42,iso273m
ISO 273,39,40,42,45,iso273m
ISO 273,42,43,45,48,iso273m
ISO 273,45,46,48,52,iso273m
ISO 273,48,50,52,56,iso273m
ISO 273,52,54,56,62,iso273m
ISO 273,56,58,62,66,iso273m
ISO 273,60,62,66,70,iso273m
ISO 273,64,66,70,74,iso273m
BS 4186,1.6,1.7,1.8,2,bs4186
BS 4186,2,2.2,2.4,2.6,bs4186
BS 4186,2.5,2.7,2.9,3.1,bs4186
BS 4186,3,3.2,3.4,3.6,bs4186
BS 4186,4,4.3,4.5,4.8,bs4186
BS 4186,5,5.3,5.5,5.8,bs4186
BS 4186,6,6.4,6.6,7,bs4186
BS 4186,7,7.4,7.6,8,bs4186
BS 4186,8,8.4,9,10,bs4186
BS 4186,10,10.5,11,12,bs4186
BS 4186,12,13,14,15,bs4186
BS 4186,14,15,16,17,bs4186
BS 4186,16,17,18,19,bs4186
BS 4186,18,19,20,21,bs4186
BS 4186,20,21,22,24,bs4186
BS 4186,22,23,24,26,bs4186
BS 4186,24,25,26,28,bs4186
BS 4186,27,28,30,32,bs4186
BS 4186,30,31,33,35,bs4186
BS 4186,33,34,36,38,bs4186
BS 4186,36,37,39,42,bs4186
BS 4186,39,40,42,45,bs4186
BS 4186,42,43,45,48,bs4186
BS 4186,45,46,48,52,bs4186
BS 4186,48,50,52,56,bs4186
BS 4186,52,54,56,62,bs4186
BS 4186,56,58,62,66,bs4186
BS 4186,60,62,66,70,bs4186
BS 4186,64,66,70,74,bs4186
`;

const seriesOf = {
  "ISO 273": [
    ["fine", "tight", "H12"],
    ["medium", "medium", "H13"],
    ["coarse", "wide", "H14"],
  ],
  "BS 4186": [
    ["close", "tight", undefined],
    ["medium", "medium", undefined],
    ["free", "wide", undefined],
  ],
} as const;

export const clearanceHoleStandards = ["ISO 273", "BS 4186"] as const;

export const clearanceHoles = once(() =>
  readRows(text, (cell): readonly ClearanceHole[] => {
    const standard = cell.text("standard") === "BS 4186" ? "BS 4186" : "ISO 273";
    return seriesOf[standard].map(([series, column, toleranceClass]) => ({
      standard,
      diameter_mm: cell.number("d"),
      series,
      hole_mm: cell.number(column),
      ...(toleranceClass && { toleranceClass }),
      source: sourceNamed(clearanceHoleSources, cell.text("source")),
    }));
  }).flat(),
);

/** clearanceHole("ISO 273", 12, "medium"): 13.5 mm. */
export function clearanceHole(
  standard: string,
  diameter_mm: number,
  series: string,
): ClearanceHole | Problem {
  const ofStandard = clearanceHoles().filter((row) => plainKey(row.standard) === plainKey(standard));
  if (ofStandard.length === 0)
    return notInTable({
      code: "unknown-standard",
      what: "clearance hole standard",
      got: standard.trim() || "nothing",
      choices: clearanceHoleStandards,
    });
  const ofSeries = ofStandard.filter((row) => row.series === plainKey(series));
  if (ofSeries.length === 0)
    return notInTable({
      code: "unknown-series",
      what: `series of ${ofStandard[0]?.standard}`,
      got: series.trim() || "nothing",
      choices: [...new Set(ofStandard.map((row) => row.series))],
      why: "ISO 273 names its series fine, medium and coarse, BS 4186 close, medium and free",
    });
  const found = ofSeries.find((row) => row.diameter_mm === diameter_mm);
  if (found) return found;
  return notInTable({
    code: "unknown-size",
    what: `bolt size of ${ofSeries[0]?.standard}`,
    got: `M${diameter_mm}`,
    choices: nearestTo(ofSeries, diameter_mm, (row) => row.diameter_mm).map((row) => `M${row.diameter_mm}`),
    why: "the table holds no hole for this size",
  });
}
