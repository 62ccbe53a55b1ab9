// Whatever a public function is given, it answers; it never throws.
import { readFileSync } from "node:fs";
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

/** "export { a, type B } from './c.ts'" of the front door, as the file each name is declared in. */
function declaredIn(): readonly (readonly [name: string, file: string])[] {
  const door = readFileSync(new URL("../src/index.ts", import.meta.url), "utf8");
  return [...door.matchAll(/export (?:type )?\{([^}]*)\} from "\.\/([^"]+)"/g)].flatMap(
    ([, names = "", file = ""]) =>
      names
        .split(",")
        .map((name) => name.replace(/^\s*type\s/, "").trim())
        .filter((name) => name !== "")
        .map((name) => [name, file] as const),
  );
}

/** The words before the declaration of a name; where the file hands it on, those of the file it comes from. */
function docOf(name: string, file: string): string | undefined {
  const at = new URL(`../src/${file}`, import.meta.url);
  const code = readFileSync(at, "utf8");
  const found = new RegExp(
    String.raw`(?:/\*\*((?:(?!\*/)[\s\S])*)\*/\n)?export (?:const|function|class|interface|type) ${name}\b`,
  ).exec(code);
  if (found) return found[1]?.trim();
  const from = new RegExp(String.raw`export (?:type )?\{[^}]*\b${name}\b[^}]*\} from "\./([^"]+)"`).exec(
    code,
  )?.[1];
  return from === undefined ? undefined : docOf(name, file.replace(/[^/]*$/, from));
}

test("every public name says what it is", () => {
  const names = declaredIn();
  expect(names.length).toBeGreaterThan(40);
  expect(names.filter(([name, file]) => (docOf(name, file) ?? "").length < 15).map(([name]) => name)).toEqual(
    [],
  );
});

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
