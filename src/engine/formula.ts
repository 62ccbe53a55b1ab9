// Works out one formula text over the lines of a page: dimensions first, then the number.

import { evaluatorAtLimit } from "../formula/at-limit.ts";
import { checkDimensions, type Typed } from "../formula/check-dimensions.ts";
import { parse } from "../formula/parse.ts";
import { refusal } from "../formula/refusal.ts";
import { fullName, names, type Tree } from "../formula/tree.ts";
import { type WorkedStep, workedStep } from "../methods/solution.ts";
import { isProblem, type Problem } from "../problem.ts";
import { clear, type Standing } from "../standing.ts";
import { baseUnit } from "../units/base-unit.ts";
import { kindsOf } from "../units/kind.ts";
import { oneValue } from "../units/quantity.ts";
import type { Unit } from "../units/unit.ts";
import { standingOf } from "./formula-standing.ts";
import type { FormulaValue, Named } from "./line.ts";
import { type Results, resolve, truth, unknownName } from "./scope.ts";

/** A formula made ready once: parsing is the dear part, and types rarely change from wave to wave. */
interface Ready {
  readonly tree: Tree;
  readonly places: ReadonlyMap<string, number>;
  readonly evaluate: ReturnType<typeof evaluatorAtLimit>;
  /** Types of the names at the last check, and what came of it. */
  checked?: { readonly types: readonly Typed[]; readonly typed: Typed | Problem };
}

const texts = new Map<string, Ready | Problem>();
const mostTexts = 5000;

/** A text that begins like a number is tried as a quantity; otherwise it is a formula. */
export const looksLikeQuantity = (text: string): boolean => /^\s*[-+−]?[.\d]/.test(text);

function treeOf(text: string): Tree | Problem {
  if (!looksLikeQuantity(text)) return parse(text);
  const read = oneValue(text);
  if (!isProblem(read)) return { type: "quantity", quantity: read, at: 1 };
  const tree = parse(text);
  return isProblem(tree) ? read : tree;
}

function ready(text: string): Ready | Problem {
  const known = texts.get(text);
  if (known) return known;
  if (texts.size >= mostTexts) texts.clear();
  const tree = treeOf(text);
  const made = isProblem(tree)
    ? tree
    : { tree, places: new Map(names(tree).map((name, i) => [name, i])), evaluate: evaluatorAtLimit(tree) };
  texts.set(text, made);
  return made;
}

export function formulaTree(text: string): Tree | Problem {
  const found = ready(text);
  return isProblem(found) ? found : found.tree;
}

/** A number or a quantity, perhaps with a sign: what a person types, not what a page works out. */
export const isLiteral = (tree: Tree): boolean =>
  tree.type === "number" || tree.type === "quantity" || (tree.type === "negate" && isLiteral(tree.of));

export function workOut(
  name: string,
  says: string | undefined,
  text: string,
  results: Results,
  unit?: Unit,
  own: Standing = clear,
): FormulaValue | Problem {
  const formula = ready(text);
  if (isProblem(formula)) return formula;
  const named: Named[] = [];
  for (const used of formula.places.keys()) {
    const found = resolve(results, used);
    if (isProblem(found)) return found;
    named.push(found);
  }
  const typed = typeOf(formula, named);
  if (isProblem(typed)) return typed;
  const at = (used: string) => named[formula.places.get(used) ?? -1];
  const value = formula.evaluate((used) => at(used)?.value ?? unknownName(used, []));
  if (isProblem(value)) return value;
  const kind = typed.truth ? "yes/no" : (typed.kind ?? kindsOf(typed.dimension)[0]);
  const shown = unit ?? (kind === undefined ? baseUnit(typed.dimension) : undefined);
  const si = typeof value === "number" ? value : value === true ? 1 : 0;
  const standing = standingOf({
    own,
    name,
    tree: formula.tree,
    evaluate: formula.evaluate,
    named: at,
    used: named,
    si,
  });
  let step: WorkedStep | undefined; // most steps are never looked at
  const stepOf = () => {
    step ??= workedStep(
      {
        name,
        symbol: name,
        says,
        tree: formula.tree,
        kind,
        si,
        source: undefined,
        yes: value === true,
        unit: shown,
      },
      (used) => at(used)?.leaf,
    );
    return step;
  };
  return {
    type: "formula",
    kind,
    dimension: typed.dimension,
    si,
    unit: shown,
    named:
      kind === "yes/no"
        ? truth(value === true, standing)
        : {
            typed: { dimension: typed.dimension, kind: typed.kind },
            value: si,
            leaf: { symbol: name, kind, dimension: typed.dimension, si, scale: () => stepOf().scale() },
            standing,
          },
    get step() {
      return stepOf();
    },
  };
}

const sameType = (a: Typed, b: Typed | undefined): boolean =>
  b !== undefined &&
  a.dimension === b.dimension &&
  a.kind === b.kind &&
  a.column === b.column &&
  a.truth === b.truth;

/** A column stands alone in a formula only by its name, and is not one number there either. */
function wholeColumn(tree: Tree): Problem {
  const name = tree.type === "name" ? fullName(tree) : "column";
  return refusal("formula-whole-column", tree.at, {
    got: `the whole column ${name}`,
    must: "be one number",
    hint: `take sum(${name}), mean(${name}), smallest(${name}) or largest(${name})`,
  });
}

function typeOf(formula: Ready, named: readonly Named[]): Typed | Problem {
  const last = formula.checked;
  if (last && named.every((found, i) => sameType(found.typed, last.types[i]))) return last.typed;
  const found = checkDimensions(
    formula.tree,
    (used) => named[formula.places.get(used) ?? -1]?.typed ?? unknownName(used, []),
  );
  const typed = isProblem(found) || !found.column ? found : wholeColumn(formula.tree);
  formula.checked = { types: named.map((found) => found.typed), typed };
  return typed;
}
