// splitline readings … --out: one reading as CSV, to a file or to standard output.
import { existsSync, realpathSync, statSync } from "node:fs";
import type { ReadingItem } from "../../document/item.ts";
import { isProblem, type Problem, problem } from "../../problem.ts";
import { readingCsv } from "../../readings/reading-csv.ts";
import { asJson, exitFine, type Outcome, refused } from "../outcome.ts";
import { readAtMost } from "../page-files.ts";
import { safeWrite } from "../safe-write.ts";

export interface Task {
  readonly file: string;
  readonly text: string;
  readonly item: ReadingItem;
  readonly json: boolean;
  readonly width: number;
}

export function readingOut(
  { file, item, json }: Task,
  out: string,
  { sorted, replaces }: { readonly sorted: boolean; readonly replaces: boolean },
): Outcome {
  const made = readingCsv(item, item.rows, sorted);
  if (isProblem(made)) return refused(made, json);
  const { csv, rows, columns } = made;
  const record = { file, reading: item.name, rows, columns };
  if (out === "-")
    return { exit: exitFine, ...(json ? { out: asJson({ ...record, csv }) } : { out: csv, isData: true }) };
  if (isSameFile(out, file)) return refused(ownPage(out), json);
  const wrong = (isFile(out) ? thereAlready(out, replaces) : undefined) ?? safeWrite(out, csv, "readings");
  if (wrong) return refused(wrong, json);
  const said = `${out}: ${rows} ${rows === 1 ? "row" : "rows"}, ${columns} ${columns === 1 ? "column" : "columns"} of ${item.name}\n`;
  return { exit: exitFine, out: json ? asJson({ ...record, out }) : said };
}

const isSameFile = (a: string, b: string): boolean => existsSync(a) && realpathSync(a) === realpathSync(b);

/** A device or a pipe is written to; a folder is refused where it is written. */
const isFile = (out: string): boolean => statSync(out, { throwIfNoEntry: false })?.isFile() === true;

/** What somebody wrote is never lost to a table: a page not at all, another file only when told. */
function thereAlready(out: string, replaces: boolean): Problem | undefined {
  const isPage = isPageFile(out);
  if (replaces && !isPage) return undefined;
  return problem({
    code: "file-exists",
    where: "readings",
    what: "--out",
    got: `${out}, ${isPage ? "a page" : "a file that is there already"}`,
    must: isPage ? "be another file" : "be a new file",
    why: "nothing is written",
    hint: isPage ? undefined : "name another file, or add --replace to put the table in its place",
  });
}

/** By its first line that says anything, whatever its name: `splitline: 1`. */
function isPageFile(out: string): boolean {
  try {
    const head = new TextDecoder().decode(readAtMost(out, 20_000));
    return /^splitline\s*:/m.test(head);
  } catch {
    return false; // what cannot be read is refused where it is written
  }
}

const ownPage = (out: string) =>
  problem({
    code: "own-page",
    where: "readings",
    what: "--out",
    got: `${out}, the page itself`,
    must: "be another file",
    why: "the page would be lost",
  });
