// Times the cases of one bench: 2 rounds to warm up, then 9 rounds with all cases in turn.

const warmUpRounds = 2;

export async function measure(bench) {
  const names = Object.keys(bench.cases);
  await bench.before?.();
  const times = new Map(names.map((name) => [name, []]));
  const rounds = bench.rounds ?? 9;
  for (let round = 0; round < warmUpRounds + rounds; round++) {
    const answers = new Map();
    for (const name of names) {
      globalThis.gc?.();
      const start = performance.now();
      answers.set(name, await bench.cases[name]());
      const took = performance.now() - start;
      if (round >= warmUpRounds) times.get(name).push(took);
    }
    if (round === 0) compare(bench, answers);
  }
  await bench.after?.();
  return { title: bench.title, rows: names.flatMap((name) => rowOf(bench, name, times)) };
}

const referenceOf = (bench, name) =>
  typeof bench.reference === "string" ? bench.reference : bench.reference[name];

function compare(bench, answers) {
  for (const [name, answer] of answers) {
    const reference = referenceOf(bench, name);
    if (reference === undefined || reference === name) continue;
    if (!answers.has(reference)) throw new Error(`${bench.title}: no case is named ${reference}`);
    const difference = differ(answer, answers.get(reference), bench.tolerance ?? 1e-12);
    if (difference)
      throw new Error(`${bench.title}: ${name} and ${reference} do not answer the same: ${difference}`);
  }
}

/** Undefined when alike; else the first place where they are not. */
export function differ(a, b, tolerance, at = "answer") {
  if (typeof a === "number" && typeof b === "number") {
    const alike = Object.is(a, b) || Math.abs(a - b) <= tolerance * Math.max(Math.abs(a), Math.abs(b));
    return alike ? undefined : `${at} is ${a}, not ${b}`;
  }
  if (a !== null && b !== null && typeof a === "object" && typeof b === "object") {
    const keys = Object.keys(b);
    if (Object.keys(a).length !== keys.length)
      return `${at} has ${Object.keys(a).length} parts, not ${keys.length}`;
    for (const key of keys) {
      const found = differ(a[key], b[key], tolerance, `${at}.${key}`);
      if (found) return found;
    }
    return undefined;
  }
  return Object.is(a, b) ? undefined : `${at} is ${String(a)}, not ${String(b)}`;
}

const median = (sorted) => (sorted[(sorted.length - 1) >> 1] + sorted[sorted.length >> 1]) / 2;

function rowOf(bench, name, times) {
  const reference = referenceOf(bench, name);
  if (reference === undefined || reference === name) return [];
  const sorted = (n) => [...times.get(n)].sort((a, b) => a - b);
  const [own, theirs] = [sorted(name), sorted(reference)];
  const { repeats = 1, ms } = bench.times?.[name] ?? {};
  const minRatio = own[0] / theirs[0];
  const bar = bench.bars[name] ?? null;
  const medianMs = median(own) / repeats;
  const broken = (bar !== null && minRatio > bar) || (ms !== undefined && medianMs > ms);
  return [
    {
      case: name,
      reference,
      minRatio,
      medianRatio: median(own) / median(theirs),
      bar,
      state: bar === null && ms === undefined ? "report" : broken ? "not met" : "met",
      minMs: own[0] / repeats,
      medianMs,
      msBar: ms ?? null,
    },
  ];
}
