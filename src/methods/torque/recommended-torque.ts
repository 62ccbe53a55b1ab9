// What torque does a printed table give for this thread?
import { isProblem, type Problem } from "../../problem.ts";
import { cite } from "../../source.ts";
import {
  recommendedTorque as findTorque,
  recommendedTorqueStandards,
} from "../../tables/recommended-torques.ts";
import { given } from "../../tables/table.ts";
import { textOf } from "../inside.ts";
import { type Insides, method } from "../method.ts";
import { torqueTables } from "../sources.ts";

const pound = 4.448_221_615_260_5; // N, exact
const newtonMetre = { "lbf.in": pound * 0.0254, "lbf.ft": pound * 0.3048 } as const;

const find = (inputs: Insides) =>
  findTorque(
    textOf(inputs, "standard") ?? "",
    textOf(inputs, "designation") ?? "",
    textOf(inputs, "column") ?? "",
  );

function run(inputs: Insides): Insides | Problem {
  const row = find(inputs);
  if (isProblem(row)) return row;
  const factor = newtonMetre[row.unit];
  return {
    ...given({ minimum: row.minimum === undefined ? undefined : row.minimum * factor }),
    maximum: row.maximum * factor,
  };
}

function remarks(inputs: Insides): readonly string[] {
  const row = find(inputs);
  if (isProblem(row)) return [];
  const printed =
    row.minimum === undefined
      ? `upper limit ${row.maximum} ${row.unit}, no lower one`
      : row.minimum === row.maximum
        ? `one torque, ${row.maximum} ${row.unit}, given as both ends`
        : `${row.minimum} to ${row.maximum} ${row.unit}`;
  return [
    `${cite(row.source)}, ${row.thread}, ${row.column}: ${printed}`,
    `condition of the table: ${row.condition}`,
    ...(row.note ? [row.note] : []),
  ];
}

export const recommendedTorque = method({
  id: "recommended-torque",
  question: "What torque does a printed table give for this thread?",
  inputs: {
    standard: {
      kind: "text",
      says: "document with the table",
      default: "AC 43.13-1B",
      choices: recommendedTorqueStandards,
    },
    designation: { kind: "text", says: "thread as the table names it, such as 3/8-24 or 1-1/8" },
    column: {
      kind: "text",
      says: "column: tension nut, shear nut, max tension nut, max shear nut; noncoated, coated; 30 ksi, 25 ksi",
    },
  },
  procedure: {
    says: "the printed figure of this thread and column, read and not worked out",
    source: torqueTables,
    run,
    remarks,
  },
  outputs: {
    minimum: { kind: "torque", symbol: "T_min", says: "lower end of the printed torque", optional: true },
    maximum: { kind: "torque", symbol: "T_max", says: "upper end of the printed torque" },
  },
  limits: [],
  sources: { "*": torqueTables },
  notes: [
    "a printed torque holds for the table's own thread, finish and lubricant; the preload it gives is not stated and differs from size to size",
    "run-on torque of a locking nut is added to the printed torque",
    "a drawing or manual of the machine comes before a general table",
  ],
  cautions: ["C8"],
});
