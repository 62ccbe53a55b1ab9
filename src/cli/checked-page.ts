// One page, worked out and laid open: its checks, its cells, and what has no answer.
import type { Item } from "../document/item.ts";
import type { Cell, CheckValue, RowOf } from "../engine/cell.ts";
import type { LivePage } from "../engine/live-page.ts";
import { openPage } from "../engine/open-page.ts";
import { noteOfCell, unboundNumbers } from "../engine/unbound-numbers.ts";
import { formatShort, type UnitChoice, usualUnit } from "../methods/solution.ts";
import { isProblem, type Problem, root } from "../problem.ts";
import type { State } from "../verdict.ts";
import { worded } from "./outcome.ts";
import { pageText } from "./page-files.ts";

export interface CheckedPage {
  readonly file: string;
  readonly title: string;
  /** Why the page could not be read; then there is nothing else. */
  readonly problems: readonly Problem[];
  readonly cells: readonly Cell[];
  readonly unitOf: UnitChoice;
  /** Said beside the states, and changing none. */
  readonly remarks: readonly Remark[];
}

export interface Remark {
  readonly cell: Cell;
  readonly found: Problem;
}

const unread = (file: string, problems: readonly Problem[]): CheckedPage => ({
  file,
  title: "",
  problems,
  cells: [],
  unitOf: usualUnit,
  remarks: [],
});

export async function checkedPage(file: string): Promise<CheckedPage> {
  const text = pageText(file);
  if (isProblem(text)) return unread(file, [text]);
  const live = openPage(text, file);
  return isLive(live) ? settled(live, file) : unread(file, live);
}

export const unreadPage = unread;

const isLive = (opened: LivePage | readonly Problem[]): opened is LivePage => !Array.isArray(opened);

async function settled(live: LivePage, file: string): Promise<CheckedPage> {
  await live.settle();
  const { page, unitOf } = live;
  const cells = live.cells();
  live.dispose();
  return { file, title: page.title, problems: [], cells, unitOf, remarks: unboundNumbers(cells, unitOf) };
}

export const isCheck = (cell: Cell): boolean => cell.item.kind === "check";

/** Givens of which no source is stated, or none for the value that stands there. */
export const unsourcedNames = (cells: readonly Cell[]): readonly string[] =>
  cells.flatMap(({ name, value }) =>
    !isProblem(value) && value.type === "quantity" && value.sourceState !== "stated" ? [name] : [],
  );

/** The worst state stands for a check that is asked row by row. */
export function stateOf({ value }: Cell): State {
  return isProblem(value) || (value.type !== "check" && value.type !== "checks") ? "no answer" : value.state;
}

export const rowState = ({ value }: RowOf<CheckValue>): State =>
  isProblem(value) ? "no answer" : value.state;

/** "position 9" */
export const rowName = (key: string, row: RowOf<unknown>): string =>
  key === "finding" ? row.key : `${key} ${row.key}`;

/** "no answer because of nutFactor: nut factor: got 14, must be below 1" */
export function whyNoAnswer(cell: Cell): string {
  if (!isProblem(cell.value)) return "";
  const because = cell.guilty === undefined || cell.guilty === cell.name ? "" : `because of ${cell.guilty}: `;
  return because + worded(root(cell.value));
}

export function labelOf(item: Item): string {
  if (item.says) return item.says;
  if ("name" in item) return item.name;
  return item.kind === "picture" ? `picture ${item.picture}` : item.kind;
}

/** "at most 0.9", "0 to 15 um"; empty for a yes or no. */
export function limitText(value: CheckValue): string {
  const { atLeast, atMost } = value.limits;
  const text = (si: number): string => formatShort(si, value.unit ?? usualUnit(value.kind ?? "ratio"));
  if (atLeast !== undefined && atMost !== undefined) return `${text(atLeast)} to ${text(atMost)}`;
  if (atLeast !== undefined) return `at least ${text(atLeast)}`;
  return atMost === undefined ? "" : `at most ${text(atMost)}`;
}

/** "note at line 12": lines are counted as on the sheet. */
export const noteName = ({ item }: Cell): string => `note at line ${item.index + 1}`;

/** Values that a note asks for and that have no answer. */
export const missingInNote = (cell: Cell): readonly Problem[] =>
  Object.entries(noteOfCell(cell)?.bound ?? {}).flatMap(([formula, { problem }]) =>
    problem ? [root(problem).at(`{${formula}}`)] : [],
  );

/** Pictures hold their inputs, workings over a table their rows: each with an answer or without. */
export function missingParts({ value }: Cell): readonly Problem[] {
  if (isProblem(value)) return [];
  if (value.type === "picture") return Object.values(value.inputs).filter(isProblem);
  if (value.type !== "rows") return [];
  const { key } = value;
  return value.rows.flatMap((row) => (isProblem(row.value) ? [root(row.value).at(rowName(key, row))] : []));
}
