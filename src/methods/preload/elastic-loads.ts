// Loads of bolts that act on each other, linear: what passes leave, and what would leave them even.

/** change[i][j]: change of load in bolt i for each unit of load put into bolt j; both in order of tightening. */
export type Changes = readonly (readonly number[])[];

/**
 * Loads after each pass, in N. A bolt is brought to its load whatever it held before; the load put
 * in by that changes every bolt that is tight already.
 */
export function passResiduals(
  changes: Changes,
  targets: readonly (readonly number[])[],
): readonly (readonly number[])[] {
  const loads = changes.map(() => 0);
  const tight = changes.map(() => false);
  return targets.map((pass) => {
    for (const [turn, target] of pass.entries()) {
      const put = target - (loads[turn] ?? 0);
      for (const [other, row] of changes.entries())
        if (tight[other] && other !== turn) loads[other] = (loads[other] ?? 0) + (row[turn] ?? 0) * put;
      loads[turn] = target;
      tight[turn] = true;
    }
    return [...loads];
  });
}

/**
 * Loads of one pass from slack that leave the same load in every bolt: residual = A load with A
 * upper triangular in the order of tightening and a unit diagonal, solved from the last bolt back.
 */
export function evenLoads(changes: Changes, wanted: number): readonly number[] {
  const loads = changes.map(() => wanted);
  for (let turn = changes.length - 1; turn >= 0; turn--) {
    let lost = 0;
    for (let later = turn + 1; later < changes.length; later++)
      lost += (changes[turn]?.[later] ?? 0) * (loads[later] ?? 0);
    loads[turn] = wanted - lost;
  }
  return loads;
}
