// A page that recomputes: items become lines, typed texts change givens, every line can say why.
import type { Item, Page } from "../document/item.ts";
import { dropSpread, writeKind, writeSource, writeValue } from "../document/write.ts";
import { writeRows } from "../document/write-rows.ts";
import { type UnitChoice, usualUnit } from "../methods/solution.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { type Kind, kinds } from "../units/kind.ts";
import { type Unit, unit } from "../units/unit.ts";
import { oddNamed } from "../visible.ts";
import { alike, type Result, sameWorth } from "./alike.ts";
import { oneCheck, rowsCheck, rowsWorking } from "./each.ts";
import { givenValue, hasSpread, kindToState, sourceLeft, sourceStateOf } from "./given.ts";
import type { Line } from "./line.ts";
import { noneCheck } from "./none.ts";
import { notesBeside, ownerOf, placeOfNote, plainNote } from "./notes.ts";
import { pictureValue } from "./picture.ts";
import { emptyProse, proseValue } from "./prose.ts";
import { readingValue } from "./reading.ts";
import type { Results } from "./scope.ts";
import { loops, usesOf } from "./uses.ts";
import { closure, openWaves, type Settled } from "./waves.ts";
import { formulaWorking, methodWorking } from "./working.ts";

export type { Settled } from "./waves.ts";

/** An open page: texts go in, lines come out, each change settles in one wave. Made by `openPage`. */
export interface OpenPage {
  readonly page: Page;
  readonly unitOf: UnitChoice;
  lines: () => readonly Line[];
  line: (name: string) => Line | undefined;
  /** Puts a new text into a given. What was typed is kept even when it cannot be read. */
  change: (name: string, text: string) => Problem | undefined;
  /** States where the value that now stands in a given comes from. */
  restate: (name: string, source: string) => Problem | undefined;
  /** Says that a given's text is meant as it was read. */
  confirm: (name: string, text: string) => Problem | undefined;
  /** The source as it now stands, and whether it belongs to the value that stands there. */
  sourceOf: (name: string) => string | undefined;
  /** Puts a new table text into a reading; what cannot be read is kept as well. */
  enter: (name: string, rows: string) => Problem | undefined;
  settle: () => Promise<Settled>;
  /** Calls back after each wave with the names of the lines whose value changed. */
  subscribe: (listener: (changed: readonly string[]) => void) => () => void;
  /** The chain of lines behind a value, from it back to givens and readings. */
  why: (name: string) => readonly Line[];
  /** The page file as it stands now. */
  text: () => string;
  /** The same, and what was typed and cannot stand in it, as a text that is too long: that is left out of it. */
  written: () => Written;
  dispose: () => void;
}

interface Written {
  readonly text: string;
  readonly left: readonly Problem[];
}

export const lineName = (item: Item): string => ("name" in item ? item.name : `#${item.index + 1}`);

export function opened(page: Page, startText: string): OpenPage {
  const items = new Map(page.items.map((item) => [lineName(item), item]));
  const known = new Set(items.keys());
  const named = new Map([...items].map(([name, item]) => [name, usesOf(item, known)]));
  const looping = loops(named);
  // a line in a loop waits for nothing: it says so at once
  const uses = new Map([...named].map(([name, used]) => [name, looping.has(name) ? [] : used]));
  const notes = notesBeside(items, known);
  for (const [place, used] of notes.uses) uses.set(place, used);
  const usedBy = reverse(uses);
  const unitOf = unitsOf(page);
  const typed = new Map<string, string>();
  const sources = new Map<string, string>();
  const confirmed = new Map<string, string>();
  const notA = (name: string, kind: "given" | "reading"): Problem =>
    problem({
      code: `not-a-${kind}`,
      what: name,
      got: items.get(name) ? `a ${items.get(name)?.kind ?? ""}` : "no such item",
      must: `be a ${kind}`,
    });

  const work = (name: string, inputs: ReadonlyMap<string, Result>): Result => {
    const results: Results = { get: (used) => inputs.get(used), keys: () => known.keys() };
    const note = notes.text(name);
    if (note !== undefined) return proseValue(note, results, unitOf);
    const item = items.get(name);
    if (!item) return problem({ code: "no-such-item", what: name, must: "be an item of the page" });
    return (
      looping.get(name) ??
      resultOf({
        item,
        typed: typed.get(name),
        since: { source: sources.get(name), confirmed: confirmed.get(name) },
        results,
        file: page.file,
        unitOf,
      })
    );
  };
  const waves = openWaves({ uses, usedBy }, { work, alike, sameWorth });

  const lineOf = (name: string, item: Item): Line => {
    const note = waves.result(placeOfNote(name)) ?? plainNote(item);
    const value =
      waves.result(name) ??
      problem({ code: "pending", what: name, got: "no value yet", must: "be settled first" });
    return {
      name,
      item,
      value,
      note: note && !isProblem(note) && note.type === "prose" ? note : undefined,
      guilty: isProblem(value) ? guilty(name, waves.result, named) : undefined,
      uses: named.get(name) ?? [],
      usedBy: [...new Set(usedBy.get(name)?.map(ownerOf))].filter((user) => user !== name),
      version: Math.max(waves.version(name), waves.version(placeOfNote(name))),
    };
  };
  const line = (name: string): Line | undefined => {
    const item = items.get(name);
    return item && lineOf(name, item);
  };

  return {
    page,
    unitOf,
    lines: () => [...items].map(([name, item]) => lineOf(name, item)),
    line,
    change: (name, text) => {
      const item = items.get(name);
      if (item?.kind !== "given") return notA(name, "given");
      if ((typed.get(name) ?? item.value) === text) return undefined;
      typed.set(name, text);
      waves.touch(name);
      return undefined;
    },
    restate: (name, source) => {
      const item = items.get(name);
      if (item?.kind !== "given") return notA(name, "given");
      if ((sources.get(name) ?? "") === source) return undefined;
      sources.set(name, source);
      waves.touch(name);
      return undefined;
    },
    confirm: (name, text) => {
      if (items.get(name)?.kind !== "given") return notA(name, "given");
      confirmed.set(name, text);
      waves.touch(name);
      return undefined;
    },
    /** The source as it now stands, and whether it belongs to the value that stands there. */
    sourceOf: (name) => sources.get(name) ?? items.get(name)?.source,
    enter: (name, rows) => {
      const item = items.get(name);
      if (item?.kind !== "reading") return notA(name, "reading");
      if ((typed.get(name) ?? item.rows) === rows) return undefined;
      typed.set(name, rows);
      waves.touch(name);
      return undefined;
    },
    settle: waves.settle,
    subscribe: (listener) => waves.subscribe((changed) => listener([...new Set(changed.map(ownerOf))])),
    why: (name) => [...closure(name, named)].flatMap((n) => line(n) ?? []),
    text: () => writtenText(startText, items, typed, sources).text,
    written: () => writtenText(startText, items, typed, sources),
    dispose: waves.dispose,
  };
}

