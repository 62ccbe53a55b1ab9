/** "a", "a and b", "a, b and c" */
export const inList = (texts: readonly string[]): string =>
  texts.length < 2 ? texts.join("") : `${texts.slice(0, -1).join(", ")} and ${texts.at(-1)}`;

/** The first few of many, and how many more there are. */
export const firstFew = (texts: readonly string[], most: number): string =>
  texts.length <= most
    ? texts.join("; ")
    : `${texts.slice(0, most).join("; ")}; and ${texts.length - most} more`;
