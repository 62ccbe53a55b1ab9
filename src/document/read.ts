// Page file → Page, or every problem at once, each at file:line:column. Nothing is evaluated here.
import { isMap, isScalar, type Node } from "yaml";
import { nearest } from "../nearest.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { type Kind, kinds } from "../units/kind.ts";
import { unit } from "../units/unit.ts";
import { type Fields, held, mapping } from "./held.ts";
import { exampleOf, issueProblems } from "./issue.ts";
import type { Item, Page } from "./item.ts";
import { keyAt, nodeAt } from "./node-at.ts";
import { toItem } from "./normalise.ts";
import { noteProblems } from "./note-rule.ts";
import { parseYaml, type YamlPage } from "./parse-yaml.ts";
import { plainValue } from "./plain-value.ts";
import { type Draft, formProblem, itemRules, nameOf, nameRules } from "./rules.ts";
import { headerSchema, type ItemKind, itemSchemas, keyOrder, kindKeys } from "./schema.ts";

export interface PageReading {
  /** Only when there is no problem at all. */
  readonly page?: Page;
  readonly problems: readonly Problem[];
}

export function readPage(text: string, file: string): PageReading {
  const yaml = parseYaml(text, file);
  return "root" in yaml ? readYaml(yaml) : { problems: yaml };
}

/** @internal */
export function readYaml(yaml: YamlPage): PageReading {
  const problems: Problem[] = [];
  const whole = plainValue(yaml.root, yaml.from, problems);
  const typed = mapping(whole.typed);
  const checked = mapping(whole.checked);
  const wrong = wrongVersion(checked["splitline"], yaml);
  if (wrong) return { problems: [wrong] };
  problems.push(...headerProblems(checked, yaml));
  const drafts: Draft[] = [];
  const items: Item[] = [];
  for (const [index, fields] of listIn(typed["page"]).entries()) {
    const draft = draftOf(mapping(fields), index, yaml);
    if (isProblem(draft)) {
      problems.push(draft);
      continue;
    }
    drafts.push(draft);
    const found = itemProblems(draft, listIn(checked["page"])[index], index, yaml);
    if (found.length === 0) items.push(finish(draft, index, yaml));
    problems.push(...found);
  }
  problems.push(...nameRules(drafts));
  if (problems.length > 0) return { problems: tidy(problems) };
  const { splitline: _version, page: _items, seed, show = {}, ...rest } = typed;
  const started = seed === undefined ? {} : { seed: Number(seed) };
  return { page: held<Page>({ file: yaml.from.file, ...rest, ...started, show, items }), problems: [] };
}

const listIn = (value: unknown): readonly unknown[] => (Array.isArray(value) ? value : []);

function wrongVersion(version: unknown, { root, from }: YamlPage): Problem | undefined {
  if (version === undefined || version === null || version === 1) return undefined;
  return problem({
    code: "wrong-version",
    where: from.where(nodeAt(root, ["splitline"]).offset),
    what: "splitline",
    got: typeof version === "object" ? "a list or a mapping" : JSON.stringify(version),
    must: "be 1, the version of the page format read here",
    hint: "write splitline: 1",
  });
}

function headerProblems(fields: Fields, { root, from }: YamlPage): readonly Problem[] {
  const context = { from, node: root, label: "the page", keys: keyOrder.page };
  const issues = headerSchema.safeParse(fields).error?.issues ?? [];
  const show = Object.entries(mapping(fields["show"])).flatMap(([kind, text]) => {
    const found = typeof text === "string" && isKind(kind) ? unit(text, kind) : undefined;
    return isProblem(found) ? [found.at(from.where(nodeAt(root, ["show", kind]).offset))] : [];
  });
  return [...issues.flatMap((issue) => issueProblems(issue, context)), ...show];
}

const isKind = (text: string): text is Kind => Object.hasOwn(kinds, text);

function itemProblems(draft: Draft, checked: unknown, index: number, yaml: YamlPage): readonly Problem[] {
  const form = formProblem(draft);
  if (form) return [form];
  return [
    ...schemaProblems(draft, checked, index, yaml),
    ...itemRules(draft),
    ...noteProblems(draft, index, yaml),
  ];
}

