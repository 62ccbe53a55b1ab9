// Every text that is accepted, negated as a person would, is the negated value: no sign gets lost on the way.
import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { type Atom, atoms } from "../../src/units/definitions.ts";
import { type Kind, kinds } from "../../src/units/kind.ts";
import { equal, multiply, type Rational, rational } from "../../src/units/rational.ts";
import { scan } from "../../src/units/scan.ts";

const sources = [
  "scan.test.ts",
  "spread.test.ts",
  "typed-cases.test.ts",
  "asked-everywhere.test.ts",
  "unit-cases.json",
];

const unescaped = (text: string): string =>
  text
    .replace(/\\u([\da-f]{4})/gi, (_, code: string) => String.fromCharCode(Number.parseInt(code, 16)))
    .replace(/\\(.)/g, "$1");

/** Every quoted text of the tests beside this one. */
function written(): readonly string[] {
  const texts = sources.flatMap((name) => {
    const file = readFileSync(new URL(name, import.meta.url), "utf8");
    return Array.from(file.matchAll(/"((?:[^"\\\n]|\\.)*)"|'((?:[^'\\\n]|\\.)*)'/g), ([, double, single]) =>
      unescaped(double ?? single ?? ""),
    );
  });
  return [...new Set(texts)].filter((text) => /\d/.test(text));
}

const numbers = [
  "0",
  "7",
  "0.5",
  ".5",
  "1/4",
  "1-1/4",
  "1 1/4",
  "2½",
  "12,5",
  "12 345",
  "1.2e-3",
  "7(2)",
  "7 ± 1",
];
const composed = [
  ["ft", "in"],
  ["yd", "ft"],
  ["'", '"'],
  ["°", "'"],
  ["deg", "arcmin"],
  ["m", "cm"],
  ["lb", "oz"],
  ["lbf", "ozf"],
  ["h", "min"],
  ["thou", "tenths"],
];

/** Numbers over every unit, and the parts of composed ones with and without a nought in front. */
function generated(): readonly string[] {
  const names = Object.entries(atoms).flatMap(([name, atom]: [string, Atom]) => [
    name,
    ...(atom.prefixes?.split(" ") ?? []).map((prefix) => prefix + name),
  ]);
  const usual = Object.values(kinds).flatMap((info) => info.usual);
  const single = [...new Set([...names, ...usual])].flatMap((name) =>
    numbers.map((number) => `${number} ${name}`),
  );
  const parts = composed.flatMap(([large, small]) =>
    ["0", "1", "35"].flatMap((number) =>
      ["0", "3", "2.5", "1/2"].map((part) => `${number}${large} ${part}${small}`),
    ),
  );
  return [...single, ...parts];
}

const minus = (text: string): string => {
  const [, blank = "", sign = "", rest = ""] = /^(\s*\(?)([-−–+]?)(.*)$/s.exec(text) ?? [];
  return /[-−–]/.test(sign) ? blank + rest : `${blank}-${rest}`;
};

/** Each number of a range, of a sum and of a value stated twice has its own sign. */
function negated(text: string): string {
  const range = /^\s*(\d[\d.,]*)\s?[-–]\s?(\d[\d.,]*(?: ?[^\d\s./+-].*)?)$/.exec(text);
  if (range) return `-${range[1]} to -${range[2]}`;
  const slash = /^(\d+[.,]\d+)\/(\d.*)$/.exec(text);
  if (slash) return `-${slash[1]}/-${slash[2]}`;
  const twice = /^(.+) ?([([])(\d.*)$/.exec(text);
  if (
    twice &&
    /[^\d\s]/.test(twice[3]?.replace(/[)\]]$/, "") ?? "") &&
    !text.startsWith("(") &&
    /[^\d.]\s*$/.test(twice[1] ?? "")
  )
    return `${minus(twice[1] ?? "")} ${twice[2]}-${twice[3]}`;
  return text
    .split(/( to |\s?…|\.\.\.| \+ |(?<=[a-z])\+(?=\d))/)
    .map((part, place) => (place % 2 === 0 ? minus(part) : part === "+" ? " + " : part))
    .join("");
}

const opposite = (a: Rational): Rational => multiply(a, rational(-1));

test("each accepted text, negated, is the negated value", () => {
  const every: readonly (Kind | undefined)[] = [undefined, ...Object.values(kinds).map((info) => info.kind)];
  const ofTests = written();
  const texts = [...ofTests, ...generated()];
  const counts = { texts: 0, readings: 0, belowZero: 0 };
  const wrong: string[] = [];
  for (const [place, text] of texts.entries()) {
    let accepted = false;
    const inKinds = place < ofTests.length || text.startsWith("7 ") ? every : [undefined];
    for (const kind of inKinds) {
      const first = scan(text, kind);
      if (!first.quantity) continue;
      accepted = true;
      const other = scan(negated(text), kind);
      if (other.problem?.code === "below-absolute-zero") {
        counts.belowZero += 1;
        continue;
      }
      counts.readings += 1;
      const { offset, factor } = first.quantity.unit;
      const value = (q: { value: number; exact: Rational } | undefined) =>
        q &&
        (offset ? rational(BigInt(Math.round(q.value * 1e6)), 1_000_000n) : multiply(q.exact, rational(1)));
      const [a, b] = [value(first.quantity), value(other.quantity)];
      const sameUnit =
        other.quantity?.unit.text === first.quantity.unit.text && equal(other.quantity.unit.factor, factor);
      if (!a || !b || !sameUnit || !equal(opposite(a), b))
        wrong.push(
          `${text} as ${kind}: ${negated(text)} is ${other.readAs ?? other.problem?.code ?? other.outcome}`,
        );
    }
    if (accepted) counts.texts += 1;
  }
  console.log(
    `negated: ${counts.texts} accepted texts in ${counts.readings} readings, and ${counts.belowZero} below absolute zero`,
  );
  expect(wrong).toEqual([]);
  expect(counts.texts).toBeGreaterThan(2800);
  expect(counts.readings).toBeGreaterThan(4000);
}, 180_000);
