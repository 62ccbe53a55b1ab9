// One change on a page of 1,000 lines, settled, against a plain loop over the same arithmetic in the same order.

import { openPage } from "../../src/engine/open-page.ts";
import type { OpenPage } from "../../src/engine/opened.ts";
import { isProblem } from "../../src/problem.ts";
import type { Bench } from "./bench.ts";

const size = 1000;
const repeats = 10;

/** Names before each line, by number; 0 is the given, line i is worked out from earlier ones. */
type Shape = (i: number) => readonly number[];

const chain: Shape = (i) => [i - 1];
const fanOut: Shape = () => [0];
/** Three inputs from among the last thirty lines: a net of many crossing paths. */
const net: Shape = (i) => [i - 1, Math.max(0, i - 1 - ((i * 7) % 29)), Math.max(0, i - 1 - ((i * 13) % 23))];

const factor = (i: number): number => 1 + (i % 7) / 1000;

function pageText(shape: Shape): string {
  const lines = ["splitline: 1", "title: Load", "page:", "  - given: c0", "    value: 1 mm"];
  for (let i = 1; i <= size; i++) {
    const used = shape(i);
    const sum = used.map((n) => `c${n}`).join(" + ");
    lines.push(`  - working: c${i}`, `    is: (${sum}) / ${used.length} * ${factor(i)}`);
  }
  return `${lines.join("\n")}\n`;
}

async function opened(shape: Shape): Promise<OpenPage> {
  const live = openPage(pageText(shape), "load.yaml");
  if (!("settle" in live)) throw new Error(live.map((p) => p.what).join(", "));
  await live.settle();
  return live;
}

/** Values of the given in one call; never the same twice running. */
const valuesOf = (call: number): number[] =>
  Array.from({ length: repeats }, (_, k) => 2 + ((call * repeats + k) % 97) / 100); // never the 1 mm of the file

function engineCase(shape: Shape): () => Promise<number> {
  let page: Promise<OpenPage> | undefined;
  let call = 0;
  return async () => {
    page ??= opened(shape);
    const live = await page;
    let sum = 0;
    for (const value of valuesOf(call++)) {
      live.change("c0", `${value} mm`);
      const { ran } = await live.settle();
      if (ran.length !== size + 1) throw new Error(`${ran.length} lines ran, not ${size + 1}`);
      const last = live.line(`c${size}`)?.value;
      if (last === undefined || isProblem(last) || last.type !== "formula") throw new Error("no value");
      sum += last.si;
    }
    return sum;
  };
}

/** Lines in order with a flag each: what is left when there is no engine. */
function plainCase(shape: Shape): () => number {
  const uses = Array.from({ length: size + 1 }, (_, i) => (i === 0 ? [] : shape(i)));
  const lines = uses.map((used, i) => {
    const by = factor(i);
    return (values: Float64Array): number => {
      let sum = 0;
      for (const n of used) sum += values[n] ?? Number.NaN;
      return (sum / used.length) * by;
    };
  });
  const values = new Float64Array(size + 1);
  const dirty = new Uint8Array(size + 1);
  let call = 0;
  return () => {
    let total = 0;
    for (const value of valuesOf(call++)) {
      values[0] = value / 1000;
      dirty.fill(0);
      dirty[0] = 1;
      for (let i = 1; i <= size; i++) {
        if (!uses[i]?.some((n) => dirty[n] === 1)) continue;
        const next = lines[i]?.(values) ?? Number.NaN;
        dirty[i] = Object.is(next, values[i]) ? 0 : 1;
        values[i] = next;
      }
      total += values[size] ?? Number.NaN;
    }
    return total;
  };
}

const shapes = { chain, "fan-out": fanOut, "3-input net": net };
const each = <T>(
  make: (name: string, shape: Shape) => readonly (readonly [string, T])[],
): Record<string, T> =>
  Object.fromEntries(Object.entries(shapes).flatMap(([name, shape]) => make(name, shape)));

const bench: Bench = {
  title: `page · ${size} lines, one change settled`,
  reference: each((name) => [[name, `${name}, plain loop`]]),
  bars: each((name) => [[name, 40]]),
  times: each((name) => [[name, { repeats, ms: 5 }]]),
  cases: each<() => number | Promise<number>>((name, shape) => [
    [name, engineCase(shape)],
    [`${name}, plain loop`, plainCase(shape)],
  ]),
};

export default bench;
