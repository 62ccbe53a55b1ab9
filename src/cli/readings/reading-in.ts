// splitline readings … --in: a CSV file into one reading. Shown first; written only when asked, all or nothing.
import { largestPage } from "../../document/gate.ts";
import type { DecimalMark, Delimiter } from "../../document/item.ts";
import { writeRows } from "../../document/write-rows.ts";
import { isProblem, type Problem, problem } from "../../problem.ts";
import { noAnswers, planImport } from "../../readings/plan-import.ts";
import { lines } from "../columns.ts";
import { asJson, exitFine, exitUnread, type Outcome, problemRecord, refused, worded } from "../outcome.ts";
import { safeWrite } from "../safe-write.ts";
import { inputText, standardInput } from "./input-text.ts";
import { previewLines, previewRecord } from "./preview.ts";
import type { Task } from "./reading-out.ts";

export interface Asked {
  readonly mode: "add" | "replace";
  readonly write: boolean;
  readonly asRead: boolean;
  readonly reason: string;
  readonly by: string;
  readonly delimiter: string | undefined;
  readonly decimal: string | undefined;
}

const delimiterWords: readonly Delimiter[] = ["comma", "semicolon", "tab"];
const decimalWords: readonly DecimalMark[] = ["point", "comma"];

export async function readingIn(task: Task, file: string, asked: Asked): Promise<Outcome> {
  const { text, item, json, width } = task;
  const { mode, asRead } = asked;
  const delimiter = oneOf("delimiter", asked.delimiter, delimiterWords);
  if (isProblem(delimiter)) return refused(delimiter, json);
  const decimal = oneOf("decimal", asked.decimal, decimalWords);
  if (isProblem(decimal)) return refused(decimal, json);
  const from = file === "-" ? standardInput : file;
  const input = await inputText(file);
  if (isProblem(input)) return faulty([input], from, json);
  const far = asRead ? "taken as read" : "";
  const { reason, by } = asked;
  const answers = { ...noAnswers, mode, delimiter, decimal, reason, by, far };
  const plan = planImport(item, item.rows, input, answers);
  if (plan.text === undefined) return faulty([...plan.faults, ...plan.asked], from, json);
  const changesPage = plan.text !== item.rows;
  const page = changesPage ? writeRows(text, item.name, plan.text) : text;
  if (isProblem(page)) return faulty([page], from, json);
  if (Buffer.byteLength(page) > largestPage.bytes) return faulty([pageTooLarge], from, json);
  const written = changesPage && asked.write;
  const wrong = written ? safeWrite(task.file, page, "readings", text) : undefined;
  if (wrong) return refused(wrong, json);
  const shown = { page: task.file, item, from, mode, plan, changesPage, written };
  const out = json ? asJson(previewRecord(shown)) : lines(previewLines(shown), width);
  return { exit: exitFine, out };
}

function oneOf<T extends string>(
  flag: string,
  got: string | undefined,
  words: readonly T[],
): T | undefined | Problem {
  if (got === undefined) return undefined;
  const found = words.find((word) => word === got);
  return (
    found ??
    problem({
      code: "unknown-word",
      where: "readings",
      what: `--${flag}`,
      got,
      must: `be ${words.join(" or ")}`,
    })
  );
}

const pageTooLarge = problem({
  code: "page-too-large",
  what: "file",
  got: `rows that make the page larger than ${largestPage.bytes} bytes`,
  must: "leave room for the rest of the page",
  hint: "cut it to the readings of one job",
});

const mostSentences = 20;

/** One sentence for each line that is wrong or asked about. */
function faulty(problems: readonly Problem[], from: string, json: boolean): Outcome {
  const told = problems.map((p) => asFlags(p).at(from));
  if (json) {
    const records = told.map((p) => problemRecord(p));
    return { exit: exitUnread, out: asJson({ problem: records[0], problems: records, written: false }) };
  }
  const more = told.length - mostSentences;
  const sentences = told.slice(0, mostSentences).map(worded);
  const rest = more > 0 ? [`${from} · ${more} more like these; --json shows them all`] : [];
  return { exit: exitUnread, err: [...sentences, ...rest].map((line) => `${line}\n`).join("") };
}

/** What a page answers in its own words is answered by a flag here. */
function asFlags(p: Problem): Problem {
  if (p.code === "far-off") return p.with({ hint: "--as-read takes it as it is" });
  if (p.code !== "csv-delimiter" && p.code !== "csv-decimal") return p;
  const hint = p.hint?.replace(/\b(delimiter|decimal): (\w+)/, "--$1 $2");
  return p.with({ hint, suggestions: [] });
}
