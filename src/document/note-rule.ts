// Braces in a note are read with the page: a formula that does not parse is said at its own line and column.
import { isScalar } from "yaml";
import type { Problem } from "../problem.ts";
import { type BoundInline, boundFault, inlinesOf } from "./bound-formulas.ts";
import { type Inline, parseMarkdown } from "./markdown.ts";
import { nodeAt } from "./node-at.ts";
import type { YamlPage } from "./parse-yaml.ts";
import type { Draft } from "./rules.ts";

export function noteProblems(draft: Draft, index: number, yaml: YamlPage): readonly Problem[] {
  const text = draft.fields["note"];
  if (typeof text !== "string" || !text.includes("{")) return [];
  const what = draft.kind === "note" ? "note" : `note of ${draft.label}`;
  return placed(parseMarkdown(text).flatMap(inlinesOf)).flatMap(({ inline, before }) => {
    const fault = boundFault(inline, what);
    return fault ? [fault.at(whereOf(before, text, index, yaml))] : [];
  });
}

interface Placed {
  readonly inline: BoundInline;
  /** Opening braces of the text that stand before it. */
  readonly before: number;
}

const braces = (text: string): number => text.split("{").length - 1;

function placed(inlines: readonly Inline[]): readonly Placed[] {
  const found: Placed[] = [];
  let before = 0;
  const visit = (inline: Inline): void => {
    if ("inlines" in inline) {
      for (const inner of inline.inlines) visit(inner);
      if (inline.type === "link") before += braces(inline.href);
    } else if (inline.type === "bound") {
      found.push({ inline, before });
      before += 1 + braces(inline.formula);
    } else before += braces(inline.text);
  };
  for (const inline of inlines) visit(inline);
  return found;
}

/** The brace itself, where the file shows the text as it is; else the begin of the text. */
function whereOf(before: number, text: string, index: number, { root, from }: YamlPage): string {
  const { node, offset } = nodeAt(root, ["page", index, "note"]);
  const [begin, end] = (isScalar(node) && node.range) || [offset, offset];
  const parts = from.text.slice(begin, end).split("{");
  if (parts.length - 1 !== braces(text)) return from.where(offset);
  return from.where(begin + parts.slice(0, before + 1).join("{").length);
}
