// Two thick cylinders pressed together, solved from their displacements (second implementation).
// Lamé: σr = A − B/r², σθ = A + B/r², plane stress: u = (1 − ν) A r/E + (1 + ν) B/(E r).

interface Metal {
  readonly E: number;
  readonly nu: number;
}

interface Pair {
  /** Radii in m. */
  readonly fit: number;
  readonly outside: number;
  readonly bore: number;
  /** Radial interference in m. */
  readonly gap: number;
  readonly outer: Metal;
  readonly inner: Metal;
}

/**
 * Unknowns A and B of both parts, scaled by the fit radius (b = B/R²), from four conditions:
 * no stress outside, none in the bore (or no B in a solid part), equal stress at the fit,
 * and displacements there that differ by the interference.
 */
export function pressureByCompatibility(p: Pair): { pressure: number; outerHoop: number; innerHoop: number } {
  const R = p.fit;
  const free = (R / p.outside) ** 2;
  const u = (m: Metal, sign: 1 | -1) => [(sign * (1 - m.nu) * R) / m.E, (sign * (1 + m.nu) * R) / m.E];
  const [uAo = 0, uBo = 0] = u(p.outer, 1);
  const [uAi = 0, uBi = 0] = u(p.inner, -1);
  const bore = p.bore === 0 ? [0, 0, 0, 1, 0] : [0, 0, (p.bore / R) ** 2, -1, 0];
  const [Ao = 0, bo = 0, Ai = 0, bi = 0] = solveLinear([
    [1, -free, 0, 0, 0],
    bore,
    [1, -1, -1, 1, 0],
    [uAo, uBo, uAi, uBi, p.gap].map((value) => value / (p.gap || 1)),
  ]);
  return { pressure: -(Ao - bo), outerHoop: Ao + bo, innerHoop: Ai + bi };
}

/** Gauss elimination with row exchange; the last column is the right side. */
function solveLinear(rows: readonly (readonly number[])[]): number[] {
  const m = rows.map((row) => {
    const scale = Math.max(...row.slice(0, -1).map(Math.abs));
    return row.map((value) => value / scale);
  });
  const n = m.length;
  const at = (i: number, j: number) => m[i]?.[j] ?? 0;
  for (let column = 0; column < n; column++) {
    let best = column;
    for (let row = column + 1; row < n; row++)
      if (Math.abs(at(row, column)) > Math.abs(at(best, column))) best = row;
    const [a, b] = [m[column] ?? [], m[best] ?? []];
    m[column] = b;
    m[best] = a;
    for (let row = 0; row < n; row++) {
      if (row === column) continue;
      const factor = at(row, column) / at(column, column);
      m[row] = (m[row] ?? []).map((value, j) => value - factor * at(column, j));
    }
  }
  return m.map((row, i) => (row[n] ?? 0) / at(i, i));
}
