// A typed text as a quantity, or the reason why it is none.
import { isProblem, type Problem, problem } from "../problem.ts";
import type { Kind } from "./kind.ts";
import { scan } from "./scan.ts";
import type { Quantity } from "./typed.ts";

export { halfWidthOf } from "./half-width.ts";
export { type Quantity, quantityOf } from "./typed.ts";

export interface HowRead {
  /** The person has been asked, or is asked beside the value: a reading that has to be confirmed is kept. */
  readonly confirmed?: true;
}

/**
 * Keeps what the scanner accepts or shows. A designation is no quantity, and what has to be asked about is
 * a question here too, with the text that asks nothing; a field that can ask uses `scan`.
 */
export function quantity(text: string, expected?: Kind, how: HowRead = {}): Quantity | Problem {
  const found = scan(text, expected);
  if (found.quantity && (found.outcome !== "warn" || how.confirmed)) return found.quantity;
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
