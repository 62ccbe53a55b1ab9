// Which family a method belongs to: the folder it stands in under src/methods, written in when the bundle is made.

declare const methodFamilies: Readonly<Record<string, string>>;

export const familyOf = (id: string): string => methodFamilies[id] ?? "other";
