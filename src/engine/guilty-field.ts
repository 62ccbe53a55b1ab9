// Which field of an item a problem is about, found from the words that the problem begins with.
import type { FormulaItem, Item } from "../document/item.ts";
import { columnOf } from "../formula/refusal.ts";
import { methods } from "../methods/register.ts";
import type { Problem } from "../problem.ts";

export interface GuiltyField {
  readonly path: readonly (string | number)[];
  /** Column of a formula in it, from 1; 0 stands for the name before it. */
  readonly within: number | undefined;
}

export function guiltyField(item: Item, found: Problem): GuiltyField {
  const parts = found.what.split(" · ");
  const within = columnOf(found.with({ what: parts.at(-1) ?? "" }));
  const path = pathOf(item, found, parts);
  return { path, within: found.code === "unknown-input" && path.length > 1 ? 0 : within };
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
      return ["of", ...pictureInput(item.of, found, first)];
    default:
      return [];
  }
}

/** What a picture refuses begins with the input, or with its list and row. */
function pictureInput(of: object, { where, got }: Problem, first: string): readonly string[] {
  const words = first.startsWith("picture ") ? `${where ?? ""} ${got ?? ""}`.split(" ") : [first];
  return words.filter((word) => Object.hasOwn(of, word)).slice(0, 1);
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
