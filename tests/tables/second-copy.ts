// Tables as they stand in the collection that src/tables was entered from; the head of each file says what it was
// compared with. A slip made in entering, or since, shows against it; a slip of the collection itself would not.
import { readFileSync } from "node:fs";
import { csvParse } from "d3";

export type Copied = Readonly<Record<string, string | undefined>>;

export function secondCopy(name: string): readonly Copied[] {
  const file = new URL(`second-copy/${name}.csv`, import.meta.url);
  const lines = readFileSync(file, "utf8").split("\n");
  return csvParse(lines.filter((line) => line !== "" && !line.startsWith("#")).join("\n"));
}

/** A number of the copy; an empty cell is no number, as in the tables. */
export const copiedNumber = (row: Copied, column: string): number | undefined => {
  const text = row[column];
  if (text === undefined) throw new Error(`the copy has no column ${column}`);
  return text === "" ? undefined : Number(text);
};
