// Formulas over samples: blocks against a loop written by hand, with and without drawing
// the random numbers, and what is read off the samples against sorting them.
// biome-ignore-all lint/style/noNonNullAssertion: the loops by hand should lose nothing to a check
/* oxlint-disable typescript/no-non-null-assertion */

import { all, create } from "mathjs/number";
import { type Block, createBlock, planBlock } from "../../src/formula/block.ts";
import { parse } from "../../src/formula/parse.ts";
import { evaluator } from "../../src/formula/value.ts";
import { isProblem, type Problem } from "../../src/problem.ts";
import { toNormal } from "../../src/spread/normal.ts";
import { quantiles } from "../../src/spread/quantiles.ts";
import { fillUniform, hashName } from "../../src/spread/random.ts";
import { openSampler, type SpreadJob } from "../../src/spread/sample.ts";
import type { Bench } from "./bench.ts";
import { at, byHand, type Columns, column, inputs, keep, names, size, texts } from "./joint-chain.ts";

const blocks = 512;

function sure<T>(value: T | Problem): T {
  if (isProblem(value)) throw new Error(`${value.what}: ${value.got}`);
  return value;
}

const lines = Object.entries(texts).map(([name, text]) => ({ name, tree: sure(parse(text)) }));

function draw(columns: Columns, block: number): void {
  columns.forEach((numbers, i) => {
    const mean = inputs[names[i] ?? ""] ?? 0;
    fillUniform(numbers, size, 101, hashes[i] ?? 0, block);
    toNormal(numbers, size);
    for (let k = 0; k < size; k++) numbers[k] = mean + 0.01 * mean * (numbers[k] ?? 0);
  });
}

const hashes = names.map(hashName);
const fixed = names.map(() => column());
draw(fixed, 0);
const sums = (columns: Columns): number[] =>
  columns.slice(0, 3).map((values) => values.reduce((a, b) => a + b, 0));

function blockOf(kept: readonly string[]): Block {
  const block = createBlock(sure(planBlock({ lines, inputs: names }, kept)));
  block.inputs.forEach((numbers, i) => {
    numbers.set(fixed[i] ?? []);
  });
  return block;
}

function repeated(block: Block): () => number[] {
  return () => {
    for (let i = 0; i < blocks; i++) block.run(size);
    return sums(block.outputs);
  };
}

function handCase(): () => number[] {
  const out = keep.map(() => column());
  const loop = byHand(fixed, out);
  return () => {
    for (let i = 0; i < blocks; i++) loop();
    return sums(out);
  };
}

function handAndRandom(): () => number[] {
  const columns = names.map(() => column());
  const out = keep.map(() => column());
  const loop = byHand(columns, out);
  const kept = keep.map(() => column(size * blocks));
  return () => {
    for (let block = 0; block < blocks; block++) {
      draw(columns, block);
      loop();
      kept.forEach((samples, i) => {
        samples.set(out[i] ?? [], block * size);
      });
    }
    return sums(kept);
  };
}

function sampled(): () => number[] {
  const job: SpreadJob = {
    lines,
    keep,
    seed: 101,
    samples: size * blocks,
    inputs: names.map((name) => {
      const mean = inputs[name] ?? 0;
      return { name, distribution: { type: "normal", mean, deviation: 0.01 * mean } };
    }),
  };
  const sampler = sure(openSampler(job));
  return () => sums(sampler.run(0, sampler.blocks));
}

/** One block, sample by sample. */
function bySample(evaluate: (inputsOf: (name: string) => number) => number[]): () => number[] {
  return () => {
    const totals = [0, 0, 0];
    for (let i = 0; i < size; i++) {
      const answers = evaluate((name) => at(fixed, name)[i] ?? 0);
      answers.forEach((answer, k) => {
        totals[k] = (totals[k] ?? 0) + answer;
      });
    }
    return totals;
  };
}

const closures = lines.map(({ name, tree }) => ({ name, run: evaluator(tree) }));
function byClosures(inputsOf: (name: string) => number): number[] {
  const known = new Map<string, number>();
  for (const { name, run } of closures)
    known.set(name, Number(run((used) => known.get(used) ?? inputsOf(used))));
  return keep.map((name) => known.get(name) ?? 0);
}

if (!all) throw new Error("mathjs has no list of everything");
const math = create(all);
const compiled = Object.entries(texts).map(([name, text]) => ({ name, code: math.compile(text) }));
function byMathjs(inputsOf: (name: string) => number): number[] {
  const scope: Record<string, unknown> = { ln: Math.log };
  for (const name of names) scope[name] = inputsOf(name);
  for (const { name, code } of compiled) scope[name] = code.evaluate(scope);
  return keep.map((name) => Number(scope[name]));
}

