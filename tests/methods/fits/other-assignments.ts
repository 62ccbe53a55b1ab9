// Two further ways to give rows a column at least cost, sharing nothing with the method: by trying
// every way, and as a flow of least cost with paths found by Bellman and Ford.
import type { Costs } from "../../../src/methods/fits/assignment.ts";

/** Least cost over all ways, Infinity when there is none. */
export function byTrying(costs: Costs): number {
  const columns = costs[0]?.length ?? 0;
  const used = Array.from({ length: columns }, () => false);
  const from = (row: number): number => {
    const line = costs[row];
    if (!line) return 0;
    let best = Number.POSITIVE_INFINITY;
    for (let column = 0; column < columns; column++) {
      if (used[column]) continue;
      used[column] = true;
      best = Math.min(best, (line[column] ?? Number.POSITIVE_INFINITY) + from(row + 1));
      used[column] = false;
    }
    return best;
  };
  return from(0);
}

interface Edge {
  readonly from: number;
  readonly to: number;
  capacity: number;
  readonly cost: number;
  readonly back: number;
}

/** Source, rows, columns, sink; one unit of flow for each row. */
export function byFlow(costs: Costs): number {
  const rows = costs.length;
  const columns = costs[0]?.length ?? 0;
  const [source, sink] = [0, rows + columns + 1];
  const edges: Edge[] = [];
  const join = (from: number, to: number, cost: number) => {
    edges.push({ from, to, capacity: 1, cost, back: edges.length + 1 });
    edges.push({ from: to, to: from, capacity: 0, cost: -cost, back: edges.length - 1 });
  };
  for (let row = 0; row < rows; row++) join(source, 1 + row, 0);
  for (let column = 0; column < columns; column++) join(1 + rows + column, sink, 0);
  for (const [row, line] of costs.entries())
    for (const [column, cost] of line.entries())
      if (Number.isFinite(cost)) join(1 + row, 1 + rows + column, cost);
  let total = 0;
  for (let unit = 0; unit < rows; unit++) {
    const path = cheapestPath(edges, source, sink);
    if (!path) return Number.POSITIVE_INFINITY;
    for (const edge of path) {
      edge.capacity -= 1;
      const back = edges[edge.back];
      if (back) back.capacity += 1;
      total += edge.cost;
    }
  }
  return total;
}

function cheapestPath(edges: readonly Edge[], source: number, sink: number): readonly Edge[] | undefined {
  const distance = new Map([[source, 0]]);
  const last = new Map<number, Edge>();
  for (let changed = true; changed; ) {
    changed = false;
    for (const edge of edges) {
      const start = distance.get(edge.from);
      if (edge.capacity === 0 || start === undefined) continue;
      if (start + edge.cost < (distance.get(edge.to) ?? Number.POSITIVE_INFINITY)) {
        distance.set(edge.to, start + edge.cost);
        last.set(edge.to, edge);
        changed = true;
      }
    }
  }
  const path: Edge[] = [];
  for (let node = sink; node !== source; ) {
    const edge = last.get(node);
    if (!edge) return undefined;
    path.push(edge);
    node = edge.from;
  }
  return path;
}
