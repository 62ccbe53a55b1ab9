// The sorts of input: what is possible, what is usual, which units people mix up, and where that comes
// from. Bounds carry their text beside the SI number; a test reads the text and compares.
import { isProblem } from "../problem.ts";
import { type Source, source } from "../source.ts";
import { frictionRows } from "../tables/friction.ts";
import { nutFactors } from "../tables/nut-factors.ts";
import { tighteningAccuracies } from "../tables/tightening-accuracy.ts";
import type { Kind } from "../units/kind.ts";
import { type Unit, unit } from "../units/unit.ts";

export interface Bound {
  readonly at: string;
  readonly si: number;
  /** The bound itself is outside. */
  readonly open?: true;
  readonly else: string;
}

export interface Range {
  readonly low?: Bound;
  readonly high?: Bound;
}

export interface SortOfInput {
  readonly kind: Kind;
  /** Outside it there is no answer. */
  readonly possible: Range;
  /** Outside it the answer stands and advice is given. */
  readonly usual?: Range;
  /** Exactly 0 says "not counted" and is taken as such. */
  readonly orZero?: true;
  /** Only whole numbers, and why. */
  readonly whole?: string;
  /** Units that are entered for one another; the first is the one to write a doubtful value in. */
  readonly units: readonly string[];
  readonly hint?: string;
  readonly source: Source;
}

const bare = (si: number, otherwise: string): Bound => ({ at: `${si}`, si, else: otherwise });
const open = (bound: Bound): Bound => ({ ...bound, open: true });
const inUnits =
  (text: string, factor: number) =>
  (n: number, otherwise: string): Bound => ({ at: `${n} ${text}`, si: n * factor, else: otherwise });
const GPa = inUnits("GPa", 1e9);
const mm = inUnits("mm", 1e-3);
const perKelvin = inUnits("1/K", 1);

interface PrintedRange {
  readonly low?: number;
  readonly typical?: number;
  readonly high?: number;
}

/** From the lowest to the highest figure that a table prints. */
function spanOf(rows: readonly PrintedRange[]) {
  const figures = rows.flatMap(({ low, typical, high }) =>
    [low, typical, high].filter((n) => n !== undefined),
  );
  return {
    low: bare(Math.min(...figures), "lower than any lubricant in the tables"),
    high: bare(Math.max(...figures), "higher than any condition in the tables"),
  };
}
const closestTightening = Math.min(...tighteningAccuracies().map(({ least }) => least));

const memory = (title: string): Source => source({ title, known: "memory" });
const meaning = source({ title: "meaning of the quantity", known: "derived" });
const ratios = ["1", "%"];
const lengths = ["mm", "in", "cm", "m"];

