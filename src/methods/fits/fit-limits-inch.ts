// What limits does an inch fit class give?
import { isProblem, type Problem } from "../../problem.ts";
import { cite } from "../../source.ts";
import { inchFit } from "../../tables/inch-fits.ts";
import { numberOf, textOf } from "../inside.ts";
import { type Insides, method } from "../method.ts";
import { fitExtremes, inchFitRows } from "../sources.ts";

const inch = 0.0254; // m
const thou = inch / 1000;

const find = (inputs: Insides) =>
  inchFit((numberOf(inputs, "size") ?? Number.NaN) / inch, textOf(inputs, "fit") ?? "");

function run(inputs: Insides): Insides | Problem {
  const row = find(inputs);
  if (isProblem(row)) return row;
  return {
    holeUpper: row.holeUpper_thou * thou,
    holeLower: 0,
    shaftUpper: row.shaftUpper_thou * thou,
    shaftLower: row.shaftLower_thou * thou,
  };
}

function remarks(inputs: Insides): readonly string[] {
  const row = find(inputs);
  if (isProblem(row)) return [];
  return [`fit row: ${row.fitClass}, over ${row.over_in} up to ${row.upto_in} in, ${cite(row.source)}`];
}

const length = (symbol: string, says: string) => ({ kind: "length", symbol, says }) as const;

export const fitLimitsInch = method({
  id: "fit-limits-inch",
  question: "What limits of size and extreme clearances does an inch fit class give?",
  inputs: {
    size: length("D", "nominal size"),
    fit: { kind: "text", says: "fit class of ANSI B4.1, such as LN 2 or RC 4" },
  },
  procedure: {
    says: "limits of the class in its size range; the hole's lower limit is the nominal size",
    source: inchFitRows,
    gives: {
      holeUpper: length("ES", "upper deviation of the hole"),
      holeLower: length("EI", "lower deviation of the hole"),
      shaftUpper: length("es", "upper deviation of the shaft"),
      shaftLower: length("ei", "lower deviation of the shaft"),
    },
    run,
    remarks,
  },
  steps: {
    holeMax: "size + holeUpper",
    holeMin: "size + holeLower",
    shaftMax: "size + shaftUpper",
    shaftMin: "size + shaftLower",
    clearanceMax: "holeUpper - shaftLower",
    clearanceMin: "holeLower - shaftUpper",
  },
  outputs: {
    holeMax: length("D_max", "largest hole"),
    holeMin: length("D_min", "smallest hole"),
    shaftMax: length("d_max", "largest shaft"),
    shaftMin: length("d_min", "smallest shaft"),
    clearanceMax: length("c_max", "largest clearance"),
    clearanceMin: length("c_min", "least clearance, negative for interference"),
    holeUpper: length("ES", "upper deviation of the hole"),
    holeLower: length("EI", "lower deviation of the hole"),
    shaftUpper: length("es", "upper deviation of the shaft"),
    shaftLower: length("ei", "lower deviation of the shaft"),
  },
  limits: [{ that: "size > 0", else: "no size is described" }],
  sources: { "*": fitExtremes },
  notes: [
    "the class belongs to the nominal size; holes opened out keep the class only when the shank follows",
    "a class tells what a new part may be; a fit is proven by measuring the pair",
  ],
});
