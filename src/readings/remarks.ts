// Any table may say that a reading is set aside, why, and who said so, whether its columns name that or not.

import type { ReadingItem } from "../document/item.ts";
import { inWords } from "../document/place-words.ts";
import { remarkColumns } from "../document/reading-table.ts";
import type { Fields } from "./table.ts";

export const remarks = ["state", "reason", "by"] as const;

export type Remark = (typeof remarks)[number];

export const isRemark = (name: string): boolean => Object.hasOwn(remarkColumns, name);

/** The columns of a reading and those of remarks, which any table may have. */
export const allColumns = (item: ReadingItem): ReadingItem["columns"] => ({
  ...item.columns,
  ...missingRemarks(item),
});

const missingRemarks = ({ columns }: ReadingItem) =>
  Object.fromEntries(Object.entries(remarkColumns).filter(([name]) => !Object.hasOwn(columns, name)));

export const isSetAside = (texts: Fields): boolean => /^set aside$/i.test(texts["state"] ?? "");

/** States that are worked out from the rows: in a file that was written with them they say nothing of their own. */
export const isWorkedOut = (state: string): boolean => /^(?:entered|missing|odd|corrected)$/i.test(state);

/** Begins why nothing could be read; where a row has several columns, the one that it was stands before it. */
export const notRead = "not read";

export const isNotRead = (reason: string): boolean => /(^| )not read:/.test(reason);

/** Remarks of a row, one after the other: "wrench not read: no tag on it; zero was off". */
export const saidOf = (reason: string): readonly string[] => reason.split("; ").filter((part) => part !== "");

export const saying = (...parts: readonly string[]): string => parts.filter((part) => part !== "").join("; ");

/** Why a column of a row is blank. The reason of a correction explains no blank beside it. */
export function whyBlank(
  reason: string,
  column: string,
  columns: readonly string[],
  isBegun: boolean,
): string {
  const said = saidOf(reason);
  if (columns.length < 2 || said.some((part) => part.startsWith(notRead))) return reason;
  const own = said.find((part) => part.startsWith(`${inWords(column)} ${notRead}`));
  if (own !== undefined) return own;
  return isBegun || said.some(isNotRead) ? "" : reason;
}
