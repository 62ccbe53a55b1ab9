// The source of a given is an entry of its own: changed, undone and kept as the value itself is.
const tail = "#source";

export const sourceKey = (name: string): string => name + tail;

/** The given that an entry belongs to, where the entry is its source. */
export const givenOfSource = (key: string): string | undefined =>
  key.endsWith(tail) ? key.slice(0, -tail.length) : undefined;
