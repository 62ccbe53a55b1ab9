// splitline readings … --out: one reading as CSV, to a file or to standard output.
import { existsSync, realpathSync } from "node:fs";
import type { ReadingItem } from "../../document/item.ts";
import { isProblem, problem } from "../../problem.ts";
import { asJson, exitFine, type Outcome, refused } from "../outcome.ts";
import { safeWrite } from "../safe-write.ts";
import { readingCsv } from "./reading-csv.ts";

export interface Task {
  readonly file: string;
  readonly text: string;
  readonly item: ReadingItem;
  readonly json: boolean;
  readonly width: number;
}

export function readingOut({ file, item, json }: Task, out: string, sorted: boolean): Outcome {
  const made = readingCsv(item, sorted);
  if (isProblem(made)) return refused(made, json);
  const { csv, rows, columns } = made;
  const record = { file, reading: item.name, rows, columns };
  if (out === "-") return { exit: exitFine, out: json ? asJson({ ...record, csv }) : csv };
  if (isSameFile(out, file)) return refused(ownPage(out), json);
  const wrong = safeWrite(out, csv, "readings");
  if (wrong) return refused(wrong, json);
  const said = `${out}: ${rows} ${rows === 1 ? "row" : "rows"}, ${columns} ${columns === 1 ? "column" : "columns"} of ${item.name}\n`;
  return { exit: exitFine, out: json ? asJson({ ...record, out }) : said };
}

const isSameFile = (a: string, b: string): boolean => existsSync(a) && realpathSync(a) === realpathSync(b);

const ownPage = (out: string) =>
  problem({
    code: "own-page",
    where: "readings",
    what: "--out",
    got: `${out}, the page itself`,
    must: "be another file",
    why: "the page would be lost",
  });
