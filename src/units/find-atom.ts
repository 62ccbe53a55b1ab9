// From a word to a unit of the closed list, and from there to its exact factor, worked out on first use.
import { type Atom, type AtomName, atoms, prefixes } from "./definitions.ts";
import { type Dimension, dimensionless, multiplyDimensions, powerDimension } from "./dimension.ts";
import { fromDecimal, multiply, one, power, type Rational, rational } from "./rational.ts";
import { joined, shortForms, wordPrefixes, words } from "./spellings.ts";

/** A unit of the list with its SI prefix: k + N. `text` is its canonical spelling. */
export interface Found {
  readonly name: AtomName;
  readonly prefix: string;
  readonly text: string;
  /** True when only the capitals differ from the listed spelling: LBF, PSI. */
  readonly capitals?: boolean;
}

const isAtomName = (word: string): word is AtomName => Object.hasOwn(atoms, word);

export const atomOf = (found: Found): Atom => atoms[found.name];

const found = (name: AtomName, prefix = ""): Found => ({ name, prefix, text: prefix + name });

function withPrefix(word: string): Found | undefined {
  for (const length of [1, 2]) {
    const [prefix, rest] = [word.slice(0, length), word.slice(length)];
    if (!isAtomName(rest) || !Object.hasOwn(prefixes, prefix)) continue;
    const atom: Atom = atoms[rest];
    if (atom.prefixes?.split(" ").includes(prefix)) return found(rest, prefix);
  }
  return undefined;
}

const exactly = (word: string): Found | undefined => (isAtomName(word) ? found(word) : withPrefix(word));

/** inches → inch → in, kilonewtons → kN. */
function spelledOut(lower: string): Found | undefined {
  for (const word of [lower, lower.replace(/s$/, "")]) {
    const target = Object.hasOwn(words, word) ? words[word] : undefined;
    if (target !== undefined) return exactly(target);
    for (const [long, short] of Object.entries(wordPrefixes)) {
      const rest = word.startsWith(long) ? word.slice(long.length) : "";
      const base = Object.hasOwn(words, rest) ? words[rest] : undefined;
      if (base !== undefined && rest.length >= 3) return exactly(short + base);
    }
  }
  return undefined;
}

export function findAtom(word: string): Found | undefined {
  const listed = exactly(word);
  if (listed && listed.name !== "mercury" && listed.name !== "water") return listed;
  for (const table of [joined, shortForms]) {
    const target = Object.hasOwn(table, word) ? table[word] : undefined;
    if (target !== undefined) return exactly(target);
  }
  const lower = word.toLowerCase();
  const spelled = spelledOut(lower);
  if (spelled) return word === lower || lower.length > 4 ? spelled : { ...spelled, capitals: true };
  if (isAtomName(lower) && (atoms[lower] as Atom).capitals) return { ...found(lower), capitals: true };
  return undefined;
}

/** Listed units that differ from the word in case only, the least different first: what a person may have meant. */
export function sameButForCase(word: string): readonly string[] {
  const lower = word.toLowerCase();
  const letters = ["", ...Object.keys(prefixes)];
  const inOtherCase = (text: string): number =>
    Array.from(text).filter((letter, place) => letter !== word[place]).length;
  return Object.entries(atoms)
    .flatMap(([name, atom]: [string, Atom]) =>
      letters
        .filter((prefix) => prefix === "" || atom.prefixes?.split(" ").includes(prefix))
        .map((prefix) => prefix + name)
        .filter((text) => text.toLowerCase() === lower && text !== word),
    )
    .sort((a, b) => inOtherCase(a) - inOtherCase(b));
}

export interface Measure {
  readonly factor: Rational;
  readonly dimension: Dimension;
}

const measures = new Map<string, Measure>();

/** Exact factor to SI and dimension of a listed unit, by its definition. */
export function measureOf(of: Found): Measure {
  const known = measures.get(of.text);
  if (known) return known;
  const atom = atomOf(of);
  const inner =
    atom.of === undefined ? { factor: one, dimension: atom.base ?? dimensionless } : defined(atom.of);
  const times = fromDecimal(atom.times ?? "1") ?? one;
  const scale = fromDecimal(prefixes[of.prefix] ?? "1") ?? one;
  const factor = multiply(multiply(inner.factor, scale), multiply(times, rational(1, 1, atom.pi ?? 0)));
  const measure = { factor, dimension: inner.dimension };
  measures.set(of.text, measure);
  return measure;
}

// The right-hand sides of definitions.ts are plain: atoms joined by "." with one "/" at most.
function defined(text: string): Measure {
  let measure: Measure = { factor: one, dimension: dimensionless };
  text.split("/").forEach((side, place) => {
    for (const part of side.split(".")) {
      const [, word = "", digits = "1"] = /^([^0-9]+|1)(\d)?$/.exec(part) ?? [];
      const atom = exactly(word);
      if (!atom) throw new Error(`unit definition "${text}" names "${word}", which is not in the list`);
      const exponent = Number.parseInt(digits, 10) * (place === 0 ? 1 : -1);
      measure = raised(measure, measureOf(atom), exponent);
    }
  });
  return measure;
}

/** `measure` times `by` to a whole power. */
export const raised = (measure: Measure, by: Measure, exponent: number): Measure => ({
  factor: multiply(measure.factor, power(by.factor, exponent)),
  dimension: multiplyDimensions(measure.dimension, powerDimension(by.dimension, exponent)),
});
