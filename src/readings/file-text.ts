// The bytes of a file as the text of a table, or the one sentence why they are none. A page can hold no more than this,
// and a person can look through no more: a longer one is refused before any field of it is looked at.
import { type Problem, problem } from "../problem.ts";
import { oddIn } from "../visible.ts";

export const mostCharacters = 2_000_000;
const mostRows = 20_000;

const beginnings: readonly (readonly [text: string, what: string])[] = [
  ["PK\u0003\u0004", "a spreadsheet or a zip file"],
  ["\u00D0\u00CF\u0011\u00E0", "an old spreadsheet"],
  ["%PDF", "a PDF"],
  ["\u0089PNG", "a picture"],
  ["\u00FF\u00D8\u00FF", "a picture"],
  ["\u001F\u008B", "a packed file"],
];

/** UTF-8, or UTF-16 where its mark stands at the beginning, as some grid programs save it. */
export function textOfBytes(bytes: Uint8Array): string | Problem {
  const start = String.fromCharCode(...bytes.subarray(0, 8));
  const known = beginnings.find(([begin]) => start.startsWith(begin));
  if (known) return notText(known[1]);
  if (bytes.length > mostCharacters) return tooLarge(`more than ${mostCharacters} bytes`);
  const little = start.startsWith("\u00FF\u00FE");
  const big = start.startsWith("\u00FE\u00FF");
  if (!little && !big && bytes.subarray(0, 4096).includes(0)) return notText("bytes that are no text");
  try {
    return new TextDecoder(little ? "utf-16le" : big ? "utf-16be" : "utf-8", { fatal: true }).decode(bytes);
  } catch {
    return notText(
      "bytes that are no UTF-8 text",
      "save it again as CSV in UTF-8; a degree or micro sign is often the cause",
    );
  }
}

/** What keeps a text from being read as a table at all. */
export function textFault(text: string): Problem | undefined {
  const rows = (text.match(/\n/g)?.length ?? 0) - (text.endsWith("\n") ? 1 : 0);
  if (rows > mostRows) return tooLarge(`${rows} rows`);
  if (text.length > mostCharacters) return tooLarge(`${text.length} characters`);
  if (text.trim() === "")
    return problem({
      code: "csv-empty",
      what: "table",
      got: "an empty file",
      must: "start with a line of headings",
      hint: "for example position,diameter/mm",
    });
  const found = oddIn(text);
  return found && oddCharacter(found.name, text.slice(0, found.index).split("\n").length);
}

/** What a page refuses as well: marks that are not seen, and line ends of a kind long gone. */
const oddCharacter = (name: string, line: number): Problem =>
  problem({
    code: "odd-character",
    what: `line ${line}`,
    got: `the character ${name}`,
    must: "be plain text",
    why: "this character is not seen, or comes from another encoding",
    hint: "save the file again as CSV in UTF-8 without it",
  });

const notText = (got: string, hint = "save the sheet as CSV and give that file"): Problem =>
  problem({ code: "not-text", what: "file", got, must: "be CSV text", hint });

export const tooLarge = (got: string): Problem =>
  problem({
    code: "too-large",
    what: "file",
    got,
    must: `have at most ${mostRows} rows and ${mostCharacters} bytes`,
    hint: "cut it to the readings of one job",
  });
