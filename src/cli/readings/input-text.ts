// The text of a CSV file or of standard input, or the one sentence why it is none. Never more is read than
// a page can hold, and a file of too many rows is refused before any field of it is looked at.
import { isProblem, type Problem, problem } from "../../problem.ts";
import { oddIn } from "../../visible.ts";
import { readAtMost, unreadable } from "../page-files.ts";

/** A page holds no more than this, and a person can look through no more. */
export const mostBytes = 2_000_000;
export const mostRows = 20_000;

export const standardInput = "standard input";

export async function inputText(file: string): Promise<string | Problem> {
  const bytes = file === "-" ? await standardBytes() : fileBytes(file);
  return isProblem(bytes) ? bytes : textOf(bytes);
}

function fileBytes(file: string): Uint8Array | Problem {
  try {
    return readAtMost(file, mostBytes + 1);
  } catch (error) {
    return unreadable(file, error, "readings", "be a CSV file");
  }
}

async function standardBytes(): Promise<Uint8Array> {
  const parts: Buffer[] = [];
  let length = 0;
  for await (const part of process.stdin) {
    const bytes = Buffer.from(part);
    parts.push(bytes);
    length += bytes.length;
    if (length > mostBytes) break;
  }
  return Buffer.concat(parts);
}

const beginnings: readonly (readonly [text: string, what: string])[] = [
  ["PK\u0003\u0004", "a spreadsheet or a zip file"],
  ["\u00D0\u00CF\u0011\u00E0", "an old spreadsheet"],
  ["%PDF", "a PDF"],
  ["\u0089PNG", "a picture"],
  ["\u00FF\u00D8\u00FF", "a picture"],
  ["\u001F\u008B", "a packed file"],
];

function textOf(bytes: Uint8Array): string | Problem {
  const start = String.fromCharCode(...bytes.subarray(0, 8));
  const known = beginnings.find(([begin]) => start.startsWith(begin));
  if (known) return notText(known[1]);
  if (bytes.length > mostBytes) return tooLarge(`more than ${mostBytes} bytes`);
  const text = decoded(bytes);
  if (isProblem(text)) return text;
  const rows = (text.match(/\n/g)?.length ?? 0) - (text.endsWith("\n") ? 1 : 0);
  if (rows > mostRows) return tooLarge(`${rows} rows`);
  if (text.trim() === "") return empty;
  return oddCharacter(text) ?? text;
}

/** UTF-8, or UTF-16 where its mark stands at the beginning, as some grid programs save it. */
function decoded(bytes: Uint8Array): string | Problem {
  const [first, second] = bytes;
  const little = first === 0xff && second === 0xfe;
  const big = first === 0xfe && second === 0xff;
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

/** What a page refuses as well: marks that are not seen, and line ends of a kind long gone. */
function oddCharacter(text: string): Problem | undefined {
  const found = oddIn(text);
  if (!found) return undefined;
  const line = text.slice(0, found.index).split("\n").length;
  return problem({
    code: "odd-character",
    what: `line ${line}`,
    got: `the character ${found.name}`,
    must: "be plain text",
    why: "this character is not seen, or comes from another encoding",
    hint: "save the file again as CSV in UTF-8 without it",
  });
}

const empty = problem({
  code: "csv-empty",
  what: "table",
  got: "an empty file",
  must: "start with a line of headings",
  hint: "for example position,diameter/mm",
});

const notText = (got: string, hint = "save the sheet as CSV and give that file"): Problem =>
  problem({ code: "not-text", what: "file", got, must: "be CSV text", hint });

const tooLarge = (got: string): Problem =>
  problem({
    code: "too-large",
    what: "file",
    got,
    must: `have at most ${mostRows} rows and ${mostBytes} bytes`,
    hint: "cut it to the readings of one job",
  });
