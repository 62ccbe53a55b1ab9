// Notes: the Markdown tree as elements.
import type { Block, Inline } from "../document/markdown.ts";
import { parseMarkdown } from "../document/markdown.ts";
import { type Child, el } from "./dom.ts";

export const prose = (text: string): readonly HTMLElement[] => parseMarkdown(text).map(blockElement);

function blockElement(block: Block): HTMLElement {
  switch (block.type) {
    case "paragraph":
      return el("p", {}, ...block.inlines.map(inline));
    case "heading":
      return el(block.level === 1 ? "h2" : block.level === 2 ? "h3" : "h4", {}, ...block.inlines.map(inline));
    case "list":
      return el(
        block.ordered ? "ol" : "ul",
        {},
        ...block.items.map((item) => el("li", {}, ...item.map(inline))),
      );
  }
}

function inline(part: Inline): Child {
  switch (part.type) {
    case "text":
      return part.text;
    case "code":
      return el("code", {}, part.text);
    case "emphasis":
      return el("em", {}, ...part.inlines.map(inline));
    case "strong":
      return el("strong", {}, ...part.inlines.map(inline));
    case "link":
      return el("a", { href: part.href, rel: "noreferrer" }, ...part.inlines.map(inline));
  }
}
