// One page, worked out and laid open: its checks, its cells, and what has no answer.
import type { Item } from "../document/item.ts";
import type { Cell, CheckValue } from "../engine/cell.ts";
import type { LivePage } from "../engine/live-page.ts";
import { openPage } from "../engine/open-page.ts";
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
}

const unread = (file: string, problems: readonly Problem[]): CheckedPage => ({
  file,
  title: "",
  problems,
  cells: [],
  unitOf: usualUnit,
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
  return { file, title: page.title, problems: [], cells, unitOf };
}

export const isCheck = (cell: Cell): boolean => cell.item.kind === "check";

export function stateOf(cell: Cell): State {
  return isProblem(cell.value) || cell.value.type !== "check" ? "no answer" : cell.value.state;
}

/** "no answer because of nutFactor: nut factor: got 14, must be below 1" */
export function whyNoAnswer(cell: Cell): string {
  if (!isProblem(cell.value)) return "";
  const because = cell.guilty === undefined || cell.guilty === cell.name ? "" : `because of ${cell.guilty}: `;
  return because + worded(root(cell.value));
}

export function labelOf(item: Item): string {
  if (item.says) return item.says;
  return "name" in item ? item.name : item.kind;
}

/** "at most 0.9", "0 to 15 um"; empty for a yes or no. */
export function limitText(value: CheckValue): string {
  const { atLeast, atMost } = value.limits;
  const text = (si: number): string => formatShort(si, value.unit ?? usualUnit(value.kind ?? "ratio"));
  if (atLeast !== undefined && atMost !== undefined) return `${text(atLeast)} to ${text(atMost)}`;
  if (atLeast !== undefined) return `at least ${text(atLeast)}`;
  return atMost === undefined ? "" : `at most ${text(atMost)}`;
}

/** Pictures hold their inputs one by one, each with an answer or without. */
export function missingInputs(cell: Cell): readonly Problem[] {
  const { value } = cell;
  return isProblem(value) || value.type !== "picture" ? [] : Object.values(value.inputs).filter(isProblem);
}
