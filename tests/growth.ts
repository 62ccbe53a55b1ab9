// How much longer a text of four times the length takes: about 4 where each place is looked at once, 16 and
// more where every place begins the search anew. Two timings of one process; a short one counts as 3 ms, so
// that a machine that is busy for a moment says nothing.
const floor = 3;

function time(act: () => unknown): number {
  const start = performance.now();
  act();
  return performance.now() - start;
}

export function growth(act: (size: number) => unknown, size: number): number {
  act(size);
  const best = (n: number) => Math.min(...Array.from({ length: 3 }, () => time(() => act(n))));
  return Math.max(floor, best(4 * size)) / Math.max(floor, best(size));
}

/** Between 4 and 16, nearer to what doubles twice. */
export const linear = 9;
