// Published conversion factors and notation rules, row by row. The rows name their own source.
import { describe, expect, test } from "vitest";
import { convert } from "../../src/units/convert.ts";
import { type Kind, kinds } from "../../src/units/kind.ts";
import { quantity } from "../../src/units/quantity.ts";
import {
  divide,
  equal,
  fromDecimal,
  multiply,
  type Rational,
  rational,
  toDecimal,
} from "../../src/units/rational.ts";
import { type Scan, scan } from "../../src/units/scan.ts";
import { unit } from "../../src/units/unit.ts";
import { answered, relativeError } from "./helpers.ts";
import rows from "./unit-cases.json" with { type: "json" };

/** The rows name a quantity in words of their own; a name we do not know states no kind. */
function kindNamed(words: string): Kind | undefined {
  const other: Readonly<Record<string, Kind>> = {
    "surface mass (not pressure)": "surface mass",
    "expansion coefficient": "expansion",
  };
  const named = other[words] ?? words;
  return words === "expansion" ? undefined : Object.values(kinds).find((info) => info.kind === named)?.kind;
}

/** "16129/100000000 * pi" */
function exactOf(text: string): Rational {
  const [fraction = "", pi] = text.split(" * ");
  return multiply(fromDecimal(fraction) ?? rational(0), rational(1, 1, pi === "pi" ? 1 : 0));
}

interface FactorRow {
  readonly id: string;
  readonly quantity: string;
  readonly from: string;
  readonly to: string;
  readonly exactRational: string;
}

/** Worst relative error of both directions, as doubles, against the exact factor. */
function checkFactor(row: FactorRow): number {
  const kind = kindNamed(row.quantity);
  const [from, to] = [answered(unit(row.from, kind)), answered(unit(row.to, kind))];
  const exact = exactOf(row.exactRational);
  expect(equal(divide(from.factor, to.factor), exact), `${row.id} exactly`).toBe(true);
  const there = answered(convert(answered(quantity(`1 ${row.from}`, kind, { confirmed: true })), row.to));
  const back = answered(convert(answered(quantity(`1 ${row.to}`, kind, { confirmed: true })), row.from));
  return Math.max(relativeError(there.value, exact), relativeError(back.value, divide(rational(1), exact)));
}

test("all 92 published factors follow exactly from the definitions, both ways within 1e-12", () => {
  const errors = rows.cases.map((row) => ({ id: row.id, error: checkFactor(row) }));
  const worst = errors.reduce((a, b) => (b.error > a.error ? b : a));
  console.log(`published factors: ${errors.length} rows, worst ${worst.id} ${worst.error.toExponential(2)}`);
  expect(errors).toHaveLength(92);
  expect(worst.error).toBeLessThan(1e-12);
});

test("each printed factor is the exact definition rounded half to even to the digits printed", () => {
  const printed = rows.cases.filter((row) => row.printedDigits !== null);
  expect(printed).toHaveLength(91);
  for (const row of printed) {
    const exact = exactOf(row.exactRational);
    const rounded = fromDecimal(toDecimal(exact, row.printedDigits ?? 0));
    const shown = fromDecimal(row.factor);
    expect(rounded && shown && equal(rounded, shown), `${row.id}: ${row.factor}`).toBe(true);
    if (row.exact) expect(shown && equal(shown, exact), `${row.id} is marked exact`).toBe(true);
  }
});

test("all 27 derived factors are quotients of the exact definitions", () => {
  const errors = rows.derived.map((row) => ({ id: row.id, error: checkFactor(row) }));
  const worst = errors.reduce((a, b) => (b.error > a.error ? b : a));
  console.log(`derived factors: ${errors.length} rows, worst ${worst.id} ${worst.error.toExponential(2)}`);
  expect(errors).toHaveLength(27);
  expect(worst.error).toBeLessThan(1e-12);
  for (const row of rows.derived) {
    const digits = row.factor.replace(/^0\.0*|\./g, "").length;
    expect(toDecimal(exactOf(row.exactRational), digits), row.id).toBe(row.factor);
  }
});

test("all 14 temperature readings convert exactly", () => {
  expect(rows.readings).toHaveLength(14);
  let worst = 0;
  for (const row of rows.readings) {
    const q = answered(quantity(`${row.value} ${row.from}`, "temperature"));
    const converted = answered(convert(q, row.to));
    const expected = exactOf(row.expectedRational);
    expect(equal(converted.exact, expected), `${row.id}: ${row.value} ${row.from}`).toBe(true);
    worst = Math.max(worst, relativeError(converted.value, expected));
  }
  console.log(`temperature readings: ${rows.readings.length} rows, worst ${worst.toExponential(2)}`);
});

test("all 3 angles in degrees, minutes and seconds", () => {
  expect(rows.angles).toHaveLength(3);
  for (const row of rows.angles) {
    const degrees = answered(convert(answered(quantity(row.text)), "deg"));
    const digits = row.toDeg.replace(".", "").length;
    const [got, must] = [fromDecimal(toDecimal(degrees.exact, digits)), fromDecimal(row.toDeg)];
    expect(got && must && equal(got, must), row.id).toBe(true);
  }
});

/** "accept" rows whose reading is shown, because pounds or a mixed number stand in them. */
const shownToo = ["NOT-12", "NOT-28", "NOT-29", "NOT-37"];
const outcomes: Readonly<Record<string, Scan["outcome"]>> = {
  accept: "accept",
  "accept+note": "note",
  warn: "warn",
  refuse: "refuse",
  designation: "designation",
};

describe("notation", () => {
  test("there are 49 rows", () => expect(rows.notation).toHaveLength(49));
  test.each(rows.notation)("$id: $text is read as $expect ($status)", (row) => {
    const kind = "whenQuantityIs" in row && row.whenQuantityIs ? kindNamed(row.whenQuantityIs) : undefined;
    const found = scan(row.text, kind);
    const outcome = outcomes[row.status];
    expect(found.outcome).toBe(shownToo.includes(row.id) ? "note" : outcome);
    expect(found.text).toBe(row.text);
    if (found.outcome === "note" || found.outcome === "warn") expect(found.readAs).toBeTruthy();
    if (found.outcome === "warn" || found.outcome === "refuse") expect(found.problem).toBeDefined();
    if (found.quantity) expectReading(found, row.expect, kind);
  });
});

function expectReading(found: Scan, expected: string, kind: Kind | undefined): void {
  const [plain = "", ...rest] = expected
    .replace(/^(?:gauge pressure|reading|difference) /, "")
    .split(/, standard uncertainty | to /);
  const { spread } = found;
  if (expected.startsWith("limits")) {
    const [lower, upper] = [plain.replace("limits ", ""), rest[0] ?? ""];
    expect(spread?.form === "limits" && spread.upper.exact).toEqual(answered(quantity(upper)).exact);
    expect(spread?.form === "limits" && spread.lower.exact).toEqual(answered(quantity(`${lower} mm`)).exact);
    return;
  }
  if (expected.includes("standard")) {
    expect(spread?.form === "standard" && spread.u.exact).toEqual(answered(quantity(rest[0] ?? "")).exact);
  }
  const same = scan(plain, kind);
  if (same.spread?.form === "plusMinus") {
    expect(spread?.form === "plusMinus" && spread.halfWidth.exact).toEqual(same.spread.halfWidth.exact);
  }
  const exact = same.quantity?.exact ?? rational(0);
  // Two rows print a rounded double; the others are exact.
  expect(relativeError(found.quantity?.si ?? Number.NaN, exact)).toBeLessThan(1e-15);
}
