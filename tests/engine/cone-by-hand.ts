// Two springs of a joint worked by hand: what the figures of a page are held against. It shares nothing with the
// methods: the cone is summed in thin slices, dx/(E A), where the method takes the closed form of a frustum.

const pi = Math.PI;

export interface Slab {
  /** mm */
  readonly thickness: number;
  /** GPa, which is kN/mm2 */
  readonly modulus: number;
}

/** kN/mm of the clamped parts: cones from both faces, sizes in mm, the half angle in rad. */
export function coneByHand(stack: readonly Slab[], face: number, hole: number, angle = pi / 6): number {
  const grip = stack.reduce((sum, { thickness }) => sum + thickness, 0);
  const slices = 2000; // a slab; the midpoint rule is then right to better than 1e-6
  let compliance = 0;
  let from = 0;
  for (const { thickness, modulus } of stack) {
    const slice = thickness / slices;
    for (let i = 0; i < slices; i++) {
      const z = from + (i + 0.5) * slice;
      const wide = face + 2 * Math.min(z, grip - z) * Math.tan(angle);
      compliance += slice / (modulus * (pi / 4) * (wide ** 2 - hole ** 2));
    }
    from += thickness;
  }
  return 1 / compliance;
}

export const inSeries = (a: number, b: number): number => 1 / (1 / a + 1 / b);

/** kN: expansions in 1e-6/K, rises in K, grip in mm, the two springs in series in kN/mm. */
export const thermalByHand = (
  casing: readonly [expansion: number, rise: number],
  bolt: readonly [expansion: number, rise: number],
  grip: number,
  series: number,
): number => (casing[0] * casing[1] - bolt[0] * bolt[1]) * 1e-6 * grip * series;
