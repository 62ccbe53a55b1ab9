// Which bolt in which hole: our own solver, with its proof, against munkres on the same costs.
import { munkres } from "munkres";
import { assign, type Costs } from "../../src/methods/fits/assignment.ts";
import type { Bench } from "./bench.ts";

/** A small seeded generator, so that every run has the same costs. */
function numbers(seed: number): () => number {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

const square = (size: number, seed: number, of: (random: () => number) => number): Costs => {
  const random = numbers(seed);
  return Array.from({ length: size }, () => Array.from({ length: size }, () => of(random)));
};

const shapes: Readonly<Record<string, Costs>> = {
  "uniform 60": square(60, 1, (random) => Math.floor(random() * 1e9)),
  "uniform 1000": square(1000, 2, (random) => Math.floor(random() * 1e9)),
  "integers 1000": square(1000, 3, (random) => 1 + Math.floor(random() * 100)),
};

const ours = (costs: Costs): number => assign(costs)?.cost ?? Number.NaN;
const theirs = (costs: Costs): number =>
  munkres(costs.map((row) => [...row])).reduce(
    (sum, [row, column]) => sum + (costs[row]?.[column] ?? Number.NaN),
    0,
  );

const entries = Object.entries(shapes);

const bench: Bench = {
  title: "assignment · own solver with potentials against munkres",
  reference: Object.fromEntries(entries.map(([name]) => [name, `${name}, munkres`])),
  bars: { "uniform 60": 2, "uniform 1000": 1.2 },
  tolerance: 1e-9,
  rounds: 3,
  cases: Object.fromEntries(
    entries.flatMap(([name, costs]) => [
      [name, () => ours(costs)],
      [`${name}, munkres`, () => theirs(costs)],
    ]),
  ),
};

export default bench;
