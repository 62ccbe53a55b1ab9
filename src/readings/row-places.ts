// Two texts of the same reading merged place by place: the file was corrected while readings were entered elsewhere,
// and neither may write over the other. Worth is compared, not spelling.
import type { ReadingItem } from "../document/item.ts";
import { keyColumns } from "../document/place-words.ts";
import { isProblem } from "../problem.ts";
import { edited } from "./edited.ts";
import { isRemark, isSetAside, remarks, saying } from "./remarks.ts";
import { rowName, rowsByPlace } from "./same-reading.ts";
import { columnNamed, type Fields, has, openTable, type Row, type Table, withUnit } from "./table.ts";

/** The same for rows that say the same. */
const said = (rows: readonly Row[] | undefined, what: "texts" | "worth"): string | undefined =>
  rows && JSON.stringify(rows.map((row) => signature(row[what])));

const signature = (fields: Fields): readonly (readonly [string, string])[] =>
  Object.entries(fields)
    .filter(([, text]) => text !== "")
    .sort(([a], [b]) => (a < b ? -1 : 1));

/** Whether fields of one mean the same in the other: the same columns in the same units. */
const isAlike = (a: Table, b: Table): boolean =>
  [...new Set([...a.columns, ...b.columns].map(({ name }) => name))].every(
    (name) =>
      (isRemark(name) || (has(a, name) && has(b, name))) &&
      columnNamed(a, name)?.unit?.text === columnNamed(b, name)?.unit?.text,
  );

export interface MergedRows {
  readonly text: string;
  /** Places at which both say something else; what the file says stands there. */
  readonly open: number;
}

/** `base` as both began, `file` as the file is now, `kept` as it was entered here. None where they cannot be held against each other. */
export function mergedRows(
  item: ReadingItem,
  base: string,
  file: string,
  kept: string,
): MergedRows | undefined {
  const [ours, before, found] = [openTable(item, kept), openTable(item, base), openTable(item, file)];
  if (keyColumns(item).length === 0 || isProblem(ours) || isProblem(before) || isProblem(found))
    return undefined;
  if (!isAlike(ours, found) || !isAlike(before, found)) return undefined;
  const columns = remarks.filter((name) => has(ours, name));
  const [b, f, k] = [before, found, ours].map(rowsByPlace);
  const changed = new Map<number, Fields>();
  const added: Fields[] = [];
  let open = 0;
  for (const [id, here] of k ?? []) {
    const [was, there] = [b?.get(id), f?.get(id)];
    const [mine, its, first] = [here, there, was].map((rows) => said(rows, "worth"));
    if (said(here, "texts") === said(was, "texts")) continue;
    if (mine === its && said(there, "texts") !== said(was, "texts")) continue;
    if (its !== first || here.length < (there?.length ?? 0)) {
      if (mine !== first) open += 1;
      continue;
    }
    for (const [i, { texts }] of here.entries()) {
      const row = there?.[i];
      if (!row) added.push(texts);
      else if (said([row], "texts") !== said(here.slice(i, i + 1), "texts"))
        changed.set(row.index, { ...blankOf(found), ...texts });
    }
  }
  const isSame = changed.size === 0 && added.length === 0;
  return { text: isSame ? file : edited(found, { columns, changed, added }), open };
}

const blankOf = ({ columns }: Table): Fields => Object.fromEntries(columns.map(({ name }) => [name, ""]));

export interface Difference {
  /** "hole 3, along" */
  readonly place: string;
  readonly page: string;
  readonly kept: string;
  /** How many readings of the place are others. */
  readonly readings: number;
  /** The row kept here that counts. */
  readonly fields: Fields;
}

/**
 * What was entered in the kept rows, beside those they began from, and stands in no row of the page. None where
 * one of the texts cannot be read.
 */
export function keptBesides(
  item: ReadingItem,
  base: string,
  page: string,
  kept: string,
): readonly Difference[] | undefined {
  const [ours, theirs, before] = [openTable(item, kept), openTable(item, page), openTable(item, base)];
  if (isProblem(ours) || isProblem(theirs) || !isAlike(ours, theirs)) return undefined;
  const there = rowsByPlace(theirs);
  const was = isProblem(before) ? undefined : rowsByPlace(before);
  const measured = measuredColumns(item);
  return [...rowsByPlace(ours)].flatMap(([id, here]): readonly Difference[] => {
    if (said(here, "worth") === said(was?.get(id), "worth")) return [];
    const other = there.get(id) ?? [];
    const [mine, its] = [counting(here), counting(other)];
    if (!mine || other.some((row) => worth(measured, row) === worth(measured, mine))) return [];
    const differ = measured.filter(
      (name) => (mine.texts[name] ?? "") !== "" && mine.worth[name] !== its?.worth[name],
    );
    return [
      {
        place: rowName(item, mine),
        page: its ? rowWords(theirs, its) : "",
        kept: rowWords(ours, mine),
        readings: Math.max(1, differ.length),
        fields: mine.texts,
      },
    ];
  });
}

/** Values and state; why and by whom only where there is no value. */
function worth(measured: readonly string[], { worth: row }: Row): string {
  const values = measured.map((name) => row[name] ?? "");
  const isBlank = values.every((text) => text === "");
  return [...values, row["state"] ?? "", isBlank ? (row["reason"] ?? "") : ""].join("\u0000");
}

/** The last row of a place that is not set aside, else the last. */
const counting = (rows: readonly Row[]): Row | undefined =>
  rows.findLast(({ texts }) => !isSetAside(texts)) ?? rows.at(-1);

const measuredColumns = (item: ReadingItem): readonly string[] =>
  Object.keys(item.columns).filter((name) => !isRemark(name) && !keyColumns(item).includes(name));

/** "25.012 mm; set aside, gauge slipped" */
function rowWords(table: Table, { texts }: Row): string {
  const values = measuredColumns(table.item).map((name) =>
    withUnit(texts[name] ?? "", columnNamed(table, name)?.unit),
  );
  const filled = (all: readonly string[]) => all.filter((text) => text !== "").join(", ");
  return saying(filled(values), filled(remarks.map((name) => texts[name] ?? "")));
}

/** The page's rows with the kept row of each place as a correction of what stands there, with its reason. */
export function withKept(
  item: ReadingItem,
  page: string,
  chosen: readonly Difference[],
  why: (difference: Difference) => { readonly reason: string; readonly by: string },
): string | undefined {
  const now = openTable(item, page);
  if (isProblem(now)) return undefined;
  const added = chosen.map((one): Fields => {
    if (one.page === "") return one.fields;
    const { reason, by } = why(one);
    return { ...one.fields, reason: saying(one.fields["reason"] ?? "", reason), by: one.fields["by"] || by };
  });
  return edited(now, { columns: ["reason", "by"], added });
}
