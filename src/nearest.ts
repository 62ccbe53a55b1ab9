// The names closest to a mistyped one, for hints. Plain edit distance.

export function nearest(word: string, names: readonly string[], most = 3): string[] {
  const near = names
    .map((name) => ({ name, steps: editSteps(word.toLowerCase(), name.toLowerCase()) }))
    .filter(
      ({ name, steps }) =>
        steps <= Math.max(2, name.length / 3) || name.toLowerCase().includes(word.toLowerCase()),
    );
  return near
    .sort((a, b) => a.steps - b.steps)
    .slice(0, most)
    .map(({ name }) => name);
}

function editSteps(a: string, b: string): number {
  let row = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const next = [i];
    for (let j = 1; j <= b.length; j++) {
      const swap = (row[j - 1] ?? 0) + (a[i - 1] === b[j - 1] ? 0 : 1);
      next.push(Math.min(swap, (row[j] ?? 0) + 1, (next[j - 1] ?? 0) + 1));
    }
    row = next;
  }
  return row[b.length] ?? b.length;
}
