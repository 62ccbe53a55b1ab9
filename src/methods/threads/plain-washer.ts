// How large is a plain washer for this bolt?
import { isProblem, type Problem } from "../../problem.ts";
import { given } from "../../tables/table.ts";
import { inchWasher, metricWasher, washerAndHexagonTable } from "../../tables/washers-and-hexagons.ts";
import { textOf } from "../inside.ts";
import { lookUp, type PrintedRow } from "../look-up.ts";
import { type Insides, method } from "../method.ts";

const inch = 0.0254; // m, exact

interface Washer extends PrintedRow {
  readonly inner: number;
  readonly outer: number;
  readonly thickness: number | undefined;
}

/** Metres, from the table in the unit it is printed in. */
function find(inputs: Insides): readonly Washer[] | Problem {
  const size = textOf(inputs, "size") ?? "";
  if (textOf(inputs, "standard") !== "ASME B18.21.1") {
    const row = metricWasher(size);
    if (isProblem(row)) return row;
    const { innerDiameter_mm: inner, outerDiameter_mm: outer, thickness_mm: thickness, source } = row;
    return [{ inner: inner / 1000, outer: outer / 1000, thickness: thickness / 1000, source }];
  }
  const row = inchWasher(size, textOf(inputs, "series") === "wide" ? "wide" : "narrow");
  if (isProblem(row)) return row;
  const { innerDiameter_in: inner, outerDiameter_in: outer, thickness_in: thickness, source } = row;
  return [
    {
      inner: inner * inch,
      outer: outer * inch,
      thickness: thickness === undefined ? undefined : thickness * inch,
      source,
    },
  ];
}

const procedure = lookUp(
  washerAndHexagonTable,
  "the row of this size",
  find,
  ([row]) =>
    given({
      innerDiameter: row?.inner,
      outerDiameter: row?.outer,
      washerThickness: row?.thickness,
    }) as Insides,
);

export const plainWasher = method({
  id: "plain-washer",
  question: "How large is the plain washer for a bolt of this size?",
  inputs: {
    size: { kind: "text", says: "bolt size, such as M24 or 1/2" },
    standard: {
      kind: "text",
      says: "standard of the washer",
      default: "ISO 7089",
      choices: ["ISO 7089", "ASME B18.21.1"],
    },
    series: {
      kind: "text",
      says: "series of ASME B18.21.1 type A",
      optional: true,
      choices: ["narrow", "wide"],
    },
  },
  procedure: {
    ...procedure,
    reads: ({ standard }) =>
      standard === "ASME B18.21.1" ? ["size", "standard", "series"] : ["size", "standard"],
  },
  outputs: {
    innerDiameter: { kind: "length", symbol: "d_1", says: "hole of the washer" },
    outerDiameter: { kind: "length", symbol: "d_2", says: "outside diameter of the washer" },
    washerThickness: { kind: "length", symbol: "h", says: "thickness of the washer", optional: true },
  },
  limits: [],
  sources: { "*": procedure.source },
});
