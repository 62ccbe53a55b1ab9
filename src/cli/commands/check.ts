// splitline check: every check of each page with its state and the reason.
import type { CheckValue, Line } from "../../engine/line.ts";
import { isRefusal } from "../../engine/pictures.ts";
import "../../pictures/index.ts";
import { isProblem, problem } from "../../problem.ts";
import { itemsOf } from "../../report/row-names.ts";
import { isCheck, stateOf } from "../../report/states.ts";
import { isOpen } from "../../report/without-answer.ts";
import { readArguments } from "../arguments.ts";
import { pageRecord } from "../check-record.ts";
import { countLine, pageLines } from "../check-text.ts";
import { type CheckedPage, checkedPage, unreadPage } from "../checked-page.ts";
import { lines } from "../columns.ts";
import {
  asJson,
  exitClosed,
  exitFails,
  exitFine,
  exitOpen,
  exitUnread,
  type Outcome,
  refused,
  wantsJson,
} from "../outcome.ts";
import { filesAt } from "../page-files.ts";

export async function checkCommand(args: readonly string[], width: number): Promise<Outcome> {
  const json = wantsJson(args);
  const read = readArguments("check", args, {});
  if (isProblem(read)) return refused(read, json);
  if (read.words.length === 0) return refused(nothing, json);
  const pages: CheckedPage[] = [];
  for (const word of read.words) {
    const files = filesAt(word);
    if (isProblem(files)) pages.push(unreadPage(word, [files]));
    else for (const file of files) pages.push(await checkedPage(file));
  }
  const exit = exitFor(pages);
  if (json) return { exit, out: asJson({ pages: pages.map(pageRecord) }) };
  const said = pages.flatMap((page) => [...pageLines(page), ""]);
  return { exit, out: lines([...said, countLine(pages)], width) };
}

const nothing = problem({
  code: "missing",
  where: "check",
  what: "page",
  got: "nothing",
  must: "be a page file or a folder of pages",
  hint: "for example splitline check notebooks",
});

/** What fails of a check, row by row where it has rows; a page's own line without a row counts as itself. */
function failing({ value }: Line): readonly CheckValue[] {
  if (isProblem(value)) return [];
  const all =
    value.type === "check" ? [value] : value.type === "checks" ? value.rows.map((row) => row.value) : [];
  return all.filter((one): one is CheckValue => !isProblem(one) && one.state === "fails");
}

const isClosedWindow = ({ because }: CheckValue): boolean => because?.code === "closed-window";

/** A picture that the page asks for in a way that no value can make right is an entry that could not be read. */
const isRefused = ({ item, value }: Line): boolean =>
  item.kind === "picture" && isProblem(value) && isRefusal(value);

/** Not read wins over fails, fails over open, open over fine. */
function exitFor(pages: readonly CheckedPage[]): number {
  if (pages.some((page) => page.problems.length > 0)) return exitUnread;
  const lines = pages.flatMap((page) => page.lines);
  if (lines.some(isRefused)) return exitUnread;
  const states = lines.filter(isCheck).map(stateOf);
  if (states.includes("fails")) return lines.flatMap(failing).every(isClosedWindow) ? exitClosed : exitFails;
  const open = pages.some((page) => page.lines.some((line) => isOpen(line, itemsOf(page.lines))));
  return open || states.includes("unproven") ? exitOpen : exitFine;
}
