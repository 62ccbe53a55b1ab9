// Limits of a unified thread by the formulas of ASME B1.1, with its rounding: each term of the pitch
// tolerance to six places, tolerances and allowance to four, half upwards. Worked in whole numbers so that
// a half is a half. The 47 UNC and UNF rows of the thread table and the printed 2-1/2 in rows come out.
import { isProblem, type Problem } from "../../problem.ts";
import { notInTable } from "../../tables/table.ts";
import type { ThreadLimits } from "./thread-limit-parts.ts";
import { type UnifiedSize, unifiedSize } from "./unified-designation.ts";

/** m per ten-thousandth of an inch. */
const tenThousandth = 0.0254 / 10_000;

/** Share of the class 2A pitch tolerance, in thousandths. */
const share = { "1A": 1500, "2A": 1000, "3A": 750, "1B": 1950, "2B": 1300, "3B": 975 } as const;
type ThreadClass = keyof typeof share;
const classes = ["1A", "2A", "3A", "1B", "2B", "3B"] as const;

export function unifiedLimits(designation: string, toleranceClass: string): ThreadLimits | Problem {
  const size = unifiedSize(designation);
  if (isProblem(size)) return size;
  const asked = toleranceClass.trim().toUpperCase();
  const found = classes.find((name) => name === asked);
  if (!found)
    return notInTable({
      code: "unknown-tolerance-class",
      what: "tolerance class of a unified thread",
      got: toleranceClass.trim() || "nothing",
      choices: classes,
      why: "A is the external thread, B the internal one",
    });
  return found.endsWith("A") ? external(size, found) : internal(size, found);
}

/** Whole ten-thousandths from inches, half upwards; the last term only repairs the double of an exact half. */
const places4 = (inches: number): number => Math.floor(inches * 1e4 + 0.5 + 1e-7);
const thousandths = (tenThousandths: number): number => Math.floor((tenThousandths + 5) / 10) * 10;
/** A share in thousandths of whole millionths, in whole ten-thousandths, half upwards. */
const part = (millionths: number, perMille: number): number =>
  Math.floor((millionths * perMille + 50_000) / 100_000);

/** Class 2A pitch tolerance in millionths of an inch. */
function tolerance2A(size: UnifiedSize): number {
  const pitch = 1 / size.threadsPerInch;
  const engagement = size.engagement === "diameter" ? size.diameter_in : 9 * pitch;
  const terms = [
    0.0015 * Math.cbrt(size.diameter_in),
    0.0015 * Math.sqrt(engagement),
    0.015 * Math.cbrt(pitch) ** 2,
  ];
  return terms.reduce((sum, term) => sum + Math.round(term * 1e6), 0);
}

const basics = (size: UnifiedSize) => ({
  basicMajor: places4(size.diameter_in) * tenThousandth,
  basicPitch: places4(size.diameter_in - 0.649_519 / size.threadsPerInch) * tenThousandth,
});

function external(size: UnifiedSize, name: ThreadClass): ThreadLimits {
  const pitch = 1 / size.threadsPerInch;
  const pitchTolerance = part(tolerance2A(size), share[name]);
  const majorTolerance = places4((name === "1A" ? 0.09 : 0.06) * Math.cbrt(pitch) ** 2);
  const allowance = name === "3A" ? 0 : part(tolerance2A(size), 300);
  return {
    ...basics(size),
    deviation: -allowance * tenThousandth + 0,
    majorUpper: -allowance * tenThousandth + 0,
    majorLower: -(allowance + majorTolerance) * tenThousandth,
    pitchUpper: -allowance * tenThousandth + 0,
    pitchLower: -(allowance + pitchTolerance) * tenThousandth,
    remarks: remarksOf(size),
  };
}

function internal(size: UnifiedSize, name: ThreadClass): ThreadLimits {
  const minor = places4(size.diameter_in - 1.082_532 / size.threadsPerInch);
  const top = minor + places4(minorTolerance(size, name));
  // From #6 up the standard prints the minor diameter to 0.001 in; 3B keeps that only for the lower limit.
  const coarse = size.diameter_in >= 0.138;
  const lower = coarse ? thousandths(minor) : minor;
  const upper = coarse && name !== "3B" ? thousandths(top) : top;
  return {
    ...basics(size),
    basicMinor: minor * tenThousandth,
    deviation: 0,
    majorLower: 0,
    pitchUpper: part(tolerance2A(size), share[name]) * tenThousandth,
    pitchLower: 0,
    minorUpper: (upper - minor) * tenThousandth,
    minorLower: (lower - minor) * tenThousandth,
    remarks: remarksOf(size),
  };
}

/** Tolerance on the minor diameter of the internal thread, in inches. */
function minorTolerance(size: UnifiedSize, name: ThreadClass): number {
  const [d, n] = [size.diameter_in, size.threadsPerInch];
  const p = 1 / n;
  const bySize = Math.min(0.05 * Math.cbrt(p) ** 2 + (0.03 * p) / d - 0.002, 0.394 * p);
  if (name === "3B") return Math.max(bySize, n >= 13 ? 0.23 * p - 1.5 * p * p : 0.12 * p);
  const byPitch = n < 4 ? 0.15 * p : 0.25 * p - 0.4 * p * p;
  return d < 0.25 ? Math.max(bySize, byPitch) : byPitch;
}

const remarksOf = (size: UnifiedSize): readonly string[] => [
  `${size.designation}: tolerances for a length of engagement of ${
    size.engagement === "diameter" ? "one diameter" : "nine pitches"
  }, before coating`,
];
