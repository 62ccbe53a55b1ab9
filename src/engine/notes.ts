// Notes beside items, each a knot of its own in the graph: the note of a given may speak of what follows
// from it, and nothing reads a note, so none of this makes a loop.
import type { Item } from "../document/item.ts";
import type { ProseValue } from "./line.ts";
import { boundFormulas, proseValue } from "./prose.ts";
import type { Results } from "./scope.ts";
import { usesOfNote } from "./uses.ts";

export interface NotesBeside {
  /** Notes that hold values of the page: which names each reads, by its place in the graph. */
  readonly uses: ReadonlyMap<string, readonly string[]>;
  /** Text of the note at this place of the graph. */
  readonly text: (place: string) => string | undefined;
}

const suffix = " note"; // a space, so that no line is called so

export const placeOfNote = (name: string): string => name + suffix;
/** The line that a place of the graph is shown with. */
export const ownerOf = (place: string): string =>
  place.endsWith(suffix) ? place.slice(0, -suffix.length) : place;

const noteOf = (item: Item): string | undefined => (item.kind === "note" ? undefined : item.note);

export function notesBeside(items: ReadonlyMap<string, Item>, known: ReadonlySet<string>): NotesBeside {
  const texts = new Map<string, string>();
  for (const [name, item] of items) {
    const text = noteOf(item);
    if (text !== undefined && boundFormulas(text).length > 0) texts.set(placeOfNote(name), text);
  }
  return {
    uses: new Map([...texts].map(([place, text]) => [place, usesOfNote(text, known)])),
    text: (place) => texts.get(place),
  };
}

const nothing: Results = { get: () => undefined, keys: () => [] };

/** A note without values says the same always. */
export function plainNote(item: Item): ProseValue | undefined {
  const text = noteOf(item);
  return text === undefined ? undefined : proseValue(text, nothing);
}
