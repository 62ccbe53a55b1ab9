// "520 lbf.ft to N.m" asks for a conversion: read by the box for units and by convert, refused as a value.
import { isProblem } from "../problem.ts";
import { unit } from "./unit.ts";

export interface ConversionRequest {
  readonly text: string;
  readonly to: string;
}

/** In "10 to 12 mm" no unit follows the word. */
export function conversionRequest(typed: string): ConversionRequest | undefined {
  const [, text = "", to = ""] =
    /^(.+?)(?: +(?:to|into) +| *(?:->|\u2192|=>) *)(\D.*)$/.exec(typed.trim()) ?? [];
  return to === "" || isProblem(unit(to)) ? undefined : { text, to };
}
