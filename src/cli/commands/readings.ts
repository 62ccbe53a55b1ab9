// splitline readings: the readings of a page, one of them out as CSV, or a CSV file into one of them.
import type { Page, ReadingItem } from "../../document/item.ts";
import { readPage } from "../../document/read.ts";
import { nearest } from "../../nearest.ts";
import { isProblem, type Problem, problem } from "../../problem.ts";
import { type Arguments, readArguments } from "../arguments.ts";
import { lines } from "../columns.ts";
import {
  asJson,
  exitFine,
  exitUnread,
  type Outcome,
  problemRecord,
  refused,
  wantsJson,
  worded,
} from "../outcome.ts";
import { pageText } from "../page-files.ts";
import { readingIn } from "../readings/reading-in.ts";
import { readingOut } from "../readings/reading-out.ts";
import { summaryLines, summaryOf, summaryRecord } from "../readings/reading-summary.ts";

const flags = {
  in: "text",
  out: "text",
  sort: "yes",
  add: "yes",
  replace: "yes",
  write: "yes",
  "as-read": "yes",
  reason: "text",
  by: "text",
  delimiter: "text",
  decimal: "text",
} as const;

export async function readingsCommand(args: readonly string[], width: number): Promise<Outcome> {
  const json = wantsJson(args);
  const read = readArguments("readings", args, flags);
  if (isProblem(read)) return refused(read, json);
  const [file, name, extra] = read.words;
  if (file === undefined) return refused(noPage, json);
  if (extra !== undefined) return refused(tooMany(read.words), json);
  const wrong = wrongFlags(read, name);
  if (wrong) return refused(wrong, json);
  const text = pageText(file, "readings");
  if (isProblem(text)) return refused(text, json);
  const { page, problems } = readPage(text, file);
  if (!page) return allRefused(problems, json);
  const readings = page.items.filter((item): item is ReadingItem => item.kind === "reading");
  if (name === undefined) return listed(page, readings, false, json, width);
  const item = readings.find((reading) => reading.name === name);
  if (!item) return refused(noSuchReading(name, file, readings), json);
  const task = { file, text, item, json, width };
  const out = read.flags.get("out")?.[0];
  if (out !== undefined)
    return readingOut(task, out, { sorted: read.flags.has("sort"), replaces: read.flags.has("replace") });
  const from = read.flags.get("in")?.[0];
  if (from === undefined) return listed(page, [item], true, json, width);
  return readingIn(task, from, {
    mode: read.flags.has("replace") ? "replace" : "add",
    write: read.flags.has("write"),
    asRead: read.flags.has("as-read"),
    reason: read.flags.get("reason")?.[0] ?? "",
    by: read.flags.get("by")?.[0] ?? "",
    delimiter: read.flags.get("delimiter")?.[0],
    decimal: read.flags.get("decimal")?.[0],
  });
}

function listed(
  page: Page,
  readings: readonly ReadingItem[],
  whole: boolean,
  json: boolean,
  width: number,
): Outcome {
  const summaries = readings.map((item) => summaryOf(item, page.file));
  const exit = summaries.some(({ value }) => isProblem(value)) ? exitUnread : exitFine;
  if (json)
    return {
      exit,
      out: asJson({ file: page.file, title: page.title, readings: summaries.map(summaryRecord) }),
    };
  const said = summaries.flatMap((summary) => ["", ...summaryLines(summary, whole)]);
  const none = readings.length === 0 ? ["  no readings on this page"] : [];
  return { exit, out: lines([`${page.file}: ${page.title}`, ...none, ...said], width) };
}

/** Flags that only make sense together, or not together. */
function wrongFlags({ flags: given }: Arguments, name: string | undefined): Problem | undefined {
  const has = (flag: string): boolean => given.has(flag);
  const both = [
    ["in", "out"],
    ["add", "replace"],
  ].find((pair) => pair.every(has));
  if (both)
    return problem({
      code: "two-ways",
      where: "readings",
      what: both.map((flag) => `--${flag}`).join(" and "),
      got: "both",
      must: "be given one at a time",
    });
  const alone = [
    ...(has("out") ? [] : ["replace"]).map((flag) => [flag, "in"] as const),
    ...["add", "write", "as-read", "reason", "by", "delimiter", "decimal"].map(
      (flag) => [flag, "in"] as const,
    ),
    ["sort", "out"] as const,
  ].find(([flag, needed]) => has(flag) && !has(needed));
  if (alone)
    return problem({
      code: "missing",
      where: "readings",
      what: `--${alone[0]}`,
      got: `no --${alone[1]}`,
      must: `come with --${alone[1]} and a file`,
    });
  const way = ["in", "out"].find(has);
  if (way !== undefined && name === undefined)
    return problem({
      code: "missing",
      where: "readings",
      what: "reading",
      got: "nothing",
      must: `be named for --${way}`,
      hint: "without a name the command lists the readings of the page",
    });
  return undefined;
}

function allRefused(problems: readonly Problem[], json: boolean): Outcome {
  const [first = noPage] = problems;
  if (problems.length < 2) return refused(first, json);
  if (!json) return { exit: exitUnread, err: problems.map((p) => `${worded(p)}\n`).join("") };
  const records = problems.map((p) => problemRecord(p));
  return { exit: exitUnread, out: asJson({ problem: records[0], problems: records }) };
}

const noPage = problem({
  code: "missing",
  where: "readings",
  what: "page",
  got: "nothing",
  must: "be a page file",
  hint: "for example splitline readings notebooks/pump-2-as-found.yaml",
});

const tooMany = (words: readonly string[]): Problem =>
  problem({
    code: "too-many-words",
    where: "readings",
    what: words.join(" "),
    got: `${words.length} words`,
    must: "be a page file and the name of one reading",
  });

function noSuchReading(got: string, file: string, readings: readonly ReadingItem[]): Problem {
  const names = readings.map(({ name }) => name);
  const near = nearest(got, names, 1);
  return problem({
    code: "no-such-reading",
    where: file,
    what: "reading",
    got,
    must: names.length === 0 ? "be on the page, which has no readings" : `be one of ${names.join(", ")}`,
    hint: near[0] ? `did you mean ${near[0]}?` : undefined,
    suggestions: near,
  });
}
