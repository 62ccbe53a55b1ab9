// Which lines an item reads, known before anything is computed; loops among them, by name.
import type { InputText, Item, RowText } from "../document/item.ts";
import { names } from "../formula/parse.ts";
import { methods } from "../methods/register.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { formulaTree } from "./formula.ts";
import { boundFormulas } from "./prose.ts";

/** Names in a formula text, with the output where one is asked for; a text that does not parse names nothing. */
function namesIn(text: string | undefined): readonly string[] {
  if (text === undefined) return [];
  const tree = formulaTree(text);
  return isProblem(tree) ? [] : names(tree);
}

const isName = (text: string): boolean => /^[A-Za-z][A-Za-z0-9]*(\.[A-Za-z0-9]+)?$/.test(text);
const asName = (text: string): string[] => (isName(text) ? [text] : []);
const baseOf = (name: string): string => name.split(".")[0] ?? name;

const isList = (text: InputText): text is readonly string[] | readonly RowText[] => Array.isArray(text);

function textsOf(text: InputText): readonly string[] {
  if (typeof text === "string") return [text];
  if (isList(text))
    return text.flatMap((row: string | RowText) => (typeof row === "string" ? [row] : Object.values(row)));
  return Object.values(text);
}

/** One of the choices of a text input is no name, even where an item is called the same. */
const textNames = (choices: readonly string[] | undefined, text: string): readonly string[] =>
  choices?.some((choice) => choice.toLowerCase() === text.toLowerCase()) ? [] : asName(text);

function namesOfItem(item: Item): readonly string[] {
  switch (item.kind) {
    case "working": {
      if ("formula" in item) return [...asName(item.each ?? ""), ...namesIn(item.formula)];
      const fields = methods.get(item.by)?.inputs ?? {};
      const inputs = Object.entries(item.of).flatMap(([name, text]): readonly string[] =>
        textsOf(text).flatMap((t) =>
          fields[name]?.kind === "text" ? textNames(fields[name].choices, t) : [...namesIn(t), ...asName(t)],
        ),
      );
      return [...asName(item.each ?? ""), ...inputs];
    }
    case "check": {
      const formulas = [
        item.that,
        item.atLeast,
        item.atMost,
        item.between?.[0],
        item.between?.[1],
        item.uncertainty,
      ];
      return [
        ...asName(item.each ?? ""),
        ...asName(item.none ?? ""),
        ...asName(item.reads ?? ""),
        ...formulas.flatMap(namesIn),
      ];
    }
    case "picture":
      return Object.values(item.of).flatMap((text) => [...namesIn(text), ...asName(text)]);
    case "note":
      return boundFormulas(item.text).flatMap(namesIn);
    case "given":
    case "reading":
    case "caution":
    case "sign-off":
      return [];
  }
}

/** Names that the note beside an item reads; a note makes no loop, since nothing reads it. */
export const usesOfNote = (note: string | undefined, known: ReadonlySet<string>): readonly string[] => [
  ...new Set(
    boundFormulas(note)
      .flatMap(namesIn)
      .map(baseOf)
      .filter((name) => known.has(name)),
  ),
];

/** Only names that the page knows; an unknown name is reported by the line that wants it. */
export function usesOf(item: Item, known: ReadonlySet<string>): readonly string[] {
  return [...new Set(namesOfItem(item).map(baseOf))].filter((name) => known.has(name));
}

export interface NameRead {
  readonly name: string;
  readonly output: string | undefined;
}

/** Which outputs of which names an item and its note read. */
export function namesRead(item: Item, known: (name: string) => boolean): readonly NameRead[] {
  const all = [
    ...namesOfItem(item),
    ...boundFormulas("note" in item ? item.note : undefined).flatMap(namesIn),
  ];
  return [...new Set(all)].flatMap((full) => {
    const [name = "", output] = full.split(".");
    return known(name) ? [{ name, output }] : [];
  });
}

/** Lines that wait for themselves, each with the loop it stands in: "a → b → a". */
export function loops(uses: ReadonlyMap<string, readonly string[]>): ReadonlyMap<string, Problem> {
  const found = new Map<string, Problem>();
  const done = new Set<string>();
  for (const start of uses.keys()) {
    const path: string[] = [];
    const onPath = new Map<string, number>();
    const stack: { name: string; next: number }[] = [{ name: start, next: 0 }];
    while (stack.length > 0) {
      const top = stack.at(-1);
      if (!top) break;
      if (top.next === 0) {
        if (done.has(top.name)) {
          stack.pop();
          continue;
        }
        onPath.set(top.name, path.length);
        path.push(top.name);
      }
      const next = uses.get(top.name)?.[top.next];
      top.next += 1;
      if (next === undefined) {
        done.add(top.name);
        onPath.delete(top.name);
        path.pop();
        stack.pop();
      } else if (onPath.has(next)) nameLoop(path.slice(onPath.get(next)), found);
      else if (!done.has(next)) stack.push({ name: next, next: 0 });
    }
  }
  return found;
}

/** A loop of a few is named in full; of a long one each member would repeat all the others. */
const mostNamed = 12;

function loopWords(members: readonly string[]): string {
  const [first = ""] = members;
  if (members.length <= mostNamed) return [...members, first].join(" → ");
  const named = [...members.slice(0, mostNamed / 2), "…", members.at(-1), first].join(" → ");
  return `${named}, ${members.length} in all`;
}

function nameLoop(members: readonly string[], found: Map<string, Problem>): void {
  const words = loopWords(members);
  for (const name of members)
    if (!found.has(name))
      found.set(
        name,
        problem({
          code: "loop",
          what: name,
          got: `a loop: ${words}`,
          must: "not wait for itself",
          hint: "one of these has to be a given",
        }),
      );
}
