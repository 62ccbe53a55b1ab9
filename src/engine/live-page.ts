// A page that recomputes. One runtime variable per item; values are plain results, never exceptions,
// so that "no answer" travels like any other value and names the cell where it began.
import { Runtime } from "@observablehq/runtime";
import type { Item, Page } from "../document/item.ts";
import { readPage } from "../document/read.ts";
import { writeValue } from "../document/write.ts";
import type { UnitChoice } from "../methods/solution.ts";
import { usualUnit } from "../methods/solution.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { type Kind, kinds } from "../units/kind.ts";
import { type Unit, unit } from "../units/unit.ts";
import { alike } from "./alike.ts";
import type { Cell, CellValue } from "./cell.ts";
import { checkValue } from "./check.ts";
import { givenValue } from "./given.ts";
import { pictureValue } from "./picture.ts";
import { readingValue } from "./reading.ts";
import { loops, usesOf } from "./uses.ts";
import { formulaWorking, methodWorking } from "./working.ts";

export interface Settled {
  /** Names of the cells whose own work ran in this wave, in order. */
  readonly ran: readonly string[];
  readonly version: number;
}

export interface LivePage {
  readonly page: Page;
  readonly unitOf: UnitChoice;
  cells: () => readonly Cell[];
  cell: (name: string) => Cell | undefined;
  /** Puts a new text into a given. What was typed is kept even when it cannot be read. */
  change: (name: string, text: string) => Problem | undefined;
  settle: () => Promise<Settled>;
  /** Calls back after each wave with the names of the cells whose value changed. */
  subscribe: (listener: (changed: readonly string[]) => void) => () => void;
  /** The chain of cells behind a value, from it back to givens and readings. */
  why: (name: string) => readonly Cell[];
  /** The page file as it stands now. */
  text: () => string;
  dispose: () => void;
}

type Result = CellValue | Problem;

export const cellName = (item: Item): string => ("name" in item ? item.name : `#${item.index + 1}`);

export function openPage(text: string, file: string): LivePage | readonly Problem[] {
  const { page, problems } = readPage(text, file);
  if (!page || problems.length > 0) return problems;
  return livePage(page, text);
}

