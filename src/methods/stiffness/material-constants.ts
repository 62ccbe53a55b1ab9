// What elastic and expansion constants are printed for this material?
import { isProblem } from "../../problem.ts";
import { type Material, material, materialTable } from "../../tables/materials.ts";
import { given } from "../../tables/table.ts";
import type { Kind } from "../../units/kind.ts";
import { quantity } from "../../units/quantity.ts";
import { textOf } from "../inside.ts";
import { lookUp, one } from "../look-up.ts";
import { type Insides, method } from "../method.ts";

function si(value: number | undefined, unit: string, kind: Kind): number | undefined {
  const read = value === undefined ? undefined : quantity(`${value} ${unit}`, kind);
  return read === undefined || isProblem(read) ? undefined : read.si;
}

function give([row]: readonly Material[]): Insides {
  const perMillion = row?.expansion === undefined ? undefined : row.expansion / 1e6;
  return given({
    modulus: si(row?.modulus, row?.modulusUnit ?? "", "stress"),
    poisson: row?.poisson,
    expansion: si(perMillion, row?.expansionUnit === "1e-6/degF" ? "1/degF" : "1/K", "expansion"),
    tensileStress: si(row?.tensile_MPa, "MPa", "stress"),
    yieldStress: si(row?.yield_MPa, "MPa", "stress"),
  });
}

const procedure = lookUp(
  materialTable,
  "the row of this material",
  (inputs) => one(material(textOf(inputs, "material") ?? "")),
  give,
);

export const materialConstants = method({
  id: "material-constants",
  question: "What elastic and expansion constants are printed for this material?",
  inputs: {
    material: { kind: "text", says: "material as the table names it, such as gray cast iron ASTM 20" },
  },
  procedure,
  outputs: {
    modulus: { kind: "stress", symbol: "E", says: "modulus of elasticity", optional: true },
    poisson: { kind: "ratio", symbol: "ν", says: "Poisson's ratio", optional: true },
    expansion: { kind: "expansion", symbol: "α", says: "expansion", optional: true },
    tensileStress: { kind: "stress", symbol: "R_m", says: "least tensile strength", optional: true },
    yieldStress: { kind: "stress", symbol: "R_p", says: "least yield stress", optional: true },
  },
  limits: [],
  sources: { "*": procedure.source },
  notes: [
    "gray iron differs between sources by a third: the material named is the row read, no neighbour is taken",
  ],
});
