// What is wrong with the inputs of a spread, found before the first number: one set of rules for
// Monte Carlo and for first order.

import { isProblem, type Problem, problem } from "../problem.ts";
import { type Correlation, correlatedGroups } from "./correlate.ts";
import { type Distribution, distributionFault } from "./distributions.ts";

interface Inputs {
  readonly inputs: readonly { readonly name: string; readonly distribution: Distribution }[];
  readonly correlations?: readonly Correlation[] | undefined;
}

export function inputsFault({ inputs, correlations = [] }: Inputs): Problem | undefined {
  const known = new Map<string, Distribution>();
  for (const { name, distribution } of inputs) {
    const fault = known.has(name) ? twice(`spread of ${name}`) : distributionFault(distribution, name);
    if (fault) return fault;
    known.set(name, distribution);
  }
  return correlationsFault(correlations, known);
}

const twice = (what: string): Problem =>
  problem({ code: "spread", what, got: "the same twice", must: "be given once" });

function correlationsFault(
  correlations: readonly Correlation[],
  known: ReadonlyMap<string, Distribution>,
): Problem | undefined {
  const pairs = new Set<string>();
  for (const { between, r } of correlations) {
    const what = `correlation of ${between.join(" and ")}`;
    const refuse = (got: string, must: string, why?: string): Problem =>
      problem({ code: "correlation", what, got, must, why });
    if (between[0] === between[1]) return refuse(between[0], "be between two inputs");
    const pair = JSON.stringify(between.toSorted());
    if (pairs.has(pair)) return twice(what).with({ code: "correlation" });
    pairs.add(pair);
    if (!(r >= -1 && r <= 1)) return refuse(String(r), "be from -1 to 1");
    const odd = between.find((name) => known.get(name)?.type !== "normal");
    if (odd !== undefined)
      return refuse(
        `${known.get(odd)?.type ?? "no spread"} for ${odd}`,
        "be between normal inputs",
        "a coefficient does not say how limits go together",
      );
  }
  const groups = correlatedGroups(correlations);
  return isProblem(groups) ? groups : undefined;
}
