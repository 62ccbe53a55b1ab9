// A graph to a list of passes over columns: an operation whose result is used once joins the pass
// of the operation that uses it, and registers are taken again as soon as their content is dead.

import { type Form, formOf, fusedForm } from "./forms.ts";
import type { Graph } from "./graph.ts";
import { fusedKernels, type Kernel, kernels } from "./kernels.ts";

/** Inputs are never written to; a register that holds a result is kept until the end. */
export interface Register {
  readonly type: "input" | "scratch";
  readonly index: number;
}

/** One pass. Operands the kernel does not take are left out. */
export interface Pass {
  readonly kernel: Kernel;
  readonly out: Register;
  readonly a: Register;
  readonly b: Register | undefined;
  readonly c: Register | undefined;
  readonly k: number;
  readonly m: number;
}

export interface Schedule {
  readonly passes: readonly Pass[];
  readonly scratch: number;
  /** Where each wanted place is found at the end: a register or a number. */
  readonly results: readonly (Register | number)[];
  /** Operations, however few passes they take. */
  readonly operations: number;
}

export function schedule(graph: Graph, wanted: readonly number[], fuse = true): Schedule {
  const uses = countUses(graph, wanted);
  const forms = new Map<number, Form>();
  const joined = new Set<number>();
  let operations = 0;
  graph.nodes.forEach((node, place) => {
    if (!uses[place] || node.op === "input" || node.op === "constant") return;
    operations++;
    let form = formOf(graph, node, place);
    for (const operand of fuse ? node.of : []) {
      const inner = uses[operand] === 1 ? forms.get(operand) : undefined;
      const both = inner && fusedForm(graph, node, place, inner);
      if (!both) continue;
      form = both;
      joined.add(operand);
      break;
    }
    forms.set(place, form);
  });
  const kept = [...forms.values()].filter(({ place }) => !joined.has(place));
  return { ...allocate(graph, kept, wanted), operations };
}

/** How often each place is read, a wanted result being read once more at the end. */
function countUses(graph: Graph, wanted: readonly number[]): Uint32Array {
  const uses = new Uint32Array(graph.nodes.length);
  for (const place of wanted) uses[place] = (uses[place] ?? 0) + 1;
  for (let place = graph.nodes.length - 1; place >= 0; place--) {
    if (!uses[place]) continue;
    for (const operand of graph.nodes[place]?.of ?? []) uses[operand] = (uses[operand] ?? 0) + 1;
  }
  return uses;
}

function allocate(
  graph: Graph,
  forms: readonly Form[],
  wanted: readonly number[],
): Omit<Schedule, "operations"> {
  const lastUse = new Map<number, number>();
  forms.forEach(({ a, b, c }, index) => {
    for (const place of [a, b, c]) if (place !== undefined) lastUse.set(place, index);
  });
  for (const place of wanted) lastUse.set(place, forms.length);
  const registers = new Map<number, Register>();
  const free: Register[] = [];
  let scratch = 0;
  const where = (place: number): Register =>
    registers.get(place) ?? { type: "input", index: graph.nodes[place]?.value ?? 0 };

  const passes = forms.map((form, index): Pass => {
    const operands = [...new Set([form.a, form.b, form.c])].filter((place) => place !== undefined);
    for (const place of operands) {
      const register = where(place);
      if (register.type === "scratch" && lastUse.get(place) === index) free.push(register);
    }
    const [a, b, c] = [form.a, form.b, form.c].map((place) =>
      place === undefined ? undefined : where(place),
    );
    // the element is read before it is written, so a dying operand may give its register
    const out = free.pop() ?? { type: "scratch", index: scratch++ };
    registers.set(form.place, out);
    const kernel = (form.fused ? fusedKernels : kernels)[form.key];
    if (!kernel || !a) throw new Error(`no kernel "${form.key}"`);
    return { kernel, out, a, b, c, k: form.k ?? 0, m: form.m ?? 0 };
  });
  return { passes, scratch, results: wanted.map((place) => graph.known(place) ?? where(place)) };
}
