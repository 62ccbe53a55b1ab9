// Published nut factors K of T = K F d, by condition, as printed. Published values for one
// condition differ widely, so a look-up gives every row of that condition, never one number.

import type { Problem } from "../problem.ts";
import type { Source } from "../source.ts";
import { given, notInTable, once, plainKey, readRows, sourceNamed, type TableInfo } from "./table.ts";

export interface NutFactorRow {
  readonly condition: string;
  readonly low?: number;
  readonly typical?: number;
  readonly high?: number;
  readonly source: Source;
}

const sources = {
  maker: {
    body: "a fastener manufacturer",
    title: "Engineering data, nut factors",
    known: "second-hand",
  },
  textbook: {
    body: "Budynas & Nisbett",
    title: "Shigley's Mechanical Engineering Design",
    edition: "9th (2011)",
    at: "Table 8-15, p. 439",
    known: "read",
  },
  textbookUnknown: {
    body: "Budynas & Nisbett",
    title: "Shigley's Mechanical Engineering Design, note to Table 8-15",
    known: "memory",
  },
  newsletter: {
    body: "fastener trade press",
    title: "Newsletter article on nut factors",
    known: "read",
  },
  pump: {
    body: "a pump manufacturer",
    title: "API 610 pump installation manual, torque table",
    at: "p. 115",
    known: "read",
  },
  survey: {
    body: "CRC Press",
    title: "Chapter on thread lubricant selection, doi 10.1201/9781482273786-19",
    at: "abstract: lowest and highest mean of the table, which was not seen",
    known: "second-hand",
  },
  assembly: {
    body: "Speck",
    title: "Mechanical Fastening, Joining, and Assembly",
    edition: "2nd",
    at: "ch. 3, p. 85",
    known: "read",
  },
} as const satisfies Record<string, Source>;

export const nutFactorTable: TableInfo = {
  title: "Nut factors K by condition",
  units: { condition: "", low: "1", typical: "1", high: "1" },
  sources: Object.values(sources),
};

const text = `
condition,low,typical,high,source
dry steel on dry steel,0.18,,0.27,maker
machine oil on steel,0.10,,0.26,maker
cadmium plated on steel,0.15,,0.19,maker
phosphate and oil on steel,0.15,,0.22,maker
zinc plated on steel,0.17,,0.35,maker
302 stainless on 302 stainless,0.30,,0.50,maker
Zn/Al flake (chromate) coating on steel,0.16,,0.32,maker
"non-plated, black finish",,0.30,,textbook
zinc plated,,0.20,,textbook
lubricated,,0.18,,textbook
cadmium plated,,0.16,,textbook
with one commercial anti-seize,,0.12,,textbook
with one commercial grip nut,,0.09,,textbook
condition unknown,,0.20,,textbookUnknown
lubricated threads,,0.15,,newsletter
zinc plated,,0.17,,newsletter
clean plain threads,,0.20,,newsletter
nickel or moly anti-seize,,0.15,,pump
survey of lubricants,0.086,,0.52,survey
"illustrations, extreme pressure lubricant to gritty threads",0.10,,0.30,assembly
`;

export const nutFactors = once(() =>
  readRows(
    text,
    (cell): NutFactorRow => ({
      condition: cell.text("condition"),
      ...given({
        low: cell.optional("low"),
        typical: cell.optional("typical"),
        high: cell.optional("high"),
      }),
      source: sourceNamed(sources, cell.text("source")),
    }),
  ),
);

/** Every published row of one condition. */
export function nutFactorsOf(condition: string): readonly NutFactorRow[] | Problem {
  const rows = nutFactors().filter((row) => plainKey(row.condition) === plainKey(condition));
  if (rows.length > 0) return rows;
  const words = condition
    .toLowerCase()
    .split(/\W+/)
    .filter((word) => word.length > 2);
  const all = [...new Set(nutFactors().map((row) => row.condition))];
  const close = all.filter((name) => words.some((word) => name.toLowerCase().includes(word)));
  return notInTable({
    code: "unknown-condition",
    what: "nut factor condition",
    got: condition.trim() || "nothing",
    choices: close.length > 0 ? close : all,
    hint: "a trial on the bolts, paste and washers of the job beats a table",
  });
}
