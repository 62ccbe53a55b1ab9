// A graph to a list of passes over columns: one per operation that a wanted result needs. Registers
// are taken again as soon as their content is dead.

import type { Graph } from "./graph.ts";
import { filled, type Kernel, kernels } from "./kernels.ts";

/** Inputs are never written to; a register that holds a result is kept until the end. */
export interface Register {
  readonly type: "input" | "scratch";
  readonly index: number;
}

/** One pass: the kernel, where it writes, what it reads. */
interface Pass {
  readonly kernel: Kernel;
  readonly out: Register;
  readonly of: readonly Register[];
}

export interface Schedule {
  readonly passes: readonly Pass[];
  /** How many scratch columns. */
  readonly scratch: number;
  /** Where each wanted place is found at the end. */
  readonly results: readonly Register[];
}

export function schedule(graph: Graph, wanted: readonly number[]): Schedule {
  const lastUse = lastUses(graph, wanted);
  const registers = new Map<number, Register>();
  const where = (place: number): Register => registers.get(place) ?? { type: "input", index: -1 };
  const free: Register[] = [];
  const passes: Pass[] = [];
  let scratch = 0;
  graph.nodes.forEach(({ op, of, value }, place) => {
    if (op === "input") registers.set(place, { type: "input", index: value });
    if (op === "input" || lastUse[place] === undefined) return;
    const dying = [...new Set(of)].filter((operand) => lastUse[operand] === place).map(where);
    free.push(...dying.filter(({ type }) => type === "scratch"));
    // the element is read before it is written, so a dying operand may give its register
    const out = free.pop() ?? { type: "scratch", index: scratch++ };
    registers.set(place, out);
    passes.push({ kernel: op === "constant" ? filled(value) : kernels[op], out, of: of.map(where) });
  });
  return { passes, scratch, results: wanted.map(where) };
}

/** By place the last place that reads it, beyond the end for what is wanted; nothing where it is not needed. */
function lastUses(graph: Graph, wanted: readonly number[]): readonly (number | undefined)[] {
  const last: (number | undefined)[] = [];
  for (const place of wanted) last[place] = graph.nodes.length;
  for (let place = graph.nodes.length - 1; place >= 0; place--) {
    if (last[place] === undefined) continue;
    for (const operand of graph.nodes[place]?.of ?? []) last[operand] ??= place;
  }
  return last;
}
