// A working over the rows of a table: one answer for each key, outputs as columns with their units in the heads.
// A row opens to its three lines and answers "why?".

import { isMethodItem, type WorkingItem } from "../../document/item.ts";
import { inWords, nounOfRows } from "../../document/place-words.ts";
import type { Line, RowsValue } from "../../engine/line.ts";
import { isProblem } from "../../problem.ts";
import { labelOf } from "../../report/labels.ts";
import { counted } from "../../words.ts";
import { el, replace } from "../dom.ts";
import { more, nameInFormulas, noteOf, relations } from "../shell/more.ts";
import type { ItemView, PageContext } from "../shell/page-context.ts";
import { scrollTable } from "../shell/scroll-table.ts";
import { type AnswerColumn, answerCells, answerColumns, answerHead } from "./answer-columns.ts";
import { noAnswerNote } from "./problem-note.ts";
import { row, rowId } from "./row.ts";
import { rowWorking, workedOnce } from "./row-working.ts";
import { stateWord } from "./state-mark.ts";

export function rowsView(context: PageContext, line: Line, item: WorkingItem): ItemView {
  const { element, head, body } = row(context, line.name, item, { wide: true });
  if (isMethodItem(item)) head.append(el("span", { class: "method" }, item.by.replaceAll("-", " ")));
  const content = el("div");
  const opened = more("all steps and sources", labelOf(item));
  body.append(content, opened.element);
  const isOpen = new Set<string>();

  const update = (now: Line): void => {
    const { value } = now;
    element.classList.toggle("unanswered", isProblem(value));
    if (isProblem(value)) replace(content, noAnswerNote(now, value, context), stateWord("no answer"));
    else if (value.type === "rows") {
      const noun = nounOfRows(item, value.key, context.itemOf);
      replace(content, answersTable({ context, name: now.name, item, value, noun, isOpen }), caption(value));
    }
    opened.fill(() => [
      noteOf(now),
      ...(isProblem(value) || value.type !== "rows" ? [] : workedOnce(value, context)),
      nameInFormulas(now),
      ...relations(now, context),
    ]);
  };
  update(line);
  return { element, update };
}

interface Answers {
  readonly context: PageContext;
  readonly name: string;
  readonly item: WorkingItem;
  readonly value: RowsValue;
  readonly noun: string;
  /** Keys of the rows that stand open, kept while the values change. */
  readonly isOpen: Set<string>;
}

function answersTable(answers: Answers): HTMLElement {
  const { context, name, item, value } = answers;
  const columns = answerColumns(value, context.outputsRead(name), context.unitOf);
  return scrollTable(
    `answers by ${inWords(value.key)}: ${labelOf(item)}`,
    { style: "answers-by-row", heads: [inWords(value.key), ...columns.map(answerHead)] },
    value.rows.flatMap((one) => answerRow(answers, columns, one)),
  );
}

type Answer = RowsValue["rows"][number];

function answerRow(answers: Answers, columns: readonly AnswerColumn[], one: Answer): readonly HTMLElement[] {
  const { context, name, noun, isOpen } = answers;
  const detail = el("tr", { class: "row-detail", hidden: !isOpen.has(one.key) });
  const fill = (): void =>
    replace(detail, el("td", { colspan: columns.length + 1 }, ...rowWorking(one, name, noun, context)));
  const button = el(
    "button",
    {
      type: "button",
      class: "row-key",
      "aria-expanded": String(isOpen.has(one.key)),
      "aria-label": `${noun} ${one.key}, working`,
    },
    one.key,
  );
  button.addEventListener("click", () => {
    if (isOpen.has(one.key)) isOpen.delete(one.key);
    else isOpen.add(one.key);
    fill();
    detail.hidden = !isOpen.has(one.key);
    button.setAttribute("aria-expanded", String(isOpen.has(one.key)));
  });
  if (isOpen.has(one.key)) fill();
  const line = el(
    "tr",
    { id: rowId(name, one.key), tabindex: "-1", class: isProblem(one.value) ? "unanswered-row" : undefined },
    el("th", { scope: "row" }, button),
    ...answerCells(one, columns, context),
  );
  return [line, detail];
}

function caption(value: RowsValue): HTMLElement {
  const without = value.rows.filter((one) => isProblem(one.value)).length;
  const warned = value.rows.filter(
    ({ value: answer }) =>
      !isProblem(answer) && answer.type === "solution" && answer.solution.warnings.length > 0,
  ).length;
  const words = [
    counted(value.rows.length, "row"),
    without > 0 && `${without} without an answer`,
    warned > 0 && `${warned} with a warning`,
  ];
  return el(
    "p",
    { class: "caption" },
    words.filter(Boolean).join("; "),
    el("span", { class: "nav-only" }, "; a row opens to its working"),
    ".",
  );
}
