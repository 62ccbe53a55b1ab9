// The rows of one reading changed in the text of a page file; every other byte stays.
import { isScalar, type YAMLMap } from "yaml";
import { isProblem, type Problem } from "../problem.ts";
import { blankEnd, isSpaceOrTab } from "./blank-end.ts";
import { edit, type Splice } from "./edit.ts";
import { pairOf } from "./node-at.ts";
import { readPage } from "./read.ts";

/** As a literal block, so that the table stays readable; quoted where a block cannot hold the text. */
export function writeRows(text: string, name: string, rows: string): string | Problem {
  const plain = rows.replaceAll("\r\n", "\n");
  const inBlock = edit(text, "reading", name, (item) =>
    spliceOf(text, item, (indent, newline) => block(plain, indent, newline)),
  );
  if (!isProblem(inBlock) && rowsIn(inBlock, name) === plain) return inBlock;
  return edit(text, "reading", name, (item) => spliceOf(text, item, () => JSON.stringify(plain)));
}

function rowsIn(text: string, name: string): string | undefined {
  const found = readPage(text, "page").page?.items.find(
    (item) => item.kind === "reading" && item.name === name,
  );
  return found?.kind === "reading" ? found.rows : undefined;
}

function block(rows: string, indent: string, newline: string): string {
  // Space at the start of a first line cannot be told from the indentation of a block.
  if (/^\s*?[ \t]/.test(rows)) return JSON.stringify(rows);
  // A blank last line cannot be told from the space behind a block.
  if (/(?:^|\n)[ \t]*\n?$/.test(rows.replace(/\n$/, ""))) return JSON.stringify(rows);
  const chomp = rows.endsWith("\n") ? "" : "-";
  const lines = rows.replace(/\n$/, "").split("\n");
  return `|${chomp}${lines.map((line) => `${newline}${line === "" ? "" : indent + line}`).join("")}`;
}

function spliceOf(
  text: string,
  item: YAMLMap,
  words: (indent: string, newline: string) => string,
): readonly Splice[] {
  const pair = pairOf(item, "rows");
  const range = pair?.value?.range;
  if (!pair || !isScalar(pair.value) || !range) return [];
  const [begin, valueEnd] = range;
  const isBlock = pair.value.type === "BLOCK_LITERAL" || pair.value.type === "BLOCK_FOLDED";
  const end = isBlock ? blockEnd(text, begin, valueEnd) : valueEnd;
  const keyStart = pair.key.range?.[0] ?? 0;
  const column = keyStart - (text.lastIndexOf("\n", keyStart - 1) + 1);
  const found = isBlock ? /^[^\n]*\n(?:[ \t]*\r?\n)*( +)\S/.exec(text.slice(begin, end)) : null;
  const indent = found?.[1] ?? " ".repeat(column + 2);
  return [{ begin, end, words: words(indent, text.includes("\r\n") ? "\r\n" : "\n") }];
}

/** Without the line end of its last line, and without the blank lines that part it from what follows. */
function blockEnd(text: string, begin: number, end: number): number {
  return begin + blankEnd(text.slice(begin, end), isSpaceOrTab);
}
