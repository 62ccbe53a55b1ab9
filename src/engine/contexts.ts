// The rows of a table one by one: which key is at hand, and what the row says besides it.
import type { OverRows } from "../document/item.ts";
import { grouped } from "../grouped.ts";
import type { OutputValue } from "../methods/field.ts";
import { nearest } from "../nearest.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import type { Standing } from "../standing.ts";
import { readingDoubt } from "./lacking-readings.ts";
import type { TableValue } from "./line.ts";
import { outputStanding, type Results, type RowContext, rowsAtHand, unknownName, upstream } from "./scope.ts";

export interface Contexts {
  readonly key: string;
  readonly rows: readonly (RowContext & { readonly problem?: Problem })[];
}

export function contextsOf(item: OverRows, results: Results): Contexts | Problem {
  const name = item.each ?? "";
  const [base = "", part] = name.split(".");
  const found = results.get(base);
  if (found === undefined) return unknownName(name, [...results.keys()]);
  if (isProblem(found)) return upstream(name, found);
  if (found.type === "rows")
    return {
      key: found.key,
      rows: found.rows.map((row) => contextOf(found.key, row.key, row.tags, name, row.value)),
    };
  const output = found.type === "solution" && part !== undefined ? found.solution.outputs[part] : undefined;
  if (found.type === "solution" && part !== undefined && output?.kind === "list")
    return listContexts(output.rows, name, item.key, outputStanding(found, part));
  if (found.type !== "table")
    return problem({
      code: "not-a-table",
      what: name,
      got: `a ${found.type}`,
      must: "be a reading, a working with each, or a list that a method gives",
    });
  const key = item.key ?? found.key[0];
  const columns = found.columns.map((c) => c.name);
  if (key === undefined || !columns.includes(key))
    return problem({
      code: "no-key",
      what: `key of ${name}`,
      got: key ?? "none",
      must: `be one of ${columns.join(", ")}`,
      suggestions: nearest(key ?? "", columns),
    });
  return { key, rows: tableContexts(found, name, key) };
}

/** Each row of a table by itself, within the key at hand where there is one. */
export function rowByRow(name: string, results: Results): Contexts["rows"] | Problem {
  const found = results.get(name);
  if (found === undefined || isProblem(found) || found.type !== "table") {
    const contexts = contextsOf({ each: name }, results);
    return isProblem(contexts) ? contexts : contexts.rows;
  }
  return rowsAtHand(found, results.row).map((index) => ({
    key: "row",
    value: String(index + 1),
    table: name,
    tags: { ...results.row?.tags, ...commonTags(found, [index]) },
    numbers: rowNumbers(found, index, name),
    only: { of: found, index },
  }));
}

function contextOf(
  key: string,
  value: string,
  tags: Readonly<Record<string, string>>,
  table: string,
  answer: unknown,
): RowContext & { readonly problem?: Problem } {
  const context = { key, value, tags: { ...tags, [key]: value }, table };
  return isProblem(answer) ? { ...context, problem: upstream(`${table} ${value}`, answer) } : context;
}

type ListRows = Extract<OutputValue, { kind: "list" }>["rows"];

/** A list that a method gives, row by row: its first text is the key, its numbers are read as row.name. */
function listContexts(
  rows: ListRows,
  name: string,
  wanted: string | undefined,
  standing: Standing,
): Contexts | Problem {
  const texts = Object.entries(rows[0] ?? {}).flatMap(([column, cell]) =>
    cell.kind === "text" ? [column] : [],
  );
  const key = wanted ?? texts[0] ?? "row";
  if (wanted !== undefined && rows.length > 0 && !texts.includes(wanted))
    return problem({
      code: "no-key",
      what: `key of ${name}`,
      got: wanted,
      must: `be one of ${texts.join(", ")}`,
      suggestions: nearest(wanted, texts),
    });
  return {
    key,
    rows: rows.map((row, i) => {
      const tags = Object.fromEntries(
        Object.entries(row).flatMap(([column, cell]) => (cell.kind === "text" ? [[column, cell.text]] : [])),
      );
      const numbers = Object.fromEntries(
        Object.entries(row).flatMap(([column, cell]) => ("si" in cell ? [[column, cell]] : [])),
      );
      const value = tags[key] ?? String(i + 1);
      return { key, value, table: name, tags: { ...tags, [key]: value }, numbers, standing };
    }),
  };
}

/** Keys in the order of the rows; an expected key without a row is there and says that it is missing. */
function tableContexts(table: TableValue, name: string, key: string): Contexts["rows"] {
  const keyColumn = table.columns.find((c) => c.name === key);
  const at = rowsAtHand(table, undefined);
  const groups = grouped(at, (i) => keyColumn?.typed[i] ?? "");
  const absent = new Set(
    table.wanted.flatMap((row) => (row[key] === undefined || groups.has(row[key]) ? [] : [row[key]])),
  );
  const present = [...groups].map(([value, rows]) => ({
    key,
    value,
    table: name,
    tags: commonTags(table, rows),
  }));
  const missing = [...absent].map((value) => ({
    key,
    value,
    table: name,
    tags: { [key]: value },
    problem: problem({ code: "missing", what: `${name} ${value}`, got: "no reading", must: "be read" }),
  }));
  return [...present, ...missing];
}

function rowNumbers(table: TableValue, index: number, tableName: string): NonNullable<RowContext["numbers"]> {
  const cells = table.columns.flatMap((column) => {
    const { name, kind, values } = column;
    const si = values[index];
    if (kind === "tag" || kind === "text" || typeof si !== "number") return [];
    return [[name, { kind, si, doubt: readingDoubt(table, column, index, tableName) }] as const];
  });
  return Object.fromEntries(cells);
}

function commonTags(table: TableValue, rows: readonly number[]): Record<string, string> {
  const tags: Record<string, string> = {};
  for (const column of table.columns) {
    if (column.kind !== "tag" && column.kind !== "text") continue; // numbers are read as row.name
    const texts = new Set(rows.map((i) => column.typed[i] ?? ""));
    const [only] = texts;
    if (texts.size === 1 && only !== undefined && only !== "") tags[column.name] = only;
  }
  return tags;
}
