// The reactive core: named lines that recompute in waves. It knows nothing of pages.
// Results are plain values, never exceptions, so that "no answer" travels like any other.
import { Runtime, type Variable } from "@observablehq/runtime";

export interface Settled {
  /** Names of the lines whose own work ran since the last answer, in order. */
  readonly ran: readonly string[];
  /** Counts the changes made so far, from 1. */
  readonly version: number;
}

export interface Graph {
  readonly uses: ReadonlyMap<string, readonly string[]>;
  readonly usedBy: ReadonlyMap<string, readonly string[]>;
}

export interface Rules<R> {
  /** The work of one line, over the results of the lines it uses. */
  readonly work: (name: string, inputs: ReadonlyMap<string, R>) => R;
  /** Nothing that is shown differs: the previous object is kept. */
  readonly alike: (a: R, b: R) => boolean;
  /** Nothing that a formula can see differs: the wave stops there. */
  readonly sameWorth: (a: R, b: R) => boolean;
}

export interface Waves<R> {
  readonly result: (name: string) => R | undefined;
  /** The change after which its result last differed. */
  readonly version: (name: string) => number;
  /** The source of this line changed: it and what depends on it run in the next wave. */
  readonly touch: (name: string) => void;
  readonly settle: () => Promise<Settled>;
  readonly subscribe: (listener: (changed: readonly string[]) => void) => () => void;
  readonly dispose: () => void;
}

export function openWaves<R>({ uses, usedBy }: Graph, { work, alike, sameWorth }: Rules<R>): Waves<R> {
  const results = new Map<string, R>();
  const versions = new Map<string, number>();
  const listeners = new Set<(changed: readonly string[]) => void>();
  const awaited = new Set<string>(uses.keys());
  const touched = new Set<string>();
  const variables = new Map<string, Variable>();
  let waiting: ((settled: Settled) => void)[] = [];
  let ran: string[] = [];
  let changed: string[] = [];
  let version = 1;
  let closed = false;

  const runtime = new Runtime();
  runtime._computeSoon = () => Promise.resolve().then(() => runtime._computeNow()); // no frame is waited for
  const module = runtime.module();

  const run = (name: string, inputs: ReadonlyMap<string, R>): R => {
    ran.push(name);
    return work(name, inputs);
  };

  /** Inputs of the same worth give the previous object, and so does a result that shows nothing new. */
  function definition(name: string, names: readonly string[]): (...values: R[]) => R {
    let before: readonly R[] = [];
    let last: R | undefined;
    return (...values) => {
      if (last !== undefined && values.every((value, i) => same(value, before[i]))) return last;
      before = values;
      const inputs = new Map<string, R>();
      for (const [i, used] of names.entries()) {
        const value = values[i];
        if (value !== undefined) inputs.set(used, value);
      }
      const next = run(name, inputs);
      if (last === undefined || !alike(last, next)) last = next;
      return last;
    };
  }

  const same = (a: R, b: R | undefined): boolean => Object.is(a, b) || (b !== undefined && sameWorth(a, b));

  const observer = (name: string) => ({
    fulfilled: (value: R) => {
      if (results.get(name) !== value) {
        results.set(name, value);
        versions.set(name, version);
        changed.push(name);
      }
      awaited.delete(name);
      if (awaited.size === 0) finishWave();
    },
    rejected: (error: unknown) => {
      throw error; // work never throws on bad input: this is a fault of ours
    },
  });

  /** Waves follow one another: a change during a wave waits for its end, so none sees old and new mixed. */
  function finishWave(): void {
    const names = changed;
    changed = [];
    if (names.length > 0) for (const listener of listeners) listener(names);
    if (touched.size > 0) startWave();
    else answer();
  }

  function startWave(): void {
    const names = [...touched];
    touched.clear();
    for (const name of names) {
      const before = results.get(name);
      const next = run(name, new Map());
      if (before !== undefined && alike(before, next)) continue;
      for (const reached of closure(name, usedBy)) awaited.add(reached);
      variables.get(name)?.define(name, [], () => next);
    }
    if (awaited.size === 0) finishWave();
  }

  function answer(): void {
    if (waiting.length === 0) return;
    const settled = { ran, version };
    ran = [];
    const done = waiting;
    waiting = [];
    for (const resolve of done) resolve(settled);
  }

  for (const [name, names] of uses) {
    const variable = module.variable(observer(name));
    variables.set(name, variable);
    variable.define(name, [...names], definition(name, names));
  }

  return {
    result: (name) => results.get(name),
    version: (name) => versions.get(name) ?? 0,
    touch: (name) => {
      version += 1;
      touched.add(name);
      // a microtask later, so that changes made together go in one wave
      if (awaited.size === 0) queueMicrotask(() => touched.size > 0 && awaited.size === 0 && startWave());
    },
    settle: () =>
      new Promise((resolve) => {
        waiting.push(resolve);
        if (closed || (awaited.size === 0 && touched.size === 0)) answer();
      }),
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    dispose: () => {
      closed = true;
      runtime.dispose();
      answer();
    },
  };
}

/** A name and everything reached from it, each once. */
export function closure(start: string, next: ReadonlyMap<string, readonly string[]>): ReadonlySet<string> {
  const reached = new Set([start]);
  for (const name of reached) for (const following of next.get(name) ?? []) reached.add(following);
  return reached;
}
