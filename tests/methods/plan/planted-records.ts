// Torque records made from a seed, with slips planted in some rows. What is planted is returned beside them.

/** Numbers from 0 to 1, the same for the same seed (mulberry32, public domain). */
function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), state | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

interface Planted {
  readonly pass: string;
  readonly position: string;
  readonly what: "missing row" | "torque" | "angle";
  /** A word that the cause has to hold. */
  readonly cause: string;
}

interface Draft {
  pass: string;
  position: string;
  net: number;
  runOn: number;
  adapter: string;
  set: number;
  read: number;
  angle: number;
}

const lever = (row: Draft) => (row.adapter === "none" ? 1 : 650 / 710);
const due = (row: Draft) => (row.net + row.runOn) * lever(row);

type Slip = Omit<Planted, "pass" | "position"> & {
  readonly make: (row: Draft, all: readonly Draft[]) => void;
};

const read = (row: Draft, value: number) => {
  row.read = value;
};
const both = (row: Draft, value: number) => {
  row.set = value;
  row.read = value;
};

/** Each slip with the word by which its cause is known. */
const slips: readonly Slip[] = [
  { what: "torque", cause: "lbf.ft, and written", make: (row) => read(row, row.read / 1.3558179483) },
  { what: "torque", cause: "set on the lbf.ft scale", make: (row) => both(row, row.set * 1.3558179483) },
  { what: "torque", cause: "kgf.m, and written", make: (row) => read(row, row.read / 9.80665) },
  { what: "torque", cause: "lbf.in", make: (row) => read(row, row.read * 12) },
  { what: "torque", cause: "lbf.in", make: (row) => read(row, row.read / 12) },
  { what: "angle", cause: "friction", make: (row) => (row.angle -= 7) },
  { what: "angle", cause: "yielding", make: (row) => (row.angle += 7) },
];
const adapterSlips: readonly Slip[] = [
  { what: "torque", cause: "turned round", make: (row) => both(row, due(row) / lever(row) ** 2) },
  { what: "torque", cause: "left out of the sum", make: (row) => both(row, row.net + row.runOn) },
];
const plainSlips: readonly Slip[] = [
  { what: "torque", cause: "not fitted", make: (row) => both(row, (due(row) * 650) / 710) },
  {
    what: "torque",
    cause: "torque of pass 2",
    make: (row, all) => {
      const before = all.find((other) => other.pass === "pass 2" && other.position === row.position);
      both(row, (before?.net ?? 0) + row.runOn);
    },
  },
];

const fractions = { "pass 1": 0.3, "pass 2": 0.6, "pass 3": 1 };

/**
 * A record of three passes, some rows spoilt. Readings miss the setting by up to `noise`, angles
 * spread by 2 degrees about 13; a planted angle is off by 7, so that it leaves the 4 degrees of the method.
 */
export function plantedRecord(seed: number, spoilt: number, noise: number) {
  const next = seeded(seed);
  const pick = <T>(from: readonly T[]): T => {
    const found = from[Math.floor(next() * from.length)];
    if (found === undefined) throw new Error("nothing to pick from");
    return found;
  };
  const count = 12 + Math.floor(next() * 12);
  const final = 200 + Math.round(next() * 600);
  const positions = Array.from({ length: count }, (_, i) => String(i + 1));
  const adapted = new Set([pick(positions), pick(positions)]);
  const runOns = new Map(positions.map((position) => [position, 20 + Math.round(next() * 20)]));
  const drafts: Draft[] = Object.entries(fractions).flatMap(([pass, fraction]) =>
    positions.map((position) => {
      const row: Draft = {
        pass,
        position,
        net: final * fraction,
        runOn: runOns.get(position) ?? 0,
        adapter: adapted.has(position) ? "60 mm in line" : "none",
        set: 0,
        read: 0,
        angle: 13 + 4 * (next() - 0.5),
      };
      both(row, due(row));
      row.read *= 1 + 2 * noise * (next() - 0.5);
      return row;
    }),
  );
  const plan = drafts.map(({ pass, position, net }) => ({ pass, position, net: `${net} N.m` }));
  const planted: Planted[] = [];
  const gone = new Set<Draft>();
  for (let spoil = 0; spoil < spoilt; spoil++) {
    const row = pick(drafts.filter((each) => each.pass === "pass 3"));
    if (planted.some((each) => each.position === row.position)) continue;
    const { pass, position } = row;
    if (next() < 0.2) {
      gone.add(row);
      planted.push({ pass, position, what: "missing row", cause: "" });
      continue;
    }
    const slip = pick([
      ...slips,
      ...(row.adapter === "none" ? plainSlips : [...adapterSlips, ...adapterSlips]),
    ]);
    slip.make(row, drafts);
    planted.push({ pass, position, what: slip.what, cause: slip.cause });
  }
  const rows = drafts
    .filter((row) => !gone.has(row))
    .map((row) => ({
      pass: row.pass,
      position: row.position,
      net: `${row.net} N.m`,
      runOn: `${row.runOn} N.m`,
      adapter: row.adapter,
      set: `${row.set} N.m`,
      read: `${row.read} N.m`,
      unit: "N.m",
      angle: `${row.angle} deg`,
    }));
  return { plan, rows, planted, wrenchLength: "650 mm" };
}
