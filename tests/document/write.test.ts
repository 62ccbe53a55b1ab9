import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { writeSpread, writeValue } from "../../src/document/write.ts";
import { isProblem, type Problem } from "../../src/problem.ts";
import { examplePage, header, onlyItem, pageOf, readGood } from "./pages.ts";

const done = (written: string | Problem): string => {
  if (isProblem(written)) throw new Error(`${written.code}: ${written.what}`);
  return written;
};

const valueIn = (text: string, name: string) => {
  const found = readGood(text).items.find((item) => item.kind === "given" && item.name === name);
  return found?.kind === "given" ? found.value : undefined;
};

describe("writeValue", () => {
  test("changes the value and not one other byte", () => {
    expect(done(writeValue(examplePage, "netTorque", "500 N.m"))).toBe(
      examplePage.replace("520 lbf.ft", "500 N.m"),
    );
    expect(done(writeValue(examplePage, "nutFactor", "0.15"))).toBe(examplePage.replace("0.14050", "0.15"));
  });

  test("writing the same value gives the same bytes", () => {
    expect(writeValue(examplePage, "nutFactor", "0.14050")).toBe(examplePage);
  });

  test("CRLF and a byte order mark stay", () => {
    const text = `\uFEFF${examplePage.replaceAll("\n", "\r\n")}`;
    expect(done(writeValue(text, "netTorque", "500 N.m"))).toBe(text.replace("520 lbf.ft", "500 N.m"));
  });

  test.each([
    ["'12 mm'", "5'-6 1/2\" ", "'5''-6 1/2\" '"],
    ['"12 mm"', "13 mm", '"13 mm"'],
    ["12 mm", "no", '"no"'],
    ["12 mm", "2026-11-25", '"2026-11-25"'],
    ["12 mm", "1:30", '"1:30"'],
    ["12 mm", "007", '"007"'],
    ["12 mm", "1e3", '"1e3"'],
    ["12 mm", "", '""'],
    ["12 mm", "a: b", '"a: b"'],
    ["12 mm", "12 mm # new", '"12 mm # new"'],
    ["12 mm", "@20", '"@20"'],
    ["12 mm", "12.0000", "12.0000"],
    ["12.0000", "12.5 mm", "12.5 mm"],
    ["12 mm", "1/4", "1/4"],
    ["12 mm", "25 \u00B5m", "25 \u00B5m"],
  ])("%s set to %j is written as %s", (before, value, after) => {
    expect(done(writeValue(pageOf("given: a", `value: ${before} # why`), "a", value))).toBe(
      pageOf("given: a", `value: ${after} # why`),
    );
  });

  test("a value between braces stays between braces", () => {
    const text = `${header}  - { given: a, value: 3 mm, says: x }\n`;
    expect(done(writeValue(text, "a", "4 mm"))).toBe(text.replace("3 mm", "4 mm"));
    expect(valueIn(done(writeValue(text, "a", "[4, 5}")), "a")).toBe("[4, 5}");
  });

  test("a value in a block text becomes one line and the next field stays", () => {
    const text = pageOf("given: a", "value: >", "  12 mm", "says: x");
    expect(onlyItem(done(writeValue(text, "a", "13 mm")))).toMatchObject({ value: "13 mm", says: "x" });
  });

  test("any text typed is read back as typed, and the rest of the page reads as before", () => {
    fc.assert(
      fc.property(
        fc.string({ unit: "grapheme", maxLength: 60 }),
        fc.constantFrom("12 mm", "'x'", '"x"', "12.0000"),
        (value, before) => {
          const text = pageOf("given: a", `value: ${before}   # why`, "says: y");
          const written = writeValue(text, "a", value);
          // Characters that no page may hold are refused, the file is not touched.
          if (isProblem(written)) return written.code === "odd-character";
          return (
            onlyItem(written).kind === "given" &&
            valueIn(written, "a") === value &&
            written.endsWith("   # why\n    says: y\n")
          );
        },
      ),
    );
  });

  test("a name that is no given is answered with the nearest given", () => {
    expect(writeValue(examplePage, "netTorqe", "1 N.m")).toMatchObject({
      code: "no-such-given",
      suggestions: ["netTorque"],
    });
    expect(writeValue(examplePage, "tension", "1 N.m")).toMatchObject({ code: "no-such-given" });
  });

  test("a text outside the choices of a given is refused", () => {
    expect(writeValue(pageOf("given: a", "value: 6g", "choices: [6g, 6H]"), "a", "6x")).toMatchObject({
      code: "not-a-choice",
    });
  });

  test("a page with a problem is not changed", () => {
    expect(writeValue("a: [", "a", "1")).toMatchObject({ code: "yaml" });
  });
});

describe("writeSpread", () => {
  test("a spread of the same form changes its values only", () => {
    const written = done(
      writeSpread(examplePage, "nutFactor", {
        form: "plusMinus",
        plusMinus: "19.1 %",
        meaning: "limits",
        applies: "preload",
      }),
    );
    expect(written).toBe(examplePage.replace("20 %", "19.1 %"));
  });

  test("a spread of another form takes the place of the old one", () => {
    const written = done(
      writeSpread(examplePage, "nutFactor", { form: "limits", lower: "0.12", upper: "0.16" }),
    );
    expect(written).toBe(
      examplePage.replace(
        "{ plusMinus: 20 %, meaning: limits, applies: preload }",
        "{ lower: 0.12, upper: 0.16 }",
      ),
    );
  });

  test("a first spread is one new line after the value", () => {
    const written = done(
      writeSpread(examplePage, "netTorque", {
        form: "plusMinus",
        plusMinus: "5 %",
        meaning: "expanded",
        k: "2",
      }),
    );
    expect(written).toBe(
      examplePage.replace(
        "# kept as typed\n",
        "# kept as typed\n    spread: { plusMinus: 5 %, meaning: expanded, k: 2 }\n",
      ),
    );
  });

  test("a first spread fits between braces, at the end of the file, and in CRLF", () => {
    const resolution = { form: "resolution", resolution: "1 N.m" } as const;
    expect(done(writeSpread(`${header}  - { given: a, value: 3 N.m }\n`, "a", resolution))).toBe(
      `${header}  - { given: a, value: 3 N.m, spread: { resolution: 1 N.m } }\n`,
    );
    expect(done(writeSpread(`${header}  - given: a\n    value: 3 N.m`, "a", resolution))).toBe(
      `${header}  - given: a\n    value: 3 N.m\n    spread: { resolution: 1 N.m }`,
    );
    const crlf = pageOf("given: a", "value: 3 N.m", "says: x").replaceAll("\n", "\r\n");
    expect(done(writeSpread(crlf, "a", resolution))).toBe(
      pageOf("given: a", "value: 3 N.m", "spread: { resolution: 1 N.m }", "says: x").replaceAll("\n", "\r\n"),
    );
  });

  test("comments between the fields of a spread are never lost", () => {
    const text = pageOf(
      "given: a",
      "value: 3 mm",
      "spread:",
      "  plusMinus: 3 um # gauge",
      "  meaning: limits",
    );
    expect(writeSpread(text, "a", { form: "resolution", resolution: "1 um" })).toMatchObject({
      code: "comment-in-the-way",
    });
    expect(done(writeSpread(text, "a", { form: "plusMinus", plusMinus: "2 um", meaning: "limits" }))).toBe(
      text.replace("3 um", "2 um"),
    );
  });
});
