// Formulas evaluated for a block of samples at once: plain loops over columns instead of a walk
// over the tree for every sample. Nothing is compiled to code, so the strictest page policy holds.
//
// A sample that leaves the domain of an operation (a division by zero, a root of a negative) ends
// in NaN or an infinity, never in a number; where `evaluator` gives a problem, so does a block. The one
// exception is a product too small for any number, which is 0 here and an underflow there.

import { isProblem, type Problem, problem } from "../problem.ts";
import { type BlockFormulas, collect } from "./collect.ts";
import { type Pass, type Register, type Schedule, schedule } from "./schedule.ts";

export type { BlockFormulas, Row } from "./collect.ts";

export const blockSize = 1024;

export interface BlockPlan {
  readonly inputs: readonly string[];
  /** Names of the results, in the order they were asked for. */
  readonly outputs: readonly string[];
  readonly schedule: Schedule;
}

export interface Block {
  readonly size: number;
  /** One column per input of the plan, filled by the caller; never written by `run`. */
  readonly inputs: readonly Float64Array[];
  /** One column per output, good until the next run. A comparison gives 1 and 0. */
  readonly outputs: readonly Float64Array[];
  /** Evaluates the first n samples; what stands behind them is overwritten up to a multiple of 4. */
  run(n: number): void;
}

/** `keep`: the names whose samples are wanted, lines or inputs. `fuse: false` is for comparison. */
export function planBlock(
  formulas: BlockFormulas,
  keep: readonly string[],
  fuse = true,
): BlockPlan | Problem {
  const collected = collect(formulas);
  if (isProblem(collected)) return collected;
  const wanted: number[] = [];
  for (const name of keep) {
    const place = collected.places.get(name);
    if (place === undefined)
      return problem({ code: "unknown-name", what: name, must: "be an input, a constant or a formula" });
    wanted.push(place);
  }
  return { inputs: formulas.inputs, outputs: keep, schedule: schedule(collected.graph, wanted, fuse) };
}

export function createBlock(plan: BlockPlan, size = blockSize): Block {
  const padded = Math.ceil(size / 4) * 4;
  const column = (): Float64Array => new Float64Array(padded);
  const inputs = plan.inputs.map(column);
  const scratch = Array.from({ length: plan.schedule.scratch }, column);
  const unused = new Float64Array(0);
  const at = (register: Register | undefined): Float64Array => {
    if (!register) return unused;
    return (register.type === "input" ? inputs : scratch)[register.index] ?? unused;
  };
  const passes = plan.schedule.passes.map((pass) => bind(pass, at));
  const outputs = plan.schedule.results.map((result) =>
    typeof result === "number" ? column().fill(result) : at(result),
  );
  return {
    size,
    inputs,
    outputs,
    run(n) {
      const count = Math.min(Math.ceil(n / 4) * 4, padded);
      for (const { kernel, out, a, b, c, k, m } of passes) kernel(count, out, a, b, c, k, m);
    },
  };
}

interface BoundPass {
  readonly kernel: Pass["kernel"];
  readonly out: Float64Array;
  readonly a: Float64Array;
  readonly b: Float64Array;
  readonly c: Float64Array;
  readonly k: number;
  readonly m: number;
}

function bind(pass: Pass, at: (register: Register | undefined) => Float64Array): BoundPass {
  const { kernel, out, a, b, c, k, m } = pass;
  return { kernel, out: at(out), a: at(a), b: at(b), c: at(c), k, m };
}
