// One line without a spread becomes a value: bare numbers are answered, terms are read and added.
import { isProblem, type Problem, problem } from "../problem.ts";
import { inBaseWords } from "./dimension.ts";
import { type Kind, kinds, kindsAgree } from "./kind.ts";
import { divide, exactDecimal, type Rational, subtract, toDecimal } from "./rational.ts";
import { combine, type LineReading, readTerms, type Term } from "./terms.ts";
import { inSi, quantityOf } from "./typed.ts";
import { readUnit, type Unit, unit } from "./unit.ts";
import { wouldMean } from "./would-mean.ts";

export function readLine(line: string, expected: Kind | undefined): LineReading | Problem {
  const terms = readTerms(line);
  if (isProblem(terms)) return terms;
  const [only] = terms;
  const reading =
    terms.length === 1 && only?.unitText === ""
      ? readBare(line, only, expected)
      : combine(line, terms, expected);
  return isProblem(reading) ? reading : (outOfReach(line, reading, expected) ?? reading);
}

/** A bare number is a ratio or a count where one is expected, and a question everywhere else. */
function readBare(line: string, term: Term, expected: Kind | undefined): LineReading | Problem {
  const { value, note, ask, standard } = term.number;
  const plain = readUnit("1", expected);
  if (expected !== undefined && kindsAgree(expected, "ratio") && !isProblem(plain)) {
    const level = ask === undefined ? (note ? "note" : "accept") : "warn";
    return {
      value,
      unit: plain,
      level,
      ...(ask === undefined ? {} : { ask }),
      ...(standard ? { standard } : {}),
    };
  }
  const meanings = wouldMean(line, [expected ?? "torque"]);
  const units = expected
    ? kinds[expected].usual
    : [...kinds.torque.usual, "mm", "in", "kN", "lbf", "MPa", "psi", "degC", "degF"];
  return problem({
    code: "no-unit",
    what: expected ?? "quantity",
    got: `${line} without a unit`,
    must: "have a unit",
    why:
      meanings.length > 0 ? `it would mean ${meanings.map((meaning) => meaning.text).join(", ")}` : undefined,
    hint: `type ${line} ${units[0] ?? "and a unit"}`,
    suggestions: units.map((name) => (name === "1" ? line : `${line} ${name}`)),
  });
}

function outOfReach(
  line: string,
  { value, unit: { unit: u } }: LineReading,
  expected: Kind | undefined,
): Problem | undefined {
  const q = quantityOf(line, value, u, expected);
  if (!Number.isFinite(q.value) || !Number.isFinite(q.si) || (q.si === 0 && q.exact.n !== 0n))
    return problem({
      code: "number-out-of-range",
      what: q.kind ?? "quantity",
      got: line,
      must: "lie between 1e-300 and 1e300",
    });
  if (q.kind === "temperature" && q.exact.n < 0n)
    return problem({
      code: "below-absolute-zero",
      what: "temperature",
      got: line,
      must: "not lie below absolute zero",
    });
  return undefined;
}

/** "torque, 25 lbf.in"; shop talk is shown in the unit it stands for. */
export function readingWords({ value, unit: reading }: LineReading, expected: Kind | undefined): string {
  const kind = expected ?? reading.unit.kinds[0] ?? inBaseWords(reading.unit.dimension);
  const { label } = reading;
  const named = label === "across flats" ? `${kind} ${label}` : label ? `${label} ${kind}` : kind;
  return `${named}, ${valueWords(value, reading.unit, reading.shownIn)}`;
}

/** "0.0005 in": the exact decimal where it is short, else ten digits. */
export function valueWords(value: Rational, u: Unit, shownIn?: string): string {
  const other = shownIn === undefined ? u : unit(shownIn);
  if (isProblem(other)) return valueWords(value, u);
  const si = inSi(value, u);
  const shown = other === u ? value : divide(other.offset ? subtract(si, other.offset) : si, other.factor);
  const number = exactDecimal(shown, 17) ?? toDecimal(shown, 10);
  return other.text === "1" ? number : `${number} ${other.text}`;
}
