// Emphasis, strong, code, links and {values of the page} inside one paragraph. A mark that is never
// closed is text.

export type Inline =
  | { readonly type: "text"; readonly text: string }
  | { readonly type: "code"; readonly text: string }
  /** A formula between braces, whose answer stands here; \{ is a brace. */
  | { readonly type: "bound"; readonly formula: string }
  | { readonly type: "emphasis" | "strong"; readonly inlines: readonly Inline[] }
  | { readonly type: "link"; readonly href: string; readonly inlines: readonly Inline[] };

interface Part {
  readonly inline: Inline;
  readonly end: number;
}

const deepest = 4;

export function parseInlines(text: string, depth = 0): readonly Inline[] {
  const inlines: Inline[] = [];
  const marks = withoutFormulas(text);
  const unclosed = new Map<string, number>();
  let plain = "";
  let at = 0;
  while (at < text.length) {
    if (text[at] === "\\" && /[\\`*_[\]{}()#-]/.test(text[at + 1] ?? "")) {
      plain += text[at + 1];
      at += 2;
      continue;
    }
    const part =
      text[at] === "{"
        ? bound(text, at)
        : depth < deepest
          ? partAt({ text, marks, depth, unclosed }, at)
          : undefined;
    if (!part) {
      plain += text[at];
      at += 1;
      continue;
    }
    if (plain !== "") inlines.push({ type: "text", text: plain });
    plain = "";
    inlines.push(part.inline);
    at = part.end;
  }
  if (plain !== "") inlines.push({ type: "text", text: plain });
  return inlines;
}

/** A formula multiplies with the star that opens emphasis elsewhere: no mark opens or closes in it. */
const withoutFormulas = (text: string): string =>
  text.replace(/\\.|\{[^{}]*\}/g, (part) => (part.startsWith("{") ? "{".repeat(part.length) : part));

function bound(text: string, at: number): Part | undefined {
  const close = text.indexOf("}", at);
  return close < 0
    ? undefined
    : { inline: { type: "bound", formula: text.slice(at + 1, close).trim() }, end: close + 1 };
}

interface Paragraph {
  readonly text: string;
  readonly marks: string;
  readonly depth: number;
  /** Fences that nothing closes from this place on, so that none is looked for again. */
  readonly unclosed: Map<string, number>;
}

function partAt(whole: Paragraph, at: number): Part | undefined {
  switch (whole.text[at]) {
    case "`":
      return code(whole.text, at);
    case "*":
    case "_":
      return marked(whole, at);
    case "[":
      return link(whole, at);
    default:
      return undefined;
  }
}

function code(text: string, at: number): Part | undefined {
  const close = text.indexOf("`", at + 1);
  return close > at + 1
    ? { inline: { type: "code", text: text.slice(at + 1, close) }, end: close + 1 }
    : undefined;
}

// 2 * 3 and F_M are no emphasis: a mark opens before a letter and, for _, only at the start of a word.
function marked({ text, marks, depth, unclosed }: Paragraph, at: number): Part | undefined {
  const mark = text[at] ?? "";
  const strong = text[at + 1] === mark;
  const fence = strong ? mark + mark : mark;
  const begin = at + fence.length;
  const inWord = mark === "_" && /[\p{L}\p{N}]/u.test(text[at - 1] ?? "");
  if (inWord || /^\s|^$/.test(text.slice(begin, begin + 1))) return undefined;
  if (begin >= (unclosed.get(fence) ?? Number.POSITIVE_INFINITY)) return undefined;
  const step = (found: number) => (fence.length === 1 && text[found + 1] === mark ? 2 : 1);
  let close = marks.indexOf(fence, begin);
  while (close >= 0 && !closes(marks, close, fence)) close = marks.indexOf(fence, close + step(close));
  if (close < 0) unclosed.set(fence, begin);
  if (close <= begin) return undefined;
  const inlines = parseInlines(text.slice(begin, close), depth + 1);
  return { inline: { type: strong ? "strong" : "emphasis", inlines }, end: close + fence.length };
}

function closes(text: string, close: number, fence: string): boolean {
  const mark = fence.slice(0, 1);
  const after = text[close + fence.length] ?? "";
  if (/\s/.test(text[close - 1] ?? "")) return false;
  if (after === mark) return false;
  return mark !== "_" || !/[\p{L}\p{N}]/u.test(after);
}

const linkHere = /\[([^[\]]*)\]\(([^()\s]*)\)/y;

function link({ text, depth }: Paragraph, at: number): Part | undefined {
  linkHere.lastIndex = at;
  const found = linkHere.exec(text);
  if (!found) return undefined;
  const [whole, label = "", href = ""] = found;
  const end = at + whole.length;
  // An address of another kind stays readable, but leads nowhere.
  if (!isAllowedAddress(href)) return { inline: { type: "text", text: whole }, end };
  return {
    inline: { type: "link", href, inlines: parseInlines(label === "" ? href : label, depth + 1) },
    end,
  };
}

/** http, https and mailto, or an address relative to the page. */
function isAllowedAddress(href: string): boolean {
  if (!/^[\u0021-\u007E\u00A1-\uFFFD]+$/.test(href)) return false;
  if (/^(?:https?:\/\/[^/\\]|mailto:[^\s])/i.test(href)) return true;
  return !/^[^/?#]*:/.test(href) && !/^[/\\]{2}/.test(href) && !href.startsWith("\\");
}
