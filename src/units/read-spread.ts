// The pieces of a spread, each read as a value of the field's kind; a half-width of a temperature is a difference.
import { isProblem, type Problem, problem } from "../problem.ts";
import type { Kind } from "./kind.ts";
import {
  add,
  compare,
  divide,
  fromDecimal,
  multiply,
  negate,
  one,
  type Rational,
  rational,
  subtract,
  toNumber,
} from "./rational.ts";
import { readLine, valueWords } from "./read-line.ts";
import type { SpreadParts } from "./spread-text.ts";
import type { LineReading } from "./terms.ts";
import { quantityOf, type TypedSpread } from "./typed.ts";
import { type Level, type Unit, unit } from "./unit.ts";

/** The value, its spread, and the words that follow the value in the echo. */
export interface SpreadReading {
  readonly reading: LineReading;
  readonly spread: TypedSpread;
  readonly words: string;
  /** The spread as it can be typed after the value. */
  readonly typed: string;
}

type Side = { readonly value: Rational; readonly unit: Unit; readonly level: Level; readonly ask?: string };

export function readSpread(
  line: string,
  parts: SpreadParts,
  expected: Kind | undefined,
): SpreadReading | Problem {
  if (parts.form === "limits") return readLimits(line, parts, expected);
  const reading = readLine(parts.value, expected);
  if (isProblem(reading)) return reading;
  const kind = expected ?? reading.unit.unit.kinds[0];
  if (parts.form === "deviations") return readDeviations(line, reading, parts.upper, parts.lower, kind);
  const half = readHalf(line, reading, parts.half, kind);
  if (isProblem(half)) return half;
  if (parts.form === "plusMinus") {
    const level = parts.note && half.level === "accept" ? "note" : half.level;
    return withHalf(reading, { ...half, level }, kind, "plusMinus");
  }
  const k = fromDecimal(parts.k) ?? one;
  if (k.n === 0n) return bad(line, "a coverage factor above zero");
  const stated = withHalf(reading, { ...half, value: divide(half.value, k) }, kind, "standard");
  return parts.k === "1" || stated.spread.form !== "standard"
    ? stated
    : { ...stated, spread: { ...stated.spread, k: toNumber(k) } };
}

/** The spread that digits in brackets carry: 12.0005(5) mm. */
export function bracketSpread(
  reading: LineReading,
  standard: Rational,
  expected: Kind | undefined,
): SpreadReading | Problem {
  const kind = expected ?? reading.unit.unit.kinds[0];
  const u = differenceUnit(reading.unit.unit, kind);
  return isProblem(u)
    ? u
    : withHalf(reading, { value: standard, unit: u, level: "accept" }, kind, "standard");
}

const bad = (line: string, must: string): Problem =>
  problem({ code: "spread-not-readable", what: "spread", got: `"${line}"`, must: `have ${must}` });

const differenceKind = (kind: Kind | undefined): Kind | undefined =>
  kind === "temperature" ? "temperature difference" : kind;

const differenceUnit = (u: Unit, kind: Kind | undefined): Unit | Problem =>
  u.offset || kind === "temperature" ? unit(u.text, "temperature difference") : u;

/** A percentage is a share of the value, unless the value itself is one. */
function readHalf(line: string, reading: LineReading, text: string, kind: Kind | undefined): Side | Problem {
  const own = differenceUnit(reading.unit.unit, kind);
  if (isProblem(own)) return own;
  const percent = /^([\d.,]+) ?%$/.exec(text)?.[1];
  if (percent !== undefined && own.text !== "%") {
    if (reading.unit.unit.offset) return bad(line, "a temperature spread in degrees, not per cent");
    const share = readLine(`${percent} %`, "ratio");
    if (isProblem(share)) return share;
    const size = multiply(multiply(share.value, rational(1, 100)), reading.value);
    return {
      ...share,
      value: size.n < 0n ? negate(size) : size,
      unit: own,
      level: kind === "ratio" ? "note" : share.level,
    };
  }
  const half = readLine(text, differenceKind(kind));
  if (isProblem(half)) return half;
  if (half.value.n < 0n) return bad(line, "a spread that is not negative");
  return { ...half, unit: half.unit.unit };
}

function withHalf(
  reading: LineReading,
  half: Side,
  kind: Kind | undefined,
  form: "plusMinus" | "standard",
): SpreadReading {
  const words = valueWords(half.value, half.unit);
  const width = quantityOf(words, half.value, half.unit, differenceKind(kind));
  return {
    reading: worse(reading, half),
    spread: form === "plusMinus" ? { form, halfWidth: width } : { form, u: width },
    words: form === "plusMinus" ? ` ± ${words}` : `, standard uncertainty ${words}`,
    typed: form === "plusMinus" ? ` ± ${words}` : `, u = ${words}`,
  };
}

const order: readonly Level[] = ["accept", "note", "warn"];

export function worse(reading: LineReading, side: Pick<Side, "level" | "ask">): LineReading {
  const level = order.indexOf(side.level) > order.indexOf(reading.level) ? side.level : reading.level;
  const ask = reading.ask ?? side.ask;
  return { ...reading, level, ...(ask === undefined ? {} : { ask }) };
}

function readDeviations(
  line: string,
  reading: LineReading,
  upper: string,
  lower: string,
  kind: Kind | undefined,
): SpreadReading | Problem {
  const sides: Rational[] = [];
  let whole = reading;
  for (const text of [lower, upper]) {
    const side = readLine(text, differenceKind(kind));
    if (isProblem(side)) return side;
    const inOwnUnit = divide(multiply(side.value, side.unit.unit.factor), reading.unit.unit.factor);
    sides.push(add(reading.value, inOwnUnit));
    whole = worse(whole, side);
  }
  return between(line, whole, sides, kind);
}

function readLimits(
  line: string,
  { lower, upper, ascending }: Extract<SpreadParts, { form: "limits" }>,
  expected: Kind | undefined,
): SpreadReading | Problem {
  const [low, high] = [readLine(lower, expected), readLine(upper, expected)];
  if (isProblem(low)) return low;
  if (isProblem(high)) return high;
  if (low.unit.unit.text !== high.unit.unit.text) return bad(line, "both limits in one unit");
  if (ascending && compare(low.value, high.value) >= 0)
    return bad(line, "the smaller number of a range first; a difference is not worked out here");
  const middle = divide(add(low.value, high.value), rational(2));
  const noted = worse(worse(low, high), { level: "note" });
  return between(
    line,
    { ...noted, value: middle },
    [low.value, high.value],
    expected ?? low.unit.unit.kinds[0],
  );
}

function between(
  line: string,
  reading: LineReading,
  ends: readonly Rational[],
  kind: Kind | undefined,
): SpreadReading | Problem {
  const [low, high] = [...ends].sort(compare);
  if (!low || !high) return bad(line, "two limits");
  const u = reading.unit.unit;
  const end = (value: Rational) => quantityOf(valueWords(value, u), value, u, kind);
  const words = `, limits ${valueWords(low, u)} to ${valueWords(high, u)}`;
  const away = (value: Rational): string => {
    const text = valueWords(subtract(value, reading.value), { ...u, text: "1" });
    return text.startsWith("-") || text === "0" ? text : `+${text}`;
  };
  const typed = ` ${away(high)}/${away(low)}${u.text === "1" ? "" : ` ${u.text}`}`;
  return { reading, spread: { form: "limits", lower: end(low), upper: end(high) }, words, typed };
}
