// Small words that every face needs: how many, a capital, an end, a list in a sentence.

export const counted = (n: number, one: string, many = `${one}s`): string => `${n} ${n === 1 ? one : many}`;

export const capital = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

export const ended = (words: string): string => (/[.?…]$/.test(words) ? words : `${words}.`);

/** "1, 5, 6 and 10" */
export const listed = (names: readonly string[]): string =>
  names.length < 2 ? names.join("") : `${names.slice(0, -1).join(", ")} and ${names.at(-1)}`;
/** The first few of many, and how many more there are. */
export const firstFew = (texts: readonly string[], most: number): string =>
  texts.length <= most
    ? texts.join("; ")
    : `${texts.slice(0, most).join("; ")}; and ${texts.length - most} more`;
