// Which field of an item a problem is about, found from the words that the problem begins with.
import type { FormulaItem, Item } from "../document/item.ts";
import { columnOf } from "../formula/refusal.ts";
import { methods } from "../methods/register.ts";
import type { Problem } from "../problem.ts";

export interface GuiltyField {
  readonly path: readonly (string | number)[];
  /** Column of a formula in it, from 1. */
  readonly within: number | undefined;
}

export function guiltyField(item: Item, found: Problem): GuiltyField {
  const parts = found.what.split(" · ");
  const within = columnOf(found.with({ what: parts.at(-1) ?? "" }));
  return { path: pathOf(item, found, parts), within };
}

function pathOf(item: Item, found: Problem, parts: readonly string[]): GuiltyField["path"] {
  const [first = ""] = parts;
  switch (item.kind) {
    case "given":
      return ["value"];
    case "working":
      if (item.each !== undefined && first === item.each) return ["each"];
      if ("formula" in item) return isOfUnit(item, found, first) ? ["unit"] : ["is"];
      return inputPath(item.by, item.of, found, first);
    case "check":
      if (item.each !== undefined && first === item.each) return ["each"];
      if (first === "uncertainty") return ["uncertainty"];
      if (first === "lower limit") return item.between ? ["between", 0] : ["atLeast"];
      if (first === "upper limit") return item.between ? ["between", 1] : ["atMost"];
      return item.none !== undefined ? ["none"] : item.reads !== undefined ? ["reads"] : ["that"];
    case "picture":
      if (first === "picture") return ["picture"];
      return Object.hasOwn(item.of, first) ? ["of", first] : ["of"];
    default:
      return [];
  }
}

/** The unit that is asked for stands at the head of what was got. */
const isOfUnit = ({ unit }: FormulaItem, { got }: Problem, first: string): boolean =>
  unit !== undefined && (first === "unit" || got === unit || got?.startsWith(`${unit},`) === true);

/** An input by its name, or by what its method calls it. */
function inputPath(by: string, of: object, found: Problem, first: string): readonly string[] {
  const method = methods.get(by);
  if (!method) return ["by"];
  if (Object.hasOwn(of, first)) return ["of", first];
  const named = Object.entries(method.inputs).find(
    ([name, { says }]) => says === found.what && Object.hasOwn(of, name),
  );
  return named ? ["of", named[0]] : ["of"];
}
