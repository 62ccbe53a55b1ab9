import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { boltStiffness } from "../../../src/methods/stiffness/bolt-stiffness.ts";
import { goodFor } from "../good-inputs.ts";
import {
  between,
  expectClose,
  expectHouseWording,
  expectPrinted,
  of,
  refusal,
  si,
  testLimits,
} from "../helpers.ts";
import { type Fraction, fraction, over, plus, times, toDouble } from "./exact.ts";

const good = goodFor("bolt-stiffness");
const Mlbf = 4.4482216152605e6 / 0.0254;

describe("hand calculation", () => {
  test("the 5/8-11 bolt of Shigley 9th ed. Example 8-4 has 5.21 Mlbf/in", () => {
    // kb = Ad At E/(Ad lt + At ld), Ad = π/4 · 0.625², At = 0.226 in², ld = lt = 0.75 in, E = 30 Mpsi.
    const found = boltStiffness.solve({
      segments: [
        { length: "0.75 in", diameter: "0.625 in" },
        { length: "0.75 in", area: "0.226 in2" },
      ],
      modulus: "30e6 psi",
    });
    const Ad = (Math.PI / 4) * 0.625 ** 2;
    expectClose(si(found, "stiffness"), ((Ad * 0.226 * 30) / (Ad * 0.75 + 0.226 * 0.75)) * Mlbf);
    expectPrinted(si(found, "stiffness"), "5.21", Mlbf);
  });

  test("100 mm of 200 mm² in 200 GPa is 400 kN/mm", () => {
    // A E / l = 200e-6 · 200e9 / 0.1 = 4e8 N/m.
    expectClose(
      si(
        boltStiffness.solve({ segments: [{ length: "100 mm", area: "200 mm2" }], modulus: "200 GPa" }),
        "stiffness",
      ),
      4e8,
    );
  });
});

// Lengths in µm and areas in mm² as whole numbers, modulus in MPa: all sums below are exact.
const whole = (min: number, max: number) => fc.integer({ min, max });
const bolt = fc.record({
  segments: fc.array(fc.record({ length: whole(1, 500_000), area: whole(1, 5000) }), {
    minLength: 1,
    maxLength: 8,
  }),
  modulus: whole(50_000, 250_000),
});
type Bolt = { segments: { length: number; area: number }[]; modulus: number };

const solve = ({ segments, modulus }: Bolt) =>
  boltStiffness.solve({
    segments: segments.map(({ length, area }) => ({ length: `${length} um`, area: `${area} mm2` })),
    modulus: `${modulus} MPa`,
  });

/** Springs in series, as exact fractions: 1/k = Σ l/(A E). */
function exactStiffness({ segments, modulus }: Bolt): number {
  const E = times(fraction(modulus), fraction(1_000_000));
  const compliance = segments.reduce<Fraction>((sum, { length, area }) => {
    const l = fraction(length, 1_000_000);
    const A = fraction(area, 1_000_000);
    return plus(sum, over(l, times(A, E)));
  }, fraction(0));
  return toDouble(over(fraction(1), compliance));
}

describe("second implementation", () => {
  test("equals the sum over segments in exact fractions to 1e-14", () => {
    fc.assert(fc.property(bolt, (b) => expectClose(si(solve(b), "stiffness"), exactStiffness(b), 1e-14)));
  });
});

describe("laws", () => {
  test("the order of segments does not matter", () => {
    fc.assert(
      fc.property(bolt, (b) =>
        expectClose(
          si(solve(b), "stiffness"),
          si(solve({ ...b, segments: b.segments.toReversed() }), "stiffness"),
          1e-14,
        ),
      ),
    );
  });

  test("one segment split in two is the same bolt", () => {
    fc.assert(
      fc.property(bolt, (b) => {
        const halves = b.segments.flatMap(({ length, area }) => [
          { length, area },
          { length, area },
        ]);
        const doubled = b.segments.map(({ length, area }) => ({ length: 2 * length, area }));
        expectClose(
          si(solve({ ...b, segments: halves }), "stiffness"),
          si(solve({ ...b, segments: doubled }), "stiffness"),
          1e-13,
        );
      }),
    );
  });

  test("is softer than its softest segment and softer with every segment added", () => {
    fc.assert(
      fc.property(bolt, (b) => {
        const whole = si(solve(b), "stiffness");
        for (const segment of b.segments)
          expect(whole).toBeLessThanOrEqual(
            si(solve({ ...b, segments: [segment] }), "stiffness") * (1 + 1e-14),
          );
        expect(
          si(solve({ ...b, segments: [...b.segments, { length: 100, area: 100 }] }), "stiffness"),
        ).toBeLessThan(whole);
      }),
    );
  });

  test("a diameter and its area are the same segment", () => {
    fc.assert(
      fc.property(between(0.003, 0.1), between(0.01, 0.5), (diameter, length) => {
        const by = (segment: Record<string, ReturnType<typeof of>>) =>
          si(
            boltStiffness.solve({
              segments: [{ length: of("length", length), ...segment }],
              modulus: "205 GPa",
            }),
            "stiffness",
          );
        expectClose(
          by({ diameter: of("length", diameter) }),
          by({ area: of("area", (Math.PI / 4) * diameter ** 2) }),
        );
      }),
    );
  });

  test("allowances for head and nut add to the compliance", () => {
    const bare = { segments: [{ length: "100 mm", area: "200 mm2" }], modulus: "200 GPa" };
    const found = boltStiffness.solve({ ...bare, headAllowance: "0.5 um/kN", nutAllowance: "1 um/kN" });
    expectClose(si(found, "compliance"), 2.5e-9 + 1.5e-9);
    expectClose(si(found, "stiffness") * si(found, "compliance"), 1);
  });

  test("inches, square inches and ksi give the same bolt as millimetres and MPa", () => {
    const inch = boltStiffness.solve({
      segments: [{ length: "4 in", area: "0.5 in2" }],
      modulus: "30000 ksi",
    });
    expectClose(si(inch, "stiffness"), ((0.5 * 30e6) / 4) * (4.4482216152605 / 0.0254), 1e-14);
  });
});

describe("limits", () => {
  testLimits(boltStiffness, good, {
    "smallest(segments.length) > 0": { segments: [{ length: "0 mm", area: "400 mm2" }] },
    "smallest(segments.area) > 0": { segments: [{ length: "10 mm", area: "0 mm2" }] },
    "headAllowance >= 0": { headAllowance: "-0.1 um/kN" },
    "nutAllowance >= 0": { nutAllowance: "-0.1 um/kN" },
  });

  test("a segment without area and diameter is refused and asks for one of them", () => {
    const said = refusal(boltStiffness.solve({ segments: [{ length: "10 mm" }], modulus: "205 GPa" }));
    expect(said.code).toBe("missing-input");
    expect(said.must).toContain("area or diameter");
    expectHouseWording(said);
  });

  test("a bolt without segments is refused with an example that would be taken", () => {
    const said = refusal(boltStiffness.solve({ segments: [], modulus: "205 GPa" }));
    expect(said.hint).toMatch(/"length"/);
    expect(said.hint).toMatch(/"area"|"diameter"/);
  });

  test.each(["0 mm", "-10 mm"])(
    "a diameter of %s gives no answer and the sentence names the diameter",
    (diameter) => {
      const said = refusal(
        boltStiffness.solve({ segments: [{ length: "10 mm", diameter }], modulus: "205 GPa" }),
      );
      expect(said.code).toBe("implausible");
      expect(`${said.what} ${said.got} ${said.must}`).toMatch(/diameter/);
    },
  );
});
