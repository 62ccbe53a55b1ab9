// Plain washers and hexagon heads: the sizes that a bearing face, a spanner and a pressure need.
// Rows marked "memory" were not seen in a copy; a size that no row carries is not made up.
// Long because the rows are here.
import type { Problem } from "../problem.ts";
import type { Source } from "../source.ts";
import {
  given,
  nearestTo,
  notInTable,
  once,
  plainKey,
  readRows,
  sourceNamed,
  type TableInfo,
} from "./table.ts";

/** ISO 7089, normal series, product grade A. */
export interface MetricWasher {
  readonly designation: string;
  readonly size_mm: number;
  /** Clearance hole, least. */
  readonly innerDiameter_mm: number;
  /** Outside diameter, largest. */
  readonly outerDiameter_mm: number;
  readonly thickness_mm: number;
  readonly source: Source;
}

/** ISO 4014. */
export interface MetricHexagon {
  readonly designation: string;
  readonly size_mm: number;
  /** Product grade: A up to M24, B above (and for long bolts). */
  readonly grade: "A" | "B";
  readonly acrossFlatsMax_mm: number;
  /** Diameter of the bearing face, least. */
  readonly bearingDiameterMin_mm: number;
  readonly acrossCornersMin_mm: number;
  readonly source: Source;
}

/** ASME B18.2.1 hex cap screw. */
export interface InchHexagon {
  readonly size: string;
  readonly size_in: number;
  readonly acrossFlatsMax_in: number;
  readonly acrossFlatsMin_in: number;
  readonly source: Source;
}

/** ASME B18.21.1 type A plain washer; narrow or wide series. */
export interface InchWasher {
  readonly size: string;
  readonly size_in: number;
  readonly series: "narrow" | "wide";
  readonly innerDiameter_in: number;
  readonly outerDiameter_in: number;
  readonly thickness_in?: number;
  readonly source: Source;
}

const sources = {
  w: {
    body: "ISO",
    title: "ISO 7089, plain washers, normal series",
    edition: "reprint",
    known: "second-hand",
  },
  wm: { body: "ISO", title: "ISO 7089, plain washers, normal series", known: "memory" },
  h: { body: "ISO", title: "ISO 4014, hexagon head bolts", edition: "reprint", known: "second-hand" },
  hm: { body: "ISO", title: "ISO 4014, hexagon head bolts", known: "memory" },
  f: { body: "ASME", title: "B18.2.1, hex cap screws", edition: "reprint", known: "second-hand" },
  fm: { body: "ASME", title: "B18.2.1, hex cap screws", known: "memory" },
  a: {
    body: "ASME",
    title: "B18.21.1-2009 (R2016), type A plain washers, as printed in Machinery's Handbook",
    edition: "31st (2020)",
    at: "p. 1694, Table 1a",
    known: "second-hand",
  },
  am: { body: "ASME", title: "B18.21.1, type A plain washers", known: "memory" },
} as const satisfies Record<string, Source>;

export const washerAndHexagonTable: TableInfo = {
  title: "Plain washers and hexagon heads",
  units: {
    "ISO 7089 d1, d2, h": "mm",
    "ISO 4014 s, dw, e": "mm",
    "B18.2.1 across flats": "in",
    "B18.21.1 type A": "in",
  },
  sources: Object.values(sources),
  checked: "across corners of ISO 4014 are 1.13 times the least width across flats, as the standard defines",
};

const washerText = `
d,d1,d2,h,source
1.6,1.7,4,0.3,wm
2,2.2,5,0.3,wm
2.5,2.7,6,0.5,wm
3,3.2,7,0.5,wm
4,4.3,9,0.8,wm
5,5.3,10,1,wm
6,6.4,12,1.6,w
8,8.4,16,1.6,w
10,10.5,20,2,wm
12,13,24,2.5,w
14,15,28,2.5,wm
16,17,30,3,w
18,19,34,3,wm
20,21,37,3,wm
22,23,39,3,wm
24,25,44,4,w
27,28,50,4,wm
30,31,56,4,w
33,34,60,5,wm
36,37,66,5,wm
`;

const hexagonText = `
d,grade,s,dw,e,source
3,A,5.5,4.57,6.01,hm
4,A,7,5.88,7.66,hm
5,A,8,6.88,8.79,hm
6,A,10,8.88,11.05,h
8,A,13,11.63,14.38,h
10,A,16,14.63,17.77,hm
12,A,18,16.63,20.03,h
16,A,24,22.49,26.75,h
20,A,30,28.19,33.53,hm
24,A,36,33.61,39.98,h
24,B,36,33.25,39.55,hm
30,B,46,42.75,50.85,hm
36,B,55,51.11,60.79,hm
`;

const flatsText = `
size,d,max,min,source
1/4,0.25,0.438,0.428,f
5/16,0.3125,0.500,0.489,fm
3/8,0.375,0.562,0.551,fm
7/16,0.4375,0.625,0.612,fm
1/2,0.5,0.750,0.736,f
9/16,0.5625,0.812,0.798,fm
5/8,0.625,0.938,0.922,fm
3/4,0.75,1.125,1.100,f
7/8,0.875,1.312,1.285,fm
1,1,1.500,1.469,fm
1-1/8,1.125,1.688,1.631,fm
1-1/4,1.25,1.875,1.812,f
1-3/8,1.375,2.062,1.994,fm
1-1/2,1.5,2.250,2.175,f
`;

