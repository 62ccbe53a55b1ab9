// How a given was understood, and the spread that the page states for it.
import type { GivenItem, SpreadText } from "../document/item.ts";
import type { Line } from "../engine/line.ts";
import type { UnitChoice } from "../methods/solution.ts";
import { isProblem } from "../problem.ts";
import { differenceUnit } from "../units/in-unit.ts";
import type { Kind } from "../units/kind.ts";
import { onScreen } from "../units/on-screen.ts";
import { setText } from "./figure-text.ts";

/** "read as torque, 705.0 N·m" */
export function readingText({ value }: Line, item: GivenItem, unitOf: UnitChoice): string {
  if (isProblem(value)) return "";
  if (value.type === "text")
    return item.as === "text" || item.choices ? "read as text" : "read as a designation";
  if (value.type !== "quantity") return "";
  const kind = value.kind;
  const shown = kind === undefined ? value.typed.unit : unitOf(kind);
  const spread =
    value.halfWidth === undefined ? "" : ` ± ${setText(value.halfWidth, kind, differenceUnit(shown))}`;
  const few = shown.text === value.typed.unit.text ? 6 : 4; // what was typed keeps its digits
  const together = (setText(value.si, kind, shown, few) + spread).replaceAll(" ", "\u00a0"); // number and unit stay on one line
  const words = readWords(kind, value.typed.text, together);
  return value.typed.spread?.form === "plusMinus"
    ? [words, "± taken as limits"].filter(Boolean).join("; ")
    : words;
}

/** No number again where nothing was converted; a bare number needs no kind, a share is shown as what it is. */
export function readWords(kind: Kind | undefined, typed: string, together: string): string {
  const plain = (text: string) => onScreen(text).replaceAll(/\s+/g, " ").trim();
  const isSame = plain(typed) === plain(together);
  if (kind !== undefined && kind !== "ratio" && kind !== "count")
    return isSame ? `read as ${kind}` : `read as ${kind}, ${together}`;
  if (isSame) return "";
  return /%/.test(typed) ? `${plain(typed)} = ${together}` : `a number, ${together}`;
}

export function spreadWords(spread: SpreadText): string {
  const applies = spread.applies ? `, applies to ${spread.applies}` : "";
  switch (spread.form) {
    case "plusMinus":
      return `plus or minus ${spread.plusMinus}, taken as ${spread.meaning === "expanded" ? `expanded, k = ${spread.k}` : spread.meaning}${applies}`;
    case "limits":
      return `from ${spread.lower} to ${spread.upper}${applies}`;
    case "resolution":
      return `resolution ${spread.resolution}${applies}`;
  }
}
