// What the entry knows: the places in order, where it stands, and what typed figures would mean there.

import { isQuantity } from "../../document/column-heading.ts";
import { isBare } from "../../document/decimal-mark.ts";
import type { ReadingItem } from "../../document/item.ts";
import type { TableValue } from "../../engine/line.ts";
import { readingValue } from "../../engine/reading.ts";
import { isProblem, type Problem, problem } from "../../problem.ts";
import { type Front, filled, frontOf } from "../../readings/front-digits.ts";
import { frontFromPage } from "../../readings/nominal.ts";
import { nextWanted, type Step, stepsOf } from "../../readings/places.ts";
import { standsElsewhere } from "../../readings/stands-elsewhere.ts";
import { openTable } from "../../readings/table.ts";
import { oneValue, type Quantity } from "../../units/quantity.ts";
import type { PageContext } from "../shell/page-context.ts";

export interface Spot {
  readonly item: ReadingItem;
  readonly rows: string;
  readonly table: TableValue;
  readonly steps: readonly Step[];
}

/** The table as it stands now, worked out here so that a fast hand never waits for the page. */
export function spotOf(context: PageContext, name: string): Spot | Problem {
  const item = context.itemOf(name);
  if (item?.kind !== "reading")
    return problem({ code: "not-a-reading", what: name, must: "be a reading of the page" });
  const begun = openTable(item, context.typed(name));
  if (isProblem(begun)) return begun;
  const table = readingValue(item, begun.text, context.live.page.file);
  if (isProblem(table)) return table;
  if (table.type !== "table") return problem({ code: "not-a-table", what: name, got: table.type });
  const steps = standsElsewhere(item, stepsOf(item, table), context.live.lines());
  return { item, rows: begun.text, table, steps };
}

/**
 * Front digits at a place: as the last reading of its group, else as most of the column, else as the nominal.
 * The first reading of a column may be a slip, so it never outranks a nominal of the page.
 */
export function frontAt(context: PageContext, { item, table, steps }: Spot, step: Step): Front | undefined {
  if (!isQuantity(step.kind)) return undefined;
  const [first] = step.place;
  const inColumn = steps.filter((other) => other.column === step.column && other.text !== "");
  const before = inColumn.filter((other) => other.place[0]?.[1] === first?.[1] && other.id !== step.id);
  const nominal = () => frontFromPage(context.live.lines(), item, step.column, step.unit);
  if (inColumn.length < 2) {
    const front = nominal();
    if (front) return front;
  }
  const last = before.toSorted((a, b) => (a.row ?? 0) - (b.row ?? 0)).at(-1);
  const near = last && item.key && item.key.length > 1 ? frontOf([last.text]) : undefined;
  const texts = table.columns.find((column) => column.name === step.column)?.typed ?? [];
  return near ?? frontOf(texts.filter((text) => text !== "")) ?? nominal();
}

export interface Meaning {
  /** As it goes into the table. */
  readonly text: string;
  readonly value: Quantity | undefined;
  readonly byFront: boolean;
}

/** What has been typed, in the unit of the column unless it names its own. */
export function meaningOf(step: Step, typed: string, front: Front | undefined): Meaning | Problem {
  const found = filled(typed, front);
  if ("tooMany" in found)
    return problem({
      code: "too-many-figures",
      what: step.words,
      got: found.tooMany,
      must: "have its point where there are more figures than in the others",
    });
  if (!isQuantity(step.kind) || step.kind === "tag" || step.kind === "text")
    return { text: found.text, value: undefined, byFront: false };
  const isNumber = isBare(found.text);
  const text = isNumber ? found.text.replace(",", ".") : found.text;
  const value = oneValue(isNumber && step.unit !== undefined ? `${text} ${step.unit}` : text, step.kind);
  return isProblem(value) ? value : { text, value, byFront: found.byFront };
}

export const firstWanted = (steps: readonly Step[]): number | undefined => nextWanted(steps, -1);

/** The step whose text or state differs between two spots: the one that an undo took back. */
export function changedStep(before: Spot, after: Spot): number {
  const known = new Map(before.steps.map((step) => [step.id, step]));
  return after.steps.findIndex((step) => {
    const old = known.get(step.id);
    return old?.text !== step.text || old.state !== step.state || old.reason !== step.reason;
  });
}
