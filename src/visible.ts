// Characters that are not seen and change what is: control characters move a terminal's cursor, direction marks
// make a line read otherwise than it is stored, and a line separator begins a line that nobody wrote.
const unseen = /(?![\t\n]|\r\n)\p{Cc}|[\u202A-\u202E\u2066-\u2069\u2028\u2029]/gu;

// What no text of a page may hold: of those the control characters and direction marks, half surrogate pairs,
// and the mark left by text of another encoding.
const odd = /(?![\t\n\r\u0085])\p{Cc}|[\u202A-\u202E\u2066-\u2069\uFFFD-\uFFFF]|\p{Cs}|\r(?!\n)/u;

/** "U+001B" */
const codeOf = (character: string): string =>
  `U+${(character.codePointAt(0) ?? 0).toString(16).toUpperCase().padStart(4, "0")}`;

/** The text with each unseen character named in its place: "<U+001B>[2K". Line ends and tabs stay. */
export const visible = (text: string): string => text.replace(unseen, (found) => `<${codeOf(found)}>`);

/** The same as JSON text writes them, for a text that is JSON. */
export const escaped = (json: string): string =>
  json.replace(
    /[\x7F-\x9F\u202A-\u202E\u2066-\u2069\u2028\u2029]/g,
    (found) => `\\u${found.charCodeAt(0).toString(16).padStart(4, "0")}`,
  );

/** One line, whatever line ends it holds. */
export const onOneLine = (text: string): string => visible(text.replace(/[\t\r\n]+/g, " "));

/** The text with each character that no text of a page may hold named in its place, so that a page file can hold it. */
export const oddNamed = (text: string): string =>
  text.replace(new RegExp(odd, "gu"), (found) => `<${codeOf(found)}>`);

/** The first character that no text of a page may hold, and where it stands. */
export function oddIn(text: string): { readonly index: number; readonly name: string } | undefined {
  const found = odd.exec(text);
  return found ? { index: found.index, name: codeOf(found[0]) } : undefined;
}
