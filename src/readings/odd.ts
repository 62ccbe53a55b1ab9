// How far a reading may lie from the others. Farther than the page says from the middle of its group it is odd: taken,
// and asked about in the page. Many times farther from all others it can hardly be a reading: a diameter of 998 mm
// among 25 mm is in the wrong column or unit, and is only taken with a reason.
import { isQuantity } from "../document/column-heading.ts";
import { isBeyond, oddLimit } from "../engine/reading.ts";
import { median } from "../median.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { formatIn } from "../units/format.ts";
import { isSetAside } from "./remarks.ts";
import { type Column, columnNamed, type Row, type Table, withUnit } from "./table.ts";

/** So many times what makes a reading odd, where it has only other groups to be compared with. */
export const manyTimes = 10;
/** Fewer readings in the page than this give no middle of their own. */
const fewest = 3;

/** Says of a row which of its values can hardly be a reading. `columns` are those that the rows go into. */
export function farOff(
  { item, rows }: Table,
  columns: readonly Column[],
  file: readonly Row[],
): (row: Row) => Problem | undefined {
  const limits = Object.keys(item.odd ?? {}).flatMap((name) => {
    const column = columnNamed({ columns }, name);
    if (!column || !isQuantity(column.kind)) return [];
    const limit = oddLimit(item, name);
    const there = valuesIn(column, rows);
    const middle = median(there.length >= fewest ? there : valuesIn(column, file));
    if (limit === undefined || isProblem(limit) || middle === undefined) return [];
    return [{ column, middle, most: Math.max(Math.abs(middle) / 2, manyTimes * limit.si) }];
  });
  return (row) => {
    const far = limits.find(({ column, middle, most }) =>
      valuesIn(column, [row]).some((value) => isBeyond(value, middle, most)),
    );
    return far && hardlyOne(far, row);
  };
}

const valuesIn = ({ name, read }: Column, rows: readonly Row[]): readonly number[] =>
  rows.flatMap(({ texts }) => {
    const found = isSetAside(texts) ? undefined : read(texts[name] ?? "");
    return found === undefined || isProblem(found) || found.si === undefined ? [] : [found.si];
  });

const hardlyOne = ({ column, middle }: { column: Column; middle: number }, { line, texts }: Row): Problem =>
  problem({
    code: "far-off",
    what: `line ${line}, ${column.name}`,
    got: withUnit(texts[column.name] ?? "", column.unit),
    must: `be near the other readings${column.unit === undefined ? "" : `, which lie about ${formatIn(middle, column.unit)}`}`,
    why: "it may stand in the wrong column, or in another unit",
    hint: "say why it is taken",
  });
