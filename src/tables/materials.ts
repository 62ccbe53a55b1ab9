// Elastic and expansion constants of the steels and irons met in joints, as printed. Gray iron
// differs between sources by a third, so two sources stand side by side and a look-up names which.

import type { Problem } from "../problem.ts";
import type { Source } from "../source.ts";
import { given, notInTable, once, plainKey, readRows, sourceNamed, type TableInfo } from "./table.ts";

export interface Material {
  readonly name: string;
  /** Young's modulus, in the unit printed. */
  readonly modulus?: number;
  readonly modulusUnit?: "GPa" | "Mpsi";
  readonly poisson?: number;
  /** Mean linear expansion, in the unit printed: 1e-6 per kelvin or per degree Fahrenheit. */
  readonly expansion?: number;
  readonly expansionUnit?: "1e-6/K" | "1e-6/degF";
  /** Minimum strengths in MPa, where the row gives them. */
  readonly tensile_MPa?: number;
  readonly yield_MPa?: number;
  readonly source: Source;
  readonly note?: string;
}

const design = {
  body: "Budynas & Nisbett",
  title: "Shigley's Mechanical Engineering Design",
} as const;

const sources = {
  fit: {
    ...design,
    edition: "9th (2011)",
    at: "Table 8-8, p. 430",
    known: "read",
  },
  tableA5: {
    ...design,
    at: "Table A-5, as used in the 8th edition's solutions manual",
    known: "second-hand",
  },
  appendix: {
    body: "a mechanics of materials textbook",
    title: "Material properties in US units",
    at: "Appendix C",
    known: "read",
  },
  ductile: {
    body: "CEN",
    title: "EN 1563, EN-GJS-400-18",
    known: "second-hand",
  },
  nist: {
    body: "NIST",
    title: "Uncertainties in dimensional measurements made at nonstandard temperatures",
    edition: "J. Res. NIST 99, 31 (1994)",
    known: "read",
  },
  cooling: {
    title: "Mean expansion of steel from room temperature to liquid nitrogen",
    known: "memory",
  },
} as const satisfies Record<string, Source>;

export const materialTable: TableInfo = {
  title: "Elastic and expansion constants",
  units: {
    name: "",
    modulus: "per row",
    poisson: "1",
    expansion: "per row",
    tensile: "MPa",
    yield: "MPa",
  },
  sources: Object.values(sources),
};

const text = `
name,modulus,modulusUnit,poisson,expansion,expansionUnit,tensile,yield,source,note
steel,207,GPa,0.292,,,,,tableA5,also printed as 30 Mpsi
"steel, stiffness fit",207,GPa,0.291,,,,,fit,
"aluminium, stiffness fit",71,GPa,0.334,,,,,fit,
"copper, stiffness fit",119,GPa,0.326,,,,,fit,
"gray cast iron, stiffness fit",100,GPa,0.211,,,,,fit,
gray cast iron,14.5,Mpsi,0.211,,,,,tableA5,also printed as 100 GPa
gray cast iron ASTM 20,10.0,Mpsi,0.28,6.7,1e-6/degF,,,appendix,a third below the 14.5 Mpsi of another textbook
malleable cast iron,24.0,Mpsi,0.28,6.7,1e-6/degF,,,appendix,
ductile iron EN-GJS-400-18,170,GPa,0.28,11,1e-6/K,400,250,ductile,the standard itself was not seen
"steel, expansion",,,,11.5,1e-6/K,,,nist,
"aluminium, expansion",,,,23.1,1e-6/K,,,nist,
"steel, cooled to liquid nitrogen",,,,8.5,1e-6/K,,,cooling,expansion falls on cooling; 11e-6 to 12e-6 per kelvin above room temperature
`;

const modulusUnits = ["GPa", "Mpsi"] as const;
const expansionUnits = ["1e-6/K", "1e-6/degF"] as const;
const pick = <T extends string>(text: string, choices: readonly T[]): T | undefined =>
  choices.find((choice) => choice === text);

export const materials = once(() =>
  readRows(
    text,
    (cell): Material => ({
      name: cell.text("name"),
      ...given({
        modulus: cell.optional("modulus"),
        modulusUnit: pick(cell.text("modulusUnit"), modulusUnits),
        poisson: cell.optional("poisson"),
        expansion: cell.optional("expansion"),
        expansionUnit: pick(cell.text("expansionUnit"), expansionUnits),
        tensile_MPa: cell.optional("tensile"),
        yield_MPa: cell.optional("yield"),
        note: cell.text("note"),
      }),
      source: sourceNamed(sources, cell.text("source")),
    }),
  ),
);

export function material(name: string): Material | Problem {
  const found = materials().find((row) => plainKey(row.name) === plainKey(name));
  if (found) return found;
  const words = name
    .toLowerCase()
    .split(/\W+/)
    .filter((word) => word.length > 2);
  const close = materials().filter((row) => words.some((word) => row.name.toLowerCase().includes(word)));
  const pool = close.length > 0 ? close : materials();
  return notInTable({
    code: "unknown-material",
    what: "material",
    got: name.trim() || "nothing",
    choices: pool.map((row) => row.name),
  });
}
