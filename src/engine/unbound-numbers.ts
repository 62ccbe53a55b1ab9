// Numbers typed into a note that are values of the page today: they would stay when the value changes.
// Only pointed out; no state rests on it.
import { inlinesOf, leavesOf } from "../document/bound-formulas.ts";
import type { UnitChoice } from "../methods/solution.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { inUnit } from "../units/in-unit.ts";
import type { Line, ProseValue } from "./line.ts";
import { type NumberInText, numbersIn, sharesIn } from "./numbers-in-text.ts";
import { type PageNumber, pageNumbers, rowCounts } from "./page-numbers.ts";

/** The note that a line is, or that stands beside it. */
export const noteOfLine = ({ value, note }: Line): ProseValue | undefined =>
  !isProblem(value) && value.type === "prose" ? value : note;

/** One problem for each such number, at its line. */
export function unboundNumbers(
  lines: readonly Line[],
  unitOf: UnitChoice,
): readonly { readonly line: Line; readonly found: Problem }[] {
  const notes = lines.flatMap((line) => textsOf(noteOfLine(line)).map((text) => ({ line, text })));
  if (notes.length === 0) return [];
  const values = pageNumbers(lines, unitOf);
  const counts = rowCounts(lines);
  const typed = notes.map(({ line, text }) => ({ line, text, numbers: numbersIn(text) }));
  const many = typed.reduce((sum, { numbers }) => sum + numbers.length, 0);
  const [first] = typed;
  if (first && many * values.length > mostPairs)
    return [{ line: first.line, found: tooMany(many, values.length) }];
  return typed.flatMap(({ line, text, numbers }) => [
    ...numbers.flatMap((number) => {
      const same = values.find((value) => isSame(number, value));
      return same ? [{ line, found: equal(number.text, same) }] : [];
    }),
    ...sharesIn(text)
      .filter(({ of }) => counts.has(of))
      .map((share) => ({ line, found: counted(share.text, counts.get(share.of) ?? "") })),
  ]);
}

/** About a second of comparing; a long page has a tenth of it. */
const mostPairs = 10_000_000;

const tooMany = (typed: number, values: number): Problem =>
  problem({
    code: "too-many-numbers",
    what: "numbers typed into notes",
    got: `${typed} of them beside ${values} values of the page`,
    must: `come to at most ${mostPairs} pairs to be compared`,
    why: "whether one of them is a value of the page is not looked at",
  });

const textsOf = (prose: ProseValue | undefined): readonly string[] =>
  (prose?.blocks ?? [])
    .flatMap((block) => leavesOf(inlinesOf(block)))
    .flatMap((leaf) => (leaf.type === "text" ? [leaf.text] : []));

/** Half of the last printed digit, but never so much that 5 um would be 5.4. */
const loosest = 0.02;

function isSame({ value, decimals, unit, whole }: NumberInText, { si, kind, shown }: PageNumber): boolean {
  if (unit && (unit.kinds.length === 0 || !unit.kinds.some((one) => one === kind))) return false;
  if (!unit && !whole && kind !== "ratio" && kind !== "count") return false;
  const there = inUnit(si, unit ?? shown);
  const slack = Math.min(0.5 * 10 ** -decimals, loosest * Math.abs(value));
  return Math.abs(there - value) <= slack * (1 + 1e-9);
}

const equal = (text: string, { name, bindable }: PageNumber): Problem =>
  problem({
    code: "unbound-number",
    what: text,
    got: `a typed number that is ${name} now`,
    why: "it stays when the value changes",
    hint: bindable ? `write {${name}}` : "bind it, or leave it out: the page shows it",
  });

const counted = (text: string, name: string): Problem =>
  problem({
    code: "unbound-number",
    what: text,
    got: `a typed count of ${name}`,
    why: "it stays when the rows change",
    hint: "bind it, or leave it out: the page shows it",
  });
