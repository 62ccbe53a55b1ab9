// What an entry does to the rows of a reading. Nothing is ever written over: a blank is filled, a correction is a
// row of its own with its reason, and what is set aside keeps its value.
import type { ReadingItem } from "../document/item.ts";
import { inWords } from "../document/place-words.ts";
import type { Problem } from "../problem.ts";
import { changedRows } from "./edited.ts";
import { askedColumns, type Step } from "./places.ts";
import { isNotRead, notRead, saidOf, saying } from "./remarks.ts";
import { idOfPlace, placeOfTexts } from "./same-reading.ts";
import { type Fields, has, type Table } from "./table.ts";

export interface Taken {
  readonly item: ReadingItem;
  /** The rows now. */
  readonly rows: string;
  readonly step: Step;
}

const placeFields = ({ step }: Taken): Fields => Object.fromEntries(step.place);

const textsAt = (table: Table, row: number | undefined): Fields =>
  row === undefined ? {} : (table.rows[row]?.texts ?? {});

const said = (table: Table, row: number | undefined): readonly string[] =>
  saidOf(textsAt(table, row)["reason"] ?? "");

/** A reading where none was; a reason comes beside those that the row has. */
export function take(taken: Taken, text: string, reason = ""): string | Problem {
  const { item, step, rows } = taken;
  const { row } = step;
  return changedRows(item, rows, (table) => {
    const why = reason !== "" && has(table, "reason") ? { reason: saying(...said(table, row), reason) } : {};
    const value = { [step.column]: text, ...why };
    if (row === undefined) return { added: [{ ...placeFields(taken), ...value }] };
    if (!isNotRead(step.reason)) return { changed: new Map([[row, value]]) };
    const others = said(table, row).filter((part) => part !== step.reason && !part.startsWith(notRead));
    const later = saying(...others, reason || "read later");
    return { added: [{ ...textsAt(table, row), state: "", by: "", reason: later, [step.column]: text }] };
  });
}

/** Another value in place of one that stays in the table. */
export const correct = (
  { item, rows, step }: Taken,
  text: string,
  reason: string,
  by: string,
): string | Problem =>
  changedRows(item, rows, (table) => ({
    columns: ["reason", "by"],
    added: [{ ...textsAt(table, step.row), [step.column]: text, state: "", reason, by }],
  }));

/** Keeps the value and takes it out of use; what it corrected before stays out of use with it. */
export const setAside = ({ item, rows, step }: Taken, reason: string, by: string): string | Problem =>
  changedRows(item, rows, (table) => {
    const here = table.rows[step.row ?? -1];
    const place = here && idOfPlace(placeOfTexts(item, here));
    const same = table.rows.filter(
      (row) =>
        row === here || (idOfPlace(placeOfTexts(item, row)) === place && (row.texts["state"] ?? "") === ""),
    );
    const aside = ({ texts }: Table["rows"][number]): Fields => ({
      state: "set aside",
      reason: saying(texts["reason"] ?? "", reason),
      by,
    });
    return {
      columns: ["state", "reason", "by"],
      changed: new Map(same.map((row) => [row.index, aside(row)])),
    };
  });

/** Leaves the reading missing, with a note that says why. */
export const cannotRead = (taken: Taken, why: string, by: string): string | Problem =>
  changedRows(taken.item, taken.rows, (table) => {
    const { item, step } = taken;
    const which = askedColumns(item).length > 1 ? `${inWords(step.column)} ` : "";
    const others = said(table, step.row).filter((part) => part !== step.reason);
    const reason = saying(...others, `${which}${notRead}: ${why}`);
    const columns = ["reason", "by"] as const;
    return step.row === undefined
      ? { columns, added: [{ ...placeFields(taken), reason, by }] }
      : { columns, changed: new Map([[step.row, { reason, by }]]) };
  });