/** Shapes at the ends: hardly any work, very many inputs, a division through zero. */
function shape(
  of: Readonly<Record<string, string>>,
  count: number,
  hand: (columns: Columns, out: Float64Array) => void,
) {
  const own = Array.from({ length: count }, (_, i) => `x${i}`);
  const trees = Object.entries(of).map(([name, text]) => ({ name, tree: sure(parse(text)) }));
  const block = createBlock(sure(planBlock({ lines: trees, inputs: own }, ["y"])));
  block.inputs.forEach((numbers, i) => {
    numbers.forEach((_, k) => {
      numbers[k] = ((k * 7 + i * 13) % 101) - 50;
    });
  });
  const out = column();
  const total = (values: Float64Array): number => values.filter(Number.isFinite).reduce((a, b) => a + b, 0);
  const often = (run: () => void): void => {
    for (let i = 0; i < blocks; i++) run();
  };
  return {
    hand: () => {
      often(() => hand(block.inputs, out));
      return total(out);
    },
    blocks: () => {
      often(() => block.run(size));
      return total(block.outputs[0] ?? out);
    },
  };
}

const one = shape({ y: "2 * x0 + 1" }, 1, ([x = column()], out) => {
  for (let i = 0; i < size; i++) out[i] = 2 * x[i]! + 1;
});
const fifty = (start: number): string =>
  Array.from({ length: 50 }, (_, i) => `x${start + i} * ${start + i + 1}`).join(" + ");
const twoHundred = { a: fifty(0), b: fifty(50), c: fifty(100), d: fifty(150), y: "a + b + c + d" };
const many = shape(twoHundred, 200, (columns, out) => {
  for (let i = 0; i < size; i++) {
    let sum = 0;
    for (let k = 0; k < 200; k++) sum += columns[k]![i]! * (k + 1);
    out[i] = sum;
  }
});
const zero = shape({ y: "(x0 + 1) / (x0 * x1)" }, 2, ([x = column(), y = column()], out) => {
  for (let i = 0; i < size; i++) out[i] = (x[i]! + 1) / (x[i]! * y[i]!);
});

const probabilities = [0.005, 0.025, 0.5, 0.975, 0.995];
const samples = Float64Array.from({ length: 1_000_000 }, (_, i) => (Math.sin(i * 12.9898) * 43758.5453) % 1);
const buffer = column(samples.length);

const bench: Bench = {
  title:
    "spread · 12 lines, 15 inputs, 524 288 samples; one block for closures and mathjs; 1e6 samples for quantiles",
  reference: {
    blocks: "hand",
    "blocks, every line kept": "blocks",
    "blocks + random": "hand + random",
    "blocks, one block": "mathjs compiled, numbers",
    closures: "mathjs compiled, numbers",
    "one input": "one input, hand",
    "200 inputs": "200 inputs, hand",
    "through zero": "through zero, hand",
    quantiles: "sort",
  },
  bars: {
    blocks: 2,
    "blocks, every line kept": 1.2,
    "blocks + random": 1.35,
    "blocks, one block": 0.02,
    quantiles: 0.4,
  },
  cases: {
    hand: handCase(),
    blocks: repeated(blockOf(keep)),
    "blocks, every line kept": everyCell(),
    "hand + random": handAndRandom(),
    "blocks + random": sampled(),
    "mathjs compiled, numbers": bySample(byMathjs),
    closures: bySample(byClosures),
    "blocks, one block": oneBlock(),
    "one input, hand": one.hand,
    "one input": one.blocks,
    "200 inputs, hand": many.hand,
    "200 inputs": many.blocks,
    "through zero, hand": zero.hand,
    "through zero": zero.blocks,
    sort: () => {
      buffer.set(samples);
      buffer.sort();
      return probabilities.map((p) => {
        const place = p * (buffer.length - 1);
        const low = buffer[Math.floor(place)] ?? 0;
        return low + (place - Math.floor(place)) * ((buffer[Math.ceil(place)] ?? 0) - low);
      });
    },
    quantiles: () => {
      buffer.set(samples);
      return quantiles(buffer, probabilities);
    },
  },
};

function everyCell(): () => number[] {
  const block = blockOf([...keep, ...Object.keys(texts).filter((name) => !keep.includes(name))]);
  return repeated(block);
}

function oneBlock(): () => number[] {
  const block = blockOf(keep);
  return () => {
    block.run(size);
    return sums(block.outputs);
  };
}

export default bench;
