// Which kernel an operation of the graph takes, by itself or in one pass with an operand.

import type { Graph, GraphNode } from "./graph.ts";
import { fusedKernels } from "./kernels.ts";

/** An operation, or a fused pair, with its operands: places in the graph and numbers. */
export interface Form {
  readonly place: number;
  readonly key: string;
  readonly fused: boolean;
  readonly a?: number | undefined;
  readonly b?: number | undefined;
  readonly c?: number | undefined;
  readonly k?: number | undefined;
  readonly m?: number | undefined;
}

const spelled: Partial<Record<GraphNode["op"], string>> = { negate: "-" };

/** The form of an operation by itself. */
export function formOf(graph: Graph, node: GraphNode, place: number): Form {
  const [x = -1, y, z] = node.of;
  const common = { place, fused: false };
  const [knownX, knownY] = [graph.known(x), y === undefined ? undefined : graph.known(y)];
  if (y === undefined) {
    const sign = spelled[node.op];
    return { ...common, key: sign === undefined ? `${node.op} a` : `${sign}a`, a: x };
  }
  if (z !== undefined) return { ...common, a: x, ...chooseForm(y, z, knownY, graph.known(z)) };
  if (knownX === undefined && knownY === undefined) return { ...common, key: `a ${node.op} b`, a: x, b: y };
  if (knownY !== undefined) return { ...common, key: `a ${node.op} k`, a: x, k: knownY };
  const swapped = node.op === "+" || node.op === "*";
  return { ...common, key: swapped ? `a ${node.op} k` : `k ${node.op} a`, a: y, k: knownX };
}

function chooseForm(
  yes: number,
  no: number,
  knownYes: number | undefined,
  knownNo: number | undefined,
): Pick<Form, "key" | "b" | "c" | "k" | "m"> {
  if (knownYes === undefined && knownNo === undefined) return { key: "a ? b : c", b: yes, c: no };
  if (knownYes === undefined) return { key: "a ? b : k", b: yes, k: knownNo };
  if (knownNo === undefined) return { key: "a ? k : b", b: no, k: knownYes };
  return { key: "a ? k : m", k: knownYes, m: knownNo };
}

/** The operation and one operand's own operation in one pass, if there is a kernel for the two. */
export function fusedForm(graph: Graph, node: GraphNode, place: number, inner: Form): Form | undefined {
  if (inner.fused) return undefined;
  const outer = outerForm(graph, node, inner.place);
  if (!outer) return undefined;
  const key = `${inner.key}; ${outer.key}`;
  return Object.hasOwn(fusedKernels, key) ? { ...inner, ...outer, place, key, fused: true } : undefined;
}

/** The operation with `t` for the operand at `inner`. */
function outerForm(graph: Graph, node: GraphNode, inner: number): Pick<Form, "key" | "c" | "m"> | undefined {
  const [x = -1, y, z] = node.of;
  if (z !== undefined) return undefined;
  if (y === undefined) {
    const sign = spelled[node.op];
    return { key: sign === undefined ? `${node.op} t` : `${sign}t` };
  }
  const onLeft = x === inner;
  const other = onLeft ? y : x;
  const known = graph.known(other);
  const symbol = known === undefined ? "c" : "m";
  const first = onLeft || node.op === "+" || node.op === "*";
  const key = first ? `t ${node.op} ${symbol}` : `${symbol} ${node.op} t`;
  return known === undefined ? { key, c: other } : { key, m: known };
}
