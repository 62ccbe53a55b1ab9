// One value, or a sum of like values: "3 ft 6 in", 5'-6 1/2", 30°22'8", "18 ft-lb + 6 in-lb".
import { isProblem, type Problem, problem } from "../problem.ts";
import { findAtom } from "./find-atom.ts";
import type { Kind } from "./kind.ts";
import { type NumberText, readNumber } from "./number-text.ts";
import { add, compare, divide, multiply, negate, type Rational, terminates } from "./rational.ts";
import { commonKind } from "./typed.ts";
import { type Level, readUnit, type UnitReading } from "./unit.ts";

/** A number and its unit text, with the places where they stand in the line. */
export interface Term {
  readonly number: NumberText;
  readonly unitText: string;
  readonly unitStart: number;
  readonly unitEnd: number;
  /** "next": the 6 in of 3 ft 6 in. */
  readonly joined: "first" | "+" | "next";
}

const unexpected = (line: string, at: number): Problem => {
  const minus = line[at] === "-";
  return problem({
    code: minus ? "subtraction" : "not-a-quantity",
    what: "quantity",
    got: `"${line}"`,
    must: "be a number and a unit, such as 500 N.m, or a sum with +",
    why: minus
      ? "a difference is not worked out here"
      : `"${line.slice(at, at + 12)}" cannot stand where it does`,
  });
};

export function readTerms(line: string): readonly Term[] | Problem {
  const terms: Term[] = [];
  let at = 0;
  let joined: Term["joined"] = "first";
  for (;;) {
    const number = readNumber(line, at);
    if (number === undefined) return unexpected(line, at);
    if (isProblem(number)) return inLine(number, line);
    const unitEnd = endOfUnit(line, number.end);
    const raw = line.slice(number.end, unitEnd);
    const unitStart = number.end + raw.length - raw.trimStart().length;
    terms.push({ number, unitText: raw.trim(), unitStart, unitEnd: unitStart + raw.trim().length, joined });
    at = skipBlanks(line, unitEnd);
    if (at >= line.length) return terms;
    if (line[at] === "+") {
      joined = "+";
      at = skipBlanks(line, at + 1);
    } else {
      joined = "next";
      if (line[at] === "-" && at > 0 && line[at - 1] !== " ") at += 1;
      if (!/[\d.]/.test(line[at] ?? "")) return unexpected(line, at);
    }
  }
}

/** A number's suggestions, put back into the line that was typed. */
function inLine(p: Problem, line: string): Problem {
  const typed = (p.got ?? "").replace(/^"|"$/g, "");
  return reworded(p, p.got, (text) => line.replace(typed, () => text));
}

function skipBlanks(line: string, from: number): number {
  let at = from;
  while (line[at] === " " || line[at] === "\u2009") at += 1;
  return at;
}

/** Where the unit ends: before a plus, a comma, or a number that is no exponent. */
function endOfUnit(line: string, from: number): number {
  let at = from;
  if (/^[ \u2009]?1 ?\/ ?[A-Za-z(°]/.test(line.slice(from, from + 6))) at = line.indexOf("/", from);
  for (; at < line.length; at += 1) {
    const sign = line[at] ?? "";
    if (sign === "+" || sign === "±" || sign === "," || sign === "=") return at;
    if (/\d/.test(sign) && !isExponent(line, at)) return startsAt(line, at, from);
  }
  return at;
}

function isExponent(line: string, at: number): boolean {
  const before = line[at - 1] ?? "";
  if (/[A-Za-z^]/.test(before)) return true;
  if (before === "*" && line[at - 2] === "*") return true;
  if (before !== "-") return false;
  // K^-1, and K-1 where nothing but the unit follows
  return (
    line[at - 2] === "^" ||
    (/[A-Za-z]/.test(line[at - 2] ?? "") && /^\d(?:$|[/)])/.test(line.slice(at, at + 2)))
  );
}

/** The number begins with its point or its sign; a hyphen between blanks is left to be refused. */
function startsAt(line: string, digit: number, from: number): number {
  let at = digit;
  if (line[at - 1] === "." && /[ +-]/.test(line[at - 2] ?? "")) at -= 1;
  if (line[at - 1] === "-") at -= 1;
  else if (/^ +$/.test(line.slice(at - 1, at)) && line.slice(from, at).trimEnd().endsWith("-"))
    at = line.lastIndexOf("-", at);
  return Math.max(at, from);
}

/** The reading of one line: a value in the unit of its first term. */
export interface LineReading {
  readonly value: Rational;
  readonly unit: UnitReading;
  readonly level: Level;
  readonly ask?: string;
  readonly standard?: Rational;
}

