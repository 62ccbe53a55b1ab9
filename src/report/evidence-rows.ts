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

/** How the rows of a method stand. What counts as evidence from outside is written in DEVELOPERS.md. */
export interface EvidenceCounts {
  readonly rows: number;
  /** Rows that come from somebody else and agree: neither recomputed here nor disagreeing. */
  readonly outsideRows: number;
  /** Distinct published examples behind the outside rows. */
  readonly examples: number;
  readonly seenInACopy: number;
  readonly fromMemory: number;
  readonly commonPractice: number;
  /** Outside rows whose figure was put in already. */
  readonly echoes: number;
  /** Outside rows of which an input or a form was chosen because it gives the print. */
  readonly fitted: number;
  readonly recomputed: number;
  /** Rows kept although they disagree. */
  readonly disagreeing: number;
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
const isOutside = (row: EvidenceRow): boolean => row.known !== "recomputed" && !disagrees(row);

// A marker stands at the head of the note or after a semicolon.
const isEcho = (row: EvidenceRow): boolean => /(?:^|; )echo:/.test(row.note);
const isFitted = (row: EvidenceRow): boolean => /(?:^|; )fitted input:/.test(row.note);

/** "shigley9-ex8-3a" of "shigley9-ex8-3a/boltLoad": the published example that a row belongs to. */
const exampleOf = (row: EvidenceRow): string => row.id.split("/")[0] ?? row.id;

export function countRows(rows: readonly EvidenceRow[]): EvidenceCounts {
  const outside = rows.filter(isOutside);
  const known = (way: string): number => outside.filter((row) => row.known === way).length;
  return {
    rows: rows.length,
    outsideRows: outside.length,
    examples: new Set(outside.map(exampleOf)).size,
    seenInACopy: known("seen in a copy"),
    fromMemory: known("memory"),
    commonPractice: known("common practice"),
    echoes: outside.filter(isEcho).length,
    fitted: outside.filter((row) => isFitted(row) && !isEcho(row)).length,
    recomputed: rows.filter((row) => row.known === "recomputed").length,
    disagreeing: rows.filter(disagrees).length,
  };
}

/** A published check is an outside row that is neither an echo of its inputs nor fitted to its answer. */
export const hasPublishedCheck = ({ outsideRows, echoes, fitted }: EvidenceCounts): boolean =>
  outsideRows > echoes + fitted;

/** Rows from outside that say the same again: same inputs, output and printed figure as one before. */
export function repeatedRows(rows: readonly EvidenceRow[]): readonly EvidenceRow[] {
  const seen = new Set<string>();
  return rows.filter((row) => {
    if (row.known === "recomputed") return false;
    const key = JSON.stringify([row.inputs, row.output, row.printed, row.unit]);
    const again = seen.has(key);
    seen.add(key);
    return again;
  });
}
