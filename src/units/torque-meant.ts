// What was meant where a torque is expected and something else was typed: ft/lbs, lb/ft, or pounds alone.
import { forceNamed } from "./as-force.ts";
import { buildUnit } from "./build-unit.ts";
import { dimensions, sameDimension } from "./dimension.ts";
import { type Found, measureOf } from "./find-atom.ts";
import type { Factor } from "./unit-text.ts";

export interface TorqueMeant {
  readonly why: string;
  readonly units: readonly string[];
}

const isLength = ({ found }: Factor): boolean => sameDimension(measureOf(found).dimension, dimensions.length);

const forceOf = (factor: Factor): Found | undefined =>
  sameDimension(measureOf(factor.found).dimension, dimensions.force)
    ? factor.found
    : forceNamed(factor.found);

export function torqueMeant(factors: readonly Factor[]): TorqueMeant | undefined {
  const [first, second] = factors;
  if (!first || factors.length > 2) return undefined;
  if (!second) return first.exponent === 1 ? leverMissing(first) : undefined;
  const [lever, heavy] = isLength(first) ? [first, second] : [second, first];
  const force = forceOf(heavy);
  if (!force || !isLength(lever) || first.exponent * second.exponent !== -1) return undefined;
  const { text } = buildUnit(
    [
      { found: force, exponent: 1 },
      { found: lever.found, exponent: 1 },
    ],
    "torque",
  );
  return { why: `with a slash this is no torque; is ${text} meant?`, units: [text] };
}

/** Levers that go with a force of this system. */
function leverMissing(factor: Factor): TorqueMeant | undefined {
  const force = forceOf(factor);
  if (!force) return undefined;
  const levers =
    force.name === "N" ? ["m"] : ["kgf", "gf", "kp", "tf"].includes(force.name) ? ["m", "cm"] : ["ft", "in"];
  return {
    why: "a torque is a force times a lever",
    units: levers.map((lever) => `${force.text}.${lever}`),
  };
}
