// The closed list of units. Only the base constants are numbers; every other unit is built from them,
// as text, and multiplied out on first use (find-atom.ts), so that starting up costs nothing.
import { type Source, source } from "../source.ts";
import { type Dimension, dimensions } from "./dimension.ts";
import type { Kind } from "./kind.ts";

const sp811 = (at: string): Source =>
  source({
    body: "NIST",
    title: "SP 811, Guide for the Use of the SI",
    edition: "2008",
    at,
    known: "second-hand",
  });
const siBrochure = (at: string): Source =>
  source({
    body: "BIPM",
    title: "The International System of Units (SI Brochure)",
    edition: "9",
    at,
    known: "second-hand",
  });
const convention = (title: string): Source => source({ title, known: "memory" });

export interface Atom {
  /** `times` × π^`pi` × `of`; a decimal or a fraction. */
  readonly times?: string;
  readonly pi?: number;
  /** Unit text in terms of other atoms; absent for a base unit. */
  readonly of?: string;
  readonly base?: Dimension;
  /** 1 where the unit counts an angle, so that rad/s and 1/s stay apart. */
  readonly angle?: 1;
  /** Kelvin to add to a reading, as a fraction or decimal. */
  readonly offset?: string;
  /** SI prefixes it takes, as letters with a blank between. */
  readonly prefixes?: string;
  /** The force of the same name, for trade notations that write a mass for a force. */
  readonly force?: string;
  /** Narrower than the dimension alone would say, or the usual one first. */
  readonly kinds?: readonly Kind[];
  readonly label?: string;
  /** Trade units may be typed in capitals, as drawings are lettered. */
  readonly capitals?: true;
  /** Present on base constants: the only numbers of this file that were taken from a document. */
  readonly source?: Source;
}

const energy = ["energy"] as const;
const pressure = ["pressure", "stress"] as const;
const temperature = ["temperature", "temperature difference"] as const;
const difference = ["temperature difference"] as const;
const mercury = convention("conventional density of mercury, 13 595.1 kg/m3");
const water = convention("conventional density of water, 1000 kg/m3");

