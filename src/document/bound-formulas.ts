// The formulas between braces of a note, in the order of its text.
import { parse } from "../formula/parse.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import type { Block, Inline } from "./markdown.ts";

export type BoundInline = Extract<Inline, { type: "bound" }>;

export const inlinesOf = (block: Block): readonly Inline[] =>
  block.type === "list" ? block.items.flat() : block.inlines;

/** Every inline that holds no other, in the order of the text. */
export function leavesOf(inlines: readonly Inline[]): readonly Exclude<Inline, { inlines: unknown }>[] {
  return inlines.flatMap((inline) => ("inlines" in inline ? leavesOf(inline.inlines) : [inline]));
}

export const boundIn = (blocks: readonly Block[]): readonly BoundInline[] =>
  blocks.flatMap((block) => leavesOf(inlinesOf(block)).filter((leaf) => leaf.type === "bound"));

/** What is wrong with a formula as it is written; names are looked up when it is worked out. */
export function boundFault({ formula }: BoundInline, what: string): Problem | undefined {
  const hint = "for a brace that is no value write \\{";
  if (formula === "")
    return problem({ code: "empty-brace", what, got: "{}", must: "hold a name or a formula", hint });
  const tree = parse(formula);
  return isProblem(tree)
    ? tree.with({ what: `${what} · {${formula}} · ${tree.what}`, hint: tree.hint ?? hint })
    : undefined;
}