function kindOf(fields: Fields): readonly ItemKind[] {
  const kinds = kindKeys.filter((key) => Object.hasOwn(fields, key));
  return kinds.length > 1 ? kinds.filter((key) => key !== "note") : kinds;
}

function draftOf(fields: Fields, index: number, { root, from }: YamlPage): Draft | Problem {
  const path = ["page", index];
  const found = nodeAt(root, path);
  const where = (...inside: readonly string[]) =>
    from.where(inside.length === 0 ? found.offset : fieldOffset(root, [...path, ...inside]));
  const what = `item ${index + 1} of the page`;
  if (!isMap(found.node)) {
    return problem({
      code: "not-an-item",
      where: where(),
      what,
      must: "be a mapping that starts with its kind",
      hint: exampleOf("given"),
    });
  }
  const [kind, second] = kindOf(fields);
  if (kind === undefined) {
    const keys = Object.keys(fields);
    const near = keys.flatMap((key) => nearest(key, kindKeys, 1)).slice(0, 1);
    const hint = near[0] ? `did you mean ${near[0]}?` : exampleOf("given");
    return problem({
      code: "no-kind",
      where: where(),
      what,
      got: keys.join(", ") || "nothing",
      must: `be one of ${kindKeys.join(", ")}`,
      hint,
      suggestions: near,
    });
  }
  if (second !== undefined) {
    return problem({
      code: "two-kinds",
      where: where(second),
      what,
      got: `${kind} and ${second}`,
      must: "be of one kind",
      hint: "start each item with its own dash",
    });
  }
  const name = nameOf({ kind, fields });
  return { kind, fields, where, label: name ? `${kind} ${name}` : kind };
}

/** A value where there is one that is not a name of its own; else the key. */
function fieldOffset(root: Node, path: readonly (string | number)[]): number {
  const key = String(path.at(-1));
  const found = nodeAt(root, path);
  return found.node ? found.offset : keyAt(root, path.slice(0, -1), key);
}

function schemaProblems(
  draft: Draft,
  checked: unknown,
  index: number,
  { root, from }: YamlPage,
): readonly Problem[] {
  const result = itemSchemas[draft.kind].safeParse(checked);
  const { node } = nodeAt(root, ["page", index]);
  if (result.success || !node) return [];
  const context = { from, node, label: draft.label, keys: keyOrder[draft.kind] };
  return result.error.issues.flatMap((issue) => issueProblems(issue, context));
}

function finish(draft: Draft, index: number, { root, from }: YamlPage): Item {
  const { offset } = nodeAt(root, ["page", index]);
  const item = toItem(draft.kind, draft.fields, { place: from.place(offset), index });
  const rows = item.kind === "reading" ? nodeAt(root, ["page", index, "rows"]) : undefined;
  if (!rows || !isScalar(rows.node) || rows.node.type !== "BLOCK_LITERAL") return item;
  return held<Item>({ ...item, rowsLine: from.place(rows.offset).line + 1 });
}

/** In the order of the file; a number that cannot be read is said once. */
function tidy(problems: readonly Problem[]): readonly Problem[] {
  const numbers = new Set(problems.filter((p) => p.code === "number-form").map((p) => p.where));
  const kept = problems.filter((p) => p.code === "number-form" || !numbers.has(p.where));
  const position = (p: Problem) =>
    /:(\d+):(\d+)$/
      .exec(p.where ?? "")
      ?.slice(1)
      .map(Number) ?? [0, 0];
  const inOrder = kept
    .map((p) => ({ p, at: position(p) }))
    .sort((a, b) => (a.at[0] ?? 0) - (b.at[0] ?? 0) || (a.at[1] ?? 0) - (b.at[1] ?? 0))
    .map(({ p }) => p);
  if (inOrder.length <= mostProblems) return inOrder;
  const last = problem({
    code: "more-problems",
    what: `${inOrder.length - mostProblems} more problems in this file`,
    why: `the first ${mostProblems} are listed`,
    hint: "mend these first",
  });
  return [...inOrder.slice(0, mostProblems), last];
}

/** More than anybody mends at one go. */
const mostProblems = 100;
