// One value, or a sum of like values: "3 ft 6 in", 5'-6 1/2", 30°22'8", "18 ft-lb + 6 in-lb".
import { isProblem, type Problem, problem } from "../problem.ts";
import { findAtom } from "./find-atom.ts";
import type { Kind } from "./kind.ts";
import { type NumberText, readNumber } from "./number-text.ts";
import { divide, multiply, type Rational } from "./rational.ts";
import { shopPart } from "./shop-part.ts";
import { following, type Part, sum } from "./sum.ts";
import { type Level, readUnit, type UnitReading } from "./unit.ts";

/** A number and its unit text, with the places where they stand in the line. */
export interface Term {
  readonly number: NumberText;
  readonly unitText: string;
  readonly unitStart: number;
  readonly unitEnd: number;
  /** "next": the 6 in of 3 ft 6 in; "signed +": the +30 Nm of 300 Nm +30 Nm; "close +": 300Nm+30Nm. */
  readonly joined: "first" | "+" | "signed +" | "close +" | "next";
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
      const after = skipBlanks(line, at + 1);
      joined = after > at + 1 ? "+" : isBlank(line[at - 1]) ? "signed +" : "close +";
      at = after;
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

const isBlank = (sign: string | undefined): boolean => sign === " " || sign === "\u2009";

function skipBlanks(line: string, from: number): number {
  let at = from;
  while (isBlank(line[at])) at += 1;
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
  /** What one step of the last typed digit is worth, in the unit of the value. */
  readonly step?: Rational;
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
  const parts: Part[] = [];
  for (const term of terms) {
    if (term.unitText === "") return partWithoutUnit(line);
    const nameless = shopPart(line, term);
    if (nameless) return nameless;
    const reading = readUnit(primes(term.unitText, inAngle), context);
    if (isProblem(reading)) return unitInLine(reading, line, term);
    parts.push({ term, reading: term.joined === "next" ? following(parts.at(-1), reading) : reading });
  }
  const [first] = parts;
  if (!first) return partWithoutUnit(line);
  const whole =
    parts.length === 1 ? { value: first.term.number.value, unit: first.reading } : sum(line, parts);
  if (isProblem(whole)) return whole;
  const ask =
    terms.find((term) => term.number.ask)?.number.ask ??
    parts.find(({ reading }) => reading.ask)?.reading.ask;
  const noted =
    terms.some((term) => term.number.note || term.joined === "+" || term.joined === "close +") ||
    parts.some(({ reading }) => reading.level === "note");
  const { standard } = first.term.number;
  const last = parts.at(-1) ?? first;
  const step = last.term.number.step;
  return {
    ...whole,
    level: ask === undefined ? (noted ? "note" : "accept") : "warn",
    ...(ask === undefined ? {} : { ask }),
    ...(standard && parts.length === 1 ? { standard } : {}),
    ...(step ? { step: divide(multiply(step, last.reading.unit.factor), whole.unit.unit.factor) } : {}),
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
