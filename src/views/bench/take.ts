// What an entry does to the rows of a reading. Nothing is ever written over: a blank is filled, a correction is a
// row of its own with its reason, and what is set aside keeps its value.
import type { ReadingItem } from "../../document/item.ts";
import { inWords, keyColumns } from "../../document/place-words.ts";
import {
  changedRows,
  type Fields,
  fieldsOf,
  has,
  type Remark,
  type RowsText,
  withFields,
  withRemarks,
  withRow,
} from "../../document/rows-text.ts";
import { isProblem, type Problem } from "../../problem.ts";
import { askedColumns, isNotRead, notRead, type Step, saidOf } from "../readings/places.ts";

export interface Taken {
  readonly item: ReadingItem;
  /** The rows now. */
  readonly rows: string;
  readonly step: Step;
}

const placeFields = ({ step }: Taken): Fields => Object.fromEntries(step.place);

/** A reason more beside those that the row has. */
const reasonIn = (rows: RowsText, row: number | undefined, reason: string | undefined): Fields =>
  reason !== undefined && has(rows, "reason") ? { reason: [...said(rows, row), reason].join("; ") } : {};

const said = (rows: RowsText, row: number | undefined): readonly string[] =>
  row === undefined ? [] : saidOf(fieldsOf(rows, row)["reason"] ?? "");

/** A reading where none was. */
export function take(taken: Taken, text: string, reason?: string): string | Problem {
  const { item, step } = taken;
  return changedRows(item, taken.rows, (rows) => {
    const value = { [step.column]: text, ...reasonIn(rows, step.row, reason) };
    if (step.row === undefined) return withRow(rows, { ...placeFields(taken), ...value });
    if (!isNotRead(step.reason)) return withFields(rows, step.row, value);
    const others = said(rows, step.row).filter((part) => part !== step.reason && !part.startsWith(notRead));
    return withRow(rows, {
      ...fieldsOf(rows, step.row),
      state: "",
      reason: [...others, reason ?? "read later"].join("; "),
      ...(has(rows, "by") && { by: "" }),
      [step.column]: text,
    });
  });
}

/** Another value in place of one that stays in the table. */
export function correct(taken: Taken, text: string, reason: string, by: string): string | Problem {
  const { step } = taken;
  return withReasons(taken, ["reason", "by"], (rows) =>
    withRow(rows, {
      ...(step.row === undefined ? {} : fieldsOf(rows, step.row)),
      [step.column]: text,
      ...(has(rows, "state") && { state: "" }),
      reason,
      by,
    }),
  );
}

/** Keeps the value and takes it out of use; what it corrected before stays out of use with it. */
export function setAside(taken: Taken, reason: string, by: string): string | Problem {
  const { item, step } = taken;
  return withReasons(taken, ["state", "reason", "by"], (rows) => {
    const keys = keyColumns(item);
    const at = fieldsOf(rows, step.row ?? -1);
    const same = rows.table.rows.flatMap((_, row) => {
      const fields = fieldsOf(rows, row);
      return keys.every((key) => fields[key] === at[key]) && fields["state"] === "" ? [row] : [];
    });
    let text: string | Problem = rows.text;
    for (const row of keys.length > 0 ? same : [step.row ?? -1]) {
      if (typeof text !== "string") return text;
      const before = fieldsOf(rows, row)["reason"] ?? "";
      const words = [before, reason].filter((part) => part !== "").join("; ");
      text = changedRows(item, text, (now) =>
        withFields(now, row, { state: "set aside", reason: words, by }),
      );
    }
    return text;
  });
}

/** Leaves the reading missing, with a note that says why. */
export function cannotRead(taken: Taken, why: string, by: string): string | Problem {
  const { item, step } = taken;
  return withReasons(taken, ["reason", "by"], (rows) => {
    const which = askedColumns(item).length > 1 ? `${inWords(step.column)} ` : "";
    const others = said(rows, step.row).filter((part) => part !== step.reason);
    const reason = [...others, `${which}${notRead}: ${why}`].join("; ");
    if (step.row === undefined) return withRow(rows, { ...placeFields(taken), reason, by });
    return withFields(rows, step.row, { reason, by });
  });
}

/** The columns of the remark are added where the table has none yet. */
function withReasons(
  { item, rows }: Taken,
  columns: readonly Remark[],
  change: (rows: RowsText) => string | Problem,
): string | Problem {
  const opened = withRemarks(item, rows, columns);
  return isProblem(opened) ? opened : changedRows(item, opened, change);
}
