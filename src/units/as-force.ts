// The trades write a mass where they mean the force of the same name: lb for lbf, kg for kgf.
import { atomOf, type Found, findAtom } from "./find-atom.ts";
import type { Factor } from "./unit-text.ts";

/** lbf for lb; nothing for a mass with a prefix, or one that says mass outright. */
export function forceNamed(mass: Found): Found | undefined {
  const { force } = atomOf(mass);
  return force === undefined || mass.prefix !== "" ? undefined : findAtom(force);
}

/** The same unit with every mass that has a force of the same name read as that force; undefined without any. */
export function asForce(factors: readonly Factor[]): readonly Factor[] | undefined {
  const forced = factors.map((factor) => ({ ...factor, found: forceNamed(factor.found) ?? factor.found }));
  return forced.some(({ found }, place) => found !== factors[place]?.found) ? forced : undefined;
}
