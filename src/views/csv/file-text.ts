// The bytes of a chosen file as text, or why they are none.
import { type Problem, problem } from "../../problem.ts";

/** A page holds a table of at most this many characters. */
export const mostCharacters = 2_000_000;
export const mostRows = 20_000;

const beginnings: readonly (readonly [string, string])[] = [
  ["PK\u0003\u0004", "a spreadsheet or zip file"],
  ["\u00d0\u00cf\u0011\u00e0", "an old spreadsheet file"],
  ["%PDF", "a PDF"],
  ["\u0089PNG", "a picture"],
  ["\u00ff\u00d8\u00ff", "a picture"],
  ["\u001f\u008b", "a packed file"],
];

export function textOfBytes(bytes: Uint8Array, name: string): string | Problem {
  const start = String.fromCharCode(...bytes.subarray(0, 8));
  const known = beginnings.find(([begin]) => start.startsWith(begin));
  if (known) return notText(name, known[1]);
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return decoded(bytes, "utf-16le", name);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return decoded(bytes, "utf-16be", name);
  if (bytes.subarray(0, 4096).includes(0)) return notText(name, "bytes that are no text");
  return decoded(bytes, "utf-8", name);
}

function decoded(bytes: Uint8Array, encoding: string, name: string): string | Problem {
  try {
    return new TextDecoder(encoding, { fatal: true }).decode(bytes);
  } catch {
    return problem({
      code: "not-utf-8",
      what: name,
      got: "characters that are not UTF-8",
      must: "be CSV in UTF-8",
      hint: "save it again as CSV UTF-8; a degree sign or a micro sign is the usual cause",
    });
  }
}

const notText = (name: string, got: string): Problem =>
  problem({
    code: "not-text",
    what: name,
    got,
    must: "be CSV text",
    hint: "save the sheet as CSV and choose that",
  });

/** A table longer than a page can hold is refused before it is read. */
export function tooLarge(text: string, what: string): Problem | undefined {
  let lines = 0;
  for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) lines += 1;
  if (text.length <= mostCharacters && lines <= mostRows + 1) return undefined;
  return problem({
    code: "too-large",
    what,
    got: `${lines} lines and ${text.length} characters`,
    must: `have at most ${mostRows} rows and ${mostCharacters} characters`,
    hint: "cut it to the readings of one job; a page is kept small enough to be opened on a phone",
  });
}
