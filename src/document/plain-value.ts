// A YAML node as plain data, twice over: for the schema, and with every text as typed.
// The two are of one shape; they differ only in numbers, which the second keeps as their source text.
import { isMap, isScalar, isSeq, type Node, type Scalar } from "yaml";
import { type Problem, problem } from "../problem.ts";
import { oddIn } from "../visible.ts";
import { held } from "./held.ts";
import type { Origin } from "./origin.ts";

type Plain = string | number | boolean | null | readonly Plain[] | { readonly [key: string]: Plain };

export interface PlainValue {
  readonly checked: Plain;
  readonly typed: Plain;
}

const key = /^[A-Za-z][A-Za-z0-9_-]*(?: [a-z]+)*$/;
const longestKey = 100;
const forbidden = new Set(["__proto__", "constructor", "prototype", "toString", "valueOf", "hasOwnProperty"]);

export function plainValue(node: Node | null | undefined, from: Origin, problems: Problem[]): PlainValue {
  if (isSeq(node)) {
    const items = node.items.map((item) => plainValue(held<Node>(item), from, problems));
    return { checked: items.map((item) => item.checked), typed: items.map((item) => item.typed) };
  }
  if (isMap(node)) return plainMap(node.items, from, problems);
  return isScalar(node) ? plainScalar(node, from, problems) : { checked: null, typed: null };
}

function plainMap(
  pairs: readonly { key: unknown; value: unknown }[],
  from: Origin,
  problems: Problem[],
): PlainValue {
  const checked: Record<string, Plain> = {};
  const typed: Record<string, Plain> = {};
  for (const pair of pairs) {
    const name = isScalar(pair.key) ? String(pair.key.value) : "";
    if (!key.test(name) || name.length > longestKey || forbidden.has(name)) {
      problems.push(oddKey(name, held<Node>(pair.key), from));
      continue;
    }
    const value = plainValue(held<Node>(pair.value), from, problems);
    checked[name] = value.checked;
    typed[name] = value.typed;
  }
  return { checked, typed };
}

function oddKey(name: string, node: Node, from: Origin): Problem {
  const where = from.where(node?.range?.[0] ?? 0);
  const got = name.length > 40 ? `${name.slice(0, 40)}…` : name || "nothing";
  return problem({
    code: "odd-key",
    where,
    what: "key",
    got,
    must: "be a plain word of letters and digits",
    hint: "for example value: 20 degC",
  });
}

/** An escape puts into a text what the file itself may not hold. */
const oddText = (name: string, where: string): Problem =>
  problem({
    code: "odd-character",
    where,
    what: "text",
    got: `the character ${name}, written as an escape`,
    must: "be plain text",
    why: "this character is not seen, and can change what a line seems to say",
    hint: "write the text without it",
  });

// A number that would read otherwise elsewhere, or lose digits, has to be quoted by the person who means it.
const plainDecimal = /^[-+]?(?:0|[1-9][0-9]*)(?:\.[0-9]+)?$/;
const mostDigits = 15;

export const isPlainDecimal = (text: string): boolean =>
  plainDecimal.test(text) && text.replace(/[^0-9]/g, "").length <= mostDigits;

function plainScalar(node: Scalar, from: Origin, problems: Problem[]): PlainValue {
  const { value } = node;
  if (typeof value === "boolean") return { checked: value, typed: value };
  if (typeof value === "string") {
    const odd = oddIn(value);
    if (odd) problems.push(oddText(odd.name, from.where(node.range?.[0] ?? 0)));
    return { checked: value, typed: value };
  }
  if (typeof value !== "number") return { checked: null, typed: null };
  const typed = node.source ?? String(value);
  if (!isPlainDecimal(typed)) {
    const where = from.where(node.range?.[0] ?? 0);
    problems.push(
      problem({
        code: "number-form",
        where,
        what: "number",
        got: typed,
        must: `be a plain decimal number of at most ${mostDigits} digits, or stand in quotes`,
        why: "YAML reads it as another number than it looks",
        hint: `for a tag or a position write "${typed}"; for a quantity write its unit, for example 12.0000 mm`,
        suggestions: [`"${typed}"`],
      }),
    );
  }
  return { checked: value, typed };
}
