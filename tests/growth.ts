// How much longer a text of sixteen times the length takes: about 16 where each place is looked at once, 256
// and more where every place begins the search anew. Two timings of one process; a short one counts as 20 ms,
// so that a machine that is busy says nothing.
const floor = 20;

function time(act: () => unknown): number {
  const start = performance.now();
  act();
  return performance.now() - start;
}

export function growth(act: (size: number) => unknown, size: number): number {
  act(size);
  const best = (n: number) => Math.min(...Array.from({ length: 3 }, () => time(() => act(n))));
  return Math.max(floor, best(16 * size)) / Math.max(floor, best(size));
}

/** Between 16 and 256. */
export const linear = 80;
