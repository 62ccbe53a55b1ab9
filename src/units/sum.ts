// Parts that follow on each other and sums with a plus: like quantities only, and never a tolerance taken for a sum.
import { type Problem, problem } from "../problem.ts";
import { add, compare, divide, multiply, negate, type Rational, rational, terminates } from "./rational.ts";
import type { Term } from "./terms.ts";
import { commonKind } from "./typed.ts";
import type { UnitReading } from "./unit.ts";

/** A number and its unit, both read. */
export interface Part {
  readonly term: Term;
  readonly reading: UnitReading;
}

interface Whole {
  readonly value: Rational;
  readonly unit: UnitReading;
}

/** After whole thou, tenths can only be ten-thousandths of an inch. */
export function following(before: Part | undefined, reading: UnitReading): UnitReading {
  if (reading.unit.text !== "tenth" || !before || !["thou", "in"].includes(before.reading.unit.text))
    return reading;
  return { unit: reading.unit, level: "note" };
}

export function sum(line: string, parts: readonly Part[]): Whole | Problem {
  const [first] = parts;
  const fault = unlike(line, parts) ?? partFault(line, parts) ?? tolerance(line, parts);
  if (fault || !first) return fault ?? refuse(line, "there is nothing to add");
  let total = rational(0);
  let minus = false;
  for (const { term, reading } of parts) {
    const size = multiply(term.number.value, reading.unit.factor);
    if (term.joined !== "next") minus = term.number.negative;
    total = add(total, term.joined === "next" && minus ? negate(size) : size);
  }
  return (
    inShorterUnit(total, parts) ?? { value: divide(total, first.reading.unit.factor), unit: first.reading }
  );
}

const refuse = (line: string, why: string): Problem =>
  problem({ code: "unlike-sum", what: "quantity", got: `"${line}"`, must: "add like quantities", why });

function unlike(line: string, parts: readonly Part[]): Problem | undefined {
  const first = parts[0]?.reading.unit;
  for (const [place, { term, reading }] of parts.entries()) {
    const { unit } = reading;
    if (unit.offset) return refuse(line, "temperature readings cannot be added");
    if (!first || (commonKind(first.kinds, unit.kinds) === undefined && unit.text !== first.text))
      return refuse(line, `${first?.text} and ${unit.text} are not of one kind`);
    if (term.joined === "next" && !followsOn(parts[place - 1]?.reading, reading))
      return refuse(line, "put + between the parts");
  }
  return undefined;
}

/** "45 deg + 61 arcmin": the parts as a sum that asks nothing. */
function asSum(parts: readonly Part[]): string {
  const minus = parts[0]?.term.number.negative ?? false;
  return parts
    .map(({ term, reading }) => {
      const sign = minus && term.joined === "next" ? "-" : "";
      return `${sign}${term.number.plain} ${reading.unit.text}`;
    })
    .join(" + ");
}

/** Of 45° 61' and 1 ft 14 in one digit is wrong; of 3.5 ft 6 in one part is. 59°59'60" is what rounding leaves. */
function partFault(line: string, parts: readonly Part[]): Problem | undefined {
  for (const [place, { term, reading }] of parts.entries()) {
    const before = parts[place - 1];
    if (term.joined !== "next" || !before) continue;
    const larger = before.reading.unit;
    const most = divide(larger.factor, reading.unit.factor);
    const isWhole = before.term.number.value.d === 1n;
    if (isWhole && compare(term.number.value, most) <= 0) continue;
    return problem({
      code: "part-too-large",
      what: "quantity",
      got: `"${line}"`,
      must: isWhole
        ? `have no more than ${most.n} ${reading.unit.text} after its ${larger.text}`
        : `have whole ${larger.text} before its ${reading.unit.text}`,
      suggestions: [asSum(parts)],
    });
  }
  return undefined;
}

/** 300 Nm +30 Nm is how a card writes a tolerance, and 18 ft-lb + 6 in-lb a sum. */
function tolerance(line: string, parts: readonly Part[]): Problem | undefined {
  const place = parts.findIndex(
    ({ term, reading }, at) =>
      term.joined === "signed +" ||
      (term.joined === "close +" && reading.unit.text === parts[at - 1]?.reading.unit.text),
  );
  if (place < 1) return undefined;
  const [value, size] = [asSum(parts.slice(0, place)), asSum(parts.slice(place))];
  const [first, second] = parts;
  const alike = parts.length === 2 && first?.reading.unit.text === second?.reading.unit.text;
  const upper = alike ? [`${value} +${second?.term.number.plain}/0 ${second?.reading.unit.text}`] : [];
  const limits = parts.length === 2 ? [`${value} ± ${size}`, ...upper] : [];
  return problem({
    code: "sum-or-tolerance",
    what: first?.reading.unit.kinds[0] ?? "quantity",
    got: `"${line}"`,
    must: "say whether it is a sum or a tolerance",
    why: "a plus before a number can mean either",
    suggestions: [...limits, `${value} + ${size}`],
  });
}

/** 5'-6 1/2" is 66.5 in, not 5.541666… ft; 3 ft 6 in stays 3.5 ft. */
function inShorterUnit(total: Rational, parts: readonly Part[]): Whole | undefined {
  const [first, last] = [parts[0]?.reading, parts.at(-1)?.reading];
  if (parts.at(-1)?.term.joined !== "next" || !first || !last || first.unit.text === "deg") return undefined;
  const inFirst = divide(total, first.unit.factor);
  const value = divide(total, last.unit.factor);
  return terminates(value) && !terminates(inFirst) ? { value, unit: last } : undefined;
}

const families: readonly (readonly string[])[] = [
  ["yd", "ft", "in"],
  ["in", "thou", "tenth"],
  ["m", "cm", "mm"],
  ["deg", "arcmin", "arcsec"],
  ["lb", "oz"],
  ["lbf", "ozf"],
  ["h", "min", "s"],
];

/** 6 in follows on 3 ft: the next smaller unit of one family. */
function followsOn(before: UnitReading | undefined, after: UnitReading): boolean {
  if (!before) return false;
  const [larger, smaller] = [before.unit.text, after.unit.text];
  return (
    compare(before.unit.factor, after.unit.factor) > 0 &&
    families.some((f) => f.includes(larger) && f.includes(smaller))
  );
}