const inchWasherText = `
size,d,series,id,od,t,source
1/4,0.25,narrow,0.281,0.625,0.065,am
1/4,0.25,wide,0.312,0.734,0.065,am
5/16,0.3125,narrow,0.344,0.688,0.065,am
5/16,0.3125,wide,0.375,0.875,0.083,am
3/8,0.375,narrow,0.406,0.812,0.065,a
3/8,0.375,wide,0.438,1.000,0.083,a
1/2,0.5,narrow,0.531,1.062,0.095,a
1/2,0.5,wide,0.562,1.375,0.109,a
5/8,0.625,narrow,0.656,1.312,0.095,am
5/8,0.625,wide,0.688,1.750,0.134,am
3/4,0.75,narrow,0.812,1.469,0.134,a
3/4,0.75,wide,0.812,2.000,,a
1,1,narrow,1.062,2.000,0.134,am
1,1,wide,1.062,2.500,0.165,am
`;

export const metricWashers = once(() =>
  readRows(
    washerText,
    (cell): MetricWasher => ({
      designation: `M${cell.text("d")}`,
      size_mm: cell.number("d"),
      innerDiameter_mm: cell.number("d1"),
      outerDiameter_mm: cell.number("d2"),
      thickness_mm: cell.number("h"),
      source: sourceNamed(sources, cell.text("source")),
    }),
  ),
);

export const metricHexagons = once(() =>
  readRows(
    hexagonText,
    (cell): MetricHexagon => ({
      designation: `M${cell.text("d")}`,
      size_mm: cell.number("d"),
      grade: cell.text("grade") === "B" ? "B" : "A",
      acrossFlatsMax_mm: cell.number("s"),
      bearingDiameterMin_mm: cell.number("dw"),
      acrossCornersMin_mm: cell.number("e"),
      source: sourceNamed(sources, cell.text("source")),
    }),
  ),
);

export const inchHexagons = once(() =>
  readRows(
    flatsText,
    (cell): InchHexagon => ({
      size: cell.text("size"),
      size_in: cell.number("d"),
      acrossFlatsMax_in: cell.number("max"),
      acrossFlatsMin_in: cell.number("min"),
      source: sourceNamed(sources, cell.text("source")),
    }),
  ),
);

export const inchWashers = once(() =>
  readRows(
    inchWasherText,
    (cell): InchWasher => ({
      size: cell.text("size"),
      size_in: cell.number("d"),
      series: cell.text("series") === "wide" ? "wide" : "narrow",
      innerDiameter_in: cell.number("id"),
      outerDiameter_in: cell.number("od"),
      ...given({ thickness_in: cell.optional("t") }),
      source: sourceNamed(sources, cell.text("source")),
    }),
  ),
);

/** "M24" of ISO 7089. */
export const metricWasher = (designation: string): MetricWasher | Problem =>
  byName(
    metricWashers(),
    designation,
    (row) => row.designation,
    (row) => row.size_mm,
    "ISO 7089 washer",
  );

/** "M24" of ISO 4014; without a grade the first row of the size, A up to M24. */
export const metricHexagon = (designation: string, grade?: "A" | "B"): MetricHexagon | Problem =>
  byName(
    metricHexagons().filter((row) => grade === undefined || row.grade === grade),
    designation,
    (row) => row.designation,
    (row) => row.size_mm,
    "ISO 4014 hexagon head",
  );

/** "1/2" of ASME B18.2.1. */
export const inchHexagon = (size: string): InchHexagon | Problem =>
  byName(
    inchHexagons(),
    size,
    (row) => row.size,
    (row) => row.size_in,
    "B18.2.1 hex cap screw",
  );

/** "1/2", narrow or wide, of ASME B18.21.1 type A. */
export const inchWasher = (size: string, series: "narrow" | "wide"): InchWasher | Problem =>
  byName(
    inchWashers().filter((row) => row.series === series),
    size,
    (row) => row.size,
    (row) => row.size_in,
    `type A washer, ${series}`,
  );

function byName<Row>(
  rows: readonly Row[],
  wanted: string,
  nameOf: (row: Row) => string,
  amountOf: (row: Row) => number,
  what: string,
): Row | Problem {
  const key = plainKey(wanted).replace(/in$/, "");
  const found = rows.find((row) => plainKey(nameOf(row)) === key);
  if (found) return found;
  const amount = amountIn(key);
  const near = Number.isNaN(amount) ? rows : nearestTo(rows, amount, amountOf);
  return notInTable({
    code: "unknown-size",
    what,
    got: wanted.trim() || "nothing",
    choices: [...new Set(near.map(nameOf))],
    why: "only the sizes that could be sourced are carried",
  });
}

/** "m24" is 24, "1-1/4" is 1.25; used only to find neighbours. */
function amountIn(key: string): number {
  const parts = /^m?(?:(\d+(?:\.\d+)?)(?:-(?=\d+\/))?)?(?:(\d+)\/(\d+))?$/.exec(key);
  if (!parts) return Number.NaN;
  const [, whole = "0", top = "0", bottom = "1"] = parts;
  return Number(whole) + Number(top) / Number(bottom);
}
