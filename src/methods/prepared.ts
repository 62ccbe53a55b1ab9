// From a declaration to what runs: formula texts parsed, names resolved, dimensions checked.
// A method that has problems is never run.
import { checkDimensions, type Typed } from "../formula/check-dimensions.ts";
import { names as namesIn, parse } from "../formula/parse.ts";
import type { Tree } from "../formula/tree.ts";
import { evaluator } from "../formula/value.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import type { Source } from "../source.ts";
import { dimensionWords, sameDimension } from "../units/dimension.ts";
import { type Kind, kinds, kindsOf } from "../units/kind.ts";
import { quantity } from "../units/quantity.ts";
import { isQuantityField, symbolIn } from "./field.ts";
import type { Declaration, Limit, Steps } from "./method.ts";

export interface PreparedStep {
  readonly name: string;
  readonly tree: Tree;
  readonly uses: readonly string[];
  readonly kind: Kind | "yes/no";
  readonly symbol: string;
  readonly says: string | undefined;
  readonly source: Source | undefined;
  readonly value: ReturnType<typeof evaluator>;
}

export interface PreparedLimit extends Limit {
  readonly tree: Tree;
  readonly uses: readonly string[];
  readonly value: ReturnType<typeof evaluator>;
  /** The left side of a comparison, so that a broken limit can say what it found. */
  readonly left: { readonly value: ReturnType<typeof evaluator>; readonly kind: Kind } | undefined;
}

export interface Prepared {
  readonly each: readonly { readonly list: string; readonly steps: readonly PreparedStep[] }[];
  readonly variants: Readonly<Record<string, readonly PreparedStep[]>>;
  readonly steps: readonly PreparedStep[];
  readonly limits: readonly PreparedLimit[];
  readonly problems: readonly Problem[];
}

type Types = Map<string, Typed>;

const typedOf = (kind: Kind, column = false): Typed => ({ dimension: kinds[kind].dimension, kind, column });

function startTypes(d: Declaration): Types {
  const types: Types = new Map();
  for (const [name, field] of Object.entries(d.inputs)) {
    if (isQuantityField(field)) types.set(name, typedOf(field.kind));
    if (field.kind === "list")
      for (const [column, part] of Object.entries(field.of))
        if (isQuantityField(part)) types.set(`${name}.${column}`, typedOf(part.kind, true));
  }
  for (const [name, given] of Object.entries(d.procedure?.gives ?? {}))
    if (given.kind !== "text" && given.kind !== "yes/no") types.set(name, typedOf(given.kind));
  for (const [list, columns] of Object.entries(d.procedure?.givesRows ?? {}))
    for (const [column, part] of Object.entries(columns))
      if (part.kind !== "text" && part.kind !== "yes/no")
        types.set(`${list}.${column}`, typedOf(part.kind, true));
  return types;
}

/** What a step is called, measured in and sourced from. */
interface Labels {
  readonly kind: Kind | "yes/no" | undefined;
  readonly symbol: string;
  readonly says: string | undefined;
}

function labelsOf(d: Declaration, name: string, list?: string): Labels {
  const outer = list ? d.outputs[list] : d.outputs[name];
  const output = list === undefined ? outer : outer?.kind === "list" ? outer.of[name] : undefined;
  const between = d.between?.[list ? `${list}.${name}` : name];
  const kind = output && output.kind !== "text" && output.kind !== "list" ? output.kind : between?.kind;
  const symbol = symbolIn(output) ?? symbolIn(between) ?? name;
  return { kind, symbol, says: output?.says ?? between?.says };
}

/** Where the problems of a declaration are gathered. */
interface Found {
  readonly problems: Problem[];
  readonly say: (what: string, p: Problem) => void;
}

/** Reads one formula text and checks it in the scope of the names above, to which it adds its own. */
function planStep(
  d: Declaration,
  { problems, say }: Found,
  name: string,
  text: string,
  scope: Types,
  list: string | undefined,
  from: Source | undefined,
): PreparedStep | undefined {
  const tree = parse(text);
  const typed = isProblem(tree)
    ? tree
    : checkDimensions(tree, (used) => scope.get(used) ?? unknownName(used));
  if (isProblem(tree) || isProblem(typed)) {
    if (isProblem(typed)) say(name, typed);
    return undefined;
  }
  const labels = labelsOf(d, name, list);
  const kind = typed.truth ? "yes/no" : (labels.kind ?? typed.kind ?? kindsOf(typed.dimension)[0] ?? "ratio");
  problems.push(...misfits(d, name, typed, kind, labels.kind));
  const source = from ?? d.sources[name] ?? d.sources["*"];
  if (!source) problems.push(problem({ code: "no-source", where: d.id, what: name, must: "have a source" }));
  scope.set(name, typed.truth || kind === "yes/no" ? typed : { ...typed, kind });
  const { symbol, says } = labels;
  return { name, tree, uses: namesIn(tree), kind, symbol, says, source, value: evaluator(tree) };
}

const unknownName = (used: string): Problem =>
  problem({ code: "unknown-name", what: used, must: "be an input or a step above" });

