// Is a value farther from its group than the page allows? Then it is asked about, and never changed.
import type { ReadingItem } from "../document/item.ts";
import { groupWords } from "../document/place-words.ts";
import { counts } from "../engine/by-key.ts";
import type { TableValue } from "../engine/line.ts";
import { isBeyond, oddLimit } from "../engine/reading.ts";
import { median } from "../median.ts";
import { isProblem } from "../problem.ts";
import { formatIn } from "../units/format.ts";
import { oneValue, type Quantity } from "../units/quantity.ts";
import { type Unit, unit } from "../units/unit.ts";
import { type Front, neighbours, zeroSlip } from "./front-digits.ts";
import { manyTimes } from "./odd.ts";
import type { Step } from "./places.ts";

export interface Question {
  readonly words: string;
  /** Texts that may have been meant, the typed one first. */
  readonly choices: readonly string[];
}

export interface Asked {
  readonly item: ReadingItem;
  readonly table: TableValue;
  readonly step: Step;
  /** As it would be kept. */
  readonly text: string;
  readonly value: Quantity;
  readonly front: Front | undefined;
}

export function questionAbout(asked: Asked): Question | undefined {
  const { item, step, text, value, front } = asked;
  if (step.kind === "tag" || step.kind === "text") return undefined;
  const stated = oddLimit(item, step.column);
  const limit = isProblem(stated) ? undefined : stated;
  const all = valuesOf(asked, false);
  const group = limit === undefined ? [] : valuesOf(asked, true);
  const others = group.length > 0 ? group : all;
  const middle = median(others);
  if (middle === undefined) return front && firstOfAll(text, front);
  const away = Math.abs(value.si - middle);
  const most =
    limit === undefined ? scatterLimit(all, middle) : limit.si * (group.length > 0 ? 1 : manyTimes);
  const far = isBeyond(value.si, middle, most);
  const nearer = nearerOf(asked, others, middle, away) ?? slipOf(asked, middle, away);
  if (!far && nearer === undefined) return undefined;
  const whom = group.length > 0 ? groupWords(item, step.place) : "this table";
  const ask = nearer === undefined ? "keep or type again?" : `was ${nearer} meant?`;
  return {
    words: `${text} is ${distance(away, limit?.unit ?? value.unit)} from the others of ${whom}: ${ask}`,
    choices: nearer === undefined ? [text] : [text, nearer],
  };
}

/** The first reading of all has only the nominal to be compared with. */
function firstOfAll(text: string, front: Front): Question | undefined {
  const slip = zeroSlip(text, front);
  if (slip !== undefined)
    return {
      words: `${text} does not have the ${slip.length - slip.indexOf(".") - 1} decimals that are usual here: was ${slip} meant?`,
      choices: [text, slip],
    };
  if (text.startsWith(front.front)) return undefined;
  return {
    words: `${text} does not begin with ${front.front}, as the nominal of the page: keep or type again?`,
    choices: [text],
  };
}

const enough = 8;
const deviations = 6;

/** Without a limit of the page, only a reading far out of everything read so far is asked about. */
function scatterLimit(values: readonly number[], middle: number): number {
  const scatter = median(values.map((value) => Math.abs(value - middle))) ?? 0;
  // 1.4826 median deviations are one standard deviation of a normal scatter
  return values.length < enough || scatter === 0 ? Number.POSITIVE_INFINITY : deviations * 1.4826 * scatter;
}

/** Small lengths in micrometres or thou, as a gauge is read. */
function distance(si: number, shown: Unit): string {
  const fine = unit(shown.text === "in" || shown.text === "thou" ? "thou" : "um", "length");
  const small = shown.kinds.includes("length") && Math.abs(si) < 1e-3 && !isProblem(fine);
  return formatIn(si, small ? fine : shown, { label: true });
}

/** A zero too many or too few, where the reading without it lies nearer. */
function slipOf({ text, value, front }: Asked, middle: number, away: number): string | undefined {
  const other = front && zeroSlip(text, front);
  const meant = other === undefined ? undefined : oneValue(`${other} ${value.unit.text}`, value.kind);
  return meant && !isProblem(meant) && Math.abs(meant.si - middle) < away ? other : undefined;
}

/** With fixed front digits, 90 means 25.090: where 24.990 lies nearer and 25.090 outside, it is asked. */
function nearerOf(
  { text, value, front }: Asked,
  others: readonly number[],
  middle: number,
  away: number,
): string | undefined {
  if (front === undefined || !text.startsWith(front.front)) return undefined;
  const inside = value.si >= Math.min(...others) && value.si <= Math.max(...others);
  if (inside) return undefined;
  return neighbours(text, front).find((other) => {
    const meant = oneValue(`${other} ${value.unit.text}`, value.kind);
    return !isProblem(meant) && Math.abs(meant.si - middle) < away;
  });
}

/** Readings that count in this column: of the same group, or of all. The place itself is left out. */
function valuesOf({ table, step }: Asked, sameGroup: boolean): readonly number[] {
  const column = table.columns.find((one) => one.name === step.column);
  const [first] = step.place;
  const group = table.columns.find((one) => one.name === first?.[0]);
  return table.states.flatMap((state, row) => {
    const value = column?.values[row];
    const isOther = counts(state) && row !== step.row && typeof value === "number";
    return isOther && (!sameGroup || group?.typed[row] === first?.[1]) ? [value] : [];
  });
}
