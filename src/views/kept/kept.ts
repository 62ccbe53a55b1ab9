// The browser's store as a crash net: what was typed or read comes back after a reload. The file stays the truth.
// Two stores hold the same: one writes at once, so that a reload in the next instant loses nothing; the
// other (IndexedDB, strict) is on disk when it answers, so that a flat battery loses nothing, and holds large tables.
import type { Splice } from "../../document/splice.ts";

export interface Change extends Splice {
  readonly name: string;
}

/** Entries that do not stand in the page: kept and listed until a person has chosen. */
export interface Aside {
  readonly why: "anew" | "file changed";
  /** The file they were entered into. */
  readonly base: string;
  readonly typed: Readonly<Record<string, string>>;
}

export interface Kept {
  /** Counts the writings, so that the newer of two stores is known. */
  readonly count: number;
  /** The file it began from. */
  readonly base: string;
  /** What was typed or read in place of what the file has, unreadable entries included: name → text. */
  readonly typed: Readonly<Record<string, string>>;
  /** The same at the last saving of a file. */
  readonly saved: Readonly<Record<string, string>>;
  /** The journal: changes that can still be undone, the oldest first. */
  readonly changes: readonly Change[];
  /** Changes taken back that can be made again, the next one last. */
  readonly undone: readonly Change[];
  readonly aside: readonly Aside[];
  /** Readings confirmed as meant: name → typed text. */
  readonly confirmed: Readonly<Record<string, string>>;
}

/** A page as it came from its file. */
export const asItCame = (base: string): Kept => ({
  count: 0,
  base,
  typed: {},
  saved: {},
  changes: [],
  undone: [],
  aside: [],
  confirmed: {},
});

const prefix = "splitline:page:";

export function readAtOnce(id: string): Kept | undefined {
  try {
    const text = localStorage.getItem(prefix + id);
    return text === null ? undefined : shaped(JSON.parse(text));
  } catch {
    return undefined; // a store that is shut off or damaged must not keep the page from opening
  }
}

/** What was found in a store has our shape, or is left alone. */
export function shaped(found: unknown): Kept | undefined {
  if (typeof found !== "object" || found === null) return undefined;
  const { count, base, typed, saved, changes, undone, aside, confirmed } = found as Partial<Kept>;
  if (typeof base !== "string" || typeof typed !== "object") return undefined;
  const whole = (list: readonly Change[] | undefined): readonly Change[] =>
    Array.isArray(list) && list.every((change: Partial<Change>) => "cut" in change) ? list : [];
  return {
    count: count ?? 0,
    base,
    typed,
    saved: saved ?? {},
    changes: whole(changes),
    undone: whole(undone),
    aside: Array.isArray(aside) ? aside : [],
    confirmed: confirmed ?? {},
  };
}

/** Says whether it could be kept. */
export function keepAtOnce(id: string, kept: Kept): boolean {
  try {
    localStorage.setItem(prefix + id, JSON.stringify(kept));
    return true;
  } catch {
    return false;
  }
}

export function forgetAtOnce(id: string): void {
  try {
    localStorage.removeItem(prefix + id);
  } catch {
    // nothing was kept
  }
}

/** Files opened by hand live only here until they are saved. */
export function keptIds(): readonly string[] {
  try {
    return Array.from({ length: localStorage.length }, (_, i) => localStorage.key(i) ?? "")
      .filter((key) => key.startsWith(prefix))
      .map((key) => key.slice(prefix.length));
  } catch {
    return [];
  }
}
