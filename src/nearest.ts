// The names closest to a mistyped one, for hints. Plain edit distance, given up as soon as a name is too far.

export function nearest(word: string, names: readonly string[], most = 3): string[] {
  const typed = word.toLowerCase();
  const near = names.flatMap((name) => {
    const known = name.toLowerCase();
    const far = Math.max(2, name.length / 3);
    const isPart = known.includes(typed);
    const steps = editSteps(typed, known, isPart ? Number.POSITIVE_INFINITY : far);
    return steps <= far || isPart ? [{ name, steps }] : [];
  });
  return near
    .sort((a, b) => a.steps - b.steps)
    .slice(0, most)
    .map(({ name }) => name);
}

/** Steps from one word to the other; infinite where more than `most` are needed. */
function editSteps(a: string, b: string, most: number): number {
  if (Math.abs(a.length - b.length) > most) return Number.POSITIVE_INFINITY;
  const row = Uint32Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    let before = i - 1; // what stood left of and above this place
    let least = i;
    row[0] = i;
    for (let j = 1; j <= b.length; j++) {
      const above = row[j] ?? 0;
      const swap = before + (a.charCodeAt(i - 1) === b.charCodeAt(j - 1) ? 0 : 1);
      const steps = Math.min(swap, above + 1, (row[j - 1] ?? 0) + 1);
      row[j] = steps;
      before = above;
      if (steps < least) least = steps;
    }
    if (least > most) return Number.POSITIVE_INFINITY;
  }
  return row[b.length] ?? b.length;
}
