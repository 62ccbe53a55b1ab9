// Random formula texts, written the way people write them: few brackets, so that precedence counts.
import * as fc from "fast-check";

export const inputNames: readonly string[] = ["a", "b", "c", "tension.preload"];

/** Moderate numbers of both signs; exponents stay small enough to be finite most of the time. */
const decimal = fc
  .tuple(fc.integer({ min: 1, max: 9999 }), fc.integer({ min: 0, max: 3 }))
  .map(([digits, places]) => String(digits / 10 ** places));

const exponent = fc.constantFrom("2", "3", "4", "-1", "-2", "0.5", "(1/3)", "1.5", "0", "-3");

const smooth = ["sqrt", "sin", "cos", "tan", "asin", "acos", "atan", "exp", "ln", "log10", "abs"];

interface Parts {
  /** round, min, max and choices as well. */
  readonly stepped: boolean;
  /** Powers too, unless false. */
  readonly powers?: boolean;
}

export function formulaText(parts: Parts, depth = 3): fc.Arbitrary<string> {
  const leaf = fc.oneof(
    { weight: 4, arbitrary: fc.constantFrom(...inputNames) },
    { weight: 2, arbitrary: decimal },
    { weight: 1, arbitrary: fc.constant("pi") },
  );
  if (depth === 0) return leaf;
  const inner = formulaText(parts, depth - 1);
  const bracketed = inner.map((text) => `(${text})`);
  const operand = fc.oneof(
    { weight: 3, arbitrary: leaf },
    bracketed,
    leaf.map((text) => `-${text}`),
  );
  const chain = fc
    .tuple(
      operand,
      fc.array(fc.tuple(fc.constantFrom(" + ", " - ", "*", " / "), operand), { minLength: 1, maxLength: 4 }),
    )
    .map(([first, rest]) => first + rest.map(([op, text]) => op + text).join(""));
  const powers = fc.tuple(fc.oneof(leaf, bracketed), exponent).map(([base, to]) => `${base}^${to}`);
  const towers = fc
    .tuple(leaf, leaf, fc.constantFrom("2", "0.5"))
    .map(([x, y, to]) => `abs(${x})^${y}^${to}`);
  const calls = fc.tuple(fc.constantFrom(...smooth), inner).map(([name, text]) => `${name}(${text})`);
  const all = [chain, chain, calls, bracketed];
  if (parts.powers !== false) all.push(powers, towers);
  if (parts.stepped) {
    all.push(
      inner.map((text) => `round(${text})`),
      fc
        .tuple(fc.constantFrom("min", "max"), inner, leaf, leaf)
        .map(([name, x, y, z]) => `${name}(${x}, ${y}, ${z})`),
      fc
        .tuple(leaf, fc.constantFrom("<", "<=", ">", ">=", "==", "!="), inner, inner, leaf)
        .map(([x, op, y, yes, no]) => `(${x} ${op} ${y} ? ${yes} : ${no})`),
    );
  }
  return fc.oneof(...all);
}

/** One value per name. */
export const inputValues: fc.Arbitrary<readonly number[]> = fc.array(
  fc.oneof(
    fc.double({ min: 0.01, max: 100, noNaN: true }),
    fc.double({ min: -10, max: 10, noNaN: true }),
    fc.integer({ min: -3, max: 3 }),
  ),
  { minLength: inputNames.length, maxLength: inputNames.length },
);
