// The two places where a shape is taken on trust, each because something has checked it before.

export type Fields = Readonly<Record<string, unknown>>;

/** Data that has held against a schema, or a node whose kind yaml has stated: the type says what was checked. */
// oxlint-disable-next-line typescript/no-unnecessary-type-parameters -- says what the data was checked to be
export function held<T>(checked: unknown): T {
  // oxlint-disable-next-line typescript/no-unsafe-type-assertion -- the caller has checked it
  return checked as T;
}

/** A mapping as it stands; anything else as an empty one. */
export const mapping = (value: unknown): Fields =>
  typeof value === "object" && value !== null && !Array.isArray(value) ? held<Fields>(value) : {};
