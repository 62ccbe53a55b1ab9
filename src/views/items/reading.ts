// A table of readings as typed, with the ways to fill it: by thumb, from a file, and out to one. A blank is
// missing and says so; it is never zero.
import type { ReadingItem } from "../../document/item.ts";
import type { Line, TableValue } from "../../engine/line.ts";
import { isProblem } from "../../problem.ts";
import { type Child, el, replace } from "../dom.ts";
import { lazily } from "../lazily.ts";
import { more, nameInFormulas, noteOf, relations } from "../more.ts";
import { onScreen } from "../on-screen.ts";
import type { ItemView, PageContext } from "../page-context.ts";
import { problemNote } from "../problem-note.ts";
import { askedColumns, stepsOf } from "../readings/places.ts";
import { isPlan, planTable } from "../readings/plan-table.ts";
import { readingNotes } from "../readings/reading-notes.ts";
import { readingsTable } from "../readings/readings-table.ts";
import { row } from "../row.ts";
import { counted, labelOf } from "../words.ts";

const csvOut = lazily(() => import("../csv/csv-out.ts"));

export function readingView(context: PageContext, line: Line, item: ReadingItem): ItemView {
  const { element, body } = row(context, line.name, item, { wide: true });
  const content = el("div");
  const enter = el("button", {
    type: "button",
    class: "tool strong",
    onclick: () => context.enterReadings(item.name),
  });
  const save = el(
    "button",
    {
      type: "button",
      class: "tool",
      onclick: () => csvOut.use((made) => made.saveReading(item, context.live.line(item.name))),
    },
    "Save as CSV",
  );
  const add = el(
    "button",
    { type: "button", class: "tool", onclick: () => context.importTable(item.name) },
    "Add from CSV",
  );
  const tools = el(
    "div",
    { class: "tools reading-tools" },
    askedColumns(item).length > 0 && enter,
    add,
    save,
  );
  const opened = more("more", labelOf(item));
  body.append(content, tools, opened.element);
  let isWhole = false;

  const update = (now: Line): void => {
    const { value } = now;
    const isTable = !isProblem(value) && value.type === "table";
    element.classList.toggle("unanswered", isProblem(value));
    save.hidden = !isTable;
    add.disabled = context.keeping() === "another tab";
    enter.classList.toggle("strong", isTable && value.missing > 0);
    enter.textContent =
      isTable && value.missing > 0 ? `Enter readings, ${value.missing} wanted` : "Enter readings";
    if (isProblem(value)) replace(content, problemNote(value, undefined));
    else if (value.type === "table") {
      const showAll = () => {
        isWhole = true;
        update(now);
      };
      replace(content, ...tableParts(context, item, value, isWhole ? undefined : showAll));
    }
    opened.fill(() => [noteOf(now), nameInFormulas(now), ...relations(now, context)]);
  };
  update(line);
  return { element, update };
}

/** A long table begins with this many rows; the others come when asked for. */
const firstRows = 150;

function tableParts(
  context: PageContext,
  item: ReadingItem,
  value: TableValue,
  showAll: (() => void) | undefined,
): readonly Child[] {
  const steps = stepsOf(item, value);
  const enter = (place: string) => context.enterReadings(item.name, place);
  const plan = isPlan(item, value)
    ? planTable(item, steps, labelOf(item), (step) => enter(step.id))
    : undefined;
  const isLong = plan === undefined && showAll !== undefined && value.rows > firstRows;
  const first = isLong ? Array.from({ length: firstRows }, (_, i) => i) : undefined;
  return [
    plan ?? (value.rows > 0 && readingsTable(value, labelOf(item), first)),
    isLong &&
      el("button", { type: "button", class: "tool", onclick: showAll }, `Show all ${value.rows} rows`),
    readingNotes({ item, table: value, steps, enter }),
    el("p", { class: "caption" }, onScreen(facts(item, value))),
  ];
}

function facts(item: ReadingItem, value: TableValue): string {
  const doubt = item.uncertainty
    ? `expanded uncertainty ${Object.entries(item.uncertainty.of)
        .map(([column, text]) => `${column} ${text}`)
        .join(", ")} (k = ${item.uncertainty.k})`
    : undefined;
  const words = [
    counted(value.rows, "row"),
    value.missing > 0 ? `${value.missing} missing` : "none missing",
    doubt,
    item.instrument,
    item.person,
    item.date,
    item.temperature && `read at ${item.temperature}`,
  ];
  return `${words.filter(Boolean).join("; ")}.`;
}
