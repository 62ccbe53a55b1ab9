// A reading item as columns, each row with its state. A blank stays missing; a later row with the same
// key corrects the earlier one and says why; nothing is ever dropped.
import type { ReadingItem } from "../document/item.ts";
import { expectedRows } from "../document/place-words.ts";
import { type ReadingTable, readingTable } from "../document/reading-table.ts";
import { grouped } from "../grouped.ts";
import { median } from "../median.ts";
import { coverage } from "../methods/stated-doubt.ts";
import { nearest } from "../nearest.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { oneValue, type Quantity } from "../units/quantity.ts";
import { atMost } from "../verdict.ts";
import { counts } from "./by-key.ts";
import type { LineValue, ReadingState, SetAside, TableColumn, TableValue } from "./line.ts";

export function readingValue(item: ReadingItem, rows: string, file: string): LineValue | Problem {
  const table = readingTable({ ...item, rows }, file);
  const first = table.problems[0];
  if (first) return first;
  const uncertainty = uncertaintyOf(item);
  if (isProblem(uncertainty)) return uncertainty;
  const columns = Object.values(table.columns).map(
    (column): TableColumn => ({
      name: column.name,
      kind: column.kind,
      unit: column.unit?.text,
      values: column.values ?? column.texts,
      typed: column.texts.map((text) => text ?? ""),
      uncertainty: uncertainty[column.name],
      optional: item.may?.includes(column.name) === true,
    }),
  );
  const key = item.key ?? [];
  const found = statesOf(item, columns, table);
  if (isProblem(found)) return found;
  const oddIn = oddColumns(item, columns, found);
  if (isProblem(oddIn)) return oddIn;
  const states = found.map((state, row): ReadingState => (oddIn.has(row) ? "odd" : state));
  const wanted = wantedRows(item, columns);
  const blanks = states.filter((state) => state === "missing").length;
  return {
    type: "table",
    says: item.says,
    columns,
    rows: table.lines.length,
    missing: blanks + wanted.length,
    states,
    oddIn,
    key,
    setAside: setAsideOf(key, columns, states),
    wanted,
  };
}

/** Stated with one coverage factor for all columns; brought to k = 2. */
function uncertaintyOf(item: ReadingItem): Readonly<Record<string, number>> | Problem {
  const stated = item.uncertainty;
  if (!stated) return {};
  const k = Number(stated.k);
  if (!(k > 0))
    return problem({
      code: "coverage-factor",
      where: item.name,
      what: "coverage factor k of the uncertainty",
      got: stated.k,
      must: "be a number above 0",
      hint: "it stands in the certificate, most often 2",
    });
  const found: Record<string, number> = {};
  for (const [name, text] of Object.entries(stated.of)) {
    const kind = item.columns[name];
    if (kind === undefined || kind === "tag" || kind === "text")
      return problem({
        code: "uncertainty-of-nothing",
        where: item.name,
        what: `uncertainty of ${name}`,
        got: kind === undefined ? "no such column" : `a column of kind ${kind}`,
        must: "belong to a column of numbers",
        suggestions: nearest(name, Object.keys(item.columns)),
      });
    const read = oneValue(text, kind === "temperature" ? "temperature difference" : kind);
    if (isProblem(read))
      return read.with({ where: item.name, what: `uncertainty of ${name} · ${read.what}` });
    if (!(read.si >= 0))
      return problem({
        code: "negative-uncertainty",
        where: item.name,
        what: `uncertainty of ${name}`,
        got: text,
        must: "be at least 0",
        why: "it is a half-width",
      });
    found[name] = (read.si * coverage) / k;
  }
  return found;
}

/** Each reading that is kept and not used, with who and why, and whether its place was read again. */
function setAsideOf(
  key: readonly string[],
  columns: readonly TableColumn[],
  states: readonly ReadingState[],
): readonly SetAside[] {
  if (!states.includes("set aside")) return [];
  const used = new Set(
    states.flatMap((state, row) => (counts(state) && state !== "missing" ? [keyOf(columns, key, row)] : [])),
  );
  return states.flatMap((state, row) => {
    if (state !== "set aside") return [];
    const place = keyOf(columns, key, row);
    return [
      {
        row,
        place: place === "" ? `row ${row + 1}` : place,
        why: textAt(columns, "reason", row),
        by: textAt(columns, "by", row),
        readAgain: key.length > 0 && used.has(place),
      },
    ];
  });
}

