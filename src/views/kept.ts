// The browser's store as a crash net: what was typed comes back after a reload. The file stays the truth.
export interface Kept {
  /** The file it began from. */
  readonly base: string;
  /** What was typed in place of what the file has, unreadable entries included: name → text. */
  readonly typed: Readonly<Record<string, string>>;
  /** The same at the last saving of a file. */
  readonly saved: Readonly<Record<string, string>>;
  /** Changes that can still be undone, the oldest first. */
  readonly changes: readonly { readonly name: string; readonly before: string }[];
  /** Readings confirmed as meant: name → typed text. */
  readonly confirmed: Readonly<Record<string, string>>;
}

const prefix = "splitline:page:";

export function readKept(id: string): Kept | undefined {
  try {
    const text = localStorage.getItem(prefix + id);
    return text === null ? undefined : shaped(JSON.parse(text));
  } catch {
    return undefined; // a store that is shut off or damaged must not keep the page from opening
  }
}

function shaped(found: unknown): Kept | undefined {
  if (typeof found !== "object" || found === null) return undefined;
  const { base, typed, saved, changes, confirmed } = found as Partial<Kept>;
  if (typeof base !== "string" || typeof typed !== "object") return undefined;
  return {
    base,
    typed,
    saved: saved ?? {},
    changes: Array.isArray(changes) ? changes : [],
    confirmed: confirmed ?? {},
  };
}

/** Says whether it could be kept. */
export function keep(id: string, kept: Kept): boolean {
  try {
    localStorage.setItem(prefix + id, JSON.stringify(kept));
    return true;
  } catch {
    return false;
  }
}

export function forget(id: string): void {
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

/** A page as it came from its file. */
export const asItCame = (base: string): Kept => ({
  base,
  typed: {},
  saved: {},
  changes: [],
  confirmed: {},
});
