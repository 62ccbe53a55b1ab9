// Notes: a small subset of Markdown as a plain tree for the views. No HTML: a tag is text like any other.
// Blocks: paragraphs, headings (#, ##, ###), lists (-, *, 1.). Inlines: *emphasis*, **strong**, `code`, [link](address).
import { type Inline, parseInlines } from "./markdown-inline.ts";

export type { Inline } from "./markdown-inline.ts";

export type Block =
  | { readonly type: "paragraph"; readonly inlines: readonly Inline[] }
  | { readonly type: "heading"; readonly level: 1 | 2 | 3; readonly inlines: readonly Inline[] }
  | { readonly type: "list"; readonly ordered: boolean; readonly items: readonly (readonly Inline[])[] };

type Line =
  | { readonly type: "blank" }
  | { readonly type: "heading"; readonly level: 1 | 2 | 3; readonly text: string }
  | { readonly type: "entry"; readonly ordered: boolean; readonly text: string }
  | { readonly type: "text"; readonly text: string };

const levels: Readonly<Record<string, 1 | 2 | 3>> = { "#": 1, "##": 2, "###": 3 };

function lineOf(text: string): Line {
  const line = text.trim();
  if (line === "") return { type: "blank" };
  const heading = /^(#{1,3})\s/.exec(line);
  if (heading)
    return {
      type: "heading",
      level: levels[heading[1] ?? ""] ?? 3,
      text: withoutHashes(line.slice(heading[0].length)),
    };
  const entry = /^(?:[-*]|(\d{1,3})[.)])\s/.exec(line);
  if (entry)
    return { type: "entry", ordered: entry[1] !== undefined, text: line.slice(entry[0].length).trimStart() };
  return { type: "text", text: line };
}

/** "C ##" → "C": marks that close a heading stand behind a space. */
function withoutHashes(text: string): string {
  const words = text.trim();
  let end = words.length;
  while (words[end - 1] === "#") end -= 1;
  const before = words.slice(0, end);
  return end < words.length && before !== before.trimEnd() ? before.trimEnd() : words;
}

interface OpenBlock {
  readonly type: "paragraph" | "list";
  readonly ordered: boolean;
  readonly texts: string[];
}

export function parseMarkdown(text: string): readonly Block[] {
  const blocks: Block[] = [];
  let open: OpenBlock | undefined;
  const close = () => {
    if (open) blocks.push(finished(open));
    open = undefined;
  };
  for (const line of text.split(/\r?\n/).map(lineOf)) {
    if (line.type === "blank") close();
    else if (line.type === "heading") {
      close();
      blocks.push({ type: "heading", level: line.level, inlines: parseInlines(line.text) });
    } else if (line.type === "entry") {
      if (open?.type !== "list" || open.ordered !== line.ordered) close();
      open ??= { type: "list", ordered: line.ordered, texts: [] };
      open.texts.push(line.text);
    } else {
      // A line without a mark goes on with what stands above it.
      open ??= { type: "paragraph", ordered: false, texts: [] };
      open.texts.push(`${open.texts.length > 0 ? `${open.texts.pop()} ` : ""}${line.text}`);
    }
  }
  close();
  return blocks;
}

const finished = ({ type, ordered, texts }: OpenBlock): Block =>
  type === "list"
    ? { type, ordered, items: texts.map((text) => parseInlines(text)) }
    : { type, inlines: parseInlines(texts.join(" ")) };