export const atoms = {
  // Base units
  "1": { base: dimensions.ratio, kinds: ["ratio", "count"], label: "" },
  m: { base: dimensions.length, prefixes: "n u m c d k" },
  kg: { base: dimensions.mass, force: "kgf" },
  s: { base: dimensions.time, prefixes: "u m" },
  K: { base: dimensions.temperature, prefixes: "m", kinds: temperature },
  rad: { base: dimensions.ratio, angle: 1, prefixes: "u m" },

  // Base constants
  in: { times: "0.0254", of: "m", capitals: true, source: sp811("B.8, inch, exact") },
  lb: {
    times: "0.45359237",
    of: "kg",
    force: "lbf",
    capitals: true,
    source: sp811("footnote 22, pound, exact"),
  },
  gn: { times: "9.80665", of: "m/s2", source: sp811("B.8, standard acceleration of free fall, exact") },
  atm: { times: "101325", of: "Pa", kinds: pressure, source: sp811("B.8, standard atmosphere, exact") },
  deg: {
    times: "1/180",
    pi: 1,
    of: "rad",
    angle: 1,
    label: "°",
    capitals: true,
    source: siBrochure("table 8, degree"),
  },
  mercury: { times: "13595.1", of: "kg/m3", source: mercury },
  water: { times: "1000", of: "kg/m3", source: water },
  degC: {
    of: "K",
    offset: "273.15",
    kinds: temperature,
    label: "°C",
    source: siBrochure("section 2.3.1, degree Celsius"),
  },
  degF: {
    times: "5/9",
    of: "K",
    offset: "45967/180",
    kinds: temperature,
    label: "°F",
    source: sp811("B.9, T/K = (t/degF + 459.67)/1.8"),
  },

  // Lengths, areas, volumes
  ft: { times: "12", of: "in", capitals: true },
  yd: { times: "3", of: "ft", capitals: true },
  mi: { times: "1760", of: "yd" },
  thou: { times: "0.001", of: "in", capitals: true },
  tenth: { times: "0.0001", of: "in" },
  uin: { times: "0.000001", of: "in", label: "µin" },
  "circular mil": { times: "1/4", pi: 1, of: "thou2" },
  L: { times: "0.001", of: "m3", prefixes: "u m c d" },
  gal: { times: "231", of: "in3" },

  // Masses
  g: { times: "0.001", of: "kg", prefixes: "u m", force: "gf" },
  // Says mass outright, so it is never read as a force.
  lbm: { of: "lb", capitals: true },
  t: { times: "1000", of: "kg", force: "tf" },
  oz: { times: "1/16", of: "lb", force: "ozf", capitals: true },
  gr: { times: "1/7000", of: "lb" },
  "troy oz": { times: "480", of: "gr" },
  "short cwt": { times: "100", of: "lb" },
  "long cwt": { times: "112", of: "lb" },
  "short ton": { times: "2000", of: "lb" },
  "long ton": { times: "2240", of: "lb" },
  slug: { of: "lbf.s2/ft" },

  // Forces
  N: { of: "kg.m/s2", prefixes: "n u m c d da k M G" },
  dyn: { times: "0.00001", of: "N" },
  kgf: { of: "kg.gn" },
  gf: { times: "0.001", of: "kgf" },
  kp: { of: "kgf" },
  tf: { times: "1000", of: "kgf" },
  lbf: { of: "lb.gn", prefixes: "k M", capitals: true },
  ozf: { times: "1/16", of: "lbf", capitals: true },
  kip: { times: "1000", of: "lbf", capitals: true },
  tonf: { times: "2000", of: "lbf" },
  poundal: { of: "lb.ft/s2" },

  // Stress and pressure
  Pa: { of: "N/m2", prefixes: "m h k M G", kinds: ["stress", "pressure"] },
  bar: { times: "100000", of: "Pa", prefixes: "m k", kinds: pressure, capitals: true },
  psi: { of: "lbf/in2", prefixes: "k M", kinds: pressure, capitals: true },
  ksi: { times: "1000", of: "psi", kinds: ["stress", "pressure"], capitals: true },
  at: { of: "kgf/cm2", kinds: pressure },
  torr: { times: "1/760", of: "atm", kinds: pressure },
  mmHg: { of: "mercury.gn.mm", kinds: pressure },
  cmHg: { of: "mercury.gn.cm", kinds: pressure },
  inHg: { of: "mercury.gn.in", kinds: pressure },
  mmH2O: { of: "water.gn.mm", kinds: pressure, label: "mmH₂O" },
  cmH2O: { of: "water.gn.cm", kinds: pressure, label: "cmH₂O" },
  inH2O: { of: "water.gn.in", kinds: pressure, label: "inH₂O" },
  ftH2O: { of: "water.gn.ft", kinds: pressure, label: "ftH₂O" },

  // Energy and power
  J: { of: "N.m", prefixes: "u m k M G", kinds: energy },
  erg: { times: "0.0000001", of: "J", kinds: energy },
  W: { of: "J/s", prefixes: "u m k M G" },
  hp: { times: "550", of: "lbf.ft/s" },
  "metric hp": { times: "75", of: "kgf.m/s" },

  // Time
  min: { times: "60", of: "s", capitals: true },
  h: { times: "60", of: "min" },

  // Angles and turning
  arcmin: { times: "1/60", of: "deg", angle: 1, label: "′" },
  arcsec: { times: "1/60", of: "arcmin", angle: 1, label: "″" },
  rev: { times: "2", pi: 1, of: "rad", angle: 1 },
  // Of a hexagon nut, as turns after snug are counted.
  flat: { times: "1/6", of: "rev", angle: 1 },
  gon: { times: "1/400", of: "rev", angle: 1 },
  "angular mil": { times: "1/6400", of: "rev", angle: 1 },
  rpm: { of: "rev/min", angle: 1, capitals: true },

  // Temperatures; a degree inside a product or quotient is always a difference
  degR: { times: "5/9", of: "K", kinds: temperature, label: "°R" },
  delta_K: { of: "K", kinds: difference, label: "K" },
  delta_degC: { of: "K", kinds: difference, label: "Δ°C" },
  delta_degF: { times: "5/9", of: "K", kinds: difference, label: "Δ°F" },
  delta_degR: { times: "5/9", of: "K", kinds: difference, label: "Δ°R" },

  // Ratios
  "%": { times: "0.01", of: "1", kinds: ["ratio"] },
  "‰": { times: "0.001", of: "1", kinds: ["ratio"] },
  ppm: { times: "0.000001", of: "1", kinds: ["ratio"] },
} as const satisfies Readonly<Record<string, Atom>>;

export type AtomName = keyof typeof atoms;

export const prefixes: Readonly<Record<string, string>> = {
  n: "1e-9",
  u: "1e-6",
  m: "1e-3",
  c: "1e-2",
  d: "1e-1",
  da: "1e1",
  h: "1e2",
  k: "1e3",
  M: "1e6",
  G: "1e9",
};
