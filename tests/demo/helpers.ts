// What the demo pages show, for tests: which checks are not proven, figures to printed digits, rows as typed.
import { readFileSync } from "node:fs";
import { expect } from "vitest";
import { readCsv } from "../../src/document/csv.ts";
import type { LineValue, TableValue } from "../../src/engine/line.ts";
import type { OpenPage } from "../../src/engine/opened.ts";
import { isProblem, type Problem, root, sentence } from "../../src/problem.ts";
import { lineAt, open } from "../engine/helpers.ts";

export async function openNotebook(id: string): Promise<OpenPage> {
  const page = open(readFileSync(new URL(`../../notebooks/${id}.yaml`, import.meta.url), "utf8"));
  await page.settle();
  return page;
}

/** Check, key of the row ("" for a check of one value), state and reason. */
export interface NotProven {
  readonly check: string;
  readonly key: string;
  readonly state: string;
  readonly why: string;
}

/** Every check of a page that is not proven, in the order of the page and of its rows. */
export function notProven(page: OpenPage): readonly NotProven[] {
  return page.lines().flatMap(({ name, item, value }): NotProven[] => {
    if (item.kind !== "check") return [];
    if (isProblem(value)) return [noAnswer(name, "", value)];
    if (value.type === "checks")
      return value.rows.flatMap(({ key, value: row }) => {
        if (isProblem(row)) return [noAnswer(name, key, row)];
        return row.state === "proven" ? [] : [{ check: name, key, state: row.state, why: row.why }];
      });
    if (value.type !== "check") return [{ check: name, key: "", state: "no check", why: value.type }];
    return value.state === "proven" ? [] : [{ check: name, key: "", state: value.state, why: value.why }];
  });
}

const noAnswer = (check: string, key: string, cause: Problem): NotProven => ({
  check,
  key,
  state: "no answer",
  why: sentence(root(cause)),
});

type Expected = readonly [check: string, key: string, state: string, words: RegExp];

/** Exactly these and in this order; each reason holds its words. */
export function expectNotProven(page: OpenPage, expected: readonly Expected[]): void {
  const found = notProven(page);
  expect(found.map(({ check, key, state }) => `${check} ${key}: ${state}`)).toEqual(
    expected.map(([check, key, state]) => `${check} ${key}: ${state}`),
  );
  for (const [i, [, , , words]] of expected.entries()) expect(found[i]?.why).toMatch(words);
}

/** SI number of a line, an output "pair.tightest", or one row of them "pair.tightest@11". */
export function number(page: OpenPage, address: string): number {
  const [fullName = "", key] = address.split("@");
  const [name = "", output] = fullName.split(".");
  const { value } = lineAt(page, name);
  if (isProblem(value)) throw new Error(`no answer at ${name}: ${sentence(root(value))}`);
  const row =
    value.type === "rows" || value.type === "checks" ? value.rows.find((r) => r.key === key) : undefined;
  const one: LineValue | Problem = row ? row.value : value;
  if (isProblem(one)) throw new Error(`no answer at ${address}: ${sentence(root(one))}`);
  if (one.type === "solution") {
    const outputs = one.solution.outputs;
    const found = outputs[output ?? Object.keys(outputs)[0] ?? ""];
    if (found && "si" in found) return found.si;
  } else if ("si" in one) return one.si;
  throw new Error(`no number at ${address}`);
}

/** A text output such as "selection.leftOver". */
export function textAt(page: OpenPage, address: string): string {
  const [name = "", output = ""] = address.split(".");
  const { value } = lineAt(page, name);
  const found = !isProblem(value) && value.type === "solution" ? value.solution.outputs[output] : undefined;
  if (found?.kind !== "text") throw new Error(`no text at ${address}`);
  return found.text;
}

/** Rounded to the digits of the figure, the value is the figure. */
export function figure(page: OpenPage, address: string, printed: string, unit = 1): void {
  const decimals = printed.split(".")[1]?.length ?? 0;
  const value = number(page, address) / unit;
  const off = Math.abs(value - Number(printed));
  expect(off, `${address} is ${value}, printed ${printed}`).toBeLessThanOrEqual(0.5 * 10 ** -decimals + 1e-9);
}

export function tableAt(page: OpenPage, name: string): TableValue {
  const { value } = lineAt(page, name);
  if (isProblem(value) || value.type !== "table") throw new Error(`no table at ${name}`);
  return value;
}

/** Rows as typed, the named columns of each joined by a bar. */
export function typedRows(page: OpenPage, name: string, columns: readonly string[]): readonly string[] {
  const table = tableAt(page, name);
  const typed = columns.map((column) => {
    const found = table.columns.find((each) => each.name === column);
    if (!found) throw new Error(`no column ${column} in ${name}`);
    return found.typed;
  });
  return Array.from({ length: table.rows }, (_, row) => typed.map((column) => column[row]).join(" | "));
}

export type CsvRow = (column: string) => string;

export function csvRows(file: string): readonly CsvRow[] {
  const { table } = readCsv(readFileSync(new URL(`../../demo-data/${file}`, import.meta.url), "utf8"));
  if (!table) throw new Error(`${file} cannot be read`);
  const at = new Map(table.headings.map(({ text }, i) => [text, i]));
  return table.rows.map(({ fields }) => (column) => {
    const index = at.get(column);
    if (index === undefined) throw new Error(`no column ${column} in ${file}`);
    return fields[index] ?? "";
  });
}
