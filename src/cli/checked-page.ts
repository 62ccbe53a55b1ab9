// One page file, worked out and laid open, with the places in the file of what is wrong.
import { fieldPlaces } from "../document/field-places.ts";
import { guiltyField } from "../engine/guilty-field.ts";
import type { Line } from "../engine/line.ts";
import { openPage } from "../engine/open-page.ts";
import type { OpenPage } from "../engine/opened.ts";
import { unboundNumbers } from "../engine/unbound-numbers.ts";
import { type UnitChoice, usualUnit } from "../methods/solution.ts";
import { isProblem, type Problem, root } from "../problem.ts";
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

interface Remark {
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

/** "no answer because of nutFactor: nut factor: got 14, must be below 1" */
export function whyNoAnswer(page: CheckedPage, line: Line): string {
  if (!isProblem(line.value)) return "";
  const because = line.guilty === undefined || line.guilty === line.name ? "" : `because of ${line.guilty}: `;
  return because + worded(placed(page, line, line.value));
}

/** "note at line 12": lines are counted as on the page. */
export const noteName = ({ item }: Line): string => `note at line ${item.index + 1}`;
