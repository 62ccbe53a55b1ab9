// Judges the limits of a method. A broken limit gives no answer and names the input;
// one that only warns lets the answer stand.
import { plain, show, symbolOf } from "../formula/show.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { cite } from "../source.ts";
import { isPartlyKnown, lookInPresent } from "./inside.ts";
import type { PreparedLimit } from "./prepared.ts";
import { computedUnit, formatShort, usualUnit } from "./solution.ts";
import type { Workspace } from "./workspace.ts";

/** Every limit whose names all have values by now is judged, once. */
export function judgeLimits(work: Workspace): Problem | undefined {
  for (const limit of work.ready.limits) {
    if (work.judged.has(limit) || !limit.uses.every((name) => isPartlyKnown(work.values, name))) continue;
    work.judged.add(limit);
    const holds = limit.value(lookInPresent(work.values));
    if (holds === true) continue;
    const broken = isProblem(holds) ? holds.with({ where: work.d.id }) : brokenLimit(limit, work);
    if (!limit.warn) return broken;
    work.warnings.push(broken);
    if (limit.warn === "spoils") spoil(work, limit.spoils ?? Object.keys(work.d.outputs), broken);
  }
  return undefined;
}

/** Marks outputs whose number does not hold, each with the reason. */
function spoil({ spoilt }: Workspace, outputs: readonly string[], why: Problem): void {
  for (const output of outputs) spoilt.set(output, [...(spoilt.get(output) ?? []), why]);
}

const opposite = {
  "<": "be below",
  "<=": "be at most",
  ">": "be above",
  ">=": "be at least",
  "==": "be",
  "!=": "differ from",
} as const;

function brokenLimit(limit: PreparedLimit, work: Workspace): Problem {
  const { tree } = limit;
  const words = (t: typeof tree) => plain(show(t, (name) => symbolOf(named(work, name))));
  const bound = (t: typeof tree) =>
    t.type === "name" && !t.output ? named(work, t.name, saysOf(work, t.name)) : words(t);
  const must =
    tree.type === "compare" ? `${opposite[tree.op]} ${bound(tree.right)}` : `keep to ${words(tree)}`;
  return problem({
    code: limit.code ?? (limit.warn ? "limit-warning" : "limit"),
    where: work.d.id,
    what: subject(limit, work),
    got: found(limit, work),
    must,
    why: limit.source ? `${limit.else} (${cite(limit.source)})` : limit.else,
    hint: limit.hint,
  });
}

/** What the left side is called: the words of the name it is about, else the formula itself. */
function subject(limit: PreparedLimit, work: Workspace): string {
  const { tree } = limit;
  const first = limit.uses[0] ?? limit.that;
  const bare = tree.type === "compare" && tree.left.type === "name";
  if (!bare && tree.type === "compare" && !first.includes("."))
    return plain(show(tree.left, (name) => symbolOf(name)));
  return columnWords(first, work) ?? saysOf(work, first);
}

/** "segments.length" is the words of that column. */
function columnWords(name: string, work: Workspace): string | undefined {
  const [list = "", column] = name.split(".");
  if (column === undefined) return undefined;
  const { inputs, outputs, between, procedure } = work.d;
  const input = inputs[list];
  const output = outputs[list];
  return (
    (input?.kind === "list" ? input.of[column]?.says : undefined) ??
    between?.[name]?.says ??
    procedure?.givesRows?.[list]?.[column]?.says ??
    (output?.kind === "list" ? output.of[column]?.says : undefined)
  );
}

function found(limit: PreparedLimit, work: Workspace): string | undefined {
  const left = limit.left;
  const value = left?.value(lookInPresent(work.values));
  if (!left || typeof value !== "number") return undefined;
  const typed =
    limit.tree.type === "compare" && limit.tree.left.type === "name"
      ? work.leaves.get(limit.tree.left.name)?.unit
      : undefined;
  return formatShort(value, typed ?? usualUnit(left.kind));
}

const saysOf = ({ d }: Workspace, name: string): string =>
  d.inputs[name]?.says ??
  d.outputs[name]?.says ??
  d.between?.[name]?.says ??
  d.procedure?.gives?.[name]?.says ??
  name;

function named(work: Workspace, name: string, words = name): string {
  const leaf = work.leaves.get(name);
  if (!leaf || typeof leaf.si !== "number") return words;
  return `${words} (${formatShort(leaf.si, leaf.unit ?? computedUnit(leaf))})`;
}
