// One value changed in the text of a page file; every other byte stays, comments and line ends included.
import { isMap, isScalar, type Node, type YAMLMap } from "yaml";
import { type Problem, problem } from "../problem.ts";
import type { Kind } from "../units/kind.ts";
import { edit, type Splice, trimmed } from "./edit.ts";
import type { SpreadText } from "./item.ts";
import { pairOf } from "./node-at.ts";
import { scalarText } from "./scalar-text.ts";

/** Change the typed value of one given. */
export function writeValue(text: string, name: string, value: string): string | Problem {
  return edit(text, "given", name, (item) => {
    const node = pairOf(item, "value")?.value;
    return isScalar(node) && node.range ? [spliceOf(text, node, value)] : [];
  });
}

/** State the kind of one given, where the file does not yet. */
export function writeKind(text: string, name: string, kind: Kind): string | Problem {
  return edit(text, "given", name, (item) =>
    pairOf(item, "as") ? [] : [addition(text, item, `as: ${kind}`)],
  );
}

/** Change where one given's value comes from, or state it for the first time. */
export function writeSource(text: string, name: string, source: string): string | Problem {
  return edit(text, "given", name, (item) => {
    const node = pairOf(item, "source")?.value;
    if (isScalar(node) && node.range) return [spliceOf(text, node, source)];
    return [addition(text, item, `source: ${scalarText(source)}`)];
  });
}

/** Take out the spread stated beside a value, where one typed with the value stands for it now. */
export function dropSpread(text: string, name: string): string | Problem {
  return edit(text, "given", name, (item) => {
    const pair = pairOf(item, "spread");
    if (!pair?.key.range || !pair.value?.range) return [];
    const [, end] = trimmed(text, pair.value.range[0], pair.value.range[1]);
    const begin = pair.key.range[0];
    if (item.flow) {
      const after = /^\s*,\s*/.exec(text.slice(end))?.[0].length ?? 0;
      const before = after > 0 ? 0 : (/,\s*$/.exec(text.slice(0, begin))?.[0].length ?? 0);
      return [{ begin: begin - before, end: end + after, words: "" }];
    }
    const lineStart = text.lastIndexOf("\n", begin - 1) + 1;
    const lineEnd = text.indexOf("\n", end);
    return [{ begin: lineStart, end: lineEnd < 0 ? text.length : lineEnd + 1, words: "" }];
  });
}

/** Change how far one given's value may lie from what is written, or state it for the first time. */
export function writeSpread(text: string, name: string, spread: SpreadText): string | Problem {
  const { form, ...fields } = spread;
  const entries = Object.entries<string>(fields);
  const words = `{ ${entries.map(([key, field]) => `${key}: ${scalarText(field)}`).join(", ")} }`;
  return edit(text, "given", name, (item) => {
    const pair = pairOf(item, "spread");
    if (!pair) return [addition(text, item, `spread: ${words}`)];
    const node = pair.value;
    if (isMap(node) && sameKeys(node, entries))
      return entries.flatMap(([key, field]) => fieldSplice(text, node, key, field));
    const range = node?.range;
    const [begin, end] = range ? trimmed(text, range[0], range[1]) : [0, 0];
    if (/(^|\s)#/.test(text.slice(begin, end))) return refuseComments(name, form);
    return [{ begin, end, words }];
  });
}

const refuseComments = (name: string, form: string): Problem =>
  problem({
    code: "comment-in-the-way",
    what: `spread of ${name}`,
    got: "comments between its fields",
    must: "hold no comments when its form changes",
    hint: `write the ${form} form by hand`,
  });

/** Quotes stay where there were quotes; a block text becomes one line. */
function spliceOf(text: string, node: Node & { type?: string | undefined }, value: string): Splice {
  const [begin, end] = trimmed(text, node.range?.[0] ?? 0, node.range?.[1] ?? 0);
  const quote = node.type === "QUOTE_SINGLE" ? "single" : node.type === "QUOTE_DOUBLE" ? "double" : "plain";
  return { begin, end, words: scalarText(value, quote) };
}

function fieldSplice(text: string, map: YAMLMap, key: string, field: string): readonly Splice[] {
  const node = pairOf(map, key)?.value;
  return isScalar(node) && node.range ? [spliceOf(text, node, field)] : [];
}

function sameKeys(map: YAMLMap, entries: readonly (readonly [string, string])[]): boolean {
  return map.items.length === entries.length && entries.every(([key]) => isScalar(pairOf(map, key)?.value));
}

/** A new field after the value: on a line of its own, or after a comma between braces. */
function addition(text: string, item: YAMLMap, words: string): Splice {
  const value = pairOf(item, "value");
  const [, end] = trimmed(text, value?.value?.range?.[0] ?? 0, value?.value?.range?.[1] ?? 0);
  if (item.flow) return { begin: end, end, words: `, ${words}` };
  const lineEnd = text.indexOf("\n", end);
  const keyStart = value?.key.range?.[0] ?? 0;
  const column = keyStart - (text.lastIndexOf("\n", keyStart - 1) + 1);
  const newline = text.includes("\r\n") ? "\r\n" : "\n";
  if (lineEnd < 0)
    return { begin: text.length, end: text.length, words: `${newline}${" ".repeat(column)}${words}` };
  return { begin: lineEnd + 1, end: lineEnd + 1, words: `${" ".repeat(column)}${words}${newline}` };
}
