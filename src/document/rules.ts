// Rules between the fields of one item, and between the items of a page, that a schema of fields cannot say.
import { type Problem, problem } from "../problem.ts";
import { type Fields, mapping } from "./held.ts";
import { checkName } from "./names.ts";
import type { ItemKind } from "./schema.ts";

/** What an item looks like to a rule, before it is known to be whole. */
export interface Draft {
  readonly kind: ItemKind;
  readonly label: string;
  readonly fields: Fields;
  /** file:line:column of a field, or of the item where the field is missing. */
  readonly where: (...path: readonly string[]) => string;
}

type Rule = (draft: Draft) => readonly Problem[];

const given: Rule = ({ fields, label, where }) => {
  const { choices, value } = fields;
  if (!Array.isArray(choices) || value === "" || choices.includes(value)) return [];
  return [
    problem({
      code: "not-a-choice",
      where: where("value"),
      what: `value of ${label}`,
      got: String(value),
      must: `be one of ${choices.join(", ")}`,
      suggestions: choices.map(String),
    }),
  ];
};

// Whether a check without a limit asks a yes or no, and so is whole, is known only when it is worked out.
const check: Rule = ({ fields, label, where }) => {
  const { atLeast, atMost, between, that, none, reads, allowed } = fields;
  const ways = Object.entries({ that, none, reads }).filter(([, way]) => way !== undefined);
  if (ways.length !== 1)
    return [
      problem({
        code: ways.length === 0 ? "missing-key" : "two-ways",
        where: where(),
        what: label,
        got: ways.length === 0 ? "neither that, none nor reads" : ways.map(([way]) => way).join(" and "),
        must: "have that for a value, none for a list that must stay empty, or reads for a text",
        hint: "for example that: preload / proofLoad",
      }),
    ];
  if ((reads === undefined) !== (allowed === undefined))
    return [
      problem({
        code: "missing-key",
        where: where(),
        what: label,
        got: reads === undefined ? "allowed without reads" : "reads without allowed",
        must: "name a text with reads, and the texts that pass with allowed",
        hint: "for example reads: bolts.mark with allowed: [8.8]",
      }),
    ];
  if (between !== undefined && (atLeast !== undefined || atMost !== undefined)) {
    return [
      problem({
        code: "two-limits",
        where: where("between"),
        what: `between of ${label}`,
        must: "stand alone",
        hint: "remove atLeast and atMost, or remove between",
      }),
    ];
  }
  return [];
};

/** Key, expected values and odd limits speak of columns that are there. */
function columnNames({ fields, label, where }: Draft, columns: readonly string[]): readonly Problem[] {
  const listed = Array.isArray(fields["key"]) ? fields["key"].map(String) : [];
  const named = [
    ...listed.map((name) => ["key", name] as const),
    ...Object.keys(mapping(fields["expect"])).map((name) => ["expect", name] as const),
    ...Object.keys(mapping(fields["odd"])).map((name) => ["odd", name] as const),
    ...(Array.isArray(fields["may"]) ? fields["may"].map((name) => ["may", String(name)] as const) : []),
  ];
  return named
    .filter(([, name]) => !columns.includes(name))
    .map(([field, name]) =>
      problem({
        code: "unknown-column",
        where: where(field),
        what: `${field} of ${label}`,
        got: name,
        must: `be a column: ${columns.join(", ")}`,
      }),
    );
}

/** As many as a table of a page holds; each one is a reading that somebody would have to take. */
const mostExpected = 20_000;

function tooManyExpected({ fields, label, where }: Draft): readonly Problem[] {
  const lists = Object.values(mapping(fields["expect"])).map((list) =>
    Array.isArray(list) ? list.length : 1,
  );
  const product = lists.reduce((all, one) => all * one, 1);
  if (product <= mostExpected) return [];
  return [
    problem({
      code: "too-many-expected",
      where: where("expect"),
      what: `expect of ${label}`,
      got: `${lists.slice(0, 6).join(" × ")}${lists.length > 6 ? " × …" : ""} readings`,
      must: `come to at most ${mostExpected}`,
      hint: "give each group of places a reading of its own",
    }),
  ];
}

const reading: Rule = (draft) => {
  const { fields, label, where } = draft;
  const columns = Object.keys(mapping(fields["columns"]));
  const problems: Problem[] = [];
  if (columns.length === 0) {
    problems.push(
      problem({
        code: "no-columns",
        where: where("columns"),
        what: `columns of ${label}`,
        got: "none",
        must: "be named",
        hint: "for example columns: { position: tag, diameter: length }",
      }),
    );
  }
  for (const name of columns) {
    const bad = checkName(name, where("columns", name));
    if (bad) problems.push(bad);
  }
  problems.push(...columnNames(draft, columns), ...tooManyExpected(draft));
  const known = new Set([...columns, "k"]);
  for (const name of Object.keys(mapping(fields["uncertainty"]))) {
    if (known.has(name)) continue;
    problems.push(
      problem({
        code: "unknown-column",
        where: where("uncertainty", name),
        what: `uncertainty of ${label}`,
        got: name,
        must: `be a column: ${columns.join(", ")}`,
      }),
    );
  }
  return problems;
};

/** Which of two schemas was meant cannot be told: then only this is said about the item. */
export function formProblem({ kind, fields, label, where }: Draft): Problem | undefined {
  if (kind !== "working") return undefined;
  const ways = ["by", "is"].filter((key) => fields[key] !== undefined);
  if (ways.length === 1) return undefined;
  const got = ways.length === 0 ? "neither by nor is" : "by and is";
  return problem({
    code: ways.length === 0 ? "no-way" : "two-ways",
    where: ways.length === 0 ? where() : where("is"),
    what: label,
    got,
    must: "have by and of for a method, or is for a formula",
    hint: "for example is: preload / proofLoad",
  });
}

const rules: { readonly [K in ItemKind]?: Rule } = { given, check, reading };

export const itemRules = (draft: Draft): readonly Problem[] => rules[draft.kind]?.(draft) ?? [];

const named: ReadonlySet<ItemKind> = new Set(["given", "working", "check", "reading"]);

export const nameOf = ({ kind, fields }: Pick<Draft, "kind" | "fields">): string | undefined => {
  const name = fields[kind];
  return named.has(kind) && typeof name === "string" ? name : undefined;
};

/** Every name is camelCase, free, and given once. */
export function nameRules(drafts: readonly Draft[]): readonly Problem[] {
  const first = new Map<string, Draft>();
  return drafts.flatMap((draft) => {
    const name = nameOf(draft);
    if (name === undefined || name === "") return [];
    const where = draft.where(draft.kind);
    const bad = checkName(name, where);
    const before = first.get(name);
    if (!before) first.set(name, draft);
    if (bad) return [bad];
    if (!before) return [];
    return [
      problem({
        code: "duplicate-name",
        where,
        what: "name",
        got: name,
        must: "be given once",
        why: `${before.where(before.kind)} already has it`,
        hint: `write another name, for example ${name}2`,
      }),
    ];
  });
}
