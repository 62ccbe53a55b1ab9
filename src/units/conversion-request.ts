// "520 lbf.ft to N.m" asks for a conversion: read by the box for units and by convert, refused as a value.
import { isProblem } from "../problem.ts";
import { unit } from "./unit.ts";

export interface ConversionRequest {
  readonly text: string;
  readonly to: string;
}

const longest = 200;

/** In "10 to 12 mm" no unit follows the word. */
export function conversionRequest(typed: string): ConversionRequest | undefined {
  if (typed.length > longest) return undefined;
  const [text = "", to = "", more] = typed.split(/ (?:to|into) |->|\u2192|=>/).map((part) => part.trim());
  const isRequest = text !== "" && /^\D/.test(to) && more === undefined && !isProblem(unit(to));
  return isRequest ? { text, to } : undefined;
}
