// The digits in front that need not be typed: where the readings of a column begin with 25.0, "12" means 25.012.
// They are fixed: what is typed never changes them unless more digits are typed than stand open.

export interface Front {
  /** "25.0" */
  readonly front: string;
  /** Digits that stand open after it. */
  readonly open: number;
}

const open = 2;
const plain = /^[-\u2212]?\d+\.\d+$/;
const mostly = 0.5;

/** From readings of the same column, the nearest first: what most of them begin with, if they agree. */
export function frontOf(texts: readonly string[]): Front | undefined {
  const pointed = texts.map((text) => inFull(text.replace(",", "."))).filter((text) => plain.test(text));
  const decimals = commonest(pointed.map(placesOf));
  if (decimals === undefined || decimals < open) return undefined;
  const fronts = pointed.filter((text) => placesOf(text) === decimals).map((text) => text.slice(0, -open));
  const front = commonest(fronts);
  const share = fronts.filter((one) => one === front).length / texts.length;
  return front !== undefined && share > mostly ? { front, open } : undefined;
}

const placesOf = (text: string): number => text.length - text.indexOf(".") - 1;

/** ".7503" is 0.7503. */
const inFull = (text: string): string => text.replace(/^([-\u2212]?)\.(?=\d)/, "$10.");

/** A nominal of 25 mm, read to three decimals, gives 25.0. */
export function frontOfNominal(nominal: number, decimals: number): Front | undefined {
  if (!Number.isFinite(nominal) || decimals < open) return undefined;
  return frontOf([nominal.toLocaleString("en", digitsAfter(decimals))]);
}

const digitsAfter = (decimals: number) => ({
  useGrouping: false,
  minimumFractionDigits: decimals,
  maximumFractionDigits: decimals,
});

function commonest<T>(values: readonly T[]): T | undefined {
  const counts = new Map<T, number>();
  for (const value of values) counts.set(value, (counts.get(value) ?? 0) + 1);
  return [...counts].reduce<[T, number] | undefined>(
    (most, one) => (most && most[1] >= one[1] ? most : one),
    undefined,
  )?.[0];
}

export type Filled = { readonly text: string; readonly byFront: boolean } | { readonly tooMany: string };

/**
 * What typed figures mean: "12" → 25.012, "5" → 25.005, "112" → 25.112, "24990" → 24.990.
 * With a point, a sign or a unit they stand as typed.
 */
export function filled(typed: string, front: Front | undefined): Filled {
  const text = typed.trim();
  if (front === undefined || !/^\d+$/.test(text)) return { text: inFull(text), byFront: false };
  const { front: before } = front;
  if (text.length <= front.open) return { text: before + text.padStart(front.open, "0"), byFront: true };
  const pattern = before + "0".repeat(front.open);
  const places = pattern.replace(/\D/g, "").length;
  if (text.length > places) return { tooMany: text };
  return { text: laidOver(pattern, text), byFront: true };
}

/** Digits take the last places of a number. */
function laidOver(pattern: string, digits: string): string {
  const characters = pattern.split("");
  let next = digits.length - 1;
  for (let i = characters.length - 1; i >= 0 && next >= 0; i -= 1)
    if (/\d/.test(characters[i] ?? "")) {
      characters[i] = digits[next] ?? "";
      next -= 1;
    }
  return characters.join("");
}

/** The same open digits behind the front before and after: 25.090 → 24.990 and 25.190. */
export function neighbours(text: string, front: Front): readonly string[] {
  const decimals = placesOf(text);
  if (decimals < front.open) return [];
  const step = 10 ** (front.open - decimals);
  return [-step, step].map((by) => (Number(text) + by).toLocaleString("en", digitsAfter(decimals)));
}

/**
 * The reading with a zero less or more behind the front, where it has more or fewer places than the others:
 * behind 0.75, 0.75003 may be 0.7503 with a zero too many, and 0.753 the same with one too few.
 */
export function zeroSlip(text: string, { front, open: places }: Front): string | undefined {
  if (!plain.test(text) || !text.startsWith(front)) return undefined;
  const rest = text.slice(front.length);
  const extra = rest.length - places;
  const zeros = "0".repeat(Math.abs(extra));
  if (extra > 0) return rest.startsWith(zeros) ? front + rest.slice(extra) : undefined;
  return extra < 0 && rest !== "" ? front + zeros + rest : undefined;
}
