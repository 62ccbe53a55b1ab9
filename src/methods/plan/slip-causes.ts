// Which mistake gives this ratio? The ratios of units come from their definitions, those of adapters
// and of run-on from the row itself.
import { isProblem } from "../../problem.ts";
import { toNumber } from "../../units/rational.ts";
import { unit } from "../../units/unit.ts";

export interface Slip {
  /** Found over expected. */
  readonly ratio: number;
  readonly cause: string;
}

const torqueUnits = ["N.m", "lbf.ft", "lbf.in", "kgf.m"];

const factorOf = (text: string): number => {
  const found = unit(text, "torque");
  if (isProblem(found)) throw new Error(`${text}: not in the unit list`);
  return toNumber(found.factor);
};

/** A scale in one unit taken for another; the unit that was written is the likelier half of a pair. */
export function unitSlips(written = "N.m"): readonly Slip[] {
  const others = torqueUnits.filter((other) => other !== written);
  const known = torqueUnits.includes(written);
  const own = known
    ? others.flatMap((other): Slip[] => {
        const ratio = factorOf(written) / factorOf(other);
        return [
          { ratio, cause: `was the scale in ${other}, and written as ${written}?` },
          { ratio: 1 / ratio, cause: `was the number for ${written} set on the ${other} scale?` },
        ];
      })
    : [];
  const mixed = others.flatMap((a) =>
    others
      .filter((b) => b !== a)
      .map((b): Slip => ({ ratio: factorOf(a) / factorOf(b), cause: `were ${a} and ${b} mixed up?` })),
  );
  return [...own, ...mixed];
}

/** `lever` is setting over torque at the nut for this row, `others` those of adapters used elsewhere. */
export function adapterSlips(lever: number, others: readonly number[]): readonly Slip[] {
  if (lever !== 1)
    return [
      { ratio: lever ** -2, cause: "was the adapter sum turned round?" },
      { ratio: 1 / lever, cause: "was the adapter left out of the sum?" },
    ];
  return [...new Set(others)]
    .filter((other) => other !== 1)
    .flatMap((other) => [
      { ratio: other, cause: "was an adapter in the sum that was not fitted?" },
      { ratio: 1 / other, cause: "was an adapter in the sum, turned round, that was not fitted?" },
    ]);
}

export function runOnSlips(net: number, runOn: number): readonly Slip[] {
  if (runOn <= 0) return [];
  const due = net + runOn;
  return [
    { ratio: net / due, cause: "was the run-on left out?" },
    { ratio: (due + runOn) / due, cause: "was the run-on added twice?" },
  ];
}

/** Another pass of the same position, by its net torque. */
export const passSlips = (
  net: number,
  runOn: number,
  others: readonly { readonly pass: string; readonly net: number }[],
): readonly Slip[] =>
  others.map((other) => ({
    ratio: (other.net + runOn) / (net + runOn),
    cause: `was it set to the torque of ${other.pass}?`,
  }));

/** The nearest slip within the tolerance, by ratio of ratios. */
export function likeliest(ratio: number, slips: readonly Slip[], tolerance: number): string | undefined {
  const away = (slip: Slip) => Math.abs(Math.log(ratio / slip.ratio));
  const near = slips.filter((slip) => away(slip) <= Math.log1p(tolerance));
  return near.toSorted((a, b) => away(a) - away(b))[0]?.cause;
}
