// Values that can hardly be readings of this column: a diameter of 998 mm among diameters of 25 mm is in the
// wrong column or unit. Only where the page says how far apart its readings may lie; what is merely odd is
// taken and asked about in the page.
import { kindOfQuantity } from "../../document/column-heading.ts";
import { isBare } from "../../document/decimal-mark.ts";
import type { ReadingItem } from "../../document/item.ts";
import { isProblem, type Problem, problem } from "../../problem.ts";
import { formatIn } from "../../units/format.ts";
import { oneValue } from "../../units/quantity.ts";
import type { PlannedRow } from "./import-plan.ts";
import { textIn } from "./key-words.ts";
import type { MappedColumn } from "./mapped-columns.ts";
import type { OpenTable, TableRow } from "./open-table.ts";
import type { RowsNow } from "./rows-now.ts";

/** Farther from the middle than its half, and than this many times what makes a reading odd. */
const manyTimes = 10;
/** Fewer readings in the page than this give no middle of their own. */
const fewest = 3;

export function doubtfulValues(
  item: ReadingItem,
  now: RowsNow,
  rows: readonly PlannedRow[],
  file: OpenTable,
): readonly Problem[] {
  return Object.entries(item.odd ?? {}).flatMap(([name, text]) => {
    const own = now.columns.find((column) => column.name === name);
    const column = file.columns.find((one) => one.name === name);
    const most = oneValue(text, kindOfQuantity(item.columns[name]));
    if (!own || !column || isProblem(most)) return [];
    const typed = valuesIn(own, now.rows);
    const taken = rows.filter(({ fate }) => fate !== "same").map(({ row }) => row);
    const middle = median(typed.length >= fewest ? typed : valuesIn(column, file.rows));
    const limit = Math.max(Math.abs(middle) / 2, manyTimes * most.si);
    return taken.flatMap((row) => {
      const [value] = valuesIn(column, [row]);
      if (value === undefined || Math.abs(value - middle) <= limit) return [];
      const unit = own.unit ?? column.unit;
      return [farOff(column, row, unit === undefined ? undefined : formatIn(middle, unit))];
    });
  });
}

function valuesIn(column: MappedColumn, rows: readonly TableRow[]): number[] {
  return rows.flatMap((row) => {
    const read = oneValue(withOwnUnit(textIn(row, column.name), column), kindOfQuantity(column.kind));
    return isProblem(read) ? [] : [read.si];
  });
}

export const withOwnUnit = (text: string, { unit }: MappedColumn): string =>
  isBare(text) && unit !== undefined && unit.text !== "1" ? `${text} ${unit.text}` : text;

function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[sorted.length >> 1] ?? Number.NaN;
}

const farOff = (column: MappedColumn, row: TableRow, middle: string | undefined): Problem =>
  problem({
    code: "far-off",
    what: `line ${row.line}, ${column.name}`,
    got: withOwnUnit(textIn(row, column.name), column),
    must: `be near the other readings${middle === undefined ? "" : `, which lie about ${middle}`}`,
    why: "it may stand in the wrong column, or in another unit",
    hint: "--as-read takes it as it is",
  });
