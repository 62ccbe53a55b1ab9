// Correlated inputs: standard normal scores mixed by the Cholesky factor of their correlation
// matrix. For normal inputs only, where a coefficient says everything about the joint distribution.

import { type Problem, problem } from "../problem.ts";

export interface Correlation {
  readonly between: readonly [string, string];
  readonly r: number;
}

export interface CorrelatedGroup {
  /** Sorted, so that the group is the same whatever the order of the page. */
  readonly names: readonly string[];
  /** Lower triangle, one row per name. */
  readonly factor: readonly (readonly number[])[];
}

/** Names joined by coefficients, directly or through others, with the factor of each group. */
export function correlatedGroups(correlations: readonly Correlation[]): readonly CorrelatedGroup[] | Problem {
  const groups: CorrelatedGroup[] = [];
  for (const names of connected(correlations)) {
    const factor = cholesky(names.map((one) => names.map((other) => coefficient(correlations, one, other))));
    if (!factor) {
      return problem({
        code: "correlation",
        what: `correlation of ${names.join(", ")}`,
        got: correlations.map(({ between, r }) => `${between.join("-")} ${r}`).join(", "),
        must: "fit together: each from -1 to 1, and no two saying the opposite of a third",
      });
    }
    groups.push({ names, factor });
  }
  return groups;
}

function connected(correlations: readonly Correlation[]): string[][] {
  let groups: Set<string>[] = [];
  for (const { between } of correlations) {
    const touched = groups.filter((group) => between.some((name) => group.has(name)));
    const joined = new Set([...between, ...touched.flatMap((group) => [...group])]);
    groups = [...groups.filter((group) => !touched.includes(group)), joined];
  }
  return groups.map((group) => [...group].toSorted());
}

function coefficient(correlations: readonly Correlation[], one: string, other: string): number {
  if (one === other) return 1;
  return correlations.find(({ between }) => between.includes(one) && between.includes(other))?.r ?? 0;
}

/** undefined when the matrix is not that of any set of variables. Full correlation, r = ±1, is allowed. */
function cholesky(matrix: readonly (readonly number[])[]): readonly (readonly number[])[] | undefined {
  const factor: number[][] = [];
  for (const [i, given] of matrix.entries()) {
    const row: number[] = [];
    for (let j = 0; j <= i; j++) {
      const known = row
        .slice(0, j)
        .reduce((sum, value, k) => sum + value * ((j < i ? factor[j] : row)?.[k] ?? 0), 0);
      const rest = (given[j] ?? 0) - known;
      const diagonal = j < i ? (factor[j]?.[j] ?? 0) : 0;
      if (j < i) row.push(diagonal > 0 ? rest / diagonal : 0);
      if (j < i && diagonal === 0 && Math.abs(rest) > 1e-12) return undefined;
      if (j === i && !(rest >= -1e-12)) return undefined;
      if (j === i) row.push(Math.sqrt(rest > 1e-12 ? rest : 0));
    }
    factor.push(row);
  }
  return factor;
}

/** Mixes independent standard normal columns, last row first, in place. */
export function mix(columns: readonly Float64Array[], { factor }: CorrelatedGroup, n: number): void {
  for (let row = columns.length - 1; row >= 0; row--) {
    const out = columns[row];
    const weights = factor[row] ?? [];
    if (!out) continue;
    for (let i = 0; i < n; i++) {
      let sum = 0;
      for (let k = 0; k <= row; k++) sum += (weights[k] ?? 0) * (columns[k]?.[i] ?? 0);
      out[i] = sum;
    }
  }
}
