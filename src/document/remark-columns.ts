// Any table may say that a reading is set aside, why, and who said so, whether its columns name that or not.

import { isProblem } from "../problem.ts";
import { meantBy } from "./column-heading.ts";
import type { CsvTable } from "./csv.ts";
import type { ReadingItem } from "./item.ts";
import { remarkColumns } from "./reading-table.ts";
import { has, openRows, type Remark, remarks } from "./rows-text.ts";

export const withRemarkColumns = (item: ReadingItem, names: readonly Remark[]): ReadingItem => {
  const more = names.filter((name) => !Object.hasOwn(item.columns, name));
  if (more.length === 0) return item;
  return { ...item, columns: { ...item.columns, ...Object.fromEntries(more.map((name) => [name, "text"])) } };
};

/** With the remarks that stand in its rows, so that none is left out of what is made of them. */
export function withOwnRemarks(item: ReadingItem): ReadingItem {
  const rows = openRows(item, item.rows);
  return isProblem(rows)
    ? item
    : withRemarkColumns(
        item,
        remarks.filter((name) => has(rows, name)),
      );
}

/** Remarks that a table says something in; a column of blanks says nothing. */
export function remarksSaid({ headings, rows }: CsvTable): readonly Remark[] {
  const meant = headings.map((head) => meantBy(head, remarkColumns)?.name);
  return remarks.filter((name) => {
    const at = meant.indexOf(name);
    return at >= 0 && rows.some(({ fields }) => (fields[at] ?? "").trim() !== "");
  });
}
