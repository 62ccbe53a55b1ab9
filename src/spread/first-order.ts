// First-order propagation (JCGM 100:2008 5.1 and 5.2), the cross-check beside Monte Carlo: exact
// derivatives, carried from formula to formula by the chain rule. It fails where a formula bends
// within the spread, near zero above all; that is what the comparison is for.

import { derive } from "../formula/derive.ts";
import { inOrder } from "../formula/order.ts";
import { names, type Tree } from "../formula/tree.ts";
import { evaluator, type Lookup, type Value } from "../formula/value.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import type { Correlation } from "./correlate.ts";
import { centreOf, uncertaintyOf } from "./distributions.ts";
import { inputsFault } from "./job-fault.ts";
import type { SpreadInput, SpreadJob } from "./sample.ts";

export interface FirstOrder {
  /** At the centre of every input. */
  readonly value: number;
  /** Combined standard uncertainty. */
  readonly uncertainty: number;
  /**
   * Effective degrees of freedom (G.4, Welch-Satterthwaite), never truncated here; infinite when none are
   * stated. The formula is for inputs that do not go together: NaN where correlated ones have degrees.
   */
  readonly degrees: number;
  readonly parts: readonly Part[];
}

interface Part {
  readonly name: string;
  /** Partial derivative by the input, through every formula between. */
  readonly sensitivity: number;
  /** Sensitivity times the standard uncertainty of the input, with its sign. */
  readonly contribution: number;
}

export type FirstOrderJob = Pick<
  SpreadJob,
  "lines" | "inputs" | "constants" | "columns" | "correlations" | "keep"
>;

/** One result per kept name, in the same order. */
export function firstOrder(job: FirstOrderJob): readonly FirstOrder[] | Problem {
  const wrong = inputsFault(job);
  if (wrong) return wrong;
  const trees = new Map(job.lines.map(({ name, tree }) => [name, tree]));
  const order = inOrder([...trees.keys()], (name) => names(trees.get(name) ?? nothing));
  if (isProblem(order)) return order;
  const at = new Slopes(job);
  for (const name of order) {
    const tree = trees.get(name);
    const fault = tree && at.add(name, tree);
    if (fault) return fault;
  }
  const results: FirstOrder[] = [];
  for (const name of job.keep) {
    const result = at.result(name);
    if (isProblem(result)) return result;
    results.push(result);
  }
  return results;
}

const nothing: Tree = { type: "number", value: 0, text: "0", at: 1 };

/** Values and slopes of the names known so far. */
class Slopes {
  readonly #inputs: readonly SpreadInput[];
  readonly #correlations: readonly Correlation[];
  readonly #values: Map<string, Value>;
  /** Of each name: slope by input. */
  readonly #slopes = new Map<string, ReadonlyMap<string, number>>();
  readonly #columns: ReadonlySet<string>;

  constructor({ inputs, constants = {}, columns = {}, correlations = [] }: FirstOrderJob) {
    this.#inputs = inputs;
    this.#correlations = correlations;
    this.#columns = new Set(Object.keys(columns));
    this.#values = new Map<string, Value>(Object.entries(constants));
    for (const [name, rows] of Object.entries(columns)) {
      if (rows.every((row) => typeof row === "number")) this.#values.set(name, rows);
    }
    for (const { name, distribution } of inputs) {
      this.#values.set(name, centreOf(distribution));
      this.#slopes.set(name, new Map([[name, 1]]));
    }
  }

  add(name: string, tree: Tree): Problem | undefined {
    const lookup: Lookup = (used) =>
      this.#values.get(used) ??
      problem({
        code: "unknown-name",
        what: used,
        must: "be a number, or a column of numbers, for a first-order spread",
      });
    const value = evaluator(tree)(lookup);
    if (isProblem(value)) return value;
    this.#values.set(name, value);
    if (typeof value !== "number") return undefined;
    const total = new Map<string, number>();
    for (const used of names(tree)) {
      const inner = this.#slopes.get(used);
      if (!inner) continue;
      const slope = this.#slope(tree, used, lookup);
      if (isProblem(slope)) return slope;
      for (const [input, step] of inner) total.set(input, (total.get(input) ?? 0) + slope * step);
    }
    this.#slopes.set(name, total);
    return undefined;
  }

  #slope(tree: Tree, by: string, lookup: Lookup): number | Problem {
    const formula = derive(tree, by, (other) => this.#columns.has(other));
    if (isProblem(formula)) return formula;
    const slope = evaluator(formula)(lookup);
    return isProblem(slope) ? slope : Number(slope);
  }

  result(name: string): FirstOrder | Problem {
    const value = this.#values.get(name);
    const slopes = this.#slopes.get(name) ?? new Map<string, number>();
    if (typeof value !== "number") return problem({ code: "first-order", what: name, must: "be one number" });
    const parts = this.#inputs.map(({ name: input, distribution }): Part => {
      const sensitivity = slopes.get(input) ?? 0;
      return { name: input, sensitivity, contribution: sensitivity * uncertaintyOf(distribution) };
    });
    const share = new Map(parts.map((part) => [part.name, part.contribution]));
    const alone = parts.reduce((sum, part) => sum + part.contribution ** 2, 0);
    const joint = this.#correlations.reduce(
      (sum, { between: [one, other], r }) => sum + 2 * r * (share.get(one) ?? 0) * (share.get(other) ?? 0),
      0,
    );
    const uncertainty = Math.sqrt(Math.max(0, alone + joint));
    const degrees = this.#tied(share) ? Number.NaN : this.#degrees(uncertainty, parts);
    return { value, uncertainty, degrees, parts };
  }

  /** A correlated input that counts here and has degrees of freedom of its own. */
  #tied(share: ReadonlyMap<string, number>): boolean {
    const tied = new Set(this.#correlations.flatMap(({ between, r }) => (r === 0 ? [] : between)));
    return this.#inputs.some(
      ({ name, degrees = Number.POSITIVE_INFINITY }) =>
        tied.has(name) && share.get(name) !== 0 && Number.isFinite(degrees),
    );
  }

  #degrees(uncertainty: number, parts: readonly Part[]): number {
    const weights = this.#inputs.map(({ distribution, degrees }, i) => {
      const own = degrees ?? (distribution.type === "t" ? distribution.degrees : Number.POSITIVE_INFINITY);
      return (parts[i]?.contribution ?? 0) ** 4 / own;
    });
    const sum = weights.reduce((a, b) => a + b, 0);
    return sum === 0 ? Number.POSITIVE_INFINITY : uncertainty ** 4 / sum;
  }
}
