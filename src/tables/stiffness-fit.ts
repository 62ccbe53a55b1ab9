// Parameters of the exponential fit of the clamped stiffness, k = E d A exp(B d/l), as printed.
import type { Problem } from "../problem.ts";
import type { Source } from "../source.ts";
import { notInTable, once, plainKey, readRows, type TableInfo } from "./table.ts";

export interface StiffnessFit {
  readonly material: string;
  readonly fitA: number;
  readonly fitB: number;
}

const stiffnessFitSource: Source = {
  body: "Budynas and Nisbett",
  title: "Shigley's Mechanical Engineering Design",
  edition: "9th ed., 2011",
  at: "Table 8-8, p. 430, after Wileman, Choudhury and Green, J. Mech. Design 113 (1991) 432",
  known: "read",
};

export const stiffnessFitTable: TableInfo = {
  title: "Exponential fit of the clamped stiffness",
  units: { material: "", A: "1", B: "1" },
  sources: [stiffnessFitSource],
  checked: "copied from one print; used in three worked examples that come out",
};

const text = `
material,A,B
steel,0.78715,0.62873
aluminum,0.79670,0.63816
copper,0.79568,0.63553
gray cast iron,0.77871,0.61616
general,0.78952,0.62914
`;

export const stiffnessFits = once(() =>
  readRows(
    text,
    (cell): StiffnessFit => ({
      material: cell.text("material"),
      fitA: cell.number("A"),
      fitB: cell.number("B"),
    }),
  ),
);

export const stiffnessFitMaterials = ["steel", "aluminum", "copper", "gray cast iron", "general"] as const;

export function stiffnessFit(material: string): StiffnessFit | Problem {
  const found = stiffnessFits().find((row) => plainKey(row.material) === plainKey(material));
  if (found) return found;
  return notInTable({
    code: "unknown-material",
    what: "material of the exponential fit",
    got: material.trim() || "nothing",
    choices: stiffnessFitMaterials,
  });
}
