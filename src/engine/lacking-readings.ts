// What a place lacks: readings set aside and not read again, blanks, expected readings without a row.
// A value from fewer readings than the plan expects holds for those readings only.
import { grouped } from "../grouped.ts";
import { type Problem, problem } from "../problem.ts";
import { type Contribution, own } from "../standing.ts";
import { asideWith, blankRows, counts, rowsWith, wantedWith } from "./by-key.ts";
import type { TableColumn, TableValue } from "./line.ts";
import { isNumeric } from "./reading.ts";
import type { RowContext } from "./scope.ts";

/** The stated uncertainty of one reading; readings of one column may all be off together. */
export function readingDoubt(
  table: TableValue,
  { name, uncertainty = 0 }: TableColumn,
  row: number,
  tableName: string,
): readonly Contribution[] {
  if (uncertainty === 0) return [];
  const group = `${tableName}.${name}`;
  const says = table.says ?? group;
  const together: Contribution = { root: group, group, says, meaning: "expanded", ...own(uncertainty) };
  return [together, { ...together, root: `${group} ${placeOf(table, row)}` }];
}

/** "13 · lo split · along", or the number of the row. */
function placeOf(table: TableValue, row: number): string {
  const place = table.key.map((key) => textAt(table, key, row)).join(" · ");
  return place === "" ? `row ${row + 1}` : place;
}

const textAt = (table: TableValue, name: string, row: number): string =>
  table.columns.find((column) => column.name === name)?.typed[row] ?? "";

/** For the key at hand, or for the whole table; of one column, or of all that are wanted. */
export function lackingReadings(
  table: TableValue,
  name: string,
  row: RowContext | undefined,
  column?: string,
): readonly Problem[] {
  if (row?.only?.of === table) return [];
  const keyed = row && table.columns.some((c) => c.name === row.key) ? row.key : undefined;
  const value = row?.value ?? "";
  const kept = keyed === undefined ? table.setAside : asideWith(table, keyed, value);
  const aside = kept.filter((one) => !one.readAgain);
  const wanted = keyed === undefined ? table.wanted : wantedWith(table, keyed, value);
  const allBlank = () => blankRows(table, column, () => blanks(table, column));
  const blank =
    keyed === undefined
      ? allBlank()
      : rowsWith(table, keyed, value, `blank in ${column ?? "any column"}`, allBlank);
  const what = keyed === undefined ? name : `${keyed} ${row?.value ?? ""}`;
  const reservations: Problem[] = [];
  if (aside.length > 0)
    reservations.push(
      problem({
        code: "readings-set-aside",
        what: `${what} with ${aside.length} ${aside.length === 1 ? "reading" : "readings"} set aside`,
        why: `judged on fewer readings than the plan expects: ${words(aside)}`,
      }),
    );
  const asked = table.columns.find(({ name: one }) => one === column);
  const missing = wanted.length + blank.length;
  if (missing > 0 && asked?.optional !== true)
    reservations.push(
      problem({
        code: "readings-missing",
        what: `${missing > 3 ? `${missing} readings` : missingWords(table, wanted, blank)} of ${name} not measured yet`,
        why: "judged on fewer readings than the plan expects",
      }),
    );
  return reservations;
}

const missingWords = (table: TableValue, wanted: TableValue["wanted"], blank: readonly number[]): string =>
  [
    ...wanted.map((one) => Object.values(one).join(", ")),
    ...blank.map((i) => placeOf(table, i).replaceAll(" · ", ", ")),
  ].join("; ");

/** "13, up split; 13, lo split: gauge slipped, fitter B": places of one reason together. */
function words(aside: TableValue["setAside"]): string {
  const alike = grouped(aside, ({ why, by }) => (by === "" ? why : `${why}, ${by}`));
  return [...alike]
    .map(([reason, few]) => {
      const places = [...new Set(few.map(({ place }) => place.replaceAll(" · ", ", ")))];
      return `${places.join("; ")}: ${reason}`;
    })
    .join("; ");
}

/** Rows that count and lack a reading. */
function blanks(table: TableValue, name: string | undefined): readonly number[] {
  const asked = table.columns.filter(
    (column) => isNumeric(column) && !column.optional && (name === undefined || column.name === name),
  );
  if (asked.length === 0) return [];
  return table.states.flatMap((state, i) =>
    counts(state) && asked.some((column) => column.values[i] === undefined) ? [i] : [],
  );
}
