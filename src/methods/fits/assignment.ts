// Rows to columns at least cost, exactly: bids first, then shortest augmenting paths with potentials
// (Kuhn 1955; Jonker and Volgenant, Computing 38, 1987; both from memory). Costs are whole numbers, so sums and the proof are exact; a pair that
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
  const state = start(costs, rows, columns);
  let free = Array.from({ length: rows }, (_, row) => row);
  for (let pass = 0; pass < 2; pass++) free = settleByPrice(state, free);
  for (const row of free) if (!augment(state, row)) return undefined;
  return answer(costs, state);
}

/** Costs row after row in one piece, and what is known so far. Prices of columns only fall from 0. */
interface State {
  readonly rows: number;
  readonly columns: number;
  readonly cost: Float64Array;
  readonly price: Float64Array;
  readonly rowOf: Int32Array;
  readonly columnOf: Int32Array;
}

function start(costs: Costs, rows: number, columns: number): State {
  const cost = new Float64Array(rows * columns).fill(Number.POSITIVE_INFINITY);
  for (const [row, line] of costs.entries()) cost.set(line, row * columns);
  return {
    rows,
    columns,
    cost,
    price: new Float64Array(columns),
    rowOf: new Int32Array(columns).fill(-1),
    columnOf: new Int32Array(rows).fill(-1),
  };
}

/**
 * Each free row takes its cheapest column at present prices and bids that price down to its second
 * choice; whoever stood there becomes free. Most rows settle here without a search. Gives the rows left.
 */
function settleByPrice(state: State, waiting: readonly number[]): number[] {
  const { columns, cost, price, rowOf, columnOf } = state;
  const left: number[] = [];
  const queue = [...waiting];
  let steps = 4 * queue.length + 16; // ties can pass a column round for ever
  for (let row = queue.shift(); row !== undefined; row = queue.shift()) {
    let first = Number.POSITIVE_INFINITY;
    let second = Number.POSITIVE_INFINITY;
    let best = -1;
    let next = -1;
    for (let column = 0, at = row * columns; column < columns; column++, at++) {
      const reduced = (cost[at] ?? 0) - (price[column] ?? 0);
      if (reduced >= second) continue;
      if (reduced < first) {
        second = first;
        next = best;
        first = reduced;
        best = column;
      } else {
        second = reduced;
        next = column;
      }
    }
    const held = best < 0 ? -1 : (rowOf[best] ?? -1);
    if (best < 0 || (second === Number.POSITIVE_INFINITY && held >= 0) || steps-- <= 0) {
      left.push(row);
      continue;
    }
    if (first < second && second < Number.POSITIVE_INFINITY)
      price[best] = (price[best] ?? 0) - (second - first);
    else if (held >= 0 && next >= 0 && (rowOf[next] ?? -1) < 0) best = next; // a tie: the free one
    const pushed = rowOf[best] ?? -1;
    rowOf[best] = row;
    columnOf[row] = best;
    if (pushed < 0) continue;
    columnOf[pushed] = -1;
    if (first < second) queue.unshift(pushed);
    else left.push(pushed);
  }
  return left;
}

/** Cheapest way from a free row to a free column, by Dijkstra's rule over the reduced costs; then along it. */
function augment(state: State, start: number): boolean {
  const { columns, cost, price, rowOf, columnOf } = state;
  const distance = new Float64Array(columns);
  const from = new Int32Array(columns).fill(start);
  const order = Int32Array.from({ length: columns }, (_, column) => column);
  for (let column = 0; column < columns; column++)
    distance[column] = (cost[start * columns + column] ?? 0) - (price[column] ?? 0);
  let [done, near, reached, least] = [0, 0, -1, 0];
  while (reached < 0) {
    if (done === near) {
      least = Number.POSITIVE_INFINITY;
      for (let k = near; k < columns; k++) least = Math.min(least, distance[order[k] ?? 0] ?? least);
      if (least === Number.POSITIVE_INFINITY) return false;
      for (let k = near; k < columns; k++) {
        const column = order[k] ?? 0;
        if (distance[column] !== least) continue;
        if ((rowOf[column] ?? -1) < 0) {
          reached = column;
          break;
        }
        order[k] = order[near] ?? 0;
        order[near++] = column;
      }
      if (reached >= 0) break;
    }
    const scanned = order[done++] ?? 0;
    const row = rowOf[scanned] ?? 0;
    const offset = (cost[row * columns + scanned] ?? 0) - (price[scanned] ?? 0) - least;
    for (let k = near; k < columns; k++) {
      const column = order[k] ?? 0;
      const through = (cost[row * columns + column] ?? 0) - (price[column] ?? 0) - offset;
      if (through >= (distance[column] ?? 0)) continue;
      distance[column] = through;
      from[column] = row;
      if (through !== least) continue;
      if ((rowOf[column] ?? -1) < 0) {
        reached = column;
        break;
      }
      order[k] = order[near] ?? 0;
      order[near++] = column;
    }
  }
  for (let k = 0; k < near; k++) {
    const column = order[k] ?? 0;
    price[column] = (price[column] ?? 0) + Math.min(0, (distance[column] ?? 0) - least);
  }
  for (let column = reached, row = -1; row !== start; ) {
    row = from[column] ?? start;
    rowOf[column] = row;
    const before = columnOf[row] ?? -1;
    columnOf[row] = column;
    column = before;
  }
  return true;
}

function answer(costs: Costs, { columnOf, price, rows }: State): Assignment {
  const columns = Array.from({ length: rows }, (_, row) => columnOf[row] ?? -1);
  const rowPotentials = columns.map((column, row) => costOf(costs, row, column) - (price[column] ?? 0));
  const cost = columns.reduce((sum, column, row) => sum + costOf(costs, row, column), 0);
  return { columns, rowPotentials, columnPotentials: [...price], cost };
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
