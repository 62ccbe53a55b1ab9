// What stands under the name of a reading: its rows or its plan, single readings that need a word, and the facts.
import type { ReadingItem } from "../../document/item.ts";
import type { TableValue } from "../../engine/line.ts";
import { stepsOf } from "../../readings/places.ts";
import { labelOf } from "../../report/labels.ts";
import { onScreen } from "../../units/on-screen.ts";
import { counted } from "../../words.ts";
import { type Child, el } from "../dom.ts";
import type { PageContext } from "../shell/page-context.ts";
import { isPlan, planTable } from "./plan-table.ts";
import { readingNotes } from "./reading-notes.ts";
import { readingsTable } from "./readings-table.ts";

/** A long table begins with this many rows; the others come when asked for. */
const firstRows = 150;

export function tableParts(
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
