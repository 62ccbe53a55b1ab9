// A value that is to be converted, read as what the unit asked for can be.
import { isProblem } from "../problem.ts";
import type { Kind } from "./kind.ts";
import { type Scan, scan } from "./scan.ts";
import { commonKind } from "./typed.ts";
import { unit } from "./unit.ts";

/** 1 lb/ft2 to kg/m2 is no pressure. */
export function scanFor(text: string, to: string | undefined, as?: Kind): Scan {
  const found = scan(text, as);
  const target = to === undefined ? undefined : unit(to);
  if (as !== undefined || target === undefined || isProblem(target)) return found;
  if (found.quantity && commonKind(target.kinds, found.quantity.unit.kinds) !== undefined) return found;
  return target.kinds.map((kind) => scan(text, kind)).find((other) => other.quantity) ?? found;
}
