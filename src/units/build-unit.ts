// Parsed factors become a Unit: exact factor, canonical text, and the kinds that this way of writing can mean.
import { type Dimension, dimensions, sameDimension } from "./dimension.ts";
import { atomOf, type Measure, measureOf, raised } from "./find-atom.ts";
import { type Kind, kindsOf } from "./kind.ts";
import { fromDecimal, one, type Rational } from "./rational.ts";
import type { Factor } from "./unit-text.ts";

/** A unit: its plain text, exact factor to SI, dimension and the kinds it can stand for. */
export interface Unit {
  /** Canonical plain notation: "N.m", "lbf.in", "kgf/cm2", "um", "degC", "1/K". */
  readonly text: string;
  /** SI value = value · factor, plus offset for a temperature reading. */
  readonly factor: Rational;
  readonly offset?: Rational;
  readonly dimension: Dimension;
  /** What it can stand for, the usual one first; empty for a combination without a name. */
  readonly kinds: readonly Kind[];
}

export const has = (factors: readonly Factor[], ...names: readonly string[]): boolean =>
  factors.some((factor) => names.includes(factor.found.name));

export function buildUnit(factors: readonly Factor[], expected: Kind | undefined): Unit {
  let measure: Measure = { factor: one, dimension: dimensions.ratio };
  for (const { found, exponent } of factors) measure = raised(measure, measureOf(found), exponent);
  const merged = inOrder(merge(factors), expected);
  const [only] = factors;
  const offsetText = factors.length === 1 && only?.exponent === 1 ? atomOf(only.found).offset : undefined;
  const offset = offsetText === undefined ? undefined : fromDecimal(offsetText);
  return {
    text: textOf(merged),
    ...measure,
    kinds: kindsOfFactors(merged, measure.dimension),
    ...(offset && only?.found.prefix === "" ? { offset } : {}),
  };
}

/** mm.mm is mm2; the two sides of a slash are kept apart, as in N.m/m. */
function merge(factors: readonly Factor[]): readonly Factor[] {
  const sums = new Map<string, Factor>();
  for (const factor of factors) {
    const key = `${Math.sign(factor.exponent)}${factor.found.text}`;
    const before = sums.get(key);
    sums.set(key, before ? { ...before, exponent: before.exponent + factor.exponent } : factor);
  }
  return [...sums.values()];
}

const carriesMass = ({ found }: Factor): boolean => measureOf(found).dimension.mass > 0;

/** Force or mass first, as in lbf.in; an energy in inch units is written ft.lbf by the careful convention. */
function inOrder(factors: readonly Factor[], expected: Kind | undefined): readonly Factor[] {
  const heavy = factors.filter(carriesMass);
  const light = factors.filter((factor) => !carriesMass(factor));
  const inchEnergy =
    expected === "energy" &&
    factors.length === 2 &&
    has(light, "in", "ft") &&
    has(heavy, "lbf", "lb", "ozf", "poundal");
  return inchEnergy ? [...light, ...heavy] : [...heavy, ...light];
}

function textOf(factors: readonly Factor[]): string {
  const side = (sign: 1 | -1): readonly string[] =>
    factors
      .filter((factor) => Math.sign(factor.exponent) === sign && factor.found.name !== "1")
      .map(({ found, exponent }) => found.text + (Math.abs(exponent) === 1 ? "" : Math.abs(exponent)));
  const [top, bottom] = [side(1), side(-1)];
  const head = top.length === 0 ? "1" : top.join(".");
  if (bottom.length === 0) return head;
  return bottom.length === 1 ? `${head}/${bottom[0]}` : `${head}/(${bottom.join(".")})`;
}

function kindsOfFactors(factors: readonly Factor[], d: Dimension): readonly Kind[] {
  const [first] = factors;
  if (factors.length === 1 && first?.exponent === 1) {
    const own = atomOf(first.found).kinds;
    if (own) return own;
  }
  const angle = factors.reduce((sum, { found, exponent }) => sum + (atomOf(found).angle ?? 0) * exponent, 0);
  if (angle === 1) {
    if (sameDimension(d, dimensions.ratio)) return ["angle"];
    return sameDimension(d, dimensions["rotation speed"]) ? ["rotation speed"] : [];
  }
  if (angle === -1) return sameDimension(d, dimensions.torque) ? ["torsional stiffness"] : [];
  return angle === 0 ? kindsByShape(factors, d) : [];
}

/** Where two kinds share a dimension, the way the unit is written tells which is meant. */
function kindsByShape(factors: readonly Factor[], d: Dimension): readonly Kind[] {
  const isForce = ({ found }: Factor): boolean => sameDimension(measureOf(found).dimension, dimensions.force);
  const isMass = ({ found }: Factor): boolean => sameDimension(measureOf(found).dimension, dimensions.mass);
  const isLength = ({ found }: Factor): boolean =>
    sameDimension(measureOf(found).dimension, dimensions.length);
  const below = factors.filter((factor) => factor.exponent < 0);
  if (sameDimension(d, dimensions.force)) return below.some(isLength) ? ["moment per length"] : ["force"];
  if (sameDimension(d, dimensions.acceleration))
    return factors.some(isForce) && below.some(isMass) ? ["specific force"] : ["acceleration"];
  if (sameDimension(d, dimensions.torque))
    return factors.some(({ found }) => atomOf(found).kinds?.[0] === "energy")
      ? ["energy"]
      : ["torque", "energy"];
  if (sameDimension(d, dimensions.temperature)) return ["temperature difference"];
  if (sameDimension(d, dimensions["rotation speed"])) return [];
  if (sameDimension(d, dimensions.ratio)) return ["ratio"];
  return kindsOf(d);
}
