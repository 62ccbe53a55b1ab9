// The ids of all methods by family, known without loading any: read off the lists of the families and
// written in when a bundle is made.

declare const methodFamilies: Readonly<Record<string, readonly string[]>>;

export const families = methodFamilies;

export const allIds: readonly string[] = Object.values(families).flat();

export const familyOf = (id: string): string =>
  Object.keys(families).find((family) => families[family]?.includes(id)) ?? "other";
