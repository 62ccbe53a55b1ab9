// Rows to columns at least cost, exactly: shortest augmenting paths with potentials (Kuhn 1955,
// the path form from memory). Costs are whole numbers, so sums and the proof are exact; a pair that
// must not be is Infinity. The potentials that come out prove that nothing cheaper exists.

export interface Assignment {
  /** Column of each row. */
  readonly columns: readonly number[];
  readonly rowPotentials: readonly number[];
  readonly columnPotentials: readonly number[];
  readonly cost: number;
}

export type Costs = readonly (readonly number[])[];

const costOf = (costs: Costs, row: number, column: number): number =>
  costs[row]?.[column] ?? Number.POSITIVE_INFINITY;

/** undefined when the rows cannot all have a column. There must be at least as many columns as rows. */
export function assign(costs: Costs): Assignment | undefined {
  const rows = costs.length;
  const columns = costs[0]?.length ?? 0;
  if (columns < rows) return undefined;
  const u = new Float64Array(rows);
  const v = new Float64Array(columns);
  const rowOf = new Int32Array(columns).fill(-1);
  for (let row = 0; row < rows; row++) if (!augment(costs, row, { u, v, rowOf })) return undefined;
  const chosen = Array.from({ length: rows }, () => -1);
  let cost = 0;
  for (const [column, row] of rowOf.entries())
    if (row >= 0) {
      chosen[row] = column;
      cost += costOf(costs, row, column);
    }
  return { columns: chosen, rowPotentials: [...u], columnPotentials: [...v], cost };
}

interface Work {
  readonly u: Float64Array;
  readonly v: Float64Array;
  readonly rowOf: Int32Array;
}

/** Finds the cheapest way to give `start` a column, moving others along, and shifts the potentials. */
function augment(costs: Costs, start: number, { u, v, rowOf }: Work): boolean {
  const columns = v.length;
  const distance = new Float64Array(columns).fill(Number.POSITIVE_INFINITY);
  const from = new Int32Array(columns).fill(-1); // the column before, on the path back to start
  const reached = new Uint8Array(columns);
  const order: number[] = [];
  let [row, before, length] = [start, -1, 0];
  let free = -1;
  while (free < 0) {
    let nearest = -1;
    for (let column = 0; column < columns; column++) {
      if (reached[column]) continue;
      const step = length + costOf(costs, row, column) - (u[row] ?? 0) - (v[column] ?? 0);
      if (step < (distance[column] ?? 0)) {
        distance[column] = step;
        from[column] = before;
      }
      if (nearest < 0 || (distance[column] ?? 0) < (distance[nearest] ?? 0)) nearest = column;
    }
    if (nearest < 0 || distance[nearest] === Number.POSITIVE_INFINITY) return false;
    reached[nearest] = 1;
    order.push(nearest);
    length = distance[nearest] ?? 0;
    if ((rowOf[nearest] ?? -1) < 0) free = nearest;
    else {
      row = rowOf[nearest] ?? -1;
      before = nearest;
    }
  }
  u[start] = (u[start] ?? 0) + length;
  for (const column of order) {
    const slack = length - (distance[column] ?? 0);
    v[column] = (v[column] ?? 0) - slack;
    const owner = rowOf[column] ?? -1;
    if (owner >= 0) u[owner] = (u[owner] ?? 0) + slack;
  }
  for (let column = free; column >= 0; ) {
    const previous = from[column] ?? -1;
    rowOf[column] = previous < 0 ? start : (rowOf[previous] ?? -1);
    column = previous;
  }
  return true;
}

export interface Proof {
  /** Least of cost less both potentials over all allowed pairs: not negative, or the answer is not the cheapest. */
  readonly smallestReducedCost: number;
  /** Cost less the sum of all potentials: 0, or the answer is not the cheapest. */
  readonly gap: number;
  readonly holds: boolean;
}

/**
 * Any assignment costs at least the sum of the potentials when no pair costs less than its two
 * potentials and no column's potential is above 0; this one costs exactly that sum.
 */
export function proofOf(costs: Costs, found: Assignment): Proof {
  let smallest = Number.POSITIVE_INFINITY;
  for (const [row, line] of costs.entries())
    for (const [column, cost] of line.entries())
      smallest = Math.min(
        smallest,
        cost - (found.rowPotentials[row] ?? 0) - (found.columnPotentials[column] ?? 0),
      );
  const bound = [...found.rowPotentials, ...found.columnPotentials].reduce((sum, each) => sum + each, 0);
  const own = found.columns.reduce((sum, column, row) => sum + costOf(costs, row, column), 0);
  const apart = new Set(found.columns).size === found.columns.length;
  const gap = own - bound;
  const signs = found.columnPotentials.every((each) => each <= 0);
  return { smallestReducedCost: smallest, gap, holds: smallest >= 0 && gap === 0 && signs && apart };
}
