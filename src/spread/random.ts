// Uniform numbers that anyone can draw again: one stream per (seed of the page, name of the input,
// number of the block). A block needs no other block before it, and since an input is known by its
// name and not by its place, a new input leaves the draws of all others as they were.
//
// Generator: sfc32 (C. Doty-Humphrey, PractRand), 128 bits of state, integers only, so the same
// bits in every engine.

// When the numbers drawn from a seed change, the change notes say so.

/** Fowler-Noll-Vo 1a over the UTF-16 units of a name, then mixed so that every bit depends on every other. */
export function hashName(name: string): number {
  let hash = 0x811c9dc5;
  for (let i = 0; i < name.length; i++) hash = Math.imul(hash ^ name.charCodeAt(i), 0x01000193);
  return mix(hash);
}

/** The finisher of MurmurHash3 (A. Appleby, public domain). */
function mix(value: number): number {
  let h = value;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}

/** Rounds thrown away after seeding, until the state is well mixed. */
const warmUp = 12;

/**
 * Fills the first n places with numbers strictly between 0 and 1: (k + 1/2) / 2^52, k of 52 bits.
 * Neither end is reached, and 1 - u is exact.
 */
export function fillUniform(out: Float64Array, n: number, seed: number, name: number, block: number): void {
  let a = seed | 0;
  let b = name | 0;
  let c = (block ^ mix(Math.floor(seed / 2 ** 32))) | 0;
  let counter = 1;
  for (let i = -warmUp; i < n; i++) {
    const low = (a + b + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + low) | 0;
    if (i < 0) continue;
    const high = (a + b + counter) | 0;
    counter = (counter + 1) | 0;
    a = b ^ (b >>> 9);
    b = (c + (c << 3)) | 0;
    c = (((c << 21) | (c >>> 11)) + high) | 0;
    out[i] = ((high >>> 6) * 67108864 + (low >>> 6) + 0.5) / 4503599627370496;
  }
}
