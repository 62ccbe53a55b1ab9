// Reference rows: what a cases.csv holds, and how its rows are counted by how each is known.
import { csvFields } from "../document/csv-fields.ts";

/** The columns of every cases.csv, in this order. */
export const evidenceColumns = [
  "id",
  "inputs",
  "output",
  "printed",
  "unit",
  "tolerance",
  "known",
  "source",
  "note",
] as const;
export type EvidenceRow = Readonly<Record<(typeof evidenceColumns)[number], string>>;

export interface Tally {
  readonly rows: number;
  /** "seen in a copy", "memory", "common practice", "recomputed" → rows. */
  readonly known: Readonly<Record<string, number>>;
  /** Rows kept although they disagree. */
  readonly disagreeing: number;
}

export interface EvidenceCounts {
  /** Rows that come from somebody else: all but those recomputed here. */
  readonly outsideRows: number;
  readonly seenInACopy: number;
  readonly fromMemory: number;
  readonly commonPractice: number;
  readonly recomputed: number;
}

export function evidenceRows(csv: string): readonly EvidenceRow[] {
  const [head, ...body] = csvFields(csv, ",").rows.filter(({ fields: [first = "", ...more] }) => {
    const blank = first.trim() === "" && more.length === 0;
    return !blank && !first.startsWith("#"); // a remark between the rows is no row
  });
  const at = (name: string): number => head?.fields.findIndex((field) => field.trim() === name) ?? -1;
  const places = evidenceColumns.map((name) => [name, at(name)] as const);
  const empty: Record<(typeof evidenceColumns)[number], string> = {
    id: "",
    inputs: "",
    output: "",
    printed: "",
    unit: "",
    tolerance: "",
    known: "",
    source: "",
    note: "",
  };
  return body.map(({ fields }) => {
    const row = { ...empty };
    for (const [name, place] of places) row[name] = fields[place] ?? "";
    return row;
  });
}

export const disagrees = (row: EvidenceRow): boolean => row.note.startsWith("disagrees:");

export function countRows(rows: readonly EvidenceRow[]): Tally {
  const known: Record<string, number> = {};
  for (const row of rows) if (row.known) known[row.known] = (known[row.known] ?? 0) + 1;
  return { rows: rows.length, known, disagreeing: rows.filter(disagrees).length };
}

export function countsOf({ rows, known }: Pick<Tally, "rows" | "known">): EvidenceCounts {
  const recomputed = known["recomputed"] ?? 0;
  return {
    outsideRows: rows - recomputed,
    seenInACopy: known["seen in a copy"] ?? 0,
    fromMemory: known["memory"] ?? 0,
    commonPractice: known["common practice"] ?? 0,
    recomputed,
  };
}
