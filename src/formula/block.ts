// Formulas evaluated for a block of samples at once: plain loops over columns instead of a walk
// over the tree for every sample. Nothing is compiled to code, so the strictest page policy holds.
//
// A sample that leaves the domain of an operation (a division by zero, a root of a negative) ends
// in NaN or an infinity, never in a number; where `evaluator` gives a problem, so does a block. The one
// exception is a product too small for any number, which is 0 here and an underflow there.

import { isProblem, type Problem, problem } from "../problem.ts";
import { type BlockFormulas, collect } from "./collect.ts";
import { type Register, type Schedule, schedule } from "./schedule.ts";

export type { BlockFormulas } from "./collect.ts";

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
  /** Evaluates the first n samples. */
  run(n: number): void;
}

/** `keep`: the names whose samples are wanted, lines or inputs. */
export function planBlock(formulas: BlockFormulas, keep: readonly string[]): BlockPlan | Problem {
  const collected = collect(formulas);
  if (isProblem(collected)) return collected;
  const wanted: number[] = [];
  for (const name of keep) {
    const place = collected.places.get(name);
    if (place === undefined)
      return problem({ code: "unknown-name", what: name, must: "be an input, a constant or a formula" });
    wanted.push(place);
  }
  return { inputs: formulas.inputs, outputs: keep, schedule: schedule(collected.graph, wanted) };
}

export function createBlock({ inputs: names, schedule }: BlockPlan, size = blockSize): Block {
  const padded = Math.ceil(size / 4) * 4;
  const column = (): Float64Array => new Float64Array(padded);
  const inputs = names.map(column);
  const scratch = Array.from({ length: schedule.scratch }, column);
  const unused = new Float64Array(0);
  const at = (register: Register | undefined): Float64Array =>
    (register?.type === "input" ? inputs : scratch)[register?.index ?? -1] ?? unused;
  const passes = schedule.passes.map(({ kernel, out, of: [a, b, c] }) => ({
    kernel,
    out: at(out),
    a: at(a),
    b: at(b),
    c: at(c),
  }));
  return {
    size,
    inputs,
    outputs: schedule.results.map(at),
    run(n) {
      for (const { kernel, out, a, b, c } of passes) kernel(n, out, a, b, c);
    },
  };
}
