// One page, worked out and laid open: its checks, its lines, and what has no answer.
import { fieldPlaces } from "../document/field-places.ts";
import type { Item } from "../document/item.ts";
import { guiltyField } from "../engine/guilty-field.ts";
import type { CheckValue, Line, RowOf } from "../engine/line.ts";
import { openPage } from "../engine/open-page.ts";
import type { OpenPage } from "../engine/opened.ts";
import { noteOfLine, unboundNumbers } from "../engine/unbound-numbers.ts";
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
  readonly lines: readonly Line[];
  readonly unitOf: UnitChoice;
  /** Said beside the states, and changing none. */
  readonly remarks: readonly Remark[];
  /** file:line:column of what a problem at this line is about. */
  readonly placeOf: (line: Line, found: Problem) => string;
}

export interface Remark {
  readonly line: Line;
  readonly found: Problem;
}

const unread = (file: string, problems: readonly Problem[]): CheckedPage => ({
  file,
  title: "",
  problems,
  lines: [],
  unitOf: usualUnit,
  remarks: [],
  placeOf: () => file,
});

export async function checkedPage(file: string): Promise<CheckedPage> {
  const text = pageText(file);
  if (isProblem(text)) return unread(file, [text]);
  const live = openPage(text, file);
  return isLive(live) ? settled(live, file, text) : unread(file, live);
}

export const unreadPage = unread;

const isLive = (opened: OpenPage | readonly Problem[]): opened is OpenPage => !Array.isArray(opened);

async function settled(live: OpenPage, file: string, text: string): Promise<CheckedPage> {
  await live.settle();
  const { page, unitOf } = live;
  const lines = live.lines();
  live.dispose();
  const items = new Map(lines.map(({ name, item }) => [name, item]));
  const places = fieldPlaces(text, file);
  const placeOf = ({ item, guilty }: Line, found: Problem): string => {
    const at = items.get(guilty ?? "") ?? item;
    const { path, within } = guiltyField(at, found);
    return places(at.index, path, within);
  };
  const remarks = unboundNumbers(lines, unitOf);
  return { file, title: page.title, problems: [], lines, unitOf, remarks, placeOf };
}

/** The first problem behind this one, with its place in the file. */
export function placed(page: CheckedPage, line: Line, p: Problem): Problem {
  const first = root(p);
  if (/:\d+:\d+$/.test(first.where ?? "")) return first;
  const where = page.placeOf(line, first);
  return first.with({ where: first.where === undefined ? where : `${where} · ${first.where}` });
}

export const isCheck = (line: Line): boolean => line.item.kind === "check";

/** Givens of which no source is stated, or none for the value that stands there. */
export const unsourcedNames = (lines: readonly Line[]): readonly string[] =>
  lines.flatMap(({ name, value }) =>
    !isProblem(value) && value.type === "quantity" && value.sourceState !== "stated" ? [name] : [],
  );

/** The worst state stands for a check that is asked row by row. */
export function stateOf({ value }: Line): State {
  return isProblem(value) || (value.type !== "check" && value.type !== "checks") ? "no answer" : value.state;
}

export const rowState = ({ value }: RowOf<CheckValue>): State =>
  isProblem(value) ? "no answer" : value.state;

/** "position 9" */
export const rowName = (key: string, row: RowOf<unknown>): string =>
  key === "finding" ? row.key : `${key} ${row.key}`;

/** "no answer because of nutFactor: nut factor: got 14, must be below 1" */
export function whyNoAnswer(page: CheckedPage, line: Line): string {
  if (!isProblem(line.value)) return "";
  const because = line.guilty === undefined || line.guilty === line.name ? "" : `because of ${line.guilty}: `;
  return because + worded(placed(page, line, line.value));
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

/** "note at line 12": lines are counted as on the page. */
export const noteName = ({ item }: Line): string => `note at line ${item.index + 1}`;

/** Values that a note asks for and that have no answer. */
export const missingInNote = (line: Line): readonly Problem[] =>
  Object.entries(noteOfLine(line)?.bound ?? {}).flatMap(([formula, { problem }]) =>
    problem ? [root(problem).at(`{${formula}}`)] : [],
  );

/** Pictures hold their inputs, workings over a table their rows: each with an answer or without. */
export function missingParts({ value }: Line): readonly Problem[] {
  if (isProblem(value)) return [];
  if (value.type === "picture") return Object.values(value.inputs).filter(isProblem);
  if (value.type !== "rows") return [];
  const { key } = value;
  return value.rows.flatMap((row) => (isProblem(row.value) ? [root(row.value).at(rowName(key, row))] : []));
}