function startsWithDegrees([first, ...rest]: readonly Term[]): boolean {
  const degrees = first !== undefined && findAtom(first.unitText)?.name === "deg";
  return degrees && rest.every((term) => term.joined === "next");
}

export function combine(
  line: string,
  terms: readonly Term[],
  expected: Kind | undefined,
): LineReading | Problem {
  // Minutes and seconds that follow on a degree are parts of it.
  const inAngle = expected === "angle" || (expected === undefined && startsWithDegrees(terms));
  const context = inAngle ? "angle" : expected;
  const readings: UnitReading[] = [];
  for (const term of terms) {
    if (term.unitText === "") return partWithoutUnit(line);
    const reading = readUnit(primes(term.unitText, inAngle), context);
    if (isProblem(reading)) return unitInLine(reading, line, term);
    readings.push(reading);
  }
  const [first] = readings;
  const [only] = terms;
  if (!first || !only) return partWithoutUnit(line);
  const value = terms.length === 1 ? only.number.value : sum(line, terms, readings);
  if (isProblem(value)) return value;
  const shown = inShorterUnit(value, terms, readings);
  const ask =
    terms.find((term) => term.number.ask)?.number.ask ?? readings.find((reading) => reading.ask)?.ask;
  const noted =
    terms.some((term) => term.number.note) || readings.some((reading) => reading.level === "note");
  const standard = terms.length === 1 ? only.number.standard : undefined;
  return {
    value: shown?.value ?? value,
    unit: shown?.unit ?? first,
    level: ask === undefined ? (noted ? "note" : "accept") : "warn",
    ...(ask === undefined ? {} : { ask }),
    ...(standard ? { standard } : {}),
  };
}

const primes = (unitText: string, inAngle: boolean): string =>
  unitText === "'" ? (inAngle ? "arcmin" : "ft") : unitText === '"' ? (inAngle ? "arcsec" : "in") : unitText;

const partWithoutUnit = (line: string): Problem =>
  problem({
    code: "part-without-unit",
    what: "quantity",
    got: `"${line}"`,
    must: "have a unit after each number",
  });

function unitInLine(p: Problem, line: string, term: Term): Problem {
  const gap = term.unitStart === term.number.end ? " " : "";
  const put = (text: string): string => line.slice(0, term.unitStart) + gap + text + line.slice(term.unitEnd);
  const got = p.got?.replace(term.unitText, () => line);
  return reworded(p, got, put);
}

/** The same problem about the whole line: its suggestions become texts that can be typed. */
function reworded(p: Problem, got: string | undefined, whole: (suggestion: string) => string): Problem {
  const { code, what, must, why, hint } = p;
  return problem({ code, what, got, must, why, hint, suggestions: p.suggestions.map(whole) });
}

function sum(line: string, terms: readonly Term[], readings: readonly UnitReading[]): Rational | Problem {
  const [first] = readings;
  if (!first) return partWithoutUnit(line);
  const refuse = (why: string): Problem =>
    problem({ code: "unlike-sum", what: "quantity", got: `"${line}"`, must: "add like quantities", why });
  let total: Rational | undefined;
  let minus = false;
  for (const [place, term] of terms.entries()) {
    const reading = readings[place] ?? first;
    const { unit } = reading;
    if (unit.offset) return refuse("temperature readings cannot be added");
    if (commonKind(first.unit.kinds, unit.kinds) === undefined && unit.text !== first.unit.text)
      return refuse(`${first.unit.text} and ${unit.text} are not of one kind`);
    if (term.joined === "next" && !followsOn(readings[place - 1], reading))
      return refuse("put + between the parts");
    const size = multiply(term.number.value, unit.factor);
    if (term.joined !== "next") minus = size.n < 0n;
    const signed = term.joined === "next" && minus ? negate(size) : size;
    total = total ? add(total, signed) : signed;
  }
  return total ? divide(total, first.unit.factor) : refuse("there is nothing to add");
}

/** 5'-6 1/2" is 66.5 in, not 5.541666… ft; 3 ft 6 in stays 3.5 ft. */
function inShorterUnit(
  value: Rational,
  terms: readonly Term[],
  readings: readonly UnitReading[],
): { readonly value: Rational; readonly unit: UnitReading } | undefined {
  const [first, last] = [readings[0], readings.at(-1)];
  if (terms.at(-1)?.joined !== "next" || !first || !last || terminates(value)) return undefined;
  const other = divide(multiply(value, first.unit.factor), last.unit.factor);
  return terminates(other) && first.unit.text !== "deg" ? { value: other, unit: last } : undefined;
}

const families: readonly (readonly string[])[] = [
  ["yd", "ft", "in"],
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