/** A step whose dimension, or whose being a number or a truth, is not that of its declaration. */
function misfits(
  d: Declaration,
  name: string,
  typed: Typed,
  kind: Kind | "yes/no",
  declared: Kind | "yes/no" | undefined,
): Problem[] {
  const found: Problem[] = [];
  const refuse = (code: string, got: string, must: string) =>
    found.push(problem({ code, where: d.id, what: name, got, must }));
  if (kind !== "yes/no" && !typed.anyDimension && !sameDimension(kinds[kind].dimension, typed.dimension))
    refuse("dimension", dimensionWords(typed.dimension), `be a ${kind}`);
  if (declared !== undefined && (declared === "yes/no") !== (typed.truth === true))
    refuse("kind", typed.truth ? "a yes or no" : "a number", `be a ${declared}`);
  return found;
}

export function prepared(d: Declaration): Prepared {
  const problems: Problem[] = [];
  const types = startTypes(d);
  const say = (what: string, p: Problem) =>
    problems.push(p.with({ where: d.id, what: `${what} · ${p.what}` }));
  const planSteps = (steps: Steps, scope: Types, list?: string, from?: Source): PreparedStep[] =>
    Object.entries(steps).flatMap(
      ([name, text]) => planStep(d, { problems, say }, name, text, scope, list, from) ?? [],
    );

  const variants: Record<string, readonly PreparedStep[]> = {};
  const before = new Map(types);
  for (const [choice, steps] of Object.entries(d.variants?.sets ?? {})) {
    const scope = new Map(before);
    variants[choice] = planSteps(steps, scope, undefined, d.variants?.sources?.[choice]);
    for (const [name, typed] of scope) types.set(name, typed);
  }
  const each = Object.entries(d.each ?? {}).map(([list, steps]) => {
    const rowTypes: Types = new Map(types);
    for (const [name, typed] of types)
      if (name.startsWith(`${list}.`)) rowTypes.set(name.slice(list.length + 1), { ...typed, column: false });
    const planned = planSteps(steps, rowTypes, list);
    for (const step of planned) {
      const typed = rowTypes.get(step.name);
      if (typed) types.set(`${list}.${step.name}`, { ...typed, column: true });
    }
    return { list, steps: planned };
  });

  const steps = planSteps(d.steps ?? {}, types);
  return {
    each,
    variants,
    steps,
    limits: planLimits(d, types, say),
    problems: [...problems, ...unanswered(d, types), ...unfitting(d)],
  };
}

function planLimits(d: Declaration, types: Types, say: (what: string, p: Problem) => void): PreparedLimit[] {
  const typeOf = (name: string) =>
    types.get(name) ?? problem({ code: "unknown-name", what: name, must: "be an input or a step" });
  const planned: PreparedLimit[] = [];
  for (const limit of d.limits) {
    const tree = parse(limit.that);
    const typed = isProblem(tree) ? tree : checkDimensions(tree, typeOf);
    if (isProblem(typed)) say(`limit "${limit.that}"`, typed);
    else if (!typed.truth)
      say(
        `limit "${limit.that}"`,
        problem({ code: "not-a-truth", what: limit.that, must: "be a comparison" }),
      );
    if (isProblem(tree) || isProblem(typed)) continue;
    planned.push({ ...limit, tree, uses: namesIn(tree), value: evaluator(tree), left: leftOf(tree, typeOf) });
  }
  return planned;
}

function leftOf(tree: Tree, typeOf: (name: string) => Typed | Problem): PreparedLimit["left"] {
  if (tree.type !== "compare") return undefined;
  const typed = checkDimensions(tree.left, typeOf);
  if (isProblem(typed)) return undefined;
  return { value: evaluator(tree.left), kind: typed.kind ?? kindsOf(typed.dimension)[0] ?? "ratio" };
}

/** Outputs that neither a step nor the procedure provides. */
function unanswered(d: Declaration, types: Types): Problem[] {
  const given = new Set([
    ...types.keys(),
    ...Object.keys(d.procedure?.gives ?? {}),
    ...Object.keys(d.procedure?.givesRows ?? {}),
  ]);
  return Object.keys(d.outputs)
    .filter((name) => !given.has(name) && ![...given].some((known) => known.startsWith(`${name}.`)))
    .map((name) =>
      problem({ code: "no-step", where: d.id, what: name, must: "come from a step or the procedure" }),
    );
}

/** Variants that no input can choose, choices that no variant answers, defaults that cannot be read. */
function unfitting(d: Declaration): Problem[] {
  const found: Problem[] = [];
  const by = d.variants?.by;
  if (d.variants && by !== undefined) {
    const input = d.inputs[by];
    const given = d.procedure?.gives?.[by];
    if (input?.kind !== "text" && given?.kind !== "text")
      found.push(
        problem({
          code: "variant",
          where: d.id,
          what: by,
          got: "no text",
          must: "be a text input that chooses the variant",
        }),
      );
    const unanswered = (input?.kind === "text" ? (input.choices ?? []) : []).filter(
      (choice) => !Object.hasOwn(d.variants?.sets ?? {}, choice),
    );
    for (const choice of unanswered)
      found.push(problem({ code: "variant", where: d.id, what: by, got: choice, must: "have a variant" }));
  }
  for (const [name, field] of Object.entries(d.inputs)) {
    if (!isQuantityField(field) || field.default === undefined) continue;
    const read = quantity(field.default, field.kind);
    if (isProblem(read)) found.push(read.with({ where: d.id, what: `default of ${name}` }));
  }
  return found;
}
