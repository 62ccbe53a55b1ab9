// Written by kernels.generate.mjs; change that and run it again.
/* oxlint-disable typescript/no-non-null-assertion */
// biome-ignore-all lint/style/noNonNullAssertion: every index is below the length of its column
import { roundHalfEven } from "./arithmetic.ts";

/** n is a multiple of 4 and at most the length of every column; `out` may be one of the operands. */
export type Kernel = (
  n: number,
  out: Float64Array,
  a: Float64Array,
  b: Float64Array,
  c: Float64Array,
  k: number,
  m: number,
) => void;

export const kernels: Readonly<Record<string, Kernel>> = {
  "a + b": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      out[i] = a[i]! + b[i]!;
      out[i + 1] = a[i + 1]! + b[i + 1]!;
      out[i + 2] = a[i + 2]! + b[i + 2]!;
      out[i + 3] = a[i + 3]! + b[i + 3]!;
    }
  },
  "a + k": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      out[i] = a[i]! + k;
      out[i + 1] = a[i + 1]! + k;
      out[i + 2] = a[i + 2]! + k;
      out[i + 3] = a[i + 3]! + k;
    }
  },
  "a - b": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      out[i] = a[i]! - b[i]!;
      out[i + 1] = a[i + 1]! - b[i + 1]!;
      out[i + 2] = a[i + 2]! - b[i + 2]!;
      out[i + 3] = a[i + 3]! - b[i + 3]!;
    }
  },
  "k - a": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      out[i] = k - a[i]!;
      out[i + 1] = k - a[i + 1]!;
      out[i + 2] = k - a[i + 2]!;
      out[i + 3] = k - a[i + 3]!;
    }
  },
  "a * b": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      out[i] = a[i]! * b[i]!;
      out[i + 1] = a[i + 1]! * b[i + 1]!;
      out[i + 2] = a[i + 2]! * b[i + 2]!;
      out[i + 3] = a[i + 3]! * b[i + 3]!;
    }
  },
  "a * k": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      out[i] = a[i]! * k;
      out[i + 1] = a[i + 1]! * k;
      out[i + 2] = a[i + 2]! * k;
      out[i + 3] = a[i + 3]! * k;
    }
  },
  "a / b": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const b0 = b[i]!;
      out[i] = a[i]! / b0 + (b0 - b0);
      const b1 = b[i + 1]!;
      out[i + 1] = a[i + 1]! / b1 + (b1 - b1);
      const b2 = b[i + 2]!;
      out[i + 2] = a[i + 2]! / b2 + (b2 - b2);
      const b3 = b[i + 3]!;
      out[i + 3] = a[i + 3]! / b3 + (b3 - b3);
    }
  },
  "a / k": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      out[i] = a[i]! / k;
      out[i + 1] = a[i + 1]! / k;
      out[i + 2] = a[i + 2]! / k;
      out[i + 3] = a[i + 3]! / k;
    }
  },
  "k / a": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      out[i] = k / a0 + (a0 - a0);
      const a1 = a[i + 1]!;
      out[i + 1] = k / a1 + (a1 - a1);
      const a2 = a[i + 2]!;
      out[i + 2] = k / a2 + (a2 - a2);
      const a3 = a[i + 3]!;
      out[i + 3] = k / a3 + (a3 - a3);
    }
  },
  "sqrt a": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      out[i] = Math.sqrt(a[i]!);
      out[i + 1] = Math.sqrt(a[i + 1]!);
      out[i + 2] = Math.sqrt(a[i + 2]!);
      out[i + 3] = Math.sqrt(a[i + 3]!);
    }
  },
  "square a": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      out[i] = a0 * a0;
      const a1 = a[i + 1]!;
      out[i + 1] = a1 * a1;
      const a2 = a[i + 2]!;
      out[i + 2] = a2 * a2;
      const a3 = a[i + 3]!;
      out[i + 3] = a3 * a3;
    }
  },
  "-a": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      out[i] = -a[i]!;
      out[i + 1] = -a[i + 1]!;
      out[i + 2] = -a[i + 2]!;
      out[i + 3] = -a[i + 3]!;
    }
  },
  "abs a": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      out[i] = Math.abs(a[i]!);
      out[i + 1] = Math.abs(a[i + 1]!);
      out[i + 2] = Math.abs(a[i + 2]!);
      out[i + 3] = Math.abs(a[i + 3]!);
    }
  },
  "sin a": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      out[i] = Math.sin(a[i]!);
      out[i + 1] = Math.sin(a[i + 1]!);
      out[i + 2] = Math.sin(a[i + 2]!);
      out[i + 3] = Math.sin(a[i + 3]!);
    }
  },
  "cos a": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      out[i] = Math.cos(a[i]!);
      out[i + 1] = Math.cos(a[i + 1]!);
      out[i + 2] = Math.cos(a[i + 2]!);
      out[i + 3] = Math.cos(a[i + 3]!);
    }
  },
  "tan a": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      out[i] = Math.tan(a[i]!);
      out[i + 1] = Math.tan(a[i + 1]!);
      out[i + 2] = Math.tan(a[i + 2]!);
      out[i + 3] = Math.tan(a[i + 3]!);
    }
  },
  "asin a": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      out[i] = Math.asin(a[i]!);
      out[i + 1] = Math.asin(a[i + 1]!);
      out[i + 2] = Math.asin(a[i + 2]!);
      out[i + 3] = Math.asin(a[i + 3]!);
    }
  },
  "acos a": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      out[i] = Math.acos(a[i]!);
      out[i + 1] = Math.acos(a[i + 1]!);
      out[i + 2] = Math.acos(a[i + 2]!);
      out[i + 3] = Math.acos(a[i + 3]!);
    }
  },
  "log10 a": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      out[i] = Math.log10(a[i]!);
      out[i + 1] = Math.log10(a[i + 1]!);
      out[i + 2] = Math.log10(a[i + 2]!);
      out[i + 3] = Math.log10(a[i + 3]!);
    }
  },
  "ln a": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      out[i] = Math.log(a[i]!);
      out[i + 1] = Math.log(a[i + 1]!);
      out[i + 2] = Math.log(a[i + 2]!);
      out[i + 3] = Math.log(a[i + 3]!);
    }
  },
  "exp a": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      out[i] = Math.exp(a0) + (a0 - a0);
      const a1 = a[i + 1]!;
      out[i + 1] = Math.exp(a1) + (a1 - a1);
      const a2 = a[i + 2]!;
      out[i + 2] = Math.exp(a2) + (a2 - a2);
      const a3 = a[i + 3]!;
      out[i + 3] = Math.exp(a3) + (a3 - a3);
    }
  },
  "atan a": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      out[i] = Math.atan(a0) + (a0 - a0);
      const a1 = a[i + 1]!;
      out[i + 1] = Math.atan(a1) + (a1 - a1);
      const a2 = a[i + 2]!;
      out[i + 2] = Math.atan(a2) + (a2 - a2);
      const a3 = a[i + 3]!;
      out[i + 3] = Math.atan(a3) + (a3 - a3);
    }
  },
  "round a": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      out[i] = roundHalfEven(a[i]!);
      out[i + 1] = roundHalfEven(a[i + 1]!);
      out[i + 2] = roundHalfEven(a[i + 2]!);
      out[i + 3] = roundHalfEven(a[i + 3]!);
    }
  },
  "a ^ b": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const b0 = b[i]!;
      out[i] = a0 ** b0 + (a0 - a0) + (b0 - b0);
      const a1 = a[i + 1]!;
      const b1 = b[i + 1]!;
      out[i + 1] = a1 ** b1 + (a1 - a1) + (b1 - b1);
      const a2 = a[i + 2]!;
      const b2 = b[i + 2]!;
      out[i + 2] = a2 ** b2 + (a2 - a2) + (b2 - b2);
      const a3 = a[i + 3]!;
      const b3 = b[i + 3]!;
      out[i + 3] = a3 ** b3 + (a3 - a3) + (b3 - b3);
    }
  },
  "a ^ k": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      out[i] = a0 ** k + (a0 - a0);
      const a1 = a[i + 1]!;
      out[i + 1] = a1 ** k + (a1 - a1);
      const a2 = a[i + 2]!;
      out[i + 2] = a2 ** k + (a2 - a2);
      const a3 = a[i + 3]!;
      out[i + 3] = a3 ** k + (a3 - a3);
    }
  },
  "k ^ a": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      out[i] = k ** a0 + (a0 - a0);
      const a1 = a[i + 1]!;
      out[i + 1] = k ** a1 + (a1 - a1);
      const a2 = a[i + 2]!;
      out[i + 2] = k ** a2 + (a2 - a2);
      const a3 = a[i + 3]!;
      out[i + 3] = k ** a3 + (a3 - a3);
    }
  },
  "a min b": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const b0 = b[i]!;
      out[i] = Math.min(a0, b0) + (a0 - a0) + (b0 - b0);
      const a1 = a[i + 1]!;
      const b1 = b[i + 1]!;
      out[i + 1] = Math.min(a1, b1) + (a1 - a1) + (b1 - b1);
      const a2 = a[i + 2]!;
      const b2 = b[i + 2]!;
      out[i + 2] = Math.min(a2, b2) + (a2 - a2) + (b2 - b2);
      const a3 = a[i + 3]!;
      const b3 = b[i + 3]!;
      out[i + 3] = Math.min(a3, b3) + (a3 - a3) + (b3 - b3);
    }
  },
  "a min k": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      out[i] = Math.min(a0, k) + (a0 - a0);
      const a1 = a[i + 1]!;
      out[i + 1] = Math.min(a1, k) + (a1 - a1);
      const a2 = a[i + 2]!;
      out[i + 2] = Math.min(a2, k) + (a2 - a2);
      const a3 = a[i + 3]!;
      out[i + 3] = Math.min(a3, k) + (a3 - a3);
    }
  },
  "k min a": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      out[i] = Math.min(k, a0) + (a0 - a0);
      const a1 = a[i + 1]!;
      out[i + 1] = Math.min(k, a1) + (a1 - a1);
      const a2 = a[i + 2]!;
      out[i + 2] = Math.min(k, a2) + (a2 - a2);
      const a3 = a[i + 3]!;
      out[i + 3] = Math.min(k, a3) + (a3 - a3);
    }
  },
  "a max b": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const b0 = b[i]!;
      out[i] = Math.max(a0, b0) + (a0 - a0) + (b0 - b0);
      const a1 = a[i + 1]!;
      const b1 = b[i + 1]!;
      out[i + 1] = Math.max(a1, b1) + (a1 - a1) + (b1 - b1);
      const a2 = a[i + 2]!;
      const b2 = b[i + 2]!;
      out[i + 2] = Math.max(a2, b2) + (a2 - a2) + (b2 - b2);
      const a3 = a[i + 3]!;
      const b3 = b[i + 3]!;
      out[i + 3] = Math.max(a3, b3) + (a3 - a3) + (b3 - b3);
    }
  },
  "a max k": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      out[i] = Math.max(a0, k) + (a0 - a0);
      const a1 = a[i + 1]!;
      out[i + 1] = Math.max(a1, k) + (a1 - a1);
      const a2 = a[i + 2]!;
      out[i + 2] = Math.max(a2, k) + (a2 - a2);
      const a3 = a[i + 3]!;
      out[i + 3] = Math.max(a3, k) + (a3 - a3);
    }
  },
  "k max a": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      out[i] = Math.max(k, a0) + (a0 - a0);
      const a1 = a[i + 1]!;
      out[i + 1] = Math.max(k, a1) + (a1 - a1);
      const a2 = a[i + 2]!;
      out[i + 2] = Math.max(k, a2) + (a2 - a2);
      const a3 = a[i + 3]!;
      out[i + 3] = Math.max(k, a3) + (a3 - a3);
    }
  },
  "a < b": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const b0 = b[i]!;
      out[i] = (a0 < b0 ? 1 : 0) + (a0 - a0) + (b0 - b0);
      const a1 = a[i + 1]!;
      const b1 = b[i + 1]!;
      out[i + 1] = (a1 < b1 ? 1 : 0) + (a1 - a1) + (b1 - b1);
      const a2 = a[i + 2]!;
      const b2 = b[i + 2]!;
      out[i + 2] = (a2 < b2 ? 1 : 0) + (a2 - a2) + (b2 - b2);
      const a3 = a[i + 3]!;
      const b3 = b[i + 3]!;
      out[i + 3] = (a3 < b3 ? 1 : 0) + (a3 - a3) + (b3 - b3);
    }
  },
  "a < k": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      out[i] = (a0 < k ? 1 : 0) + (a0 - a0);
      const a1 = a[i + 1]!;
      out[i + 1] = (a1 < k ? 1 : 0) + (a1 - a1);
      const a2 = a[i + 2]!;
      out[i + 2] = (a2 < k ? 1 : 0) + (a2 - a2);
      const a3 = a[i + 3]!;
      out[i + 3] = (a3 < k ? 1 : 0) + (a3 - a3);
    }
  },
  "k < a": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      out[i] = (k < a0 ? 1 : 0) + (a0 - a0);
      const a1 = a[i + 1]!;
      out[i + 1] = (k < a1 ? 1 : 0) + (a1 - a1);
      const a2 = a[i + 2]!;
      out[i + 2] = (k < a2 ? 1 : 0) + (a2 - a2);
      const a3 = a[i + 3]!;
      out[i + 3] = (k < a3 ? 1 : 0) + (a3 - a3);
    }
  },
  "a <= b": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const b0 = b[i]!;
      out[i] = (a0 <= b0 ? 1 : 0) + (a0 - a0) + (b0 - b0);
      const a1 = a[i + 1]!;
      const b1 = b[i + 1]!;
      out[i + 1] = (a1 <= b1 ? 1 : 0) + (a1 - a1) + (b1 - b1);
      const a2 = a[i + 2]!;
      const b2 = b[i + 2]!;
      out[i + 2] = (a2 <= b2 ? 1 : 0) + (a2 - a2) + (b2 - b2);
      const a3 = a[i + 3]!;
      const b3 = b[i + 3]!;
      out[i + 3] = (a3 <= b3 ? 1 : 0) + (a3 - a3) + (b3 - b3);
    }
  },
  "a <= k": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      out[i] = (a0 <= k ? 1 : 0) + (a0 - a0);
      const a1 = a[i + 1]!;
      out[i + 1] = (a1 <= k ? 1 : 0) + (a1 - a1);
      const a2 = a[i + 2]!;
      out[i + 2] = (a2 <= k ? 1 : 0) + (a2 - a2);
      const a3 = a[i + 3]!;
      out[i + 3] = (a3 <= k ? 1 : 0) + (a3 - a3);
    }
  },
  "k <= a": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      out[i] = (k <= a0 ? 1 : 0) + (a0 - a0);
      const a1 = a[i + 1]!;
      out[i + 1] = (k <= a1 ? 1 : 0) + (a1 - a1);
      const a2 = a[i + 2]!;
      out[i + 2] = (k <= a2 ? 1 : 0) + (a2 - a2);
      const a3 = a[i + 3]!;
      out[i + 3] = (k <= a3 ? 1 : 0) + (a3 - a3);
    }
  },
  "a == b": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const b0 = b[i]!;
      out[i] = (a0 === b0 ? 1 : 0) + (a0 - a0) + (b0 - b0);
      const a1 = a[i + 1]!;
      const b1 = b[i + 1]!;
      out[i + 1] = (a1 === b1 ? 1 : 0) + (a1 - a1) + (b1 - b1);
      const a2 = a[i + 2]!;
      const b2 = b[i + 2]!;
      out[i + 2] = (a2 === b2 ? 1 : 0) + (a2 - a2) + (b2 - b2);
      const a3 = a[i + 3]!;
      const b3 = b[i + 3]!;
      out[i + 3] = (a3 === b3 ? 1 : 0) + (a3 - a3) + (b3 - b3);
    }
  },
  "a == k": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      out[i] = (a0 === k ? 1 : 0) + (a0 - a0);
      const a1 = a[i + 1]!;
      out[i + 1] = (a1 === k ? 1 : 0) + (a1 - a1);
      const a2 = a[i + 2]!;
      out[i + 2] = (a2 === k ? 1 : 0) + (a2 - a2);
      const a3 = a[i + 3]!;
      out[i + 3] = (a3 === k ? 1 : 0) + (a3 - a3);
    }
  },
  "k == a": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      out[i] = (k === a0 ? 1 : 0) + (a0 - a0);
      const a1 = a[i + 1]!;
      out[i + 1] = (k === a1 ? 1 : 0) + (a1 - a1);
      const a2 = a[i + 2]!;
      out[i + 2] = (k === a2 ? 1 : 0) + (a2 - a2);
      const a3 = a[i + 3]!;
      out[i + 3] = (k === a3 ? 1 : 0) + (a3 - a3);
    }
  },
  "a != b": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const b0 = b[i]!;
      out[i] = (a0 !== b0 ? 1 : 0) + (a0 - a0) + (b0 - b0);
      const a1 = a[i + 1]!;
      const b1 = b[i + 1]!;
      out[i + 1] = (a1 !== b1 ? 1 : 0) + (a1 - a1) + (b1 - b1);
      const a2 = a[i + 2]!;
      const b2 = b[i + 2]!;
      out[i + 2] = (a2 !== b2 ? 1 : 0) + (a2 - a2) + (b2 - b2);
      const a3 = a[i + 3]!;
      const b3 = b[i + 3]!;
      out[i + 3] = (a3 !== b3 ? 1 : 0) + (a3 - a3) + (b3 - b3);
    }
  },
  "a != k": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      out[i] = (a0 !== k ? 1 : 0) + (a0 - a0);
      const a1 = a[i + 1]!;
      out[i + 1] = (a1 !== k ? 1 : 0) + (a1 - a1);
      const a2 = a[i + 2]!;
      out[i + 2] = (a2 !== k ? 1 : 0) + (a2 - a2);
      const a3 = a[i + 3]!;
      out[i + 3] = (a3 !== k ? 1 : 0) + (a3 - a3);
    }
  },
  "k != a": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      out[i] = (k !== a0 ? 1 : 0) + (a0 - a0);
      const a1 = a[i + 1]!;
      out[i + 1] = (k !== a1 ? 1 : 0) + (a1 - a1);
      const a2 = a[i + 2]!;
      out[i + 2] = (k !== a2 ? 1 : 0) + (a2 - a2);
      const a3 = a[i + 3]!;
      out[i + 3] = (k !== a3 ? 1 : 0) + (a3 - a3);
    }
  },
  "a ? b : c": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      out[i] = (a0 === 0 ? c[i]! : b[i]!) + (a0 - a0);
      const a1 = a[i + 1]!;
      out[i + 1] = (a1 === 0 ? c[i + 1]! : b[i + 1]!) + (a1 - a1);
      const a2 = a[i + 2]!;
      out[i + 2] = (a2 === 0 ? c[i + 2]! : b[i + 2]!) + (a2 - a2);
      const a3 = a[i + 3]!;
      out[i + 3] = (a3 === 0 ? c[i + 3]! : b[i + 3]!) + (a3 - a3);
    }
  },
  "a ? b : k": (n, out, a, b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      out[i] = (a0 === 0 ? k : b[i]!) + (a0 - a0);
      const a1 = a[i + 1]!;
      out[i + 1] = (a1 === 0 ? k : b[i + 1]!) + (a1 - a1);
      const a2 = a[i + 2]!;
      out[i + 2] = (a2 === 0 ? k : b[i + 2]!) + (a2 - a2);
      const a3 = a[i + 3]!;
      out[i + 3] = (a3 === 0 ? k : b[i + 3]!) + (a3 - a3);
    }
  },
  "a ? k : b": (n, out, a, b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      out[i] = (a0 === 0 ? b[i]! : k) + (a0 - a0);
      const a1 = a[i + 1]!;
      out[i + 1] = (a1 === 0 ? b[i + 1]! : k) + (a1 - a1);
      const a2 = a[i + 2]!;
      out[i + 2] = (a2 === 0 ? b[i + 2]! : k) + (a2 - a2);
      const a3 = a[i + 3]!;
      out[i + 3] = (a3 === 0 ? b[i + 3]! : k) + (a3 - a3);
    }
  },
  "a ? k : m": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      out[i] = (a0 === 0 ? m : k) + (a0 - a0);
      const a1 = a[i + 1]!;
      out[i + 1] = (a1 === 0 ? m : k) + (a1 - a1);
      const a2 = a[i + 2]!;
      out[i + 2] = (a2 === 0 ? m : k) + (a2 - a2);
      const a3 = a[i + 3]!;
      out[i + 3] = (a3 === 0 ? m : k) + (a3 - a3);
    }
  },
};

