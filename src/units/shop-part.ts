// "3 hundredths" says a share and not of what: a millimetre or an inch.
import { type Problem, problem } from "../problem.ts";
import { exactDecimal, multiply, power, rational } from "./rational.ts";
import type { Term } from "./terms.ts";

const places: Readonly<Record<string, number>> = { hundredth: 2, thousandth: 3 };

export function shopPart(line: string, { number, unitText }: Term): Problem | undefined {
  const [, word = "", inch, metric] =
    /^(hundredth|thousandth)s?(?: of an? (?:(in|inch)|(mm|milli\w+)))?$/i.exec(unitText) ?? [];
  const decimals = places[word.toLowerCase()];
  if (decimals === undefined) return undefined;
  const size = exactDecimal(multiply(number.value, power(rational(10), -decimals)), 17);
  const units = inch ? ["in"] : metric ? ["mm"] : ["mm", "in"];
  return problem({
    code: "unit-ambiguous",
    what: "length",
    got: `"${line}"`,
    must: "say of what",
    why: `a ${word} can be of a millimetre or of an inch`,
    suggestions: size === undefined ? [] : units.map((name) => `${size} ${name}`),
  });
}
