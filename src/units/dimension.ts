// Exponents of length, mass, time and temperature. Angle has none here: kinds part angle from ratio.

export interface Dimension {
  readonly length: number;
  readonly mass: number;
  readonly time: number;
  readonly temperature: number;
}

const dimension = (length: number, mass = 0, time = 0, temperature = 0): Dimension => ({
  length,
  mass,
  time,
  temperature,
});

export const dimensionless: Dimension = dimension(0);

/** The dimensions that have a name of their own, under the name shown to a person. */
export const dimensions = {
  ratio: dimensionless,
  length: dimension(1),
  area: dimension(2),
  volume: dimension(3),
  "second moment of area": dimension(4),
  mass: dimension(0, 1),
  time: dimension(0, 0, 1),
  temperature: dimension(0, 0, 0, 1),
  force: dimension(1, 1, -2),
  torque: dimension(2, 1, -2),
  stress: dimension(-1, 1, -2),
  expansion: dimension(0, 0, 0, -1),
  stiffness: dimension(0, 1, -2),
  compliance: dimension(0, -1, 2),
  "rotation speed": dimension(0, 0, -1),
  speed: dimension(1, 0, -1),
  acceleration: dimension(1, 0, -2),
  power: dimension(2, 1, -3),
  density: dimension(-3, 1),
  "linear density": dimension(-1, 1),
  "moment of inertia": dimension(2, 1),
  "surface mass": dimension(-2, 1),
} as const satisfies Readonly<Record<string, Dimension>>;

const axes = ["mass", "length", "time", "temperature"] as const;

const combine = (a: Dimension, b: Dimension, sign: 1 | -1): Dimension =>
  dimension(
    a.length + sign * b.length,
    a.mass + sign * b.mass,
    a.time + sign * b.time,
    a.temperature + sign * b.temperature,
  );

export const multiplyDimensions = (a: Dimension, b: Dimension): Dimension => combine(a, b, 1);

export const divideDimensions = (a: Dimension, b: Dimension): Dimension => combine(a, b, -1);

/** `+ 0` turns the -0 of 0 × -1 into 0. */
export const powerDimension = (d: Dimension, exponent: number): Dimension =>
  dimension(
    d.length * exponent + 0,
    d.mass * exponent + 0,
    d.time * exponent + 0,
    d.temperature * exponent + 0,
  );

// Exponents such as a third and two thirds, added, miss a whole number by a rounding.
const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-9;

export const sameDimension = (a: Dimension, b: Dimension): boolean =>
  axes.every((axis) => near(a[axis], b[axis]));

/** "force", "area" where the dimension has a name, else "length/temperature" or "mass/(length time)". */
export function dimensionWords(d: Dimension): string {
  const named = Object.entries(dimensions).find(([, known]) => sameDimension(known, d));
  return named ? named[0] : inBaseWords(d);
}

/** Always in base words: "mass length/time^2"; "number" for none at all. */
export function inBaseWords(d: Dimension): string {
  const side = (sign: 1 | -1): string[] =>
    axes
      .filter((axis) => d[axis] * sign > 0 && !near(d[axis], 0))
      .map((axis) => {
        const exponent = Math.abs(d[axis]);
        return near(exponent, 1) ? axis : `${axis}^${Math.round(exponent * 1e6) / 1e6}`;
      });
  const [top, bottom] = [side(1), side(-1)];
  if (top.length + bottom.length === 0) return "number";
  const head = top.length > 0 ? top.join(" ") : "1";
  if (bottom.length === 0) return head;
  return bottom.length === 1 ? `${head}/${bottom[0]}` : `${head}/(${bottom.join(" ")})`;
}
