// What is refused before the text is parsed: size, characters, depth, and the parts of YAML that a page
// never needs (directives, anchors, aliases, tags). The tokens come from yaml's own scanner, which does not
// recurse, so a hostile file costs no more than its length.
import { CST, Lexer } from "yaml";
import { type Problem, problem } from "../problem.ts";
import { oddIn } from "../visible.ts";
import type { Origin } from "./origin.ts";

export const largestPage = { bytes: 2_000_000, depth: 24 } as const;

export function gate(from: Origin): readonly Problem[] {
  const size = byteLength(from.text);
  if (size > largestPage.bytes) {
    return [
      problem({
        code: "page-too-large",
        where: from.file,
        what: "page file",
        got: `${size} bytes`,
        must: `be at most ${largestPage.bytes} bytes`,
        hint: "split the job into several pages, or keep long records in their own file",
      }),
    ];
  }
  const odd = oddCharacters(from);
  return odd.length > 0 ? odd : refusedTokens(from);
}

function byteLength(text: string): number {
  return text.length * 3 <= largestPage.bytes ? text.length : new TextEncoder().encode(text).length;
}

function oddCharacters(from: Origin): readonly Problem[] {
  const found = oddIn(from.text);
  if (!found) return [];
  return [
    problem({
      code: "odd-character",
      where: from.where(found.index),
      what: "page file",
      got: `the character ${found.name}`,
      must: "be plain text in UTF-8",
      why: "this character is not seen, or comes from another encoding",
      hint: "save the file again as UTF-8 text without it",
    }),
  ];
}

const refusals: Readonly<Record<string, { what: string; hint: string }>> = {
  "directive-line": { what: "YAML directive", hint: "remove the line; a page starts with splitline: 1" },
  anchor: {
    what: "anchor",
    hint: 'write the value out where it is used; quote a text that starts with &: "&..."',
  },
  alias: {
    what: "alias",
    hint: 'write the value out where it is used; quote a text that starts with *: "*..."',
  },
  tag: { what: "tag", hint: 'remove it; quote a text that starts with !: "!..."' },
};

function refusedTokens(from: Origin): readonly Problem[] {
  const problems: Problem[] = [];
  let offset = 0;
  let isScalar = false;
  const depth = depthMeter();
  for (const token of new Lexer().lex(from.text)) {
    const type: string | null = isScalar ? "scalar-text" : CST.tokenType(token);
    isScalar = type === "scalar";
    if (isScalar || type === "doc-mode" || type === "flow-error-end") continue;
    const refused = type === null ? undefined : refusals[type];
    const where = from.where(offset);
    if (refused) {
      const got = token.length > 40 ? `${token.slice(0, 40)}…` : token;
      problems.push(problem({ code: "refused-yaml", where, got, ...refused, must: "not be used on a page" }));
    }
    if (depth(type ?? "", token.length) > largestPage.depth) {
      problems.push(
        problem({
          code: "page-too-deep",
          where,
          what: "page file",
          must: `nest at most ${largestPage.depth} levels deep`,
          hint: "a page is a list of items, each with a few fields",
        }),
      );
      return problems;
    }
    offset += token.length;
  }
  return problems;
}

// Flow levels are counted by their brackets, block levels by the columns at which keys and dashes stand.
function depthMeter(): (type: string, length: number) => number {
  const columns: number[] = [];
  let column = 0;
  let flow = 0;
  let opens = true;
  return (type, length) => {
    if (type === "newline") {
      column = 0;
      opens = true;
      return 0;
    }
    if (type === "flow-map-start" || type === "flow-seq-start") flow += 1;
    if (type === "flow-map-end" || type === "flow-seq-end") flow = Math.max(0, flow - 1);
    if (opens && flow === 0 && type !== "space" && type !== "comment") {
      while ((columns.at(-1) ?? -1) > column) columns.pop();
      if ((columns.at(-1) ?? -1) < column) columns.push(column);
      opens = type === "seq-item-ind" || type === "explicit-key-ind";
    }
    column += length;
    return columns.length + flow;
  };
}
