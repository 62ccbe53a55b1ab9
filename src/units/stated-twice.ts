// "20 Nm (2.0 kgf-m)": one value in two units. The first counts; the second has to agree within its rounding.
import { compare, divide, multiply, negate, type Rational, rational, subtract } from "./rational.ts";
import { valueWords } from "./read-line.ts";
import type { LineReading } from "./terms.ts";
import { inSi } from "./typed.ts";

export interface Twice {
  readonly first: string;
  readonly second: string;
}

/** A bracket that holds a number and a unit, after a number and a unit; 12.0005(5) and 6 bar(g) hold none. */
export function statedTwice(line: string): Twice | undefined {
  const open = Math.max(line.lastIndexOf("("), line.lastIndexOf("["));
  const [first, second] = [line.slice(0, Math.max(open, 0)).trimEnd(), line.slice(open + 1, -1).trim()];
  const closes = line.endsWith(line[open] === "(" ? ")" : "]");
  const isQuantity = (text: string): boolean => /^[-+]?\.?\d/.test(text) && /[^\d\s.,()[\]]$/.test(text);
  return open > 0 && closes && isQuantity(first) && isQuantity(second) ? { first, second } : undefined;
}

export interface Compared {
  readonly words: string;
  /** The question where the two do not agree. */
  readonly ask?: string;
  readonly second: string;
}

/** What is said of the second value beside the first. */
export function compared(first: LineReading, second: LineReading): Compared {
  const [own, other] = [first, second].map(({ value, unit }) => valueWords(value, unit.unit, unit.shownIn));
  const words = { words: `, also stated as ${other}`, second: other ?? "" };
  const away = subtract(inSi(first.value, first.unit.unit), inSi(second.value, second.unit.unit));
  const step = rounding(second) ?? rounding(first) ?? rational(0);
  const room = divide(multiply(step, second.unit.unit.factor), rational(2));
  if (compare(away.n < 0n ? negate(away) : away, room) <= 0) return words;
  return { ...words, words: `, not ${other}`, ask: `${own} and ${other} are not the same; is ${own} meant?` };
}

/** The zeros of 690 kPa may be no figures. */
function rounding({ step, value }: Pick<LineReading, "step" | "value">): Rational | undefined {
  if (step?.d !== 1n || value.n === 0n) return step;
  const larger = multiply(step, rational(10));
  return divide(value, larger).d === 1n ? rounding({ step: larger, value }) : step;
}