/** An operation and the one that uses its result, in one pass. */
export const fusedKernels: Readonly<Record<string, Kernel>> = {
  "a + b; t + c": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + b[i]!;
      out[i] = t0 + c[i]!;
      const t1 = a[i + 1]! + b[i + 1]!;
      out[i + 1] = t1 + c[i + 1]!;
      const t2 = a[i + 2]! + b[i + 2]!;
      out[i + 2] = t2 + c[i + 2]!;
      const t3 = a[i + 3]! + b[i + 3]!;
      out[i + 3] = t3 + c[i + 3]!;
    }
  },
  "a + b; t + m": (n, out, a, b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + b[i]!;
      out[i] = t0 + m;
      const t1 = a[i + 1]! + b[i + 1]!;
      out[i + 1] = t1 + m;
      const t2 = a[i + 2]! + b[i + 2]!;
      out[i + 2] = t2 + m;
      const t3 = a[i + 3]! + b[i + 3]!;
      out[i + 3] = t3 + m;
    }
  },
  "a + b; t - c": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + b[i]!;
      out[i] = t0 - c[i]!;
      const t1 = a[i + 1]! + b[i + 1]!;
      out[i + 1] = t1 - c[i + 1]!;
      const t2 = a[i + 2]! + b[i + 2]!;
      out[i + 2] = t2 - c[i + 2]!;
      const t3 = a[i + 3]! + b[i + 3]!;
      out[i + 3] = t3 - c[i + 3]!;
    }
  },
  "a + b; c - t": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + b[i]!;
      out[i] = c[i]! - t0;
      const t1 = a[i + 1]! + b[i + 1]!;
      out[i + 1] = c[i + 1]! - t1;
      const t2 = a[i + 2]! + b[i + 2]!;
      out[i + 2] = c[i + 2]! - t2;
      const t3 = a[i + 3]! + b[i + 3]!;
      out[i + 3] = c[i + 3]! - t3;
    }
  },
  "a + b; m - t": (n, out, a, b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + b[i]!;
      out[i] = m - t0;
      const t1 = a[i + 1]! + b[i + 1]!;
      out[i + 1] = m - t1;
      const t2 = a[i + 2]! + b[i + 2]!;
      out[i + 2] = m - t2;
      const t3 = a[i + 3]! + b[i + 3]!;
      out[i + 3] = m - t3;
    }
  },
  "a + b; t * c": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + b[i]!;
      out[i] = t0 * c[i]!;
      const t1 = a[i + 1]! + b[i + 1]!;
      out[i + 1] = t1 * c[i + 1]!;
      const t2 = a[i + 2]! + b[i + 2]!;
      out[i + 2] = t2 * c[i + 2]!;
      const t3 = a[i + 3]! + b[i + 3]!;
      out[i + 3] = t3 * c[i + 3]!;
    }
  },
  "a + b; t * m": (n, out, a, b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + b[i]!;
      out[i] = t0 * m;
      const t1 = a[i + 1]! + b[i + 1]!;
      out[i + 1] = t1 * m;
      const t2 = a[i + 2]! + b[i + 2]!;
      out[i + 2] = t2 * m;
      const t3 = a[i + 3]! + b[i + 3]!;
      out[i + 3] = t3 * m;
    }
  },
  "a + b; t / c": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + b[i]!;
      const c0 = c[i]!;
      out[i] = t0 / c0 + (c0 - c0);
      const t1 = a[i + 1]! + b[i + 1]!;
      const c1 = c[i + 1]!;
      out[i + 1] = t1 / c1 + (c1 - c1);
      const t2 = a[i + 2]! + b[i + 2]!;
      const c2 = c[i + 2]!;
      out[i + 2] = t2 / c2 + (c2 - c2);
      const t3 = a[i + 3]! + b[i + 3]!;
      const c3 = c[i + 3]!;
      out[i + 3] = t3 / c3 + (c3 - c3);
    }
  },
  "a + b; c / t": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + b[i]!;
      out[i] = c[i]! / t0 + (t0 - t0);
      const t1 = a[i + 1]! + b[i + 1]!;
      out[i + 1] = c[i + 1]! / t1 + (t1 - t1);
      const t2 = a[i + 2]! + b[i + 2]!;
      out[i + 2] = c[i + 2]! / t2 + (t2 - t2);
      const t3 = a[i + 3]! + b[i + 3]!;
      out[i + 3] = c[i + 3]! / t3 + (t3 - t3);
    }
  },
  "a + b; t / m": (n, out, a, b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + b[i]!;
      out[i] = t0 / m;
      const t1 = a[i + 1]! + b[i + 1]!;
      out[i + 1] = t1 / m;
      const t2 = a[i + 2]! + b[i + 2]!;
      out[i + 2] = t2 / m;
      const t3 = a[i + 3]! + b[i + 3]!;
      out[i + 3] = t3 / m;
    }
  },
  "a + b; m / t": (n, out, a, b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + b[i]!;
      out[i] = m / t0 + (t0 - t0);
      const t1 = a[i + 1]! + b[i + 1]!;
      out[i + 1] = m / t1 + (t1 - t1);
      const t2 = a[i + 2]! + b[i + 2]!;
      out[i + 2] = m / t2 + (t2 - t2);
      const t3 = a[i + 3]! + b[i + 3]!;
      out[i + 3] = m / t3 + (t3 - t3);
    }
  },
  "a + b; sqrt t": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + b[i]!;
      out[i] = Math.sqrt(t0);
      const t1 = a[i + 1]! + b[i + 1]!;
      out[i + 1] = Math.sqrt(t1);
      const t2 = a[i + 2]! + b[i + 2]!;
      out[i + 2] = Math.sqrt(t2);
      const t3 = a[i + 3]! + b[i + 3]!;
      out[i + 3] = Math.sqrt(t3);
    }
  },
  "a + b; square t": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + b[i]!;
      out[i] = t0 * t0;
      const t1 = a[i + 1]! + b[i + 1]!;
      out[i + 1] = t1 * t1;
      const t2 = a[i + 2]! + b[i + 2]!;
      out[i + 2] = t2 * t2;
      const t3 = a[i + 3]! + b[i + 3]!;
      out[i + 3] = t3 * t3;
    }
  },
  "a + b; -t": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + b[i]!;
      out[i] = -t0;
      const t1 = a[i + 1]! + b[i + 1]!;
      out[i + 1] = -t1;
      const t2 = a[i + 2]! + b[i + 2]!;
      out[i + 2] = -t2;
      const t3 = a[i + 3]! + b[i + 3]!;
      out[i + 3] = -t3;
    }
  },
  "a + b; abs t": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + b[i]!;
      out[i] = Math.abs(t0);
      const t1 = a[i + 1]! + b[i + 1]!;
      out[i + 1] = Math.abs(t1);
      const t2 = a[i + 2]! + b[i + 2]!;
      out[i + 2] = Math.abs(t2);
      const t3 = a[i + 3]! + b[i + 3]!;
      out[i + 3] = Math.abs(t3);
    }
  },
  "a + k; t + c": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + k;
      out[i] = t0 + c[i]!;
      const t1 = a[i + 1]! + k;
      out[i + 1] = t1 + c[i + 1]!;
      const t2 = a[i + 2]! + k;
      out[i + 2] = t2 + c[i + 2]!;
      const t3 = a[i + 3]! + k;
      out[i + 3] = t3 + c[i + 3]!;
    }
  },
  "a + k; t + m": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + k;
      out[i] = t0 + m;
      const t1 = a[i + 1]! + k;
      out[i + 1] = t1 + m;
      const t2 = a[i + 2]! + k;
      out[i + 2] = t2 + m;
      const t3 = a[i + 3]! + k;
      out[i + 3] = t3 + m;
    }
  },
  "a + k; t - c": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + k;
      out[i] = t0 - c[i]!;
      const t1 = a[i + 1]! + k;
      out[i + 1] = t1 - c[i + 1]!;
      const t2 = a[i + 2]! + k;
      out[i + 2] = t2 - c[i + 2]!;
      const t3 = a[i + 3]! + k;
      out[i + 3] = t3 - c[i + 3]!;
    }
  },
  "a + k; c - t": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + k;
      out[i] = c[i]! - t0;
      const t1 = a[i + 1]! + k;
      out[i + 1] = c[i + 1]! - t1;
      const t2 = a[i + 2]! + k;
      out[i + 2] = c[i + 2]! - t2;
      const t3 = a[i + 3]! + k;
      out[i + 3] = c[i + 3]! - t3;
    }
  },
  "a + k; m - t": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + k;
      out[i] = m - t0;
      const t1 = a[i + 1]! + k;
      out[i + 1] = m - t1;
      const t2 = a[i + 2]! + k;
      out[i + 2] = m - t2;
      const t3 = a[i + 3]! + k;
      out[i + 3] = m - t3;
    }
  },
  "a + k; t * c": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + k;
      out[i] = t0 * c[i]!;
      const t1 = a[i + 1]! + k;
      out[i + 1] = t1 * c[i + 1]!;
      const t2 = a[i + 2]! + k;
      out[i + 2] = t2 * c[i + 2]!;
      const t3 = a[i + 3]! + k;
      out[i + 3] = t3 * c[i + 3]!;
    }
  },
  "a + k; t * m": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + k;
      out[i] = t0 * m;
      const t1 = a[i + 1]! + k;
      out[i + 1] = t1 * m;
      const t2 = a[i + 2]! + k;
      out[i + 2] = t2 * m;
      const t3 = a[i + 3]! + k;
      out[i + 3] = t3 * m;
    }
  },
  "a + k; t / c": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + k;
      const c0 = c[i]!;
      out[i] = t0 / c0 + (c0 - c0);
      const t1 = a[i + 1]! + k;
      const c1 = c[i + 1]!;
      out[i + 1] = t1 / c1 + (c1 - c1);
      const t2 = a[i + 2]! + k;
      const c2 = c[i + 2]!;
      out[i + 2] = t2 / c2 + (c2 - c2);
      const t3 = a[i + 3]! + k;
      const c3 = c[i + 3]!;
      out[i + 3] = t3 / c3 + (c3 - c3);
    }
  },
  "a + k; c / t": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + k;
      out[i] = c[i]! / t0 + (t0 - t0);
      const t1 = a[i + 1]! + k;
      out[i + 1] = c[i + 1]! / t1 + (t1 - t1);
      const t2 = a[i + 2]! + k;
      out[i + 2] = c[i + 2]! / t2 + (t2 - t2);
      const t3 = a[i + 3]! + k;
      out[i + 3] = c[i + 3]! / t3 + (t3 - t3);
    }
  },
  "a + k; t / m": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + k;
      out[i] = t0 / m;
      const t1 = a[i + 1]! + k;
      out[i + 1] = t1 / m;
      const t2 = a[i + 2]! + k;
      out[i + 2] = t2 / m;
      const t3 = a[i + 3]! + k;
      out[i + 3] = t3 / m;
    }
  },
  "a + k; m / t": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + k;
      out[i] = m / t0 + (t0 - t0);
      const t1 = a[i + 1]! + k;
      out[i + 1] = m / t1 + (t1 - t1);
      const t2 = a[i + 2]! + k;
      out[i + 2] = m / t2 + (t2 - t2);
      const t3 = a[i + 3]! + k;
      out[i + 3] = m / t3 + (t3 - t3);
    }
  },
  "a + k; sqrt t": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + k;
      out[i] = Math.sqrt(t0);
      const t1 = a[i + 1]! + k;
      out[i + 1] = Math.sqrt(t1);
      const t2 = a[i + 2]! + k;
      out[i + 2] = Math.sqrt(t2);
      const t3 = a[i + 3]! + k;
      out[i + 3] = Math.sqrt(t3);
    }
  },
  "a + k; square t": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + k;
      out[i] = t0 * t0;
      const t1 = a[i + 1]! + k;
      out[i + 1] = t1 * t1;
      const t2 = a[i + 2]! + k;
      out[i + 2] = t2 * t2;
      const t3 = a[i + 3]! + k;
      out[i + 3] = t3 * t3;
    }
  },
  "a + k; -t": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + k;
      out[i] = -t0;
      const t1 = a[i + 1]! + k;
      out[i + 1] = -t1;
      const t2 = a[i + 2]! + k;
      out[i + 2] = -t2;
      const t3 = a[i + 3]! + k;
      out[i + 3] = -t3;
    }
  },
  "a + k; abs t": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! + k;
      out[i] = Math.abs(t0);
      const t1 = a[i + 1]! + k;
      out[i + 1] = Math.abs(t1);
      const t2 = a[i + 2]! + k;
      out[i + 2] = Math.abs(t2);
      const t3 = a[i + 3]! + k;
      out[i + 3] = Math.abs(t3);
    }
  },
  "a - b; t + c": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! - b[i]!;
      out[i] = t0 + c[i]!;
      const t1 = a[i + 1]! - b[i + 1]!;
      out[i + 1] = t1 + c[i + 1]!;
      const t2 = a[i + 2]! - b[i + 2]!;
      out[i + 2] = t2 + c[i + 2]!;
      const t3 = a[i + 3]! - b[i + 3]!;
      out[i + 3] = t3 + c[i + 3]!;
    }
  },
  "a - b; t + m": (n, out, a, b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! - b[i]!;
      out[i] = t0 + m;
      const t1 = a[i + 1]! - b[i + 1]!;
      out[i + 1] = t1 + m;
      const t2 = a[i + 2]! - b[i + 2]!;
      out[i + 2] = t2 + m;
      const t3 = a[i + 3]! - b[i + 3]!;
      out[i + 3] = t3 + m;
    }
  },
  "a - b; t - c": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! - b[i]!;
      out[i] = t0 - c[i]!;
      const t1 = a[i + 1]! - b[i + 1]!;
      out[i + 1] = t1 - c[i + 1]!;
      const t2 = a[i + 2]! - b[i + 2]!;
      out[i + 2] = t2 - c[i + 2]!;
      const t3 = a[i + 3]! - b[i + 3]!;
      out[i + 3] = t3 - c[i + 3]!;
    }
  },
  "a - b; c - t": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! - b[i]!;
      out[i] = c[i]! - t0;
      const t1 = a[i + 1]! - b[i + 1]!;
      out[i + 1] = c[i + 1]! - t1;
      const t2 = a[i + 2]! - b[i + 2]!;
      out[i + 2] = c[i + 2]! - t2;
      const t3 = a[i + 3]! - b[i + 3]!;
      out[i + 3] = c[i + 3]! - t3;
    }
  },
  "a - b; m - t": (n, out, a, b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! - b[i]!;
      out[i] = m - t0;
      const t1 = a[i + 1]! - b[i + 1]!;
      out[i + 1] = m - t1;
      const t2 = a[i + 2]! - b[i + 2]!;
      out[i + 2] = m - t2;
      const t3 = a[i + 3]! - b[i + 3]!;
      out[i + 3] = m - t3;
    }
  },
  "a - b; t * c": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! - b[i]!;
      out[i] = t0 * c[i]!;
      const t1 = a[i + 1]! - b[i + 1]!;
      out[i + 1] = t1 * c[i + 1]!;
      const t2 = a[i + 2]! - b[i + 2]!;
      out[i + 2] = t2 * c[i + 2]!;
      const t3 = a[i + 3]! - b[i + 3]!;
      out[i + 3] = t3 * c[i + 3]!;
    }
  },
  "a - b; t * m": (n, out, a, b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! - b[i]!;
      out[i] = t0 * m;
      const t1 = a[i + 1]! - b[i + 1]!;
      out[i + 1] = t1 * m;
      const t2 = a[i + 2]! - b[i + 2]!;
      out[i + 2] = t2 * m;
      const t3 = a[i + 3]! - b[i + 3]!;
      out[i + 3] = t3 * m;
    }
  },
  "a - b; t / c": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! - b[i]!;
      const c0 = c[i]!;
      out[i] = t0 / c0 + (c0 - c0);
      const t1 = a[i + 1]! - b[i + 1]!;
      const c1 = c[i + 1]!;
      out[i + 1] = t1 / c1 + (c1 - c1);
      const t2 = a[i + 2]! - b[i + 2]!;
      const c2 = c[i + 2]!;
      out[i + 2] = t2 / c2 + (c2 - c2);
      const t3 = a[i + 3]! - b[i + 3]!;
      const c3 = c[i + 3]!;
      out[i + 3] = t3 / c3 + (c3 - c3);
    }
  },
  "a - b; c / t": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! - b[i]!;
      out[i] = c[i]! / t0 + (t0 - t0);
      const t1 = a[i + 1]! - b[i + 1]!;
      out[i + 1] = c[i + 1]! / t1 + (t1 - t1);
      const t2 = a[i + 2]! - b[i + 2]!;
      out[i + 2] = c[i + 2]! / t2 + (t2 - t2);
      const t3 = a[i + 3]! - b[i + 3]!;
      out[i + 3] = c[i + 3]! / t3 + (t3 - t3);
    }
  },
  "a - b; t / m": (n, out, a, b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! - b[i]!;
      out[i] = t0 / m;
      const t1 = a[i + 1]! - b[i + 1]!;
      out[i + 1] = t1 / m;
      const t2 = a[i + 2]! - b[i + 2]!;
      out[i + 2] = t2 / m;
      const t3 = a[i + 3]! - b[i + 3]!;
      out[i + 3] = t3 / m;
    }
  },
  "a - b; m / t": (n, out, a, b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! - b[i]!;
      out[i] = m / t0 + (t0 - t0);
      const t1 = a[i + 1]! - b[i + 1]!;
      out[i + 1] = m / t1 + (t1 - t1);
      const t2 = a[i + 2]! - b[i + 2]!;
      out[i + 2] = m / t2 + (t2 - t2);
      const t3 = a[i + 3]! - b[i + 3]!;
      out[i + 3] = m / t3 + (t3 - t3);
    }
  },
  "a - b; sqrt t": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! - b[i]!;
      out[i] = Math.sqrt(t0);
      const t1 = a[i + 1]! - b[i + 1]!;
      out[i + 1] = Math.sqrt(t1);
      const t2 = a[i + 2]! - b[i + 2]!;
      out[i + 2] = Math.sqrt(t2);
      const t3 = a[i + 3]! - b[i + 3]!;
      out[i + 3] = Math.sqrt(t3);
    }
  },
  "a - b; square t": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! - b[i]!;
      out[i] = t0 * t0;
      const t1 = a[i + 1]! - b[i + 1]!;
      out[i + 1] = t1 * t1;
      const t2 = a[i + 2]! - b[i + 2]!;
      out[i + 2] = t2 * t2;
      const t3 = a[i + 3]! - b[i + 3]!;
      out[i + 3] = t3 * t3;
    }
  },
  "a - b; -t": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! - b[i]!;
      out[i] = -t0;
      const t1 = a[i + 1]! - b[i + 1]!;
      out[i + 1] = -t1;
      const t2 = a[i + 2]! - b[i + 2]!;
      out[i + 2] = -t2;
      const t3 = a[i + 3]! - b[i + 3]!;
      out[i + 3] = -t3;
    }
  },
  "a - b; abs t": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! - b[i]!;
      out[i] = Math.abs(t0);
      const t1 = a[i + 1]! - b[i + 1]!;
      out[i + 1] = Math.abs(t1);
      const t2 = a[i + 2]! - b[i + 2]!;
      out[i + 2] = Math.abs(t2);
      const t3 = a[i + 3]! - b[i + 3]!;
      out[i + 3] = Math.abs(t3);
    }
  },
  "k - a; t + c": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = k - a[i]!;
      out[i] = t0 + c[i]!;
      const t1 = k - a[i + 1]!;
      out[i + 1] = t1 + c[i + 1]!;
      const t2 = k - a[i + 2]!;
      out[i + 2] = t2 + c[i + 2]!;
      const t3 = k - a[i + 3]!;
      out[i + 3] = t3 + c[i + 3]!;
    }
  },
  "k - a; t + m": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = k - a[i]!;
      out[i] = t0 + m;
      const t1 = k - a[i + 1]!;
      out[i + 1] = t1 + m;
      const t2 = k - a[i + 2]!;
      out[i + 2] = t2 + m;
      const t3 = k - a[i + 3]!;
      out[i + 3] = t3 + m;
    }
  },
  "k - a; t - c": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = k - a[i]!;
      out[i] = t0 - c[i]!;
      const t1 = k - a[i + 1]!;
      out[i + 1] = t1 - c[i + 1]!;
      const t2 = k - a[i + 2]!;
      out[i + 2] = t2 - c[i + 2]!;
      const t3 = k - a[i + 3]!;
      out[i + 3] = t3 - c[i + 3]!;
    }
  },
  "k - a; c - t": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = k - a[i]!;
      out[i] = c[i]! - t0;
      const t1 = k - a[i + 1]!;
      out[i + 1] = c[i + 1]! - t1;
      const t2 = k - a[i + 2]!;
      out[i + 2] = c[i + 2]! - t2;
      const t3 = k - a[i + 3]!;
      out[i + 3] = c[i + 3]! - t3;
    }
  },
  "k - a; m - t": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = k - a[i]!;
      out[i] = m - t0;
      const t1 = k - a[i + 1]!;
      out[i + 1] = m - t1;
      const t2 = k - a[i + 2]!;
      out[i + 2] = m - t2;
      const t3 = k - a[i + 3]!;
      out[i + 3] = m - t3;
    }
  },
  "k - a; t * c": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = k - a[i]!;
      out[i] = t0 * c[i]!;
      const t1 = k - a[i + 1]!;
      out[i + 1] = t1 * c[i + 1]!;
      const t2 = k - a[i + 2]!;
      out[i + 2] = t2 * c[i + 2]!;
      const t3 = k - a[i + 3]!;
      out[i + 3] = t3 * c[i + 3]!;
    }
  },
  "k - a; t * m": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = k - a[i]!;
      out[i] = t0 * m;
      const t1 = k - a[i + 1]!;
      out[i + 1] = t1 * m;
      const t2 = k - a[i + 2]!;
      out[i + 2] = t2 * m;
      const t3 = k - a[i + 3]!;
      out[i + 3] = t3 * m;
    }
  },
  "k - a; t / c": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = k - a[i]!;
      const c0 = c[i]!;
      out[i] = t0 / c0 + (c0 - c0);
      const t1 = k - a[i + 1]!;
      const c1 = c[i + 1]!;
      out[i + 1] = t1 / c1 + (c1 - c1);
      const t2 = k - a[i + 2]!;
      const c2 = c[i + 2]!;
      out[i + 2] = t2 / c2 + (c2 - c2);
      const t3 = k - a[i + 3]!;
      const c3 = c[i + 3]!;
      out[i + 3] = t3 / c3 + (c3 - c3);
    }
  },
  "k - a; c / t": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = k - a[i]!;
      out[i] = c[i]! / t0 + (t0 - t0);
      const t1 = k - a[i + 1]!;
      out[i + 1] = c[i + 1]! / t1 + (t1 - t1);
      const t2 = k - a[i + 2]!;
      out[i + 2] = c[i + 2]! / t2 + (t2 - t2);
      const t3 = k - a[i + 3]!;
      out[i + 3] = c[i + 3]! / t3 + (t3 - t3);
    }
  },
  "k - a; t / m": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = k - a[i]!;
      out[i] = t0 / m;
      const t1 = k - a[i + 1]!;
      out[i + 1] = t1 / m;
      const t2 = k - a[i + 2]!;
      out[i + 2] = t2 / m;
      const t3 = k - a[i + 3]!;
      out[i + 3] = t3 / m;
    }
  },
  "k - a; m / t": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = k - a[i]!;
      out[i] = m / t0 + (t0 - t0);
      const t1 = k - a[i + 1]!;
      out[i + 1] = m / t1 + (t1 - t1);
      const t2 = k - a[i + 2]!;
      out[i + 2] = m / t2 + (t2 - t2);
      const t3 = k - a[i + 3]!;
      out[i + 3] = m / t3 + (t3 - t3);
    }
  },
  "k - a; sqrt t": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = k - a[i]!;
      out[i] = Math.sqrt(t0);
      const t1 = k - a[i + 1]!;
      out[i + 1] = Math.sqrt(t1);
      const t2 = k - a[i + 2]!;
      out[i + 2] = Math.sqrt(t2);
      const t3 = k - a[i + 3]!;
      out[i + 3] = Math.sqrt(t3);
    }
  },
  "k - a; square t": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = k - a[i]!;
      out[i] = t0 * t0;
      const t1 = k - a[i + 1]!;
      out[i + 1] = t1 * t1;
      const t2 = k - a[i + 2]!;
      out[i + 2] = t2 * t2;
      const t3 = k - a[i + 3]!;
      out[i + 3] = t3 * t3;
    }
  },
  "k - a; -t": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = k - a[i]!;
      out[i] = -t0;
      const t1 = k - a[i + 1]!;
      out[i + 1] = -t1;
      const t2 = k - a[i + 2]!;
      out[i + 2] = -t2;
      const t3 = k - a[i + 3]!;
      out[i + 3] = -t3;
    }
  },
  "k - a; abs t": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = k - a[i]!;
      out[i] = Math.abs(t0);
      const t1 = k - a[i + 1]!;
      out[i + 1] = Math.abs(t1);
      const t2 = k - a[i + 2]!;
      out[i + 2] = Math.abs(t2);
      const t3 = k - a[i + 3]!;
      out[i + 3] = Math.abs(t3);
    }
  },
  "a * b; t + c": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * b[i]!;
      out[i] = t0 + c[i]!;
      const t1 = a[i + 1]! * b[i + 1]!;
      out[i + 1] = t1 + c[i + 1]!;
      const t2 = a[i + 2]! * b[i + 2]!;
      out[i + 2] = t2 + c[i + 2]!;
      const t3 = a[i + 3]! * b[i + 3]!;
      out[i + 3] = t3 + c[i + 3]!;
    }
  },
  "a * b; t + m": (n, out, a, b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * b[i]!;
      out[i] = t0 + m;
      const t1 = a[i + 1]! * b[i + 1]!;
      out[i + 1] = t1 + m;
      const t2 = a[i + 2]! * b[i + 2]!;
      out[i + 2] = t2 + m;
      const t3 = a[i + 3]! * b[i + 3]!;
      out[i + 3] = t3 + m;
    }
  },
  "a * b; t - c": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * b[i]!;
      out[i] = t0 - c[i]!;
      const t1 = a[i + 1]! * b[i + 1]!;
      out[i + 1] = t1 - c[i + 1]!;
      const t2 = a[i + 2]! * b[i + 2]!;
      out[i + 2] = t2 - c[i + 2]!;
      const t3 = a[i + 3]! * b[i + 3]!;
      out[i + 3] = t3 - c[i + 3]!;
    }
  },
  "a * b; c - t": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * b[i]!;
      out[i] = c[i]! - t0;
      const t1 = a[i + 1]! * b[i + 1]!;
      out[i + 1] = c[i + 1]! - t1;
      const t2 = a[i + 2]! * b[i + 2]!;
      out[i + 2] = c[i + 2]! - t2;
      const t3 = a[i + 3]! * b[i + 3]!;
      out[i + 3] = c[i + 3]! - t3;
    }
  },
  "a * b; m - t": (n, out, a, b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * b[i]!;
      out[i] = m - t0;
      const t1 = a[i + 1]! * b[i + 1]!;
      out[i + 1] = m - t1;
      const t2 = a[i + 2]! * b[i + 2]!;
      out[i + 2] = m - t2;
      const t3 = a[i + 3]! * b[i + 3]!;
      out[i + 3] = m - t3;
    }
  },
  "a * b; t * c": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * b[i]!;
      out[i] = t0 * c[i]!;
      const t1 = a[i + 1]! * b[i + 1]!;
      out[i + 1] = t1 * c[i + 1]!;
      const t2 = a[i + 2]! * b[i + 2]!;
      out[i + 2] = t2 * c[i + 2]!;
      const t3 = a[i + 3]! * b[i + 3]!;
      out[i + 3] = t3 * c[i + 3]!;
    }
  },
  "a * b; t * m": (n, out, a, b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * b[i]!;
      out[i] = t0 * m;
      const t1 = a[i + 1]! * b[i + 1]!;
      out[i + 1] = t1 * m;
      const t2 = a[i + 2]! * b[i + 2]!;
      out[i + 2] = t2 * m;
      const t3 = a[i + 3]! * b[i + 3]!;
      out[i + 3] = t3 * m;
    }
  },
  "a * b; t / c": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * b[i]!;
      const c0 = c[i]!;
      out[i] = t0 / c0 + (c0 - c0);
      const t1 = a[i + 1]! * b[i + 1]!;
      const c1 = c[i + 1]!;
      out[i + 1] = t1 / c1 + (c1 - c1);
      const t2 = a[i + 2]! * b[i + 2]!;
      const c2 = c[i + 2]!;
      out[i + 2] = t2 / c2 + (c2 - c2);
      const t3 = a[i + 3]! * b[i + 3]!;
      const c3 = c[i + 3]!;
      out[i + 3] = t3 / c3 + (c3 - c3);
    }
  },
  "a * b; c / t": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * b[i]!;
      out[i] = c[i]! / t0 + (t0 - t0);
      const t1 = a[i + 1]! * b[i + 1]!;
      out[i + 1] = c[i + 1]! / t1 + (t1 - t1);
      const t2 = a[i + 2]! * b[i + 2]!;
      out[i + 2] = c[i + 2]! / t2 + (t2 - t2);
      const t3 = a[i + 3]! * b[i + 3]!;
      out[i + 3] = c[i + 3]! / t3 + (t3 - t3);
    }
  },
  "a * b; t / m": (n, out, a, b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * b[i]!;
      out[i] = t0 / m;
      const t1 = a[i + 1]! * b[i + 1]!;
      out[i + 1] = t1 / m;
      const t2 = a[i + 2]! * b[i + 2]!;
      out[i + 2] = t2 / m;
      const t3 = a[i + 3]! * b[i + 3]!;
      out[i + 3] = t3 / m;
    }
  },
  "a * b; m / t": (n, out, a, b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * b[i]!;
      out[i] = m / t0 + (t0 - t0);
      const t1 = a[i + 1]! * b[i + 1]!;
      out[i + 1] = m / t1 + (t1 - t1);
      const t2 = a[i + 2]! * b[i + 2]!;
      out[i + 2] = m / t2 + (t2 - t2);
      const t3 = a[i + 3]! * b[i + 3]!;
      out[i + 3] = m / t3 + (t3 - t3);
    }
  },
  "a * b; sqrt t": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * b[i]!;
      out[i] = Math.sqrt(t0);
      const t1 = a[i + 1]! * b[i + 1]!;
      out[i + 1] = Math.sqrt(t1);
      const t2 = a[i + 2]! * b[i + 2]!;
      out[i + 2] = Math.sqrt(t2);
      const t3 = a[i + 3]! * b[i + 3]!;
      out[i + 3] = Math.sqrt(t3);
    }
  },
  "a * b; square t": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * b[i]!;
      out[i] = t0 * t0;
      const t1 = a[i + 1]! * b[i + 1]!;
      out[i + 1] = t1 * t1;
      const t2 = a[i + 2]! * b[i + 2]!;
      out[i + 2] = t2 * t2;
      const t3 = a[i + 3]! * b[i + 3]!;
      out[i + 3] = t3 * t3;
    }
  },
  "a * b; -t": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * b[i]!;
      out[i] = -t0;
      const t1 = a[i + 1]! * b[i + 1]!;
      out[i + 1] = -t1;
      const t2 = a[i + 2]! * b[i + 2]!;
      out[i + 2] = -t2;
      const t3 = a[i + 3]! * b[i + 3]!;
      out[i + 3] = -t3;
    }
  },
  "a * b; abs t": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * b[i]!;
      out[i] = Math.abs(t0);
      const t1 = a[i + 1]! * b[i + 1]!;
      out[i + 1] = Math.abs(t1);
      const t2 = a[i + 2]! * b[i + 2]!;
      out[i + 2] = Math.abs(t2);
      const t3 = a[i + 3]! * b[i + 3]!;
      out[i + 3] = Math.abs(t3);
    }
  },
  "a * k; t + c": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * k;
      out[i] = t0 + c[i]!;
      const t1 = a[i + 1]! * k;
      out[i + 1] = t1 + c[i + 1]!;
      const t2 = a[i + 2]! * k;
      out[i + 2] = t2 + c[i + 2]!;
      const t3 = a[i + 3]! * k;
      out[i + 3] = t3 + c[i + 3]!;
    }
  },
  "a * k; t + m": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * k;
      out[i] = t0 + m;
      const t1 = a[i + 1]! * k;
      out[i + 1] = t1 + m;
      const t2 = a[i + 2]! * k;
      out[i + 2] = t2 + m;
      const t3 = a[i + 3]! * k;
      out[i + 3] = t3 + m;
    }
  },
  "a * k; t - c": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * k;
      out[i] = t0 - c[i]!;
      const t1 = a[i + 1]! * k;
      out[i + 1] = t1 - c[i + 1]!;
      const t2 = a[i + 2]! * k;
      out[i + 2] = t2 - c[i + 2]!;
      const t3 = a[i + 3]! * k;
      out[i + 3] = t3 - c[i + 3]!;
    }
  },
  "a * k; c - t": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * k;
      out[i] = c[i]! - t0;
      const t1 = a[i + 1]! * k;
      out[i + 1] = c[i + 1]! - t1;
      const t2 = a[i + 2]! * k;
      out[i + 2] = c[i + 2]! - t2;
      const t3 = a[i + 3]! * k;
      out[i + 3] = c[i + 3]! - t3;
    }
  },
  "a * k; m - t": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * k;
      out[i] = m - t0;
      const t1 = a[i + 1]! * k;
      out[i + 1] = m - t1;
      const t2 = a[i + 2]! * k;
      out[i + 2] = m - t2;
      const t3 = a[i + 3]! * k;
      out[i + 3] = m - t3;
    }
  },
  "a * k; t * c": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * k;
      out[i] = t0 * c[i]!;
      const t1 = a[i + 1]! * k;
      out[i + 1] = t1 * c[i + 1]!;
      const t2 = a[i + 2]! * k;
      out[i + 2] = t2 * c[i + 2]!;
      const t3 = a[i + 3]! * k;
      out[i + 3] = t3 * c[i + 3]!;
    }
  },
  "a * k; t * m": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * k;
      out[i] = t0 * m;
      const t1 = a[i + 1]! * k;
      out[i + 1] = t1 * m;
      const t2 = a[i + 2]! * k;
      out[i + 2] = t2 * m;
      const t3 = a[i + 3]! * k;
      out[i + 3] = t3 * m;
    }
  },
  "a * k; t / c": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * k;
      const c0 = c[i]!;
      out[i] = t0 / c0 + (c0 - c0);
      const t1 = a[i + 1]! * k;
      const c1 = c[i + 1]!;
      out[i + 1] = t1 / c1 + (c1 - c1);
      const t2 = a[i + 2]! * k;
      const c2 = c[i + 2]!;
      out[i + 2] = t2 / c2 + (c2 - c2);
      const t3 = a[i + 3]! * k;
      const c3 = c[i + 3]!;
      out[i + 3] = t3 / c3 + (c3 - c3);
    }
  },
  "a * k; c / t": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * k;
      out[i] = c[i]! / t0 + (t0 - t0);
      const t1 = a[i + 1]! * k;
      out[i + 1] = c[i + 1]! / t1 + (t1 - t1);
      const t2 = a[i + 2]! * k;
      out[i + 2] = c[i + 2]! / t2 + (t2 - t2);
      const t3 = a[i + 3]! * k;
      out[i + 3] = c[i + 3]! / t3 + (t3 - t3);
    }
  },
  "a * k; t / m": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * k;
      out[i] = t0 / m;
      const t1 = a[i + 1]! * k;
      out[i + 1] = t1 / m;
      const t2 = a[i + 2]! * k;
      out[i + 2] = t2 / m;
      const t3 = a[i + 3]! * k;
      out[i + 3] = t3 / m;
    }
  },
  "a * k; m / t": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * k;
      out[i] = m / t0 + (t0 - t0);
      const t1 = a[i + 1]! * k;
      out[i + 1] = m / t1 + (t1 - t1);
      const t2 = a[i + 2]! * k;
      out[i + 2] = m / t2 + (t2 - t2);
      const t3 = a[i + 3]! * k;
      out[i + 3] = m / t3 + (t3 - t3);
    }
  },
  "a * k; sqrt t": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * k;
      out[i] = Math.sqrt(t0);
      const t1 = a[i + 1]! * k;
      out[i + 1] = Math.sqrt(t1);
      const t2 = a[i + 2]! * k;
      out[i + 2] = Math.sqrt(t2);
      const t3 = a[i + 3]! * k;
      out[i + 3] = Math.sqrt(t3);
    }
  },
  "a * k; square t": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * k;
      out[i] = t0 * t0;
      const t1 = a[i + 1]! * k;
      out[i + 1] = t1 * t1;
      const t2 = a[i + 2]! * k;
      out[i + 2] = t2 * t2;
      const t3 = a[i + 3]! * k;
      out[i + 3] = t3 * t3;
    }
  },
  "a * k; -t": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * k;
      out[i] = -t0;
      const t1 = a[i + 1]! * k;
      out[i + 1] = -t1;
      const t2 = a[i + 2]! * k;
      out[i + 2] = -t2;
      const t3 = a[i + 3]! * k;
      out[i + 3] = -t3;
    }
  },
  "a * k; abs t": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! * k;
      out[i] = Math.abs(t0);
      const t1 = a[i + 1]! * k;
      out[i + 1] = Math.abs(t1);
      const t2 = a[i + 2]! * k;
      out[i + 2] = Math.abs(t2);
      const t3 = a[i + 3]! * k;
      out[i + 3] = Math.abs(t3);
    }
  },
  "a / b; t + c": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const b0 = b[i]!;
      const t0 = a[i]! / b0 + (b0 - b0);
      out[i] = t0 + c[i]!;
      const b1 = b[i + 1]!;
      const t1 = a[i + 1]! / b1 + (b1 - b1);
      out[i + 1] = t1 + c[i + 1]!;
      const b2 = b[i + 2]!;
      const t2 = a[i + 2]! / b2 + (b2 - b2);
      out[i + 2] = t2 + c[i + 2]!;
      const b3 = b[i + 3]!;
      const t3 = a[i + 3]! / b3 + (b3 - b3);
      out[i + 3] = t3 + c[i + 3]!;
    }
  },
  "a / b; t + m": (n, out, a, b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const b0 = b[i]!;
      const t0 = a[i]! / b0 + (b0 - b0);
      out[i] = t0 + m;
      const b1 = b[i + 1]!;
      const t1 = a[i + 1]! / b1 + (b1 - b1);
      out[i + 1] = t1 + m;
      const b2 = b[i + 2]!;
      const t2 = a[i + 2]! / b2 + (b2 - b2);
      out[i + 2] = t2 + m;
      const b3 = b[i + 3]!;
      const t3 = a[i + 3]! / b3 + (b3 - b3);
      out[i + 3] = t3 + m;
    }
  },
  "a / b; t - c": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const b0 = b[i]!;
      const t0 = a[i]! / b0 + (b0 - b0);
      out[i] = t0 - c[i]!;
      const b1 = b[i + 1]!;
      const t1 = a[i + 1]! / b1 + (b1 - b1);
      out[i + 1] = t1 - c[i + 1]!;
      const b2 = b[i + 2]!;
      const t2 = a[i + 2]! / b2 + (b2 - b2);
      out[i + 2] = t2 - c[i + 2]!;
      const b3 = b[i + 3]!;
      const t3 = a[i + 3]! / b3 + (b3 - b3);
      out[i + 3] = t3 - c[i + 3]!;
    }
  },
  "a / b; c - t": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const b0 = b[i]!;
      const t0 = a[i]! / b0 + (b0 - b0);
      out[i] = c[i]! - t0;
      const b1 = b[i + 1]!;
      const t1 = a[i + 1]! / b1 + (b1 - b1);
      out[i + 1] = c[i + 1]! - t1;
      const b2 = b[i + 2]!;
      const t2 = a[i + 2]! / b2 + (b2 - b2);
      out[i + 2] = c[i + 2]! - t2;
      const b3 = b[i + 3]!;
      const t3 = a[i + 3]! / b3 + (b3 - b3);
      out[i + 3] = c[i + 3]! - t3;
    }
  },
  "a / b; m - t": (n, out, a, b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const b0 = b[i]!;
      const t0 = a[i]! / b0 + (b0 - b0);
      out[i] = m - t0;
      const b1 = b[i + 1]!;
      const t1 = a[i + 1]! / b1 + (b1 - b1);
      out[i + 1] = m - t1;
      const b2 = b[i + 2]!;
      const t2 = a[i + 2]! / b2 + (b2 - b2);
      out[i + 2] = m - t2;
      const b3 = b[i + 3]!;
      const t3 = a[i + 3]! / b3 + (b3 - b3);
      out[i + 3] = m - t3;
    }
  },
  "a / b; t * c": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const b0 = b[i]!;
      const t0 = a[i]! / b0 + (b0 - b0);
      out[i] = t0 * c[i]!;
      const b1 = b[i + 1]!;
      const t1 = a[i + 1]! / b1 + (b1 - b1);
      out[i + 1] = t1 * c[i + 1]!;
      const b2 = b[i + 2]!;
      const t2 = a[i + 2]! / b2 + (b2 - b2);
      out[i + 2] = t2 * c[i + 2]!;
      const b3 = b[i + 3]!;
      const t3 = a[i + 3]! / b3 + (b3 - b3);
      out[i + 3] = t3 * c[i + 3]!;
    }
  },
  "a / b; t * m": (n, out, a, b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const b0 = b[i]!;
      const t0 = a[i]! / b0 + (b0 - b0);
      out[i] = t0 * m;
      const b1 = b[i + 1]!;
      const t1 = a[i + 1]! / b1 + (b1 - b1);
      out[i + 1] = t1 * m;
      const b2 = b[i + 2]!;
      const t2 = a[i + 2]! / b2 + (b2 - b2);
      out[i + 2] = t2 * m;
      const b3 = b[i + 3]!;
      const t3 = a[i + 3]! / b3 + (b3 - b3);
      out[i + 3] = t3 * m;
    }
  },
  "a / b; t / c": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const b0 = b[i]!;
      const t0 = a[i]! / b0 + (b0 - b0);
      const c0 = c[i]!;
      out[i] = t0 / c0 + (c0 - c0);
      const b1 = b[i + 1]!;
      const t1 = a[i + 1]! / b1 + (b1 - b1);
      const c1 = c[i + 1]!;
      out[i + 1] = t1 / c1 + (c1 - c1);
      const b2 = b[i + 2]!;
      const t2 = a[i + 2]! / b2 + (b2 - b2);
      const c2 = c[i + 2]!;
      out[i + 2] = t2 / c2 + (c2 - c2);
      const b3 = b[i + 3]!;
      const t3 = a[i + 3]! / b3 + (b3 - b3);
      const c3 = c[i + 3]!;
      out[i + 3] = t3 / c3 + (c3 - c3);
    }
  },
  "a / b; c / t": (n, out, a, b, c) => {
    for (let i = 0; i < n; i += 4) {
      const b0 = b[i]!;
      const t0 = a[i]! / b0 + (b0 - b0);
      out[i] = c[i]! / t0 + (t0 - t0);
      const b1 = b[i + 1]!;
      const t1 = a[i + 1]! / b1 + (b1 - b1);
      out[i + 1] = c[i + 1]! / t1 + (t1 - t1);
      const b2 = b[i + 2]!;
      const t2 = a[i + 2]! / b2 + (b2 - b2);
      out[i + 2] = c[i + 2]! / t2 + (t2 - t2);
      const b3 = b[i + 3]!;
      const t3 = a[i + 3]! / b3 + (b3 - b3);
      out[i + 3] = c[i + 3]! / t3 + (t3 - t3);
    }
  },
  "a / b; t / m": (n, out, a, b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const b0 = b[i]!;
      const t0 = a[i]! / b0 + (b0 - b0);
      out[i] = t0 / m;
      const b1 = b[i + 1]!;
      const t1 = a[i + 1]! / b1 + (b1 - b1);
      out[i + 1] = t1 / m;
      const b2 = b[i + 2]!;
      const t2 = a[i + 2]! / b2 + (b2 - b2);
      out[i + 2] = t2 / m;
      const b3 = b[i + 3]!;
      const t3 = a[i + 3]! / b3 + (b3 - b3);
      out[i + 3] = t3 / m;
    }
  },
  "a / b; m / t": (n, out, a, b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const b0 = b[i]!;
      const t0 = a[i]! / b0 + (b0 - b0);
      out[i] = m / t0 + (t0 - t0);
      const b1 = b[i + 1]!;
      const t1 = a[i + 1]! / b1 + (b1 - b1);
      out[i + 1] = m / t1 + (t1 - t1);
      const b2 = b[i + 2]!;
      const t2 = a[i + 2]! / b2 + (b2 - b2);
      out[i + 2] = m / t2 + (t2 - t2);
      const b3 = b[i + 3]!;
      const t3 = a[i + 3]! / b3 + (b3 - b3);
      out[i + 3] = m / t3 + (t3 - t3);
    }
  },
  "a / b; sqrt t": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const b0 = b[i]!;
      const t0 = a[i]! / b0 + (b0 - b0);
      out[i] = Math.sqrt(t0);
      const b1 = b[i + 1]!;
      const t1 = a[i + 1]! / b1 + (b1 - b1);
      out[i + 1] = Math.sqrt(t1);
      const b2 = b[i + 2]!;
      const t2 = a[i + 2]! / b2 + (b2 - b2);
      out[i + 2] = Math.sqrt(t2);
      const b3 = b[i + 3]!;
      const t3 = a[i + 3]! / b3 + (b3 - b3);
      out[i + 3] = Math.sqrt(t3);
    }
  },
  "a / b; square t": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const b0 = b[i]!;
      const t0 = a[i]! / b0 + (b0 - b0);
      out[i] = t0 * t0;
      const b1 = b[i + 1]!;
      const t1 = a[i + 1]! / b1 + (b1 - b1);
      out[i + 1] = t1 * t1;
      const b2 = b[i + 2]!;
      const t2 = a[i + 2]! / b2 + (b2 - b2);
      out[i + 2] = t2 * t2;
      const b3 = b[i + 3]!;
      const t3 = a[i + 3]! / b3 + (b3 - b3);
      out[i + 3] = t3 * t3;
    }
  },
  "a / b; -t": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const b0 = b[i]!;
      const t0 = a[i]! / b0 + (b0 - b0);
      out[i] = -t0;
      const b1 = b[i + 1]!;
      const t1 = a[i + 1]! / b1 + (b1 - b1);
      out[i + 1] = -t1;
      const b2 = b[i + 2]!;
      const t2 = a[i + 2]! / b2 + (b2 - b2);
      out[i + 2] = -t2;
      const b3 = b[i + 3]!;
      const t3 = a[i + 3]! / b3 + (b3 - b3);
      out[i + 3] = -t3;
    }
  },
  "a / b; abs t": (n, out, a, b) => {
    for (let i = 0; i < n; i += 4) {
      const b0 = b[i]!;
      const t0 = a[i]! / b0 + (b0 - b0);
      out[i] = Math.abs(t0);
      const b1 = b[i + 1]!;
      const t1 = a[i + 1]! / b1 + (b1 - b1);
      out[i + 1] = Math.abs(t1);
      const b2 = b[i + 2]!;
      const t2 = a[i + 2]! / b2 + (b2 - b2);
      out[i + 2] = Math.abs(t2);
      const b3 = b[i + 3]!;
      const t3 = a[i + 3]! / b3 + (b3 - b3);
      out[i + 3] = Math.abs(t3);
    }
  },
  "a / k; t + c": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! / k;
      out[i] = t0 + c[i]!;
      const t1 = a[i + 1]! / k;
      out[i + 1] = t1 + c[i + 1]!;
      const t2 = a[i + 2]! / k;
      out[i + 2] = t2 + c[i + 2]!;
      const t3 = a[i + 3]! / k;
      out[i + 3] = t3 + c[i + 3]!;
    }
  },
  "a / k; t + m": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! / k;
      out[i] = t0 + m;
      const t1 = a[i + 1]! / k;
      out[i + 1] = t1 + m;
      const t2 = a[i + 2]! / k;
      out[i + 2] = t2 + m;
      const t3 = a[i + 3]! / k;
      out[i + 3] = t3 + m;
    }
  },
  "a / k; t - c": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! / k;
      out[i] = t0 - c[i]!;
      const t1 = a[i + 1]! / k;
      out[i + 1] = t1 - c[i + 1]!;
      const t2 = a[i + 2]! / k;
      out[i + 2] = t2 - c[i + 2]!;
      const t3 = a[i + 3]! / k;
      out[i + 3] = t3 - c[i + 3]!;
    }
  },
  "a / k; c - t": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! / k;
      out[i] = c[i]! - t0;
      const t1 = a[i + 1]! / k;
      out[i + 1] = c[i + 1]! - t1;
      const t2 = a[i + 2]! / k;
      out[i + 2] = c[i + 2]! - t2;
      const t3 = a[i + 3]! / k;
      out[i + 3] = c[i + 3]! - t3;
    }
  },
  "a / k; m - t": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! / k;
      out[i] = m - t0;
      const t1 = a[i + 1]! / k;
      out[i + 1] = m - t1;
      const t2 = a[i + 2]! / k;
      out[i + 2] = m - t2;
      const t3 = a[i + 3]! / k;
      out[i + 3] = m - t3;
    }
  },
  "a / k; t * c": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! / k;
      out[i] = t0 * c[i]!;
      const t1 = a[i + 1]! / k;
      out[i + 1] = t1 * c[i + 1]!;
      const t2 = a[i + 2]! / k;
      out[i + 2] = t2 * c[i + 2]!;
      const t3 = a[i + 3]! / k;
      out[i + 3] = t3 * c[i + 3]!;
    }
  },
  "a / k; t * m": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! / k;
      out[i] = t0 * m;
      const t1 = a[i + 1]! / k;
      out[i + 1] = t1 * m;
      const t2 = a[i + 2]! / k;
      out[i + 2] = t2 * m;
      const t3 = a[i + 3]! / k;
      out[i + 3] = t3 * m;
    }
  },
  "a / k; t / c": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! / k;
      const c0 = c[i]!;
      out[i] = t0 / c0 + (c0 - c0);
      const t1 = a[i + 1]! / k;
      const c1 = c[i + 1]!;
      out[i + 1] = t1 / c1 + (c1 - c1);
      const t2 = a[i + 2]! / k;
      const c2 = c[i + 2]!;
      out[i + 2] = t2 / c2 + (c2 - c2);
      const t3 = a[i + 3]! / k;
      const c3 = c[i + 3]!;
      out[i + 3] = t3 / c3 + (c3 - c3);
    }
  },
  "a / k; c / t": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! / k;
      out[i] = c[i]! / t0 + (t0 - t0);
      const t1 = a[i + 1]! / k;
      out[i + 1] = c[i + 1]! / t1 + (t1 - t1);
      const t2 = a[i + 2]! / k;
      out[i + 2] = c[i + 2]! / t2 + (t2 - t2);
      const t3 = a[i + 3]! / k;
      out[i + 3] = c[i + 3]! / t3 + (t3 - t3);
    }
  },
  "a / k; t / m": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! / k;
      out[i] = t0 / m;
      const t1 = a[i + 1]! / k;
      out[i + 1] = t1 / m;
      const t2 = a[i + 2]! / k;
      out[i + 2] = t2 / m;
      const t3 = a[i + 3]! / k;
      out[i + 3] = t3 / m;
    }
  },
  "a / k; m / t": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! / k;
      out[i] = m / t0 + (t0 - t0);
      const t1 = a[i + 1]! / k;
      out[i + 1] = m / t1 + (t1 - t1);
      const t2 = a[i + 2]! / k;
      out[i + 2] = m / t2 + (t2 - t2);
      const t3 = a[i + 3]! / k;
      out[i + 3] = m / t3 + (t3 - t3);
    }
  },
  "a / k; sqrt t": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! / k;
      out[i] = Math.sqrt(t0);
      const t1 = a[i + 1]! / k;
      out[i + 1] = Math.sqrt(t1);
      const t2 = a[i + 2]! / k;
      out[i + 2] = Math.sqrt(t2);
      const t3 = a[i + 3]! / k;
      out[i + 3] = Math.sqrt(t3);
    }
  },
  "a / k; square t": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! / k;
      out[i] = t0 * t0;
      const t1 = a[i + 1]! / k;
      out[i + 1] = t1 * t1;
      const t2 = a[i + 2]! / k;
      out[i + 2] = t2 * t2;
      const t3 = a[i + 3]! / k;
      out[i + 3] = t3 * t3;
    }
  },
  "a / k; -t": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! / k;
      out[i] = -t0;
      const t1 = a[i + 1]! / k;
      out[i + 1] = -t1;
      const t2 = a[i + 2]! / k;
      out[i + 2] = -t2;
      const t3 = a[i + 3]! / k;
      out[i + 3] = -t3;
    }
  },
  "a / k; abs t": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = a[i]! / k;
      out[i] = Math.abs(t0);
      const t1 = a[i + 1]! / k;
      out[i + 1] = Math.abs(t1);
      const t2 = a[i + 2]! / k;
      out[i + 2] = Math.abs(t2);
      const t3 = a[i + 3]! / k;
      out[i + 3] = Math.abs(t3);
    }
  },
  "k / a; t + c": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = k / a0 + (a0 - a0);
      out[i] = t0 + c[i]!;
      const a1 = a[i + 1]!;
      const t1 = k / a1 + (a1 - a1);
      out[i + 1] = t1 + c[i + 1]!;
      const a2 = a[i + 2]!;
      const t2 = k / a2 + (a2 - a2);
      out[i + 2] = t2 + c[i + 2]!;
      const a3 = a[i + 3]!;
      const t3 = k / a3 + (a3 - a3);
      out[i + 3] = t3 + c[i + 3]!;
    }
  },
  "k / a; t + m": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = k / a0 + (a0 - a0);
      out[i] = t0 + m;
      const a1 = a[i + 1]!;
      const t1 = k / a1 + (a1 - a1);
      out[i + 1] = t1 + m;
      const a2 = a[i + 2]!;
      const t2 = k / a2 + (a2 - a2);
      out[i + 2] = t2 + m;
      const a3 = a[i + 3]!;
      const t3 = k / a3 + (a3 - a3);
      out[i + 3] = t3 + m;
    }
  },
  "k / a; t - c": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = k / a0 + (a0 - a0);
      out[i] = t0 - c[i]!;
      const a1 = a[i + 1]!;
      const t1 = k / a1 + (a1 - a1);
      out[i + 1] = t1 - c[i + 1]!;
      const a2 = a[i + 2]!;
      const t2 = k / a2 + (a2 - a2);
      out[i + 2] = t2 - c[i + 2]!;
      const a3 = a[i + 3]!;
      const t3 = k / a3 + (a3 - a3);
      out[i + 3] = t3 - c[i + 3]!;
    }
  },
  "k / a; c - t": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = k / a0 + (a0 - a0);
      out[i] = c[i]! - t0;
      const a1 = a[i + 1]!;
      const t1 = k / a1 + (a1 - a1);
      out[i + 1] = c[i + 1]! - t1;
      const a2 = a[i + 2]!;
      const t2 = k / a2 + (a2 - a2);
      out[i + 2] = c[i + 2]! - t2;
      const a3 = a[i + 3]!;
      const t3 = k / a3 + (a3 - a3);
      out[i + 3] = c[i + 3]! - t3;
    }
  },
  "k / a; m - t": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = k / a0 + (a0 - a0);
      out[i] = m - t0;
      const a1 = a[i + 1]!;
      const t1 = k / a1 + (a1 - a1);
      out[i + 1] = m - t1;
      const a2 = a[i + 2]!;
      const t2 = k / a2 + (a2 - a2);
      out[i + 2] = m - t2;
      const a3 = a[i + 3]!;
      const t3 = k / a3 + (a3 - a3);
      out[i + 3] = m - t3;
    }
  },
  "k / a; t * c": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = k / a0 + (a0 - a0);
      out[i] = t0 * c[i]!;
      const a1 = a[i + 1]!;
      const t1 = k / a1 + (a1 - a1);
      out[i + 1] = t1 * c[i + 1]!;
      const a2 = a[i + 2]!;
      const t2 = k / a2 + (a2 - a2);
      out[i + 2] = t2 * c[i + 2]!;
      const a3 = a[i + 3]!;
      const t3 = k / a3 + (a3 - a3);
      out[i + 3] = t3 * c[i + 3]!;
    }
  },
  "k / a; t * m": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = k / a0 + (a0 - a0);
      out[i] = t0 * m;
      const a1 = a[i + 1]!;
      const t1 = k / a1 + (a1 - a1);
      out[i + 1] = t1 * m;
      const a2 = a[i + 2]!;
      const t2 = k / a2 + (a2 - a2);
      out[i + 2] = t2 * m;
      const a3 = a[i + 3]!;
      const t3 = k / a3 + (a3 - a3);
      out[i + 3] = t3 * m;
    }
  },
  "k / a; t / c": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = k / a0 + (a0 - a0);
      const c0 = c[i]!;
      out[i] = t0 / c0 + (c0 - c0);
      const a1 = a[i + 1]!;
      const t1 = k / a1 + (a1 - a1);
      const c1 = c[i + 1]!;
      out[i + 1] = t1 / c1 + (c1 - c1);
      const a2 = a[i + 2]!;
      const t2 = k / a2 + (a2 - a2);
      const c2 = c[i + 2]!;
      out[i + 2] = t2 / c2 + (c2 - c2);
      const a3 = a[i + 3]!;
      const t3 = k / a3 + (a3 - a3);
      const c3 = c[i + 3]!;
      out[i + 3] = t3 / c3 + (c3 - c3);
    }
  },
  "k / a; c / t": (n, out, a, _b, c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = k / a0 + (a0 - a0);
      out[i] = c[i]! / t0 + (t0 - t0);
      const a1 = a[i + 1]!;
      const t1 = k / a1 + (a1 - a1);
      out[i + 1] = c[i + 1]! / t1 + (t1 - t1);
      const a2 = a[i + 2]!;
      const t2 = k / a2 + (a2 - a2);
      out[i + 2] = c[i + 2]! / t2 + (t2 - t2);
      const a3 = a[i + 3]!;
      const t3 = k / a3 + (a3 - a3);
      out[i + 3] = c[i + 3]! / t3 + (t3 - t3);
    }
  },
  "k / a; t / m": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = k / a0 + (a0 - a0);
      out[i] = t0 / m;
      const a1 = a[i + 1]!;
      const t1 = k / a1 + (a1 - a1);
      out[i + 1] = t1 / m;
      const a2 = a[i + 2]!;
      const t2 = k / a2 + (a2 - a2);
      out[i + 2] = t2 / m;
      const a3 = a[i + 3]!;
      const t3 = k / a3 + (a3 - a3);
      out[i + 3] = t3 / m;
    }
  },
  "k / a; m / t": (n, out, a, _b, _c, k, m) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = k / a0 + (a0 - a0);
      out[i] = m / t0 + (t0 - t0);
      const a1 = a[i + 1]!;
      const t1 = k / a1 + (a1 - a1);
      out[i + 1] = m / t1 + (t1 - t1);
      const a2 = a[i + 2]!;
      const t2 = k / a2 + (a2 - a2);
      out[i + 2] = m / t2 + (t2 - t2);
      const a3 = a[i + 3]!;
      const t3 = k / a3 + (a3 - a3);
      out[i + 3] = m / t3 + (t3 - t3);
    }
  },
  "k / a; sqrt t": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = k / a0 + (a0 - a0);
      out[i] = Math.sqrt(t0);
      const a1 = a[i + 1]!;
      const t1 = k / a1 + (a1 - a1);
      out[i + 1] = Math.sqrt(t1);
      const a2 = a[i + 2]!;
      const t2 = k / a2 + (a2 - a2);
      out[i + 2] = Math.sqrt(t2);
      const a3 = a[i + 3]!;
      const t3 = k / a3 + (a3 - a3);
      out[i + 3] = Math.sqrt(t3);
    }
  },
  "k / a; square t": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = k / a0 + (a0 - a0);
      out[i] = t0 * t0;
      const a1 = a[i + 1]!;
      const t1 = k / a1 + (a1 - a1);
      out[i + 1] = t1 * t1;
      const a2 = a[i + 2]!;
      const t2 = k / a2 + (a2 - a2);
      out[i + 2] = t2 * t2;
      const a3 = a[i + 3]!;
      const t3 = k / a3 + (a3 - a3);
      out[i + 3] = t3 * t3;
    }
  },
  "k / a; -t": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = k / a0 + (a0 - a0);
      out[i] = -t0;
      const a1 = a[i + 1]!;
      const t1 = k / a1 + (a1 - a1);
      out[i + 1] = -t1;
      const a2 = a[i + 2]!;
      const t2 = k / a2 + (a2 - a2);
      out[i + 2] = -t2;
      const a3 = a[i + 3]!;
      const t3 = k / a3 + (a3 - a3);
      out[i + 3] = -t3;
    }
  },
  "k / a; abs t": (n, out, a, _b, _c, k) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = k / a0 + (a0 - a0);
      out[i] = Math.abs(t0);
      const a1 = a[i + 1]!;
      const t1 = k / a1 + (a1 - a1);
      out[i + 1] = Math.abs(t1);
      const a2 = a[i + 2]!;
      const t2 = k / a2 + (a2 - a2);
      out[i + 2] = Math.abs(t2);
      const a3 = a[i + 3]!;
      const t3 = k / a3 + (a3 - a3);
      out[i + 3] = Math.abs(t3);
    }
  },
  "sqrt a; t + c": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.sqrt(a[i]!);
      out[i] = t0 + c[i]!;
      const t1 = Math.sqrt(a[i + 1]!);
      out[i + 1] = t1 + c[i + 1]!;
      const t2 = Math.sqrt(a[i + 2]!);
      out[i + 2] = t2 + c[i + 2]!;
      const t3 = Math.sqrt(a[i + 3]!);
      out[i + 3] = t3 + c[i + 3]!;
    }
  },
  "sqrt a; t + m": (n, out, a, _b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.sqrt(a[i]!);
      out[i] = t0 + m;
      const t1 = Math.sqrt(a[i + 1]!);
      out[i + 1] = t1 + m;
      const t2 = Math.sqrt(a[i + 2]!);
      out[i + 2] = t2 + m;
      const t3 = Math.sqrt(a[i + 3]!);
      out[i + 3] = t3 + m;
    }
  },
  "sqrt a; t - c": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.sqrt(a[i]!);
      out[i] = t0 - c[i]!;
      const t1 = Math.sqrt(a[i + 1]!);
      out[i + 1] = t1 - c[i + 1]!;
      const t2 = Math.sqrt(a[i + 2]!);
      out[i + 2] = t2 - c[i + 2]!;
      const t3 = Math.sqrt(a[i + 3]!);
      out[i + 3] = t3 - c[i + 3]!;
    }
  },
  "sqrt a; c - t": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.sqrt(a[i]!);
      out[i] = c[i]! - t0;
      const t1 = Math.sqrt(a[i + 1]!);
      out[i + 1] = c[i + 1]! - t1;
      const t2 = Math.sqrt(a[i + 2]!);
      out[i + 2] = c[i + 2]! - t2;
      const t3 = Math.sqrt(a[i + 3]!);
      out[i + 3] = c[i + 3]! - t3;
    }
  },
  "sqrt a; m - t": (n, out, a, _b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.sqrt(a[i]!);
      out[i] = m - t0;
      const t1 = Math.sqrt(a[i + 1]!);
      out[i + 1] = m - t1;
      const t2 = Math.sqrt(a[i + 2]!);
      out[i + 2] = m - t2;
      const t3 = Math.sqrt(a[i + 3]!);
      out[i + 3] = m - t3;
    }
  },
  "sqrt a; t * c": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.sqrt(a[i]!);
      out[i] = t0 * c[i]!;
      const t1 = Math.sqrt(a[i + 1]!);
      out[i + 1] = t1 * c[i + 1]!;
      const t2 = Math.sqrt(a[i + 2]!);
      out[i + 2] = t2 * c[i + 2]!;
      const t3 = Math.sqrt(a[i + 3]!);
      out[i + 3] = t3 * c[i + 3]!;
    }
  },
  "sqrt a; t * m": (n, out, a, _b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.sqrt(a[i]!);
      out[i] = t0 * m;
      const t1 = Math.sqrt(a[i + 1]!);
      out[i + 1] = t1 * m;
      const t2 = Math.sqrt(a[i + 2]!);
      out[i + 2] = t2 * m;
      const t3 = Math.sqrt(a[i + 3]!);
      out[i + 3] = t3 * m;
    }
  },
  "sqrt a; t / c": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.sqrt(a[i]!);
      const c0 = c[i]!;
      out[i] = t0 / c0 + (c0 - c0);
      const t1 = Math.sqrt(a[i + 1]!);
      const c1 = c[i + 1]!;
      out[i + 1] = t1 / c1 + (c1 - c1);
      const t2 = Math.sqrt(a[i + 2]!);
      const c2 = c[i + 2]!;
      out[i + 2] = t2 / c2 + (c2 - c2);
      const t3 = Math.sqrt(a[i + 3]!);
      const c3 = c[i + 3]!;
      out[i + 3] = t3 / c3 + (c3 - c3);
    }
  },
  "sqrt a; c / t": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.sqrt(a[i]!);
      out[i] = c[i]! / t0 + (t0 - t0);
      const t1 = Math.sqrt(a[i + 1]!);
      out[i + 1] = c[i + 1]! / t1 + (t1 - t1);
      const t2 = Math.sqrt(a[i + 2]!);
      out[i + 2] = c[i + 2]! / t2 + (t2 - t2);
      const t3 = Math.sqrt(a[i + 3]!);
      out[i + 3] = c[i + 3]! / t3 + (t3 - t3);
    }
  },
  "sqrt a; t / m": (n, out, a, _b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.sqrt(a[i]!);
      out[i] = t0 / m;
      const t1 = Math.sqrt(a[i + 1]!);
      out[i + 1] = t1 / m;
      const t2 = Math.sqrt(a[i + 2]!);
      out[i + 2] = t2 / m;
      const t3 = Math.sqrt(a[i + 3]!);
      out[i + 3] = t3 / m;
    }
  },
  "sqrt a; m / t": (n, out, a, _b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.sqrt(a[i]!);
      out[i] = m / t0 + (t0 - t0);
      const t1 = Math.sqrt(a[i + 1]!);
      out[i + 1] = m / t1 + (t1 - t1);
      const t2 = Math.sqrt(a[i + 2]!);
      out[i + 2] = m / t2 + (t2 - t2);
      const t3 = Math.sqrt(a[i + 3]!);
      out[i + 3] = m / t3 + (t3 - t3);
    }
  },
  "sqrt a; sqrt t": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.sqrt(a[i]!);
      out[i] = Math.sqrt(t0);
      const t1 = Math.sqrt(a[i + 1]!);
      out[i + 1] = Math.sqrt(t1);
      const t2 = Math.sqrt(a[i + 2]!);
      out[i + 2] = Math.sqrt(t2);
      const t3 = Math.sqrt(a[i + 3]!);
      out[i + 3] = Math.sqrt(t3);
    }
  },
  "sqrt a; square t": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.sqrt(a[i]!);
      out[i] = t0 * t0;
      const t1 = Math.sqrt(a[i + 1]!);
      out[i + 1] = t1 * t1;
      const t2 = Math.sqrt(a[i + 2]!);
      out[i + 2] = t2 * t2;
      const t3 = Math.sqrt(a[i + 3]!);
      out[i + 3] = t3 * t3;
    }
  },
  "sqrt a; -t": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.sqrt(a[i]!);
      out[i] = -t0;
      const t1 = Math.sqrt(a[i + 1]!);
      out[i + 1] = -t1;
      const t2 = Math.sqrt(a[i + 2]!);
      out[i + 2] = -t2;
      const t3 = Math.sqrt(a[i + 3]!);
      out[i + 3] = -t3;
    }
  },
  "sqrt a; abs t": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.sqrt(a[i]!);
      out[i] = Math.abs(t0);
      const t1 = Math.sqrt(a[i + 1]!);
      out[i + 1] = Math.abs(t1);
      const t2 = Math.sqrt(a[i + 2]!);
      out[i + 2] = Math.abs(t2);
      const t3 = Math.sqrt(a[i + 3]!);
      out[i + 3] = Math.abs(t3);
    }
  },
  "square a; t + c": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = a0 * a0;
      out[i] = t0 + c[i]!;
      const a1 = a[i + 1]!;
      const t1 = a1 * a1;
      out[i + 1] = t1 + c[i + 1]!;
      const a2 = a[i + 2]!;
      const t2 = a2 * a2;
      out[i + 2] = t2 + c[i + 2]!;
      const a3 = a[i + 3]!;
      const t3 = a3 * a3;
      out[i + 3] = t3 + c[i + 3]!;
    }
  },
  "square a; t + m": (n, out, a, _b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = a0 * a0;
      out[i] = t0 + m;
      const a1 = a[i + 1]!;
      const t1 = a1 * a1;
      out[i + 1] = t1 + m;
      const a2 = a[i + 2]!;
      const t2 = a2 * a2;
      out[i + 2] = t2 + m;
      const a3 = a[i + 3]!;
      const t3 = a3 * a3;
      out[i + 3] = t3 + m;
    }
  },
  "square a; t - c": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = a0 * a0;
      out[i] = t0 - c[i]!;
      const a1 = a[i + 1]!;
      const t1 = a1 * a1;
      out[i + 1] = t1 - c[i + 1]!;
      const a2 = a[i + 2]!;
      const t2 = a2 * a2;
      out[i + 2] = t2 - c[i + 2]!;
      const a3 = a[i + 3]!;
      const t3 = a3 * a3;
      out[i + 3] = t3 - c[i + 3]!;
    }
  },
  "square a; c - t": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = a0 * a0;
      out[i] = c[i]! - t0;
      const a1 = a[i + 1]!;
      const t1 = a1 * a1;
      out[i + 1] = c[i + 1]! - t1;
      const a2 = a[i + 2]!;
      const t2 = a2 * a2;
      out[i + 2] = c[i + 2]! - t2;
      const a3 = a[i + 3]!;
      const t3 = a3 * a3;
      out[i + 3] = c[i + 3]! - t3;
    }
  },
  "square a; m - t": (n, out, a, _b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = a0 * a0;
      out[i] = m - t0;
      const a1 = a[i + 1]!;
      const t1 = a1 * a1;
      out[i + 1] = m - t1;
      const a2 = a[i + 2]!;
      const t2 = a2 * a2;
      out[i + 2] = m - t2;
      const a3 = a[i + 3]!;
      const t3 = a3 * a3;
      out[i + 3] = m - t3;
    }
  },
  "square a; t * c": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = a0 * a0;
      out[i] = t0 * c[i]!;
      const a1 = a[i + 1]!;
      const t1 = a1 * a1;
      out[i + 1] = t1 * c[i + 1]!;
      const a2 = a[i + 2]!;
      const t2 = a2 * a2;
      out[i + 2] = t2 * c[i + 2]!;
      const a3 = a[i + 3]!;
      const t3 = a3 * a3;
      out[i + 3] = t3 * c[i + 3]!;
    }
  },
  "square a; t * m": (n, out, a, _b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = a0 * a0;
      out[i] = t0 * m;
      const a1 = a[i + 1]!;
      const t1 = a1 * a1;
      out[i + 1] = t1 * m;
      const a2 = a[i + 2]!;
      const t2 = a2 * a2;
      out[i + 2] = t2 * m;
      const a3 = a[i + 3]!;
      const t3 = a3 * a3;
      out[i + 3] = t3 * m;
    }
  },
  "square a; t / c": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = a0 * a0;
      const c0 = c[i]!;
      out[i] = t0 / c0 + (c0 - c0);
      const a1 = a[i + 1]!;
      const t1 = a1 * a1;
      const c1 = c[i + 1]!;
      out[i + 1] = t1 / c1 + (c1 - c1);
      const a2 = a[i + 2]!;
      const t2 = a2 * a2;
      const c2 = c[i + 2]!;
      out[i + 2] = t2 / c2 + (c2 - c2);
      const a3 = a[i + 3]!;
      const t3 = a3 * a3;
      const c3 = c[i + 3]!;
      out[i + 3] = t3 / c3 + (c3 - c3);
    }
  },
  "square a; c / t": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = a0 * a0;
      out[i] = c[i]! / t0 + (t0 - t0);
      const a1 = a[i + 1]!;
      const t1 = a1 * a1;
      out[i + 1] = c[i + 1]! / t1 + (t1 - t1);
      const a2 = a[i + 2]!;
      const t2 = a2 * a2;
      out[i + 2] = c[i + 2]! / t2 + (t2 - t2);
      const a3 = a[i + 3]!;
      const t3 = a3 * a3;
      out[i + 3] = c[i + 3]! / t3 + (t3 - t3);
    }
  },
  "square a; t / m": (n, out, a, _b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = a0 * a0;
      out[i] = t0 / m;
      const a1 = a[i + 1]!;
      const t1 = a1 * a1;
      out[i + 1] = t1 / m;
      const a2 = a[i + 2]!;
      const t2 = a2 * a2;
      out[i + 2] = t2 / m;
      const a3 = a[i + 3]!;
      const t3 = a3 * a3;
      out[i + 3] = t3 / m;
    }
  },
  "square a; m / t": (n, out, a, _b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = a0 * a0;
      out[i] = m / t0 + (t0 - t0);
      const a1 = a[i + 1]!;
      const t1 = a1 * a1;
      out[i + 1] = m / t1 + (t1 - t1);
      const a2 = a[i + 2]!;
      const t2 = a2 * a2;
      out[i + 2] = m / t2 + (t2 - t2);
      const a3 = a[i + 3]!;
      const t3 = a3 * a3;
      out[i + 3] = m / t3 + (t3 - t3);
    }
  },
  "square a; sqrt t": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = a0 * a0;
      out[i] = Math.sqrt(t0);
      const a1 = a[i + 1]!;
      const t1 = a1 * a1;
      out[i + 1] = Math.sqrt(t1);
      const a2 = a[i + 2]!;
      const t2 = a2 * a2;
      out[i + 2] = Math.sqrt(t2);
      const a3 = a[i + 3]!;
      const t3 = a3 * a3;
      out[i + 3] = Math.sqrt(t3);
    }
  },
  "square a; square t": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = a0 * a0;
      out[i] = t0 * t0;
      const a1 = a[i + 1]!;
      const t1 = a1 * a1;
      out[i + 1] = t1 * t1;
      const a2 = a[i + 2]!;
      const t2 = a2 * a2;
      out[i + 2] = t2 * t2;
      const a3 = a[i + 3]!;
      const t3 = a3 * a3;
      out[i + 3] = t3 * t3;
    }
  },
  "square a; -t": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = a0 * a0;
      out[i] = -t0;
      const a1 = a[i + 1]!;
      const t1 = a1 * a1;
      out[i + 1] = -t1;
      const a2 = a[i + 2]!;
      const t2 = a2 * a2;
      out[i + 2] = -t2;
      const a3 = a[i + 3]!;
      const t3 = a3 * a3;
      out[i + 3] = -t3;
    }
  },
  "square a; abs t": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      const a0 = a[i]!;
      const t0 = a0 * a0;
      out[i] = Math.abs(t0);
      const a1 = a[i + 1]!;
      const t1 = a1 * a1;
      out[i + 1] = Math.abs(t1);
      const a2 = a[i + 2]!;
      const t2 = a2 * a2;
      out[i + 2] = Math.abs(t2);
      const a3 = a[i + 3]!;
      const t3 = a3 * a3;
      out[i + 3] = Math.abs(t3);
    }
  },
  "-a; t + c": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = -a[i]!;
      out[i] = t0 + c[i]!;
      const t1 = -a[i + 1]!;
      out[i + 1] = t1 + c[i + 1]!;
      const t2 = -a[i + 2]!;
      out[i + 2] = t2 + c[i + 2]!;
      const t3 = -a[i + 3]!;
      out[i + 3] = t3 + c[i + 3]!;
    }
  },
  "-a; t + m": (n, out, a, _b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = -a[i]!;
      out[i] = t0 + m;
      const t1 = -a[i + 1]!;
      out[i + 1] = t1 + m;
      const t2 = -a[i + 2]!;
      out[i + 2] = t2 + m;
      const t3 = -a[i + 3]!;
      out[i + 3] = t3 + m;
    }
  },
  "-a; t - c": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = -a[i]!;
      out[i] = t0 - c[i]!;
      const t1 = -a[i + 1]!;
      out[i + 1] = t1 - c[i + 1]!;
      const t2 = -a[i + 2]!;
      out[i + 2] = t2 - c[i + 2]!;
      const t3 = -a[i + 3]!;
      out[i + 3] = t3 - c[i + 3]!;
    }
  },
  "-a; c - t": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = -a[i]!;
      out[i] = c[i]! - t0;
      const t1 = -a[i + 1]!;
      out[i + 1] = c[i + 1]! - t1;
      const t2 = -a[i + 2]!;
      out[i + 2] = c[i + 2]! - t2;
      const t3 = -a[i + 3]!;
      out[i + 3] = c[i + 3]! - t3;
    }
  },
  "-a; m - t": (n, out, a, _b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = -a[i]!;
      out[i] = m - t0;
      const t1 = -a[i + 1]!;
      out[i + 1] = m - t1;
      const t2 = -a[i + 2]!;
      out[i + 2] = m - t2;
      const t3 = -a[i + 3]!;
      out[i + 3] = m - t3;
    }
  },
  "-a; t * c": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = -a[i]!;
      out[i] = t0 * c[i]!;
      const t1 = -a[i + 1]!;
      out[i + 1] = t1 * c[i + 1]!;
      const t2 = -a[i + 2]!;
      out[i + 2] = t2 * c[i + 2]!;
      const t3 = -a[i + 3]!;
      out[i + 3] = t3 * c[i + 3]!;
    }
  },
  "-a; t * m": (n, out, a, _b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = -a[i]!;
      out[i] = t0 * m;
      const t1 = -a[i + 1]!;
      out[i + 1] = t1 * m;
      const t2 = -a[i + 2]!;
      out[i + 2] = t2 * m;
      const t3 = -a[i + 3]!;
      out[i + 3] = t3 * m;
    }
  },
  "-a; t / c": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = -a[i]!;
      const c0 = c[i]!;
      out[i] = t0 / c0 + (c0 - c0);
      const t1 = -a[i + 1]!;
      const c1 = c[i + 1]!;
      out[i + 1] = t1 / c1 + (c1 - c1);
      const t2 = -a[i + 2]!;
      const c2 = c[i + 2]!;
      out[i + 2] = t2 / c2 + (c2 - c2);
      const t3 = -a[i + 3]!;
      const c3 = c[i + 3]!;
      out[i + 3] = t3 / c3 + (c3 - c3);
    }
  },
  "-a; c / t": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = -a[i]!;
      out[i] = c[i]! / t0 + (t0 - t0);
      const t1 = -a[i + 1]!;
      out[i + 1] = c[i + 1]! / t1 + (t1 - t1);
      const t2 = -a[i + 2]!;
      out[i + 2] = c[i + 2]! / t2 + (t2 - t2);
      const t3 = -a[i + 3]!;
      out[i + 3] = c[i + 3]! / t3 + (t3 - t3);
    }
  },
  "-a; t / m": (n, out, a, _b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = -a[i]!;
      out[i] = t0 / m;
      const t1 = -a[i + 1]!;
      out[i + 1] = t1 / m;
      const t2 = -a[i + 2]!;
      out[i + 2] = t2 / m;
      const t3 = -a[i + 3]!;
      out[i + 3] = t3 / m;
    }
  },
  "-a; m / t": (n, out, a, _b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = -a[i]!;
      out[i] = m / t0 + (t0 - t0);
      const t1 = -a[i + 1]!;
      out[i + 1] = m / t1 + (t1 - t1);
      const t2 = -a[i + 2]!;
      out[i + 2] = m / t2 + (t2 - t2);
      const t3 = -a[i + 3]!;
      out[i + 3] = m / t3 + (t3 - t3);
    }
  },
  "-a; sqrt t": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = -a[i]!;
      out[i] = Math.sqrt(t0);
      const t1 = -a[i + 1]!;
      out[i + 1] = Math.sqrt(t1);
      const t2 = -a[i + 2]!;
      out[i + 2] = Math.sqrt(t2);
      const t3 = -a[i + 3]!;
      out[i + 3] = Math.sqrt(t3);
    }
  },
  "-a; square t": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = -a[i]!;
      out[i] = t0 * t0;
      const t1 = -a[i + 1]!;
      out[i + 1] = t1 * t1;
      const t2 = -a[i + 2]!;
      out[i + 2] = t2 * t2;
      const t3 = -a[i + 3]!;
      out[i + 3] = t3 * t3;
    }
  },
  "-a; -t": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = -a[i]!;
      out[i] = -t0;
      const t1 = -a[i + 1]!;
      out[i + 1] = -t1;
      const t2 = -a[i + 2]!;
      out[i + 2] = -t2;
      const t3 = -a[i + 3]!;
      out[i + 3] = -t3;
    }
  },
  "-a; abs t": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = -a[i]!;
      out[i] = Math.abs(t0);
      const t1 = -a[i + 1]!;
      out[i + 1] = Math.abs(t1);
      const t2 = -a[i + 2]!;
      out[i + 2] = Math.abs(t2);
      const t3 = -a[i + 3]!;
      out[i + 3] = Math.abs(t3);
    }
  },
  "abs a; t + c": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.abs(a[i]!);
      out[i] = t0 + c[i]!;
      const t1 = Math.abs(a[i + 1]!);
      out[i + 1] = t1 + c[i + 1]!;
      const t2 = Math.abs(a[i + 2]!);
      out[i + 2] = t2 + c[i + 2]!;
      const t3 = Math.abs(a[i + 3]!);
      out[i + 3] = t3 + c[i + 3]!;
    }
  },
  "abs a; t + m": (n, out, a, _b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.abs(a[i]!);
      out[i] = t0 + m;
      const t1 = Math.abs(a[i + 1]!);
      out[i + 1] = t1 + m;
      const t2 = Math.abs(a[i + 2]!);
      out[i + 2] = t2 + m;
      const t3 = Math.abs(a[i + 3]!);
      out[i + 3] = t3 + m;
    }
  },
  "abs a; t - c": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.abs(a[i]!);
      out[i] = t0 - c[i]!;
      const t1 = Math.abs(a[i + 1]!);
      out[i + 1] = t1 - c[i + 1]!;
      const t2 = Math.abs(a[i + 2]!);
      out[i + 2] = t2 - c[i + 2]!;
      const t3 = Math.abs(a[i + 3]!);
      out[i + 3] = t3 - c[i + 3]!;
    }
  },
  "abs a; c - t": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.abs(a[i]!);
      out[i] = c[i]! - t0;
      const t1 = Math.abs(a[i + 1]!);
      out[i + 1] = c[i + 1]! - t1;
      const t2 = Math.abs(a[i + 2]!);
      out[i + 2] = c[i + 2]! - t2;
      const t3 = Math.abs(a[i + 3]!);
      out[i + 3] = c[i + 3]! - t3;
    }
  },
  "abs a; m - t": (n, out, a, _b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.abs(a[i]!);
      out[i] = m - t0;
      const t1 = Math.abs(a[i + 1]!);
      out[i + 1] = m - t1;
      const t2 = Math.abs(a[i + 2]!);
      out[i + 2] = m - t2;
      const t3 = Math.abs(a[i + 3]!);
      out[i + 3] = m - t3;
    }
  },
  "abs a; t * c": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.abs(a[i]!);
      out[i] = t0 * c[i]!;
      const t1 = Math.abs(a[i + 1]!);
      out[i + 1] = t1 * c[i + 1]!;
      const t2 = Math.abs(a[i + 2]!);
      out[i + 2] = t2 * c[i + 2]!;
      const t3 = Math.abs(a[i + 3]!);
      out[i + 3] = t3 * c[i + 3]!;
    }
  },
  "abs a; t * m": (n, out, a, _b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.abs(a[i]!);
      out[i] = t0 * m;
      const t1 = Math.abs(a[i + 1]!);
      out[i + 1] = t1 * m;
      const t2 = Math.abs(a[i + 2]!);
      out[i + 2] = t2 * m;
      const t3 = Math.abs(a[i + 3]!);
      out[i + 3] = t3 * m;
    }
  },
  "abs a; t / c": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.abs(a[i]!);
      const c0 = c[i]!;
      out[i] = t0 / c0 + (c0 - c0);
      const t1 = Math.abs(a[i + 1]!);
      const c1 = c[i + 1]!;
      out[i + 1] = t1 / c1 + (c1 - c1);
      const t2 = Math.abs(a[i + 2]!);
      const c2 = c[i + 2]!;
      out[i + 2] = t2 / c2 + (c2 - c2);
      const t3 = Math.abs(a[i + 3]!);
      const c3 = c[i + 3]!;
      out[i + 3] = t3 / c3 + (c3 - c3);
    }
  },
  "abs a; c / t": (n, out, a, _b, c) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.abs(a[i]!);
      out[i] = c[i]! / t0 + (t0 - t0);
      const t1 = Math.abs(a[i + 1]!);
      out[i + 1] = c[i + 1]! / t1 + (t1 - t1);
      const t2 = Math.abs(a[i + 2]!);
      out[i + 2] = c[i + 2]! / t2 + (t2 - t2);
      const t3 = Math.abs(a[i + 3]!);
      out[i + 3] = c[i + 3]! / t3 + (t3 - t3);
    }
  },
  "abs a; t / m": (n, out, a, _b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.abs(a[i]!);
      out[i] = t0 / m;
      const t1 = Math.abs(a[i + 1]!);
      out[i + 1] = t1 / m;
      const t2 = Math.abs(a[i + 2]!);
      out[i + 2] = t2 / m;
      const t3 = Math.abs(a[i + 3]!);
      out[i + 3] = t3 / m;
    }
  },
  "abs a; m / t": (n, out, a, _b, _c, _k, m) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.abs(a[i]!);
      out[i] = m / t0 + (t0 - t0);
      const t1 = Math.abs(a[i + 1]!);
      out[i + 1] = m / t1 + (t1 - t1);
      const t2 = Math.abs(a[i + 2]!);
      out[i + 2] = m / t2 + (t2 - t2);
      const t3 = Math.abs(a[i + 3]!);
      out[i + 3] = m / t3 + (t3 - t3);
    }
  },
  "abs a; sqrt t": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.abs(a[i]!);
      out[i] = Math.sqrt(t0);
      const t1 = Math.abs(a[i + 1]!);
      out[i + 1] = Math.sqrt(t1);
      const t2 = Math.abs(a[i + 2]!);
      out[i + 2] = Math.sqrt(t2);
      const t3 = Math.abs(a[i + 3]!);
      out[i + 3] = Math.sqrt(t3);
    }
  },
  "abs a; square t": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.abs(a[i]!);
      out[i] = t0 * t0;
      const t1 = Math.abs(a[i + 1]!);
      out[i + 1] = t1 * t1;
      const t2 = Math.abs(a[i + 2]!);
      out[i + 2] = t2 * t2;
      const t3 = Math.abs(a[i + 3]!);
      out[i + 3] = t3 * t3;
    }
  },
  "abs a; -t": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.abs(a[i]!);
      out[i] = -t0;
      const t1 = Math.abs(a[i + 1]!);
      out[i + 1] = -t1;
      const t2 = Math.abs(a[i + 2]!);
      out[i + 2] = -t2;
      const t3 = Math.abs(a[i + 3]!);
      out[i + 3] = -t3;
    }
  },
  "abs a; abs t": (n, out, a) => {
    for (let i = 0; i < n; i += 4) {
      const t0 = Math.abs(a[i]!);
      out[i] = Math.abs(t0);
      const t1 = Math.abs(a[i + 1]!);
      out[i + 1] = Math.abs(t1);
      const t2 = Math.abs(a[i + 2]!);
      out[i + 2] = Math.abs(t2);
      const t3 = Math.abs(a[i + 3]!);
      out[i + 3] = Math.abs(t3);
    }
  },
};
