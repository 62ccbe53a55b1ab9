// What a number stands for. Dimension alone does not part torque from energy, a temperature reading
// from a difference, or an angle from a ratio, so every field states its kind.
import { type Dimension, dimensionless, dimensions, sameDimension } from "./dimension.ts";

/** What a quantity is: kinds of one dimension, such as torque and energy, are never taken for each other. */
export type Kind =
  | "ratio"
  | "count"
  | "angle"
  | "length"
  | "area"
  | "volume"
  | "second moment of area"
  | "mass"
  | "force"
  | "torque"
  | "energy"
  | "stress"
  | "pressure"
  | "temperature"
  | "temperature difference"
  | "expansion"
  | "stiffness"
  | "compliance"
  | "time"
  | "rotation speed"
  | "speed"
  | "acceleration"
  | "power"
  | "density"
  | "linear density"
  | "moment of inertia"
  | "moment per length"
  | "specific force"
  | "surface mass"
  | "torsional stiffness";

export interface KindInfo {
  readonly kind: Kind;
  readonly dimension: Dimension;
  /** Coherent SI unit, in canonical plain notation. */
  readonly si: string;
  /** Units a unit answer lists; the first is the default for showing. */
  readonly usual: readonly string[];
}

const row = (kind: Kind, dimension: Dimension, si: string, ...usual: readonly string[]): KindInfo => ({
  kind,
  dimension,
  si,
  usual,
});

/** Every kind with its dimension, its SI unit and the units it is usually given in. */
export const kinds: Readonly<Record<Kind, KindInfo>> = {
  ratio: row("ratio", dimensionless, "1", "1", "%"),
  count: row("count", dimensionless, "1", "1"),
  angle: row("angle", dimensionless, "rad", "deg", "rad"),
  length: row("length", dimensions.length, "m", "mm", "in", "um", "thou"),
  area: row("area", dimensions.area, "m2", "mm2", "in2"),
  volume: row("volume", dimensions.volume, "m3", "mm3", "in3", "L"),
  "second moment of area": row(
    "second moment of area",
    dimensions["second moment of area"],
    "m4",
    "mm4",
    "in4",
  ),
  mass: row("mass", dimensions.mass, "kg", "kg", "lb"),
  force: row("force", dimensions.force, "N", "kN", "N", "lbf", "kgf"),
  torque: row("torque", dimensions.torque, "N.m", "N.m", "lbf.ft", "lbf.in", "kgf.m"),
  energy: row("energy", dimensions.torque, "J", "J", "ft.lbf"),
  stress: row("stress", dimensions.stress, "Pa", "MPa", "ksi", "psi", "bar"),
  pressure: row("pressure", dimensions.stress, "Pa", "MPa", "bar", "psi", "kgf/cm2"),
  temperature: row("temperature", dimensions.temperature, "K", "degC", "degF", "K"),
  "temperature difference": row("temperature difference", dimensions.temperature, "K", "K", "degF"),
  expansion: row("expansion", dimensions.expansion, "1/K", "1/K", "1/degF"),
  stiffness: row("stiffness", dimensions.stiffness, "N/m", "kN/mm", "lbf/in"),
  compliance: row("compliance", dimensions.compliance, "m/N", "um/kN", "in/lbf"),
  time: row("time", dimensions.time, "s", "s", "min", "h"),
  "rotation speed": row("rotation speed", dimensions["rotation speed"], "rad/s", "rpm", "rad/s"),
  speed: row("speed", dimensions.speed, "m/s", "m/s", "ft/min"),
  acceleration: row("acceleration", dimensions.acceleration, "m/s2", "m/s2", "ft/s2"),
  power: row("power", dimensions.power, "W", "kW", "hp"),
  density: row("density", dimensions.density, "kg/m3", "kg/m3", "lb/in3"),
  "linear density": row("linear density", dimensions["linear density"], "kg/m", "kg/m", "lb/ft"),
  "moment of inertia": row("moment of inertia", dimensions["moment of inertia"], "kg.m2", "kg.m2", "lb.ft2"),
  "moment per length": row("moment per length", dimensions.force, "N.m/m", "N.m/m", "lbf.in/in"),
  "specific force": row("specific force", dimensions.acceleration, "N/kg", "N/kg", "lbf/lb"),
  "surface mass": row("surface mass", dimensions["surface mass"], "kg/m2", "kg/m2", "lb/ft2"),
  "torsional stiffness": row(
    "torsional stiffness",
    dimensions.torque,
    "N.m/rad",
    "N.m/rad",
    "N.m/deg",
    "lbf.ft/deg",
  ),
};

/** Every kind with this dimension, the usual one first. */
export const kindsOf = (d: Dimension): readonly Kind[] =>
  Object.values(kinds)
    .filter((info) => sameDimension(info.dimension, d))
    .map((info) => info.kind);

// Only these two pairs may stand for each other: the same instruments read them.
const agreeing: readonly (readonly [Kind, Kind])[] = [
  ["stress", "pressure"],
  ["ratio", "count"],
];

export const kindsAgree = (a: Kind, b: Kind): boolean =>
  a === b || agreeing.some(([one, other]) => (a === one && b === other) || (a === other && b === one));

/** "a torque", "an angle": for sentences. */
export const withArticle = (words: string): string => `${/^[aeio]/.test(words) ? "an" : "a"} ${words}`;
