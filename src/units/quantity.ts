// A typed text as a quantity, or the reason why it is none.
import { type Problem, problem } from "../problem.ts";
import type { Kind } from "./kind.ts";
import { scan } from "./scan.ts";
import type { Quantity } from "./typed.ts";

export { type Quantity, quantityOf, type TypedSpread } from "./typed.ts";

/** Keeps what the scanner accepts, shows or asks about; a designation is no quantity. */
export function quantity(text: string, expected?: Kind): Quantity | Problem {
  const found = scan(text, expected);
  if (found.quantity) return found.quantity;
  return (
    found.problem ??
    problem({
      code: "designation",
      what: expected ?? "quantity",
      got: `"${text}", a designation`,
      must: "be a number and a unit",
    })
  );
}
