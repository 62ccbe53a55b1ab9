// Monte Carlo on formulas (JCGM 101): inputs drawn block by block, formulas evaluated on the block.
// Blocks are known by their number, so any of them can be made again, alone or by a worker, and
// results joined by number are the same bits however many workers took part.

import { type BlockFormulas, blockSize, createBlock, planBlock } from "../formula/block.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { type CorrelatedGroup, type Correlation, correlatedGroups, mix } from "./correlate.ts";
import { type Distribution, type Transform, transformOf } from "./distributions.ts";
import { inputsFault } from "./job-fault.ts";
import { toNormal } from "./normal.ts";
import { fillUniform, hashName } from "./random.ts";

export interface SpreadInput {
  readonly name: string;
  readonly distribution: Distribution;
  /** Degrees of freedom of its standard uncertainty, for first order; a t distribution has its own. */
  readonly degrees?: number;
}

/** Plain data, so that it can be sent to a worker as it is. */
export interface SpreadJob extends Omit<BlockFormulas, "inputs"> {
  readonly inputs: readonly SpreadInput[];
  readonly correlations?: readonly Correlation[];
  /** Names whose samples are wanted. */
  readonly keep: readonly string[];
  /** Whole number from 0 to 2^53. */
  readonly seed: number;
  readonly samples: number;
}

export interface Sampler {
  readonly blocks: number;
  /**
   * Samples of the blocks from `first` up to, not including, `end`: one column per kept name.
   * A sample outside the domain of a formula is NaN or infinite.
   */
  run(first: number, end: number): readonly Float64Array[];
}

const mostSamples = 1e7;

/** Everything that can be wrong is found here, before the first number is drawn. */
export function openSampler(job: SpreadJob): Sampler | Problem {
  const fault = jobFault(job);
  if (fault) return fault;
  const plan = planBlock({ ...job, inputs: job.inputs.map(({ name }) => name) }, job.keep);
  if (isProblem(plan)) return plan;
  const groups = correlatedGroups(job.correlations ?? []);
  if (isProblem(groups)) return groups;
  const block = createBlock(plan);
  const draw = drawing(job, groups, block.inputs);
  const blocks = Math.ceil(job.samples / blockSize);
  return {
    blocks,
    run(first, end) {
      const [start, stop] = [first * blockSize, Math.min(end * blockSize, job.samples)];
      const columns = job.keep.map(() => new Float64Array(Math.max(0, stop - start)));
      for (let number = first; number < Math.min(end, blocks); number++) {
        const n = Math.min(blockSize, job.samples - number * blockSize);
        draw(number, n);
        block.run(n);
        columns.forEach((column, i) => {
          const made = block.outputs[i];
          if (made) column.set(n === made.length ? made : made.subarray(0, n), number * blockSize - start);
        });
      }
      return columns;
    },
  };
}

/** All samples, on this thread. */
export function sample(job: SpreadJob): readonly Float64Array[] | Problem {
  const sampler = openSampler(job);
  return isProblem(sampler) ? sampler : sampler.run(0, sampler.blocks);
}

function jobFault(job: SpreadJob): Problem | undefined {
  const { samples, seed } = job;
  if (!Number.isSafeInteger(samples) || samples < 1 || samples > mostSamples) {
    return problem({
      code: "spread",
      what: "number of samples",
      got: String(samples),
      must: `be whole, from 1 to ${mostSamples}`,
    });
  }
  if (!Number.isSafeInteger(seed) || seed < 0) {
    return problem({
      code: "spread",
      what: "seed",
      got: String(seed),
      must: "be a whole number of 0 or more",
    });
  }
  return inputsFault(job);
}

/** Fills the columns of the inputs for one block. */
function drawing(
  { inputs, seed }: SpreadJob,
  groups: readonly CorrelatedGroup[],
  columns: readonly Float64Array[],
): (block: number, n: number) => void {
  const hashes = inputs.map(({ name }) => hashName(name));
  const place = new Map(inputs.map(({ name }, i) => [name, i]));
  const tied = new Set(groups.flatMap(({ names }) => names));
  const transforms = inputs.map(({ name, distribution }) =>
    tied.has(name) ? toNormal : transformOf(distribution),
  );
  const mixed = groups.map((group) => ({
    group,
    columns: group.names.map((name) => columns[place.get(name) ?? -1] ?? new Float64Array(0)),
    stretch: group.names.map((name) => stretchOf(inputs[place.get(name) ?? -1]?.distribution)),
  }));
  return (block, n) => {
    columns.forEach((column, i) => {
      fillUniform(column, n, seed, hashes[i] ?? 0, block);
      transforms[i]?.(column, n);
    });
    for (const { group, columns: own, stretch } of mixed) {
      mix(own, group, n);
      for (const [i, column] of own.entries()) stretch[i]?.(column, n);
    }
  };
}

/** Standard normal scores to the mean and deviation of a normal input. */
function stretchOf(d: Distribution | undefined): Transform {
  const [mean, deviation] = d?.type === "normal" ? [d.mean, d.deviation] : [Number.NaN, Number.NaN];
  return (numbers, n) => {
    for (let i = 0; i < n; i++) numbers[i] = mean + deviation * (numbers[i] ?? 0);
  };
}
