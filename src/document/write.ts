// One value changed in the text of a page file; every other byte stays, comments and line ends included.
import { isMap, isScalar, type Node, type YAMLMap } from "yaml";
import { nearest } from "../nearest.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import type { SpreadText } from "./item.ts";
import { nodeAt, pairOf } from "./node-at.ts";
import { parseYaml } from "./parse-yaml.ts";
import { readPage, readYaml } from "./read.ts";
import { scalarText } from "./scalar-text.ts";

const placeholder = "page";

/** Change the typed value of one given. */
export function writeValue(text: string, name: string, value: string): string | Problem {
  return edit(text, name, (item) => {
    const node = pairOf(item, "value")?.value;
    return isScalar(node) && node.range ? [spliceOf(text, node, value)] : [];
  });
}

/** Change how far one given's value may lie from what is written, or state it for the first time. */
export function writeSpread(text: string, name: string, spread: SpreadText): string | Problem {
  const { form, ...fields } = spread;
  const entries = Object.entries<string>(fields);
  const words = `{ ${entries.map(([key, field]) => `${key}: ${scalarText(field)}`).join(", ")} }`;
  return edit(text, name, (item) => {
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

interface Splice {
  readonly begin: number;
  readonly end: number;
  readonly words: string;
}

function edit(
  text: string,
  name: string,
  splices: (item: YAMLMap) => readonly Splice[] | Problem,
): string | Problem {
  const yaml = parseYaml(text, placeholder);
  if (!("root" in yaml)) return yaml[0] ?? unreadable;
  const { page, problems } = readYaml(yaml);
  if (!page) return problems[0] ?? unreadable;
  const found = page.items.find((item) => item.kind === "given" && item.name === name);
  if (!found)
    return noSuchGiven(
      name,
      page.items.flatMap((item) => (item.kind === "given" ? [item.name] : [])),
    );
  const { node } = nodeAt(yaml.root, ["page", found.index]);
  const changes = isMap(node) ? splices(node) : [];
  if (isProblem(changes)) return changes;
  const inOrder = [...changes].sort((a, b) => b.begin - a.begin);
  const written = inOrder.reduce(
    (all, { begin, end, words }) => all.slice(0, begin) + words + all.slice(end),
    text,
  );
  const again = readPage(written, placeholder);
  return again.page ? written : (again.problems[0] ?? unreadable);
}

const unreadable = problem({
  code: "not-a-page",
  what: "page file",
  must: "be readable before it is changed",
});

function noSuchGiven(name: string, names: readonly string[]): Problem {
  const near = nearest(name, names);
  return problem({
    code: "no-such-given",
    what: "given",
    got: name,
    must: "be a given of this page",
    hint: near[0] ? `did you mean ${near[0]}?` : undefined,
    suggestions: near,
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

function trimmed(text: string, begin: number, end: number): [number, number] {
  return [begin, begin + text.slice(begin, end).trimEnd().length];
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