interface Work {
  readonly item: Item;
  readonly typed: string | undefined;
  readonly since: { readonly source: string | undefined; readonly confirmed: string | undefined };
  readonly results: Results;
  readonly file: string;
  readonly unitOf: UnitChoice;
}

function resultOf({ item, typed, since, results, file, unitOf }: Work): Result {
  switch (item.kind) {
    case "given":
      return givenValue(item, typed ?? item.value, since);
    case "working":
      if (item.each !== undefined) return rowsWorking(item, results);
      return "formula" in item ? formulaWorking(item, results) : methodWorking(item, results);
    case "check":
      if (item.none !== undefined) return noneCheck(item, results, unitOf);
      return item.each === undefined ? oneCheck(item, results, unitOf) : rowsCheck(item, results, unitOf);
    case "reading":
      return readingValue(item, typed ?? item.rows, file);
    case "picture":
      return pictureValue(item, results, unitOf);
    case "note":
      return proseValue(item.text, results, unitOf);
    case "caution":
    case "sign-off":
      return emptyProse;
  }
}

/**
 * The file with what was typed; a kind is stated where the new text alone would be read otherwise. A character that
 * no page file may hold is named in its place, or the file would have to leave out all that was typed with it.
 */
function writtenText(
  start: string,
  items: ReadonlyMap<string, Item>,
  typed: ReadonlyMap<string, string>,
  sources: ReadonlyMap<string, string>,
): Written {
  let text = start;
  const left: Problem[] = [];
  const take = (written: string | Problem) => {
    if (isProblem(written)) left.push(written);
    else text = written;
  };
  for (const [name, entered] of typed) {
    const item = items.get(name);
    const words = oddNamed(entered);
    if (item?.kind === "reading" && words !== item.rows) take(writeRows(text, name, words));
    if (item?.kind !== "given" || words === item.value) continue;
    take(writeValue(text, name, words));
    const kind = kindToState(item, words);
    if (kind) take(writeKind(text, name, kind));
    if (item.spread && hasSpread(item, words)) take(dropSpread(text, name));
    if (sourceStateOf(item, words, sources.get(name)) === "changed")
      take(writeSource(text, name, sourceLeft(item)));
  }
  for (const [name, source] of sources)
    if (source.trim() !== "") take(writeSource(text, name, oddNamed(source)));
  return { text, left };
}

function unitsOf(page: Page): UnitChoice {
  const chosen = new Map<Kind, Unit>();
  for (const { kind } of Object.values(kinds)) {
    const text = page.show[kind];
    const found = text === undefined ? undefined : unit(text, kind);
    if (found && !isProblem(found)) chosen.set(kind, found);
  }
  return (kind) => chosen.get(kind) ?? usualUnit(kind);
}

function reverse(uses: ReadonlyMap<string, readonly string[]>): ReadonlyMap<string, readonly string[]> {
  const back = new Map<string, string[]>();
  for (const [name, used] of uses)
    for (const u of used) {
      const users = back.get(u);
      if (users) users.push(name);
      else back.set(u, [name]);
    }
  return back;
}

/** Follows no-answers back along the names used until one whose own inputs all have answers. */
function guilty(
  name: string,
  result: (name: string) => Result | undefined,
  uses: ReadonlyMap<string, readonly string[]>,
): string {
  const seen = new Set<string>();
  let at = name;
  for (;;) {
    seen.add(at);
    const before = (uses.get(at) ?? []).find((used) => isProblem(result(used)) && !seen.has(used));
    if (before === undefined) return at;
    at = before;
  }
}
