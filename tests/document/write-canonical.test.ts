import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { Page } from "../../src/document/item.ts";
import { writeCanonical } from "../../src/document/write-canonical.ts";
import { isProblem } from "../../src/problem.ts";
import { examplePage, header, pageOf, readGood } from "./pages.ts";

const canonical = (text: string): string => {
  const written = writeCanonical(text);
  if (isProblem(written)) throw new Error(`${written.code}: ${written.what} ${written.where}`);
  return written;
};

const withoutPlaces = (page: Page) => ({
  ...page,
  items: page.items.map((item) => ({ ...item, place: undefined, rowsLine: undefined })),
});

describe("writeCanonical", () => {
  test("the example page keeps its comments, blank lines and typed values", () => {
    expect(canonical(examplePage)).toMatchInlineSnapshot(`
      "# torque card of the last overhaul
      splitline: 1 # format version
      title: Circulation pump 2, split line
      machine: Heat station A, circulation pump 2 # invented
      show: { torque: N.m, force: kN, length: mm, stress: MPa }
      page:
        - note: |
            Old card against *window*.

            Second paragraph.
        - given: netTorque
          says: Net torque at the nut
          value: 520 lbf.ft # kept as typed
          source: old torque card, lubricant not stated

        # from the trial
        - given: nutFactor
          says: Nut factor, six-bolt trial
          value: 0.14050
          spread: { plusMinus: 20 %, meaning: limits, applies: preload } # see the trial
          source: trial of this page
        - working: bolt
          by: metric-thread
          of: { designation: M24x3 }
        - working: tension
          by: preload-from-torque
          of: { torque: netTorque, nutFactor: nutFactor, diameter: bolt.majorDiameter }
        - working: shareOfProof # a formula of the author's own
          is: tension.preload / "211.5 kN"
        - check: proofShare
          says: Preload stays below the owner's share of proof
          that: shareOfProof
          atMost: 0.90
          source: owner
        - reading: holes
          columns: { position: tag, depth: tag, direction: tag, diameter: length }
          uncertainty: { diameter: 3 um, k: 2 }
          rows: |
            position,depth,direction,diameter/mm
            1,u1,along,25.011
            1,u1,across,
        - picture: joint-diagram
          of: { preload: tension.preload }
        - caution: C2
        - sign-off: { prepared: fitter A, checked: { who: fitter B, date: "2026-11-25" } }
      "
    `);
  });

  test("keys stand in the order of the schema, one field a line", () => {
    const text = `page:\n  - { value: 12.0000 mm, says: x, given: a }\n  - source: owner\n    atMost: 0.90\n    that: a\n    check: c\ntitle: t\nsplitline: 1\n`;
    expect(canonical(text)).toBe(
      `splitline: 1\ntitle: t\npage:\n  - given: a\n    says: x\n    value: 12.0000 mm\n  - check: c\n    that: a\n    atMost: 0.90\n    source: owner\n`,
    );
  });

  test("fields of spread, waiver and sign-off stand in order too; names the author chose keep theirs", () => {
    const text = `${header}  - given: a\n    value: 1 mm\n    spread: { applies: p, meaning: limits, plusMinus: 3 um }\n  - working: w\n    of: { b: a, a: b }\n    by: m\n`;
    expect(canonical(text)).toBe(
      `${header}  - given: a\n    value: 1 mm\n    spread: { plusMinus: 3 um, meaning: limits, applies: p }\n  - working: w\n    by: m\n    of: { b: a, a: b }\n`,
    );
  });

  test.each(["12.0000", "0.14050", "-0.50", "+5", "12.0000 mm", "0.0", "100000000000000"])(
    "the typed value %s is written as typed",
    (typed) => {
      expect(canonical(pageOf("given: a", `value: ${typed}`))).toBe(pageOf("given: a", `value: ${typed}`));
    },
  );

  test.each(["no", "on", "1:30", "2026-11-25"])("%s is put in quotes for older readers", (typed) => {
    expect(canonical(pageOf("given: a", `value: ${typed}`))).toBe(pageOf("given: a", `value: "${typed}"`));
  });

  test("line ends become LF, the byte order mark goes, the last line ends", () => {
    const text = `\uFEFF${examplePage.trimEnd().replaceAll("\n", "\r\n")}`;
    expect(canonical(text)).toBe(canonical(examplePage));
    expect(canonical(text).endsWith("}\n")).toBe(true);
  });

  test("5000 rows come back byte for byte", () => {
    const rows = Array.from(
      { length: 5000 },
      (_, i) => `      ${i},u1,along,25.${String(i % 1000).padStart(3, "0")}\n`,
    ).join("");
    const text = `${header}  - reading: r\n    columns: { position: tag, depth: tag, direction: tag, diameter: length }\n    rows: |\n      position,depth,direction,diameter/mm\n${rows}`;
    expect(canonical(text)).toBe(text);
  });

  test("a page with a problem is not written", () => {
    expect(writeCanonical(pageOf("given: a"))).toMatchObject({ code: "missing-key" });
  });

  test("on any page: the content is the same, and writing it again changes nothing", () => {
    fc.assert(
      fc.property(anyPage, (text) => {
        const once = canonical(text);
        expect(withoutPlaces(readGood(once))).toEqual(withoutPlaces(readGood(text)));
        expect(canonical(once)).toBe(once);
        const comments = (all: string) => [...all.matchAll(/# c\d+/g)].map(([found]) => found).sort();
        expect(comments(once)).toEqual(comments(text));
      }),
    );
  });
});

/** Pages with fields in any order, comments and blank lines between and behind them. */
const comment = fc.constantFrom("", "", " # c1", "    # c2");
const between = fc.constantFrom("", "", "", "\n", "    # c3\n", "\n    # c4\n", "  # c5\n\n");
const typed = fc.oneof(
  fc.constantFrom(
    "12.0000 mm",
    "0.1450",
    "no",
    "'a: b'",
    '"x # y"',
    "520 lbf.ft",
    "+5",
    "|\n      two\n      lines",
    ">-\n      folded\n\n      text",
  ),
  fc.double({ min: 0.001, max: 1000, noNaN: true }).map((n) => n.toFixed(4)),
);
const item = fc
  .record({
    value: typed,
    says: fc.constantFrom("x", "'it''s'", "says # c6"),
    note: fc.constantFrom("one", "|\n      a\n      b"),
    spread: fc.constantFrom("{ plusMinus: 3 um }", "\n      upper: 2.0\n      # c7\n      lower: 1.0"),
    comments: fc.array(comment, { minLength: 5, maxLength: 5 }),
    gaps: fc.array(between, { minLength: 5, maxLength: 5 }),
    order: fc.shuffledSubarray(["given", "value", "says", "note", "spread"], { minLength: 5 }),
  })
  .map(({ comments, gaps, order, ...fields }) => (index: number) => {
    const words: Record<string, string> = { given: `g${index}`, ...fields };
    const lines = order.map((key, i) => {
      const value = words[key] ?? "";
      const behind = value.includes("\n") || value.includes("#") ? "" : (comments[i] ?? "");
      return `${i === 0 ? "  - " : `${gaps[i]}    `}${key}:${value.startsWith("\n") ? "" : " "}${value}${behind}\n`;
    });
    return `${gaps[0]}${lines.join("")}`;
  });
const anyPage = fc
  .array(item, { minLength: 1, maxLength: 4 })
  .map((items) => `# c8\n${header}${items.map((write, i) => write(i)).join("")}`);