const textAt = (columns: readonly TableColumn[], name: string, row: number): string =>
  columns.find((column) => column.name === name)?.typed[row] ?? "";

const keyOf = (columns: readonly TableColumn[], names: readonly string[], row: number): string =>
  names.map((name) => textAt(columns, name, row)).join(" · ");

export const isNumeric = (column: TableColumn): boolean => column.kind !== "tag" && column.kind !== "text";

function statesOf(
  item: ReadingItem,
  columns: readonly TableColumn[],
  table: ReadingTable,
): ReadingState[] | Problem {
  const numeric = columns.filter((column) => isNumeric(column) && !item.may?.includes(column.name));
  const states: ReadingState[] = table.lines.map((_, row) =>
    numeric.some((column) => column.values[row] === undefined) ? "missing" : "entered",
  );
  const last = new Map<string, number>();
  const where = (row: number) => `${item.name} · line ${table.lines[row] ?? row + 1}`;
  for (const row of states.keys()) {
    const aside = /^set aside$/i.test(textAt(columns, "state", row));
    const reason = textAt(columns, "reason", row);
    if (aside && reason === "")
      return problem({
        code: "no-reason",
        where: where(row),
        what: "reading set aside",
        got: "no reason",
        must: "say why in the column reason",
      });
    if (aside) states[row] = "set aside";
    if (!item.key || aside) continue;
    const key = keyOf(columns, item.key, row);
    const before = last.get(key);
    if (before !== undefined && reason === "")
      return problem({
        code: "duplicate-reading",
        where: where(row),
        what: `reading ${key}`,
        got: `a second row, the first is in line ${table.lines[before] ?? before + 1}`,
        must: "stand once, or correct the first with a reason in the column reason",
      });
    if (before !== undefined) states[before] = "corrected";
    last.set(key, row);
  }
  return states;
}

/** Farther from the median of its group than the page allows; the group is the first key column. */
function oddColumns(
  item: ReadingItem,
  columns: readonly TableColumn[],
  states: readonly ReadingState[],
): ReadonlyMap<number, readonly string[]> | Problem {
  const odd = new Map<number, string[]>();
  const entered = [...states.keys()].filter((row) => states[row] === "entered");
  for (const name of Object.keys(item.odd ?? {})) {
    const column = columns.find((c) => c.name === name);
    const most = oddLimit(item, name);
    if (!column || !most) continue;
    if (isProblem(most)) return most.with({ where: item.name, what: `odd of ${name}` });
    const [first] = item.key ?? [];
    const byGroup = grouped(entered, (row) => (first === undefined ? "" : textAt(columns, first, row)));
    for (const rows of byGroup.values()) {
      const values = rows.map((row) => Number(column.values[row]));
      const middle = median(values) ?? Number.NaN;
      for (const [i, row] of rows.entries())
        if (isBeyond(values[i] ?? middle, middle, most.si)) odd.set(row, [...(odd.get(row) ?? []), name]);
    }
  }
  return odd;
}

/** How far from the middle of its group a reading of this column may lie before it is asked about. */
export function oddLimit({ odd, columns }: ReadingItem, name: string): Quantity | Problem | undefined {
  const [text, kind] = [odd?.[name], columns[name]];
  if (text === undefined || kind === undefined || kind === "tag" || kind === "text") return undefined;
  return oneValue(text, kind);
}

/** Whether a reading lies farther from the middle than allowed; one on the limit does not. */
export const isBeyond = (value: number, middle: number, most: number): boolean =>
  !atMost(Math.abs(value - middle), most, Math.max(Math.abs(value), Math.abs(middle)));

/** Every combination of the expected values that no row has. */
function wantedRows(item: ReadingItem, columns: readonly TableColumn[]): TableValue["wanted"] {
  const names = Object.keys(item.expect ?? {});
  if (names.length === 0) return [];
  const rows = columns[0]?.typed.length ?? 0;
  const there = new Set(Array.from({ length: rows }, (_, row) => keyOf(columns, names, row)));
  return expectedRows(item).filter((wanted) => !there.has(names.map((name) => wanted[name]).join(" · ")));
}
