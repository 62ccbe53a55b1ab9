// The rows of a reading by the place they belong to, and two texts of the same reading merged place by place:
// the file was corrected while readings were entered elsewhere, and neither may write over the other.
import { isProblem } from "../problem.ts";
import { kindOfQuantity } from "./column-heading.ts";
import type { ReadingItem } from "./item.ts";
import { keyColumns, type Place, placeWords } from "./place-words.ts";
import {
  type Fields,
  fieldsOf,
  openRows,
  type RowsText,
  remarks,
  withAll,
  withRemarks,
} from "./rows-text.ts";

interface At {
  readonly place: Place;
  readonly rows: readonly number[];
  readonly fields: readonly Fields[];
  /** The same for rows that say the same. */
  readonly says: string;
}

type Places = ReadonlyMap<string, At>;

const signature = (fields: Fields): string =>
  JSON.stringify(
    Object.entries(fields)
      .filter(([, text]) => text !== "")
      .sort(([a], [b]) => (a < b ? -1 : 1)),
  );

function placesOf(item: ReadingItem, rows: RowsText): Places {
  const keys = keyColumns(item);
  const found = new Map<string, { place: Place; rows: number[]; fields: Fields[] }>();
  for (const row of rows.table.rows.keys()) {
    const fields = fieldsOf(rows, row);
    const place: Place =
      keys.length > 0 ? keys.map((key) => [key, fields[key] ?? ""]) : [["row", `${row + 1}`]];
    const id = place.map(([, value]) => value).join("\u0000");
    const at = found.get(id) ?? { place, rows: [], fields: [] };
    at.rows.push(row);
    at.fields.push(fields);
    found.set(id, at);
  }
  return new Map([...found].map(([id, at]) => [id, { ...at, says: at.fields.map(signature).join("\n") }]));
}

/** Whether fields of one mean the same in the other: the same columns in the same units and marks. */
const isAlike = (a: RowsText, b: RowsText): boolean =>
  a.table.decimal === b.table.decimal &&
  [...new Set([...a.columns, ...b.columns])].every(
    (name) =>
      name !== undefined &&
      (isRemark(name) || (a.columns.includes(name) && b.columns.includes(name))) &&
      a.units[name] === b.units[name],
  );

const isRemark = (name: string): boolean => remarks.some((remark) => remark === name);

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
  const ours = openRows(item, kept);
  const before = openRows(item, base);
  if (keyColumns(item).length === 0 || isProblem(ours) || isProblem(before)) return undefined;
  const roomy = withRemarks(
    item,
    file,
    remarks.filter((name) => ours.columns.includes(name)),
  );
  const now = isProblem(roomy) ? roomy : openRows(item, roomy);
  if (isProblem(now) || !isAlike(ours, now) || !isAlike(before, now)) return undefined;
  const [b, f, k] = [before, now, ours].map((rows) => placesOf(item, rows));
  const changed = new Map<number, Fields>();
  const added: Fields[] = [];
  let open = 0;
  for (const [id, here] of k ?? []) {
    const [was, there] = [b?.get(id), f?.get(id)];
    if (here.says === was?.says || here.says === there?.says) continue;
    if (there?.says !== was?.says || here.rows.length < (there?.rows.length ?? 0)) {
      open += 1;
      continue;
    }
    for (const [i, fields] of here.fields.entries()) {
      const row = there?.rows[i];
      if (row === undefined) added.push(fields);
      else if (signature(fields) !== signature(there?.fields[i] ?? {}))
        changed.set(row, { ...blankOf(now), ...fields });
    }
  }
  const isSame = changed.size === 0 && added.length === 0;
  return { text: isSame ? file : withAll(now, changed, added), open };
}

const blankOf = ({ columns }: RowsText): Fields =>
  Object.fromEntries(columns.flatMap((name) => (name === undefined ? [] : [[name, ""]])));

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
  const [ours, theirs, before] = [openRows(item, kept), openRows(item, page), openRows(item, base)];
  if (isProblem(ours) || isProblem(theirs) || !isAlike(ours, theirs)) return undefined;
  const there = placesOf(item, theirs);
  const was = isProblem(before) ? undefined : placesOf(item, before);
  const measured = measuredColumns(item);
  return [...placesOf(item, ours)].flatMap(([id, here]): readonly Difference[] => {
    if (here.says === was?.get(id)?.says) return [];
    const other = there.get(id);
    const [mine, its] = [counting(here), other && counting(other)];
    if (other?.fields.some((row) => worth(measured, row) === worth(measured, mine))) return [];
    const differ = measured.filter((name) => (mine[name] ?? "") !== "" && mine[name] !== its?.[name]);
    return [
      {
        place: placeWords(item, here.place),
        page: its ? rowWords(item, theirs, its) : "",
        kept: rowWords(item, ours, mine),
        readings: Math.max(1, differ.length),
        fields: mine,
      },
    ];
  });
}

/** Values and state; why and by whom only where there is no value. */
function worth(measured: readonly string[], row: Fields): string {
  const values = measured.map((name) => row[name] ?? "");
  const isBlank = values.every((text) => text === "");
  return [...values, row["state"] ?? "", isBlank ? (row["reason"] ?? "") : ""].join("\u0000");
}

/** The last row of a place that is not set aside, else the last. */
const counting = ({ fields }: At): Fields =>
  fields.findLast((row) => !/^set aside$/i.test(row["state"] ?? "")) ?? fields.at(-1) ?? {};

const measuredColumns = (item: ReadingItem): readonly string[] =>
  Object.keys(item.columns).filter((name) => !isRemark(name) && !keyColumns(item).includes(name));

/** "25.012 mm; set aside, gauge slipped" */
function rowWords(item: ReadingItem, rows: RowsText, fields: Fields): string {
  const values = measuredColumns(item).flatMap((name) => {
    const text = fields[name] ?? "";
    const unit = rows.units[name];
    const isBare = kindOfQuantity(item.columns[name]) !== undefined && /^[-+\u2212]?[\d.,]+$/.test(text);
    return text === "" ? [] : [isBare && unit !== undefined ? `${text} ${unit}` : text];
  });
  const said = remarks.map((name) => fields[name] ?? "").filter((text) => text !== "");
  return [values.join(", "), said.join(", ")].filter((text) => text !== "").join("; ");
}

/** The page's rows with the kept row of each place as a correction of what stands there, with its reason. */
export function withKept(
  item: ReadingItem,
  page: string,
  chosen: readonly Difference[],
  said: (difference: Difference) => { readonly reason: string; readonly by: string },
): string | undefined {
  const text = withRemarks(item, page, ["reason", "by"]);
  const now = isProblem(text) ? text : openRows(item, text);
  if (isProblem(now)) return undefined;
  const rows = chosen.map((one): Fields => {
    if (one.page === "") return one.fields;
    const { reason, by } = said(one);
    const before = one.fields["reason"] ?? "";
    return {
      ...one.fields,
      reason: [before, reason].filter((part) => part !== "").join("; "),
      by: one.fields["by"] || by,
    };
  });
  return withAll(now, new Map(), rows);
}
