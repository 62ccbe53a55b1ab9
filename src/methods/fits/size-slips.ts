// Sizes that no part can have together: a mean outside its own readings, a size in another unit.
import { median } from "../../median.ts";
import { type Problem, problem } from "../../problem.ts";
import { atMost } from "../../verdict.ts";
import { formatShort, usualUnit } from "../solution.ts";

/** Two figures of one part in m, the one that cannot be larger first. */
export interface Sized {
  /** "hole 3" */
  readonly part: string;
  readonly low: number;
  readonly high: number;
  /** What the two are called: smallest reading and largest mean, mean and largest reading. */
  readonly names: readonly [string, string];
}

/** Share by which two figures of one part may differ: a bore is never that far out of round. */
const ownShare = 0.01;
/** Parts of one choice differ by less: a centimetre or an inch read as a millimetre is ten times off and more. */
const betweenParts = 5;

const words = (si: number): string => formatShort(si, usualUnit("length"));

function swapped({ part, low, high, names: [less, more] }: Sized): Problem {
  return problem({
    code: "swapped-sizes",
    what: part,
    got: `a ${less} of ${words(low)} above its ${more} of ${words(high)}`,
    must: `have a ${less} of at most its ${more}`,
    hint: "were the two figures swapped, or is a digit wrong?",
  });
}

function apart({ part, low, high, names: [less, more] }: Sized): Problem {
  return problem({
    code: "sizes-apart",
    what: part,
    got: `a ${less} of ${words(low)} and a ${more} of ${words(high)}`,
    must: "lie within a hundredth of each other",
    hint: "is one of them in another unit, or is a digit wrong?",
  });
}

/** The first part whose figures do not belong together, or do not belong to these parts. */
export function sizeSlip(parts: readonly Sized[]): Problem | undefined {
  const wrong = parts.find(({ low, high }) => !atMost(low, high));
  if (wrong) return swapped(wrong);
  const wide = parts.find(({ low, high }) => high - low > ownShare * low);
  if (wide) return apart(wide);
  const middle = median(parts.map((each) => each.high)) ?? Number.NaN;
  const far = parts.find(({ high }) => high > betweenParts * middle || high < middle / betweenParts);
  return (
    far &&
    problem({
      code: "sizes-apart",
      what: far.part,
      got: words(far.high),
      must: `be near the other sizes, in the middle ${words(middle)}`,
      hint: "is it in another unit?",
    })
  );
}
