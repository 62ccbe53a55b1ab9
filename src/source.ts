// Where a number or a relation comes from, and how well that is known.

/**
 * read: the text was seen in a copy. second-hand: quoted or reprinted in another document.
 * memory: recalled, not seen. practice: what the trade does, no document.
 * derived: follows from definitions or statics, working shown. owner: set by the owner or design engineer.
 */
export type Known = "read" | "second-hand" | "memory" | "practice" | "derived" | "owner" | "invented";

/** Where a formula or a figure comes from, and how it is known. */
export interface Source {
  /** Standards body, publisher or author; empty for practice and derivations. */
  readonly body?: string;
  readonly title: string;
  readonly edition?: string;
  /** Clause, table, page or equation. */
  readonly at?: string;
  readonly known: Known;
}

export const source = (fields: Source): Source => fields;

export const practice = (title: string): Source => ({ title, known: "practice" });

const knownWords: Record<Known, string> = {
  read: "",
  "second-hand": "quoted in another document",
  memory: "from memory",
  practice: "common practice, no source",
  derived: "own derivation",
  owner: "owner",
  invented: "invented",
};

/** One line for the reference margin: "body, title, edition, place (how known)". */
export function cite(s: Source): string {
  const place = [s.body, s.title, s.edition, s.at].filter(Boolean).join(", ");
  const known = knownWords[s.known];
  return known && !place.includes(known) ? `${place} (${known})` : place;
}
