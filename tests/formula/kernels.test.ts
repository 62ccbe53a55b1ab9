import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { fusedKernels, kernels } from "../../src/formula/kernels.ts";

const path = (name: string): string => fileURLToPath(new URL(`../../src/formula/${name}`, import.meta.url));

test("kernels.ts is what kernels.generate.mjs writes today", () => {
  const fresh = execFileSync(process.execPath, [path("kernels.generate.mjs")], { encoding: "utf8" });
  expect(readFileSync(path("kernels.ts"), "utf8")).toBe(fresh);
});

/** a, b, c and t by name, as the key of a kernel spells them. */
function spelled(key: string, at: Record<string, number>): number {
  const value = (name: string): number => at[name] ?? Number.NaN;
  const call = /^(-|sqrt |square |abs )([at])$/.exec(key);
  if (call) {
    const x = value(call[2] ?? "");
    return call[1] === "-"
      ? -x
      : call[1] === "sqrt "
        ? Math.sqrt(x)
        : call[1] === "abs "
          ? Math.abs(x)
          : x * x;
  }
  const [x = "", sign, y = ""] = key.split(" ");
  const [left, right] = [value(x), value(y)];
  return sign === "+"
    ? left + right
    : sign === "-"
      ? left - right
      : sign === "*"
        ? left * right
        : left / right;
}

test("every fused kernel does its first operation, then its second", () => {
  const keys = Object.keys(fusedKernels);
  expect(keys.length).toBe(13 * 15);
  const column = (...values: number[]): Float64Array => Float64Array.from(values);
  const [a, b, c] = [column(2, 3, 5, 7, 0), column(1.5, -4, 0.25, 9, 0), column(11, 0.5, -3, 2, 0)];
  const [k, m] = [1.25, -0.75];
  for (const key of keys) {
    const [first = "", second = ""] = key.split("; ");
    const out = new Float64Array(5);
    fusedKernels[key]?.(4, out, a, b, c, k, m);
    for (let i = 0; i < 4; i++) {
      const at = { a: a[i] ?? 0, b: b[i] ?? 0, c: c[i] ?? 0, k, m };
      const want = spelled(second, { ...at, t: spelled(first, at) });
      if (Number.isFinite(want)) expect(out[i], `${key} at ${i}`).toBe(want);
      else expect(Number.isFinite(out[i])).toBe(false);
    }
    expect(out[4], "past the end").toBe(0);
  }
});

test("every kernel may write over any of its operands", () => {
  for (const [key, kernel] of Object.entries({ ...kernels, ...fusedKernels })) {
    const operands = (): Float64Array[] =>
      [2, 3, 5].map((start) => Float64Array.from([start, 0.5, -1, start / 7]));
    const [a = new Float64Array(4), b = a, c = a] = operands();
    const want = new Float64Array(4);
    kernel(4, want, a, b, c, 1.5, -2);
    for (const which of [0, 1, 2]) {
      const own = operands();
      const out = own[which];
      if (out) kernel(4, out, own[0] ?? a, own[1] ?? b, own[2] ?? c, 1.5, -2);
      expect(out, key).toEqual(want);
    }
  }
});
