// How large is the hexagon of a bolt of this size?
import { isProblem, type Problem } from "../../problem.ts";
import { given } from "../../tables/table.ts";
import { inchHexagon, metricHexagon, washerAndHexagonTable } from "../../tables/washers-and-hexagons.ts";
import { textOf } from "../inside.ts";
import { lookUp, type PrintedRow } from "../look-up.ts";
import { type Insides, method } from "../method.ts";

const inch = 0.0254; // m, exact

interface Hexagon extends PrintedRow {
  readonly flatsMax: number;
  readonly flatsMin?: number;
  readonly bearing?: number;
  readonly corners?: number;
}

/** Metres, from the table in the unit it is printed in. */
function find(inputs: Insides): readonly Hexagon[] | Problem {
  const size = textOf(inputs, "size") ?? "";
  if (textOf(inputs, "standard") === "ASME B18.2.1") {
    const row = inchHexagon(size);
    if (isProblem(row)) return row;
    const { acrossFlatsMax_in: most, acrossFlatsMin_in: least, source } = row;
    return [{ flatsMax: most * inch, flatsMin: least * inch, source }];
  }
  const grade = textOf(inputs, "grade");
  const row = metricHexagon(size, grade === "A" || grade === "B" ? grade : undefined);
  if (isProblem(row)) return row;
  const { acrossFlatsMax_mm: flats, bearingDiameterMin_mm: face, acrossCornersMin_mm: corners, source } = row;
  return [
    {
      flatsMax: flats / 1000,
      bearing: face / 1000,
      corners: corners / 1000,
      source,
      note: `product grade ${row.grade}`,
    },
  ];
}

const procedure = lookUp(
  washerAndHexagonTable,
  "the row of this size",
  find,
  ([row]) =>
    given({
      acrossFlatsMax: row?.flatsMax,
      acrossFlatsMin: row?.flatsMin,
      bearingDiameter: row?.bearing,
      acrossCorners: row?.corners,
    }) as Insides,
);

export const hexagonHead = method({
  id: "hexagon-head",
  question: "How large is the hexagon head of a bolt of this size?",
  inputs: {
    size: { kind: "text", says: "bolt size, such as M24 or 1/2" },
    standard: {
      kind: "text",
      says: "standard of the bolt",
      default: "ISO 4014",
      choices: ["ISO 4014", "ASME B18.2.1"],
    },
    grade: { kind: "text", says: "product grade of ISO 4014", optional: true, choices: ["A", "B"] },
  },
  procedure: {
    ...procedure,
    reads: ({ standard }) => (standard === "ISO 4014" ? ["size", "standard", "grade"] : ["size", "standard"]),
  },
  outputs: {
    acrossFlatsMax: { kind: "length", symbol: "s_max", says: "largest width across flats" },
    acrossFlatsMin: { kind: "length", symbol: "s_min", says: "least width across flats", optional: true },
    bearingDiameter: {
      kind: "length",
      symbol: "d_w",
      says: "least diameter of the bearing face",
      optional: true,
    },
    acrossCorners: { kind: "length", symbol: "e", says: "least width across corners", optional: true },
  },
  limits: [],
  sources: { "*": procedure.source },
});