export const sorts = {
  "nut factor": {
    kind: "ratio",
    possible: {
      low: bare(0.02, "the pitch alone takes more than that"), // p / (2 pi d) is 0.020 for M24x3
      high: open(bare(1, "no thread has such a nut factor")),
    },
    usual: spanOf(nutFactors()),
    units: ratios,
    hint: "was a percentage or a friction torque entered?",
    source: source({ title: "table of nut factors, lowest and highest row", known: "second-hand" }),
  },
  friction: {
    kind: "ratio",
    possible: {
      low: bare(0, "friction is not negative"),
      high: open(bare(1, "no thread, face or fit has such friction")),
    },
    usual: spanOf(frictionRows()),
    units: ratios,
    hint: "was a percentage entered?",
    source: source({ title: "table of friction, lowest and highest row", known: "second-hand" }),
  },
  modulus: {
    kind: "stress",
    possible: {
      low: GPa(0.01, "softer than rubber clamps nothing"),
      high: GPa(1200, "stiffer than diamond"),
    },
    usual: {
      low: GPa(40, "softer than the metals of bolts and casings"),
      high: GPa(420, "stiffer than the metals of bolts and casings"),
    },
    units: ["GPa", "MPa", "Mpsi", "ksi", "psi"],
    hint: "steel is near 205 GPa",
    source: memory("moduli: rubber 0.01, magnesium 45, tungsten 400, cemented carbide 600, diamond 1200 GPa"),
  },
  expansion: {
    kind: "expansion",
    possible: {
      low: open(perKelvin(0, "a metal grows as it warms")),
      high: open(perKelvin(1e-4, "no metal expands so much")),
    },
    usual: {
      low: perKelvin(1e-6, "lower than the metals of bolts, casings and gauges"),
      high: perKelvin(3e-5, "higher than the metals of bolts, casings and gauges"),
    },
    units: ["1/K", "1/degF"],
    hint: "steel is near 11.5e-6 1/K, ductile iron near 11e-6 1/K",
    source: memory("expansions: Invar 1.2e-6, steel 11.5e-6, aluminium 23e-6, zinc 30e-6 1/K"),
  },
  poisson: {
    kind: "ratio",
    possible: {
      low: bare(0, "no metal narrows when pressed"),
      high: bare(0.5, "no metal grows in volume when stretched that far"),
    },
    usual: {
      low: bare(0.2, "lower than the metals of bolts and casings"),
      high: bare(0.4, "higher than the metals of bolts and casings"),
    },
    units: ratios,
    hint: "steel is near 0.29",
    source: memory("Poisson's ratio: gray iron 0.21, steel 0.29, aluminium 0.33, magnesium 0.35"),
  },
  count: {
    kind: "count",
    possible: { low: bare(0, "nothing is counted below none") },
    whole: "they come whole",
    units: [],
    source: meaning,
  },
  share: {
    kind: "ratio",
    possible: {
      low: bare(0, "a share lies between 0 and 1"),
      high: bare(1, "a share lies between 0 and 1"),
    },
    units: ratios,
    hint: "was a percentage entered without its sign?",
    source: meaning,
  },
  loss: {
    kind: "ratio",
    possible: {
      low: bare(0, "a loss is not negative"),
      high: open(bare(1, "nothing would be left")),
    },
    usual: { high: bare(0.5, "more than half of the preload would be lost") },
    units: ratios,
    hint: "was a percentage entered without its sign?",
    source: source({ title: "loss of preload, upper end", known: "practice" }),
  },
  scatter: {
    kind: "ratio",
    possible: {
      low: bare(0, "a scatter is a width"),
      high: open(bare(1, "the least preload would be none")),
    },
    usual: {
      low: bare(closestTightening, "closer than any way of tightening in the tables"),
      high: bare(0.6, "wider than any way of tightening in the tables"),
    },
    orZero: true,
    units: ratios,
    hint: "was a percentage entered without its sign?",
    source: source({ title: "table of tightening accuracy; upper end of estimates", known: "second-hand" }),
  },
  tolerance: {
    kind: "ratio",
    possible: {
      low: bare(0, "a tolerance is a width"),
      high: open(bare(1, "the least torque would be none")),
    },
    usual: {
      low: bare(0.005, "closer than a wrench is calibrated"),
      high: bare(0.3, "wider than a wrench is let pass"),
    },
    orZero: true,
    units: ratios,
    hint: "was a percentage entered without its sign?",
    source: source({ title: "tolerance of a torque wrench, 4 to 6 % usual", known: "practice" }),
  },
  "bolt diameter": {
    kind: "length",
    possible: {
      low: open(mm(0, "no bolt is described")),
      high: mm(2000, "no bolt is so thick"),
    },
    usual: {
      low: mm(1, "thinner than the threads of the tables"),
      high: mm(200, "thicker than the bolts of a casing"),
    },
    units: lengths,
    source: memory("ISO 261 and ASME B1.1: threads from 1 mm; large machine studs to 200 mm"),
  },
  "fit diameter": {
    kind: "length",
    possible: {
      low: open(mm(0, "no hole or shank is described")),
      high: mm(5000, "no hole or shank is so thick"),
    },
    usual: {
      low: mm(1, "thinner than the fits of a machine"),
      high: mm(600, "thicker than the fits of a casing"),
    },
    units: lengths,
    source: memory("fits of casings and couplings, 1 to 600 mm"),
  },
  pitch: {
    kind: "length",
    possible: {
      low: open(mm(0, "no thread is described")),
      high: mm(200, "no thread is so coarse"),
    },
    usual: {
      low: mm(0.2, "finer than the threads of the tables"),
      high: mm(30, "coarser than the threads of bolts and screws"),
    },
    units: lengths,
    source: memory("ISO 261 pitches 0.2 to 8 mm; leads of screws to 30 mm"),
  },
  "wrench length": {
    kind: "length",
    possible: {
      low: mm(20, "no wrench is so short"),
      high: mm(10_000, "no wrench is so long"),
    },
    usual: {
      low: mm(100, "shorter than a torque wrench"),
      high: mm(3000, "longer than a torque wrench"),
    },
    units: lengths,
    source: source({ title: "lengths of torque wrenches", known: "practice" }),
  },
  "adapter length": {
    kind: "length",
    possible: {
      low: mm(0, "give the length as it is and turn the angle instead"),
      high: mm(5000, "no adapter is so long"),
    },
    usual: { high: mm(1000, "longer than an adapter") },
    units: lengths,
    hint: "an adapter that points back has 180 deg",
    source: source({ title: "lengths of adapters", known: "practice" }),
  },
} as const satisfies Readonly<Record<string, SortOfInput>>;

export type SortName = keyof typeof sorts;

const found = new WeakMap<SortOfInput, readonly Unit[]>();

/** The units of a sort; one that is not in the unit list is a fault of ours. */
export function unitsOf(sort: SortOfInput): readonly Unit[] {
  const known = found.get(sort);
  if (known) return known;
  const units = sort.units.map((text) => {
    const read = unit(text, sort.kind);
    if (isProblem(read)) throw new Error(`${text} is no unit of a ${sort.kind}`);
    return read;
  });
  found.set(sort, units);
  return units;
}
