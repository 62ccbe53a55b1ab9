// Notes: the Markdown tree as elements, with the values of the page in their places.
import type { Block, Inline } from "../../document/markdown.ts";
import type { ProseValue } from "../../engine/line.ts";
import { root, sentence } from "../../problem.ts";
import { type Child, el } from "../dom.ts";

type Bound = ProseValue["bound"];

export const prose = ({ blocks, bound }: ProseValue): readonly HTMLElement[] =>
  blocks.map((block) => blockElement(block, bound));

function blockElement(block: Block, bound: Bound): HTMLElement {
  const inlines = (parts: readonly Inline[]): readonly Child[] => parts.map((part) => inline(part, bound));
  switch (block.type) {
    case "paragraph":
      return el("p", {}, ...inlines(block.inlines));
    case "heading":
      return el(block.level === 1 ? "h2" : block.level === 2 ? "h3" : "h4", {}, ...inlines(block.inlines));
    case "list":
      return el(
        block.ordered ? "ol" : "ul",
        {},
        ...block.items.map((item) => el("li", {}, ...inlines(item))),
      );
  }
}

function inline(part: Inline, bound: Bound): Child {
  switch (part.type) {
    case "text":
      return part.text;
    case "code":
      return el("code", {}, part.text);
    case "bound":
      return boundElement(bound[part.formula]);
    case "emphasis":
      return el("em", {}, ...part.inlines.map((inner) => inline(inner, bound)));
    case "strong":
      return el("strong", {}, ...part.inlines.map((inner) => inline(inner, bound)));
    case "link":
      return el(
        "a",
        { href: part.href, rel: "noreferrer" },
        ...part.inlines.map((inner) => inline(inner, bound)),
      );
  }
}

/** Words are text whatever they hold; why there is no answer is said with it. */
function boundElement(bound: Bound[string] | undefined): HTMLElement {
  const why = bound?.problem && sentence(root(bound.problem));
  return el("span", { class: "bound", ...(why !== undefined && { title: why }) }, bound?.text ?? "no answer");
}
