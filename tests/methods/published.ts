// What the reference rows of a method put in and ask for, row by row, as they stand in its cases.csv.
import { existsSync, readFileSync } from "node:fs";
import { csvParse } from "d3";
import type { Inputs } from "./helpers.ts";

const folder = new URL("../../reference-checks/", import.meta.url);

type Rows = readonly Readonly<Record<string, string>>[];
const isRows = (value: unknown): value is Rows => Array.isArray(value);

function inputValue(text: string): string | Rows {
  if (!text.startsWith("[")) return text;
  const rows: unknown = JSON.parse(text);
  if (!isRows(rows)) throw new Error(`no rows: ${text}`);
  return rows;
}

const rowsOf = (id: string) => {
  const file = new URL(`${id}/cases.csv`, folder);
  return existsSync(file) ? csvParse(readFileSync(file, "utf8")) : [];
};

export const published = (id: string): readonly Inputs[] =>
  rowsOf(id).map((row) =>
    Object.fromEntries(
      (row["inputs"] ?? "").split("; ").map((part) => {
        const at = part.indexOf("=");
        return [part.slice(0, at), inputValue(part.slice(at + 1))];
      }),
    ),
  );

/** Names of the outputs that a row gives a figure for. */
export const outputsAsked = (id: string): readonly string[] =>
  rowsOf(id).map((row) => (row["output"] ?? "").split(".")[0] ?? "");
