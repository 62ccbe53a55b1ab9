// Whatever a public function is given, it answers; it never throws.
import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import * as library from "../src/index.ts";

/** Called as from JavaScript, where no type keeps the arguments right. */
const call = (f: object, ...given: readonly unknown[]): unknown =>
  typeof f === "function" ? Reflect.apply(f, undefined, given) : undefined;
const functions = Object.entries(library).filter(
  ([name, value]) => typeof value === "function" && name !== "Problem",
);
const anything = fc.oneof(
  fc.anything({
    withBigInt: true,
    withDate: true,
    withMap: true,
    withNullPrototype: true,
    withTypedArray: true,
  }),
  fc.constantFrom(
    "1 N.m",
    "length",
    "a + b",
    Symbol("x"),
    () => 1,
    library.unit("mm"),
    library.quantity("1 mm"),
  ),
);

describe("a public function", () => {
  test.each(functions)("%s never throws", (_, f) => {
    fc.assert(
      fc.property(fc.array(anything, { maxLength: 4 }), (given) => {
        call(f, ...given);
      }),
      { endOnFailure: true },
    );
  });

  test("says which argument is wrong and what it has to be", () => {
    const said = (p: unknown): string => (library.isProblem(p) ? library.sentence(p) : "");
    expect(said(call(library.convert, "1 N.m"))).toBe("convert, argument 2: got nothing, must be a text");
    expect(said(call(library.convert, 7, "mm"))).toBe(
      "convert, argument 1: got 7, must be a quantity or its text",
    );
  });

  test("converts a text as it converts a quantity", () => {
    const inch = library.convert("25.4 mm", "in");
    if (library.isProblem(inch)) throw new Error(library.sentence(inch));
    expect(inch.value).toBe(1);
  });
});
