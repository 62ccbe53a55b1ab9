// A page's text with a few ranges replaced: read before, read again after, and refused when it no longer reads.
import { isMap, type YAMLMap } from "yaml";
import { nearest } from "../nearest.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import type { GivenItem, Item, ReadingItem } from "./item.ts";
import { nodeAt } from "./node-at.ts";
import { parseYaml } from "./parse-yaml.ts";
import { readPage, readYaml } from "./read.ts";

export interface Splice {
  readonly begin: number;
  readonly end: number;
  readonly words: string;
}

type Editable = GivenItem | ReadingItem;

const placeholder = "page";

export function edit(
  text: string,
  kind: Editable["kind"],
  name: string,
  splices: (item: YAMLMap) => readonly Splice[] | Problem,
): string | Problem {
  const yaml = parseYaml(text, placeholder);
  if (!("root" in yaml)) return yaml[0] ?? unreadable;
  const { page, problems } = readYaml(yaml);
  if (!page) return problems[0] ?? unreadable;
  const those = page.items.filter((item): item is Editable & Item => item.kind === kind);
  const found = those.find((item) => item.name === name);
  if (!found)
    return noSuchItem(
      kind,
      name,
      those.map((item) => item.name),
    );
  const { node } = nodeAt(yaml.root, ["page", found.index]);
  const changes = isMap(node) ? splices(node) : [];
  if (isProblem(changes)) return changes;
  const fromTheEnd = [...changes].sort((a, b) => b.begin - a.begin);
  const written = fromTheEnd.reduce(
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

function noSuchItem(kind: string, name: string, names: readonly string[]): Problem {
  const near = nearest(name, names);
  return problem({
    code: `no-such-${kind}`,
    what: kind,
    got: name,
    must: `be a ${kind} of this page`,
    hint: near[0] ? `did you mean ${near[0]}?` : undefined,
    suggestions: near,
  });
}

/** A node's range without the spaces and line ends behind it. */
export function trimmed(text: string, begin: number, end: number): readonly [number, number] {
  return [begin, begin + text.slice(begin, end).trimEnd().length];
}
