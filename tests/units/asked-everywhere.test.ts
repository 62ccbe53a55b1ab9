// What has to be asked once in a field that can ask is a question everywhere else too.
import { describe, expect, test } from "vitest";
import { isProblem, sentence } from "../../src/problem.ts";
import type { Kind } from "../../src/units/kind.ts";
import { quantity } from "../../src/units/quantity.ts";
import { scan } from "../../src/units/scan.ts";
import { answered } from "./helpers.ts";

const asked: readonly (readonly [text: string, kind: Kind | undefined, plain: string])[] = [
  ["24,5 mm", "length", "24.5 mm"],
  ["0,14", "ratio", "0.14"],
  ["5 tenths", "length", "0.0005 in"],
  ["32 barg", "pressure", "32 bar"],
  ["50 kg.m", "torque", "50 kgf.m"],
  ["12,5 ± 0,1 mm", "length", "12.5 mm ± 0.1 mm"],
];

describe("a reading that has to be confirmed", () => {
  test.each(asked)("%s is kept with its question by the scanner", (text, kind) => {
    const found = scan(text, kind);
    expect(found.outcome).toBe("warn");
    expect(found.quantity).toBeDefined();
  });
  test.each(asked)("%s as %s is a question for a caller that cannot ask: write %s", (text, kind, plain) => {
    const read = quantity(text, kind);
    if (!isProblem(read)) throw new Error("taken unasked");
    expect(read.code).toBe("confirm-reading");
    expect(read.suggestions).toEqual([plain]);
    expect(sentence(read)).toContain(`be written ${plain}`);
    expect(answered(quantity(plain, kind)).exact).toEqual(
      answered(quantity(text, kind, { confirmed: true })).exact,
    );
  });
});
