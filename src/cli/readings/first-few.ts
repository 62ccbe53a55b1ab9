/** The first few of many, and how many more there are. */
export const firstFew = (texts: readonly string[], most: number): string =>
  texts.length <= most
    ? texts.join("; ")
    : `${texts.slice(0, most).join("; ")}; and ${texts.length - most} more`;
