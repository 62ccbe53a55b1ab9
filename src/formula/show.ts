// Tree to a display tree: fractions, powers, roots and as few brackets as reading needs.
// No markup here; views turn it into MathML and `plain` into one line of text.

import { unitLabel } from "../units/unit.ts";
import { type BinaryNode, type CallNode, type Comparison, fullName, type Tree } from "./tree.ts";

export { plain } from "./plain.ts";

export type Shown =
  | { readonly type: "row"; readonly parts: readonly Shown[] }
  | { readonly type: "fraction"; readonly top: Shown; readonly bottom: Shown }
  | { readonly type: "power"; readonly base: Shown; readonly exponent: Shown }
  | { readonly type: "root"; readonly of: Shown }
  | { readonly type: "symbol"; readonly text: string; readonly sub?: string }
  | { readonly type: "number"; readonly text: string; readonly unit?: string }
  | { readonly type: "operator"; readonly text: string }
  | { readonly type: "fence"; readonly of: Shown }
  | { readonly type: "function"; readonly name: string; readonly args: readonly Shown[] }
  | { readonly type: "cases"; readonly rows: readonly { readonly value: Shown; readonly when: Shown }[] };

/** How tightly the outermost sign of a part binds. */
const binds = { compare: 1, sum: 2, product: 3, sign: 4, power: 5, leaf: 6 } as const;
interface Part {
  readonly shown: Shown;
  readonly binding: number;
}

type Leaf = (fullName: string) => Shown;

const minus = "−";
const times = "·";
const otherwise: Shown = { type: "symbol", text: "otherwise" };

export function show(tree: Tree, leaf: Leaf): Shown {
  return part(tree, leaf).shown;
}

/** "F_M" is F with subscript M; what follows the first underscore is the subscript. */
export function symbolOf(text: string): Shown {
  const cut = text.indexOf("_");
  if (cut <= 0 || cut === text.length - 1) return { type: "symbol", text };
  return { type: "symbol", text: text.slice(0, cut), sub: text.slice(cut + 1) };
}

const row = (...parts: readonly Shown[]): Shown => ({
  type: "row",
  parts: parts.flatMap((shown) => (shown.type === "row" ? shown.parts : [shown])),
});
const operator = (text: string): Shown => ({ type: "operator", text });

/** The part, in brackets when it binds less tightly than its place asks for. */
const atLeast = (inner: Part, binding: number): Shown =>
  inner.binding < binding ? { type: "fence", of: inner.shown } : inner.shown;

function part(tree: Tree, leaf: Leaf): Part {
  switch (tree.type) {
    case "number":
      return given({ type: "number", text: tree.text });
    case "quantity":
      return given(quantityShown(tree.quantity.text, tree.quantity.value, unitLabel(tree.quantity.unit)));
    case "name":
      return given(leaf(fullName(tree)));
    case "constant":
      return { shown: { type: "symbol", text: "π" }, binding: binds.leaf };
    case "negate":
      return { shown: row(operator(minus), atLeast(part(tree.of, leaf), binds.product)), binding: binds.sum };
    case "binary":
      return binary(tree, leaf);
    case "compare":
      return {
        shown: row(
          atLeast(part(tree.left, leaf), binds.sum),
          operator(comparisonSigns[tree.op]),
          atLeast(part(tree.right, leaf), binds.sum),
        ),
        binding: binds.compare,
      };
    case "choose":
      return { shown: { type: "cases", rows: cases(tree, leaf) }, binding: binds.leaf };
    default:
      return call(tree, leaf);
  }
}

const comparisonSigns: Readonly<Record<Comparison, string>> = {
  "<": "<",
  "<=": "≤",
  ">": ">",
  ">=": "≥",
  "==": "=",
  "!=": "≠",
};

/** The number as typed, with the unit as labelled. */
function quantityShown(text: string, value: number, unit: string): Shown {
  const typed = /^[-−]?[\d.,\s]*\d(?:[eE][+-]?\d+)?/.exec(text.trim())?.[0].trim();
  const number = typed ?? String(value);
  return unit === "" || unit === "1"
    ? { type: "number", text: number }
    : { type: "number", text: number, unit };
}

/** What a leaf turned out to be decides its brackets: a minus sign, a power of ten or a unit. */
function given(shown: Shown): Part {
  if (shown.type === "number") {
    if (/^[-−]/.test(shown.text)) return { shown, binding: binds.sum };
    return {
      shown,
      binding: shown.unit === undefined && !/[×·/^eE]/.test(shown.text) ? binds.leaf : binds.sign,
    };
  }
  if (shown.type === "row") return { shown, binding: binds.compare };
  if (shown.type === "fraction") return { shown, binding: binds.product };
  return { shown, binding: shown.type === "power" ? binds.power : binds.leaf };
}

function binary(tree: BinaryNode, leaf: Leaf): Part {
  const left = part(tree.left, leaf);
  const right = part(tree.right, leaf);
  switch (tree.op) {
    case "+":
      return {
        shown: row(atLeast(left, binds.sum), operator("+"), signed(right, binds.sum)),
        binding: binds.sum,
      };
    case "-":
      return {
        shown: row(atLeast(left, binds.sum), operator(minus), signed(right, binds.product)),
        binding: binds.sum,
      };
    case "*":
      return {
        shown: row(
          leadingSign(left) ? left.shown : atLeast(left, binds.product),
          operator(times),
          atLeast(right, binds.product),
        ),
        binding: leadingSign(left) ? binds.sum : binds.product,
      };
    case "/":
      return { shown: { type: "fraction", top: left.shown, bottom: right.shown }, binding: binds.product };
    default:
      return { shown: { type: "power", base: base(left), exponent: right.shown }, binding: binds.power };
  }
}

/** After + or −, a part that itself begins with a minus sign stands in brackets. */
function signed(inner: Part, binding: number): Shown {
  return leadingSign(inner) ? { type: "fence", of: inner.shown } : atLeast(inner, binding);
}

/** "−a · b": a minus sign and a product, no sum. */
function leadingSign({ shown }: Part): boolean {
  if (shown.type === "number") return /^[-−]/.test(shown.text);
  if (shown.type !== "row") return false;
  const [first, ...rest] = shown.parts;
  return isSign(first, minus) && !rest.some((inner) => isSign(inner, minus) || isSign(inner, "+"));
}

const isSign = (shown: Shown | undefined, text: string): boolean =>
  shown?.type === "operator" && shown.text === text;

/** A root is bracketed too: √(x)² on one line would not say what is squared. */
function base(inner: Part): Shown {
  const bracket =
    inner.binding < binds.leaf || inner.shown.type === "root" || inner.shown.type === "fraction";
  return bracket ? { type: "fence", of: inner.shown } : inner.shown;
}

function call(tree: CallNode, leaf: Leaf): Part {
  const args = tree.args.map((arg) => show(arg, leaf));
  const [first] = args;
  if (tree.name === "sqrt" && first) return { shown: { type: "root", of: first }, binding: binds.leaf };
  return { shown: { type: "function", name: tree.name, args }, binding: binds.leaf };
}

function cases(tree: Tree, leaf: Leaf): readonly { value: Shown; when: Shown }[] {
  if (tree.type !== "choose") return [{ value: show(tree, leaf), when: otherwise }];
  return [{ value: show(tree.yes, leaf), when: show(tree.test, leaf) }, ...cases(tree.no, leaf)];
}
