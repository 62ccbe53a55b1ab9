// A table of readings row by row, as typed: missing says so, corrected is struck through, set aside is quiet.
import type { ReadingState, TableColumn, TableValue } from "../../engine/line.ts";
import { isNumeric } from "../../engine/reading.ts";
import { reasonOf, textAt } from "../../readings/places.ts";
import { isRemark } from "../../readings/remarks.ts";
import { headWords, replacedBy, valuesOfRow } from "../../readings/row-words.ts";
import { type Child, el } from "../dom.ts";
import { stateWord } from "../sheet/state-mark.ts";
import { scrollTable } from "../shell/scroll-table.ts";

/** `rows`: only these; all where not said. */
export function readingsTable(table: TableValue, label: string, rows?: readonly number[]): HTMLElement {
  const shown = rows ?? table.states.map((_, row) => row);
  const withState = shown.some(
    (row) => table.states[row] !== "entered" || textAt(table, "reason", row) !== "",
  );
  const columns = table.columns.filter(({ name }) => !isRemark(name));
  const line = (row: number): HTMLElement => {
    const state = table.states[row] ?? "entered";
    return el(
      "tr",
      { class: `reading-row is-${state.replace(" ", "-")}` },
      ...columns.map((column) => cell(column, row, state)),
      withState && el("td", { class: "reading-state" }, ...stateParts(table, row, state)),
    );
  };
  const heads = columns.map((column) =>
    el(
      "th",
      { scope: "col", class: isNumeric(column) ? "number-head" : undefined },
      headWords(column.name, column.unit),
    ),
  );
  return scrollTable(`readings: ${label}`, { heads: [...heads, withState && "state"] }, shown.map(line));
}

function cell(column: TableColumn, row: number, state: ReadingState): HTMLElement {
  const text = column.typed[row] ?? "";
  if (!isNumeric(column)) return el("td", {}, text);
  if (text === "" && state !== "corrected") return el("td", { class: "missing" }, "missing");
  return el("td", { class: "number" }, struck(text, state));
}

/** Struck through for the eye and for the ear. */
const struck = (text: string, state: ReadingState): Child =>
  state === "corrected" || state === "set aside" ? el("s", {}, text) : text;

function stateParts(table: TableValue, row: number, state: ReadingState): readonly Child[] {
  const reason = reasonOf(table, row);
  if (state === "entered") return [reason];
  if (state === "corrected") {
    const by = replacedBy(table, row);
    const why = by === undefined ? "" : reasonOf(table, by);
    return [
      stateWord(state),
      by !== undefined && ` to ${valuesOfRow(table, by)}${why === "" ? "" : `: ${why}`}`,
    ];
  }
  return [stateWord(state), reason !== "" && ` ${reason}`];
}
