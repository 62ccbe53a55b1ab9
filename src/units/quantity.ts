// A typed text as a quantity, or the reason why it is none.
import { isProblem, type Problem, problem } from "../problem.ts";
import type { Kind } from "./kind.ts";
import { scan } from "./scan.ts";
import type { Quantity } from "./typed.ts";

export { type HalfWidth, halfWidthOf } from "./half-width.ts";
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

/** The same where nothing can carry a ±: a limit, an uncertainty, a number in a formula. */
export function oneValue(text: string, expected?: Kind): Quantity | Problem {
  const read = quantity(text, expected);
  if (isProblem(read) || !read.spread) return read;
  return problem({
    code: "spread-not-carried",
    what: expected ?? "quantity",
    got: text,
    must: "be one value, without ± or limits",
    why: "here a spread would be lost",
    hint: "give it as an item of the page, where a spread has a meaning",
  });
}
