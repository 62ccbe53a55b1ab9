// What was typed beside a value, as the doubt that travels with it.
import { type Contribution, own } from "../standing.ts";
import { halfWidthOf, type Quantity } from "../units/quantity.ts";

/** Coverage factor to which stated uncertainties are brought before they are added. */
export const coverage = 2;

/** Limits stay limits; one standard uncertainty, or k of them, is brought to k = 2. */
export function statedDoubt(root: string, typed: Quantity, says = root): readonly Contribution[] {
  const found = halfWidthOf(typed);
  if (!found || found.halfWidth === 0) return [];
  const { halfWidth, meaning, k } = found;
  return meaning === "limits"
    ? [{ root, group: root, says, meaning, ...own(halfWidth) }]
    : [{ root, group: root, says, meaning: "expanded", ...own((halfWidth * coverage) / k) }];
}
