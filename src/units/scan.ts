// One scanner for everything a person types as a value, with five outcomes and never a silent guess:
// accept · note (accepted, reading shown) · warn (asked once) · refuse (with what to type) · designation.
import { isProblem, type Problem, problem } from "../problem.ts";
import { clean } from "./clean.ts";
import { conversionRequest } from "./conversion-request.ts";
import { isDesignation } from "./designation.ts";
import { hasForeignLetters } from "./foreign-letters.ts";
import { type Kind, kinds } from "./kind.ts";
import { multiply } from "./rational.ts";
import { readingWords, readLine, valueWords } from "./read-line.ts";
import { bracketSpread, readSpread, type SpreadReading, worse } from "./read-spread.ts";
import { spreadParts } from "./spread-text.ts";
import { compared, statedTwice, type Twice } from "./stated-twice.ts";
import type { LineReading } from "./terms.ts";
import { type Quantity, quantityOf, type TypedSpread } from "./typed.ts";

/** What a typed text was understood as, and what there is to ask or to tell about it. */
export interface Scan {
  /** As typed, never changed. */
  readonly text: string;
  readonly outcome: "accept" | "note" | "warn" | "refuse" | "designation";
  /** For accept, note and warn. */
  readonly quantity?: Quantity;
  /** When the text carries ±, limits or an uncertainty; the quantity has it too. */
  readonly spread?: TypedSpread;
  /** "torque, 25 lbf.in": given for accept, note and warn. */
  readonly readAs?: string;
  /** Why it was refused, or for warn the question to confirm. */
  readonly problem?: Problem;
}

const longest = 200;

export function scan(text: string, expected?: Kind): Scan {
  const reading = text.length > longest ? tooLong(text) : readText(text, expected);
  if (reading === "designation") return { text, outcome: "designation" };
  if (isProblem(reading)) return { text, outcome: "refuse", problem: reading };
  const { spread, words } = reading;
  const value = hasForeignLetters(text) ? worse(reading.reading, { level: "note" }) : reading.reading;
  const readAs = readingWords(value, expected) + words;
  const carried = spread ? { spread } : {};
  return {
    text,
    outcome: value.level,
    quantity: { ...quantityOf(text, value.value, value.unit.unit, expected), ...stepOf(value), ...carried },
    readAs,
    ...carried,
    ...(value.level === "warn" ? { problem: question(text, value, readAs, reading) } : {}),
  };
}

const stepOf = ({ step, unit }: LineReading): Pick<Quantity, "step"> =>
  step ? { step: multiply(step, unit.unit.factor) } : {};

type Reading = Omit<SpreadReading, "spread"> & {
  readonly spread?: TypedSpread;
  /** A second text that a question offers. */
  readonly other?: string;
};

function readText(text: string, expected: Kind | undefined): Reading | Problem | "designation" {
  const line = clean(text);
  if (line === "") return missing(expected);
  if (isDesignation(line)) return "designation";
  const request = conversionRequest(line);
  if (request) return notAValue(text, request.text);
  const twice = statedTwice(line);
  if (twice) return readTwice(twice, expected);
  return readPlain(text, line, expected);
}

function readPlain(text: string, line: string, expected: Kind | undefined): Reading | Problem {
  const parts = spreadParts(line);
  if (parts === "odd")
    return problem({
      code: "spread-not-readable",
      what: "spread",
      got: `"${text}"`,
      must: "have one ± between two values",
    });
  if (parts) return readSpread(line, parts, expected);
  const reading = readLine(line, expected);
  if (isProblem(reading)) return reading;
  return reading.standard
    ? bracketSpread(reading, reading.standard, expected)
    : { reading, words: "", typed: "" };
}

function question(text: string, reading: LineReading, readAs: string, { typed, other }: Reading): Problem {
  const { unit, shownIn } = reading.unit;
  const plain = valueWords(reading.value, unit, shownIn) + typed;
  return problem({
    code: "confirm-reading",
    what: unit.kinds[0] ?? "quantity",
    got: `"${text}"`,
    must: `be confirmed once, or be written ${plain}${other === undefined ? "" : ` or ${other}`}`,
    why: reading.ask,
    hint: `read as ${readAs}`,
    suggestions: other === undefined ? [plain] : [plain, other],
  });
}

function readTwice(twice: Twice, expected: Kind | undefined): Reading | Problem {
  const first = readPlain(twice.first, twice.first, expected);
  if (isProblem(first)) return first;
  const second = readPlain(twice.second, twice.second, expected ?? first.reading.unit.unit.kinds[0]);
  if (isProblem(second)) return second;
  const { words, ask, second: other } = compared(first.reading, second.reading);
  const reading = worse(first.reading, ask === undefined ? { level: "note" } : { level: "warn", ask });
  return { ...first, reading, words: first.words + words, ...(ask === undefined ? {} : { other }) };
}

const notAValue = (text: string, value: string): Problem =>
  problem({
    code: "conversion-request",
    what: "quantity",
    got: `"${text}"`,
    must: "be one value, with no unit to convert it to",
    hint: `type ${value}; the box for units and splitline convert convert it`,
    suggestions: [value],
  });

const missing = (expected: Kind | undefined): Problem =>
  problem({
    code: "missing",
    what: expected ?? "quantity",
    got: "nothing",
    must: "be a number and a unit",
    hint: expected ? `units: ${kinds[expected].usual.join(", ")}` : undefined,
  });

const tooLong = (text: string): Problem =>
  problem({
    code: "too-long",
    what: "quantity",
    got: `${text.length} characters`,
    must: `be at most ${longest} characters`,
  });
