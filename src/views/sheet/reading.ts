// A table of readings as typed, with the ways to fill it: by thumb, from a file, and out to one. A blank is
// missing and says so; it is never zero.
import type { ReadingItem } from "../../document/item.ts";
import type { Line } from "../../engine/line.ts";
import { isProblem } from "../../problem.ts";
import { askedColumns } from "../../readings/places.ts";
import { labelOf } from "../../report/labels.ts";
import { el, replace } from "../dom.ts";
import { saveFile } from "../shell/files.ts";
import { lazily } from "../shell/lazily.ts";
import { more, nameInFormulas, noteOf, relations } from "../shell/more.ts";
import type { ItemView, PageContext } from "../shell/page-context.ts";
import { problemNote } from "./problem-note.ts";
import { row } from "./row.ts";

const parts = lazily(() => import("../entry/table-parts.ts"));
const csvOut = lazily(() => import("../../readings/reading-csv.ts"), "soon");

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
      onclick: () =>
        csvOut.use(({ readingCsv }) => {
          const made = readingCsv(item, context.typed(item.name), false);
          if (!isProblem(made)) saveFile(`${item.name}.csv`, made.csv, "text/csv");
        }),
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

  let latest = line;
  const update = (now: Line): void => {
    latest = now;
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
      parts.use(({ tableParts }) => {
        if (latest === now)
          replace(content, ...tableParts(context, item, value, isWhole ? undefined : showAll));
      });
    }
    opened.fill(() => [noteOf(now), nameInFormulas(now), ...relations(now, context)]);
  };
  update(line);
  return { element, update };
}