export function livePage(page: Page, startText: string): LivePage {
  const items = new Map(page.items.map((item) => [cellName(item), item]));
  const known = new Set(items.keys());
  const uses = new Map([...items].map(([name, item]) => [name, usesOf(item, known)]));
  const usedBy = reverse(uses);
  const looping = loops(uses);
  const unitOf = unitsOf(page);
  const typed = new Map<string, string>(
    page.items.flatMap((item) => (item.kind === "given" ? [[item.name, item.value]] : [])),
  );

  const results = new Map<string, Result>();
  const versions = new Map<string, number>();
  const listeners = new Set<(changed: readonly string[]) => void>();
  const awaited = new Set<string>(known);
  let waiting: (() => void)[] = [];
  let ran: string[] = [];
  let changed: string[] = [];
  let version = 1;
  let text = startText;
  const unwritten = new Map<string, string>(); // writing re-reads the file: done when the text is asked for

  const runtime = new Runtime();
  runtime._computeSoon = () => Promise.resolve().then(() => runtime._computeNow()); // no frame is waited for
  const module = runtime.module();

  const observer = (name: string) => ({
    fulfilled: (value: Result) => {
      if (results.get(name) !== value) {
        results.set(name, value);
        versions.set(name, version);
        changed.push(name);
      }
      awaited.delete(name);
      if (awaited.size === 0) finishWave();
    },
    rejected: (error: unknown) => {
      throw error; // a definition never throws on bad input: this is a fault of ours
    },
  });

  function finishWave(): void {
    const done = waiting;
    waiting = [];
    const names = changed;
    changed = [];
    for (const resolve of done) resolve();
    if (names.length > 0) for (const listener of listeners) listener(names);
  }

  const work = (item: Item, name: string, inputs: ReadonlyMap<string, Result>): Result => {
    ran.push(name);
    return resultOf(item, typed.get(name), inputs, page.file, unitOf);
  };

  /** The same inputs give the previous object, and an equal value too: the wave stops there. */
  function definition(name: string, item: Item, names: readonly string[]): (...values: Result[]) => Result {
    let lastInputs: readonly Result[] | undefined;
    let last: Result | undefined;
    const loop = looping.get(name);
    return (...values) => {
      if (loop) return loop;
      if (
        last !== undefined &&
        lastInputs?.length === values.length &&
        lastInputs.every((v, i) => Object.is(v, values[i]))
      )
        return last;
      lastInputs = values;
      const inputs = new Map<string, Result>();
      for (const [i, used] of names.entries()) {
        const value = values[i];
        if (value !== undefined) inputs.set(used, value);
      }
      const next = work(item, name, inputs);
      if (last === undefined || !alike(last, next)) last = next;
      return last;
    };
  }

  const variables = new Map<
    string,
    { define: (name: string, inputs: readonly string[], value: unknown) => unknown }
  >();
  for (const [name, item] of items) {
    const names = looping.has(name) ? [] : (uses.get(name) ?? []);
    const variable = module.variable(observer(name));
    variables.set(name, variable);
    variable.define(name, [...names], definition(name, item, names));
  }

  const cellOf = (name: string, item: Item): Cell => {
    const value =
      results.get(name) ??
      problem({ code: "pending", what: name, got: "no value yet", must: "be settled first" });
    return {
      name,
      item,
      value,
      guilty: isProblem(value) ? guilty(name, results, uses) : undefined,
      uses: uses.get(name) ?? [],
      usedBy: usedBy.get(name) ?? [],
      version: versions.get(name) ?? 0,
    };
  };
  const cell = (name: string): Cell | undefined => {
    const item = items.get(name);
    return item && cellOf(name, item);
  };

  return {
    page,
    unitOf,
    cells: () => [...items].map(([name, item]) => cellOf(name, item)),
    cell,
    change: (name, typedText) => {
      const item = items.get(name);
      if (item?.kind !== "given")
        return problem({
          code: "not-a-given",
          what: name,
          got: item ? `a ${item.kind}` : "no such item",
          must: "be a given",
        });
      if (typed.get(name) === typedText) return undefined;
      typed.set(name, typedText);
      unwritten.set(name, typedText);
      version += 1;
      ran = [];
      for (const reached of closure(name, usedBy)) awaited.add(reached);
      const before = results.get(name);
      const next = work(item, name, new Map());
      const value = before !== undefined && alike(before, next) ? before : next; // an equal value stops the wave
      variables.get(name)?.define(name, [], () => value);
      return undefined;
    },
    settle: () =>
      new Promise((resolve) => {
        const answer = () => resolve({ ran: [...ran], version });
        if (awaited.size === 0) answer();
        else waiting.push(answer);
      }),
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    why: (name) => [...closure(name, uses)].flatMap((n) => cell(n) ?? []),
    text: () => {
      for (const [name, typedText] of unwritten) {
        const written = writeValue(text, name, typedText);
        if (!isProblem(written)) text = written;
      }
      unwritten.clear();
      return text;
    },
    dispose: () => runtime.dispose(),
  };
}

function resultOf(
  item: Item,
  typed: string | undefined,
  inputs: ReadonlyMap<string, Result>,
  file: string,
  unitOf: UnitChoice,
): Result {
  switch (item.kind) {
    case "given":
      return givenValue(item, typed ?? item.value);
    case "working":
      return "formula" in item ? formulaWorking(item, inputs) : methodWorking(item, inputs);
    case "check":
      return checkValue(item, inputs, unitOf);
    case "reading":
      return readingValue(item, file);
    case "picture":
      return pictureValue(item, inputs);
    case "note":
    case "caution":
    case "sign-off":
      return { type: "prose" };
  }
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
  for (const [name, used] of uses) for (const u of used) back.set(u, [...(back.get(u) ?? []), name]);
  return back;
}

/** A name and everything reached from it, each once. */
function closure(start: string, next: ReadonlyMap<string, readonly string[]>): ReadonlySet<string> {
  const reached = new Set([start]);
  for (const name of reached) for (const following of next.get(name) ?? []) reached.add(following);
  return reached;
}

/** Follows no-answers back along the names used until one whose own inputs all have answers. */
function guilty(
  name: string,
  results: ReadonlyMap<string, Result>,
  uses: ReadonlyMap<string, readonly string[]>,
): string {
  const seen = new Set<string>();
  let at = name;
  for (;;) {
    seen.add(at);
    const before = (uses.get(at) ?? []).find((used) => isProblem(results.get(used)) && !seen.has(used));
    if (before === undefined) return at;
    at = before;
  }
}
