// Page file → Page, or every problem at once, each at file:line:column. Nothing is evaluated here.
import { isMap, isScalar, type Node } from "yaml";
import { nearest } from "../nearest.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import type { Kind } from "../units/kind.ts";
import { unit } from "../units/unit.ts";
import { exampleOf, issueProblems } from "./issue.ts";
import type { Item, Page } from "./item.ts";
import { keyAt, nodeAt } from "./node-at.ts";
import { type Fields, toItem } from "./normalise.ts";
import { parseYaml, type YamlPage } from "./parse-yaml.ts";
import { type PlainValue, plainValue } from "./plain-value.ts";
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

export function readYaml(yaml: YamlPage): PageReading {
  const problems: Problem[] = [];
  const whole = plainValue(yaml.root, yaml.from, problems);
  problems.push(...headerProblems(whole, yaml));
  const typed = whole.typed as Fields;
  const checked = whole.checked as Fields;
  const typedItems = Array.isArray(typed["page"]) ? (typed["page"] as readonly Fields[]) : [];
  const checkedItems = Array.isArray(checked["page"]) ? (checked["page"] as readonly unknown[]) : [];
  const drafts: Draft[] = [];
  const items: Item[] = [];
  typedItems.forEach((fields, index) => {
    const draft = draftOf(fields, index, yaml);
    if (isProblem(draft)) return problems.push(draft);
    drafts.push(draft);
    const form = formProblem(draft);
    const found = form
      ? [form]
      : [...schemaProblems(draft, checkedItems[index], index, yaml), ...itemRules(draft)];
    problems.push(...found);
    if (found.length === 0) items.push(finish(draft, index, yaml));
    return undefined;
  });
  problems.push(...nameRules(drafts));
  if (problems.length > 0) return { problems: tidy(problems) };
  const { splitline: _version, page: _items, seed, show, ...rest } = typed;
  const header = { ...rest, ...(seed === undefined ? {} : { seed: Number(seed) }) } as Omit<
    Page,
    "file" | "show" | "items"
  >;
  return {
    page: { file: yaml.from.file, ...header, show: (show ?? {}) as Page["show"], items },
    problems: [],
  };
}

function headerProblems({ checked }: PlainValue, { root, from }: YamlPage): readonly Problem[] {
  const context = { from, node: root, label: "the page", keys: keyOrder.page };
  const fields = checked as Fields;
  const version = fields["splitline"];
  if (version !== undefined && version !== 1) {
    const where = from.where(nodeAt(root, ["splitline"]).offset);
    return [
      problem({
        code: "wrong-version",
        where,
        what: "splitline",
        got: String(version),
        must: "be 1, the version of the page format read here",
        hint: "write splitline: 1",
      }),
    ];
  }
  const issues = headerSchema.safeParse(checked).error?.issues ?? [];
  const show = Object.entries((fields["show"] ?? {}) as Fields).flatMap(([kind, text]) => {
    const found = typeof text === "string" && issues.length === 0 ? unit(text, kind as Kind) : undefined;
    return isProblem(found) ? [found.at(from.where(nodeAt(root, ["show", kind]).offset))] : [];
  });
  return [...issues.flatMap((issue) => issueProblems(issue, context)), ...show];
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
  return { ...item, rowsLine: from.place(rows.offset).line + 1 } as Item;
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
  return kept
    .map((p) => ({ p, at: position(p) }))
    .sort((a, b) => (a.at[0] ?? 0) - (b.at[0] ?? 0) || (a.at[1] ?? 0) - (b.at[1] ?? 0))
    .map(({ p }) => p);
}
