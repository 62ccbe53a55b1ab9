import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { atMost, judge } from "../src/verdict.ts";

const mm = 1e-3;
const um = 1e-6;

describe("one comparison at a limit", () => {
  test("what lies on the limit is inside it, whichever way the last bit falls", () => {
    expect(0.1 + 0.2 <= 0.3).toBe(false); // the comparison of the machine
    expect(atMost(0.1 + 0.2, 0.3)).toBe(true);
    expect(atMost(0.3, 0.1 + 0.2)).toBe(true);
    expect(atMost(0, 0)).toBe(true);
  });

  test("a real difference is one: a part in a million million and a half is outside", () => {
    expect(atMost(1 + 2e-12, 1)).toBe(false);
    expect(atMost(-1 + 2e-12, -1)).toBe(false);
    expect(atMost(1e-300, 0)).toBe(false);
  });

  test.each([
    [25.0153, 25.0003],
    [25.025, 25.01],
    [325.0153, 325.0003],
    [2500.0153, 2500.0003],
  ])("%d mm less %d mm is 15 um, no more", (hole, shank) => {
    const found = hole * mm - shank * mm;
    expect(judge(found, { atMost: 15 * um }, 0, hole * mm)).toBe("proven");
    expect(judge(found, { atLeast: 15 * um }, 0, hole * mm)).toBe("proven");
    expect(judge(found, { atMost: 14.999 * um }, 0, hole * mm)).toBe("fails");
  });

  test("differences typed in decimals: on the limit inside, a hundredth of a micrometre beyond outside", () => {
    const hundredths = fc.integer({ min: 1, max: 3_000_000 }); // up to 300 mm, in tenths of a micrometre
    fc.assert(
      fc.property(hundredths, fc.integer({ min: 1, max: 500 }), (shank, apart) => {
        const [a, b] = [Number(`${shank + apart}e-7`), Number(`${shank}e-7`)];
        const limit = Number(`${apart}e-7`);
        expect(judge(a - b, { atMost: limit, atLeast: limit }, 0, a)).toBe("proven");
        expect(judge(a - b, { atMost: limit - 1e-8 }, 0, a)).toBe("fails");
        expect(judge(a - b, { atLeast: limit + 1e-8 }, 0, a)).toBe("fails");
      }),
    );
  });

  test("with an uncertainty: inside as a whole is proven, touching from outside is unproven, beyond fails", () => {
    const limits = { atMost: 0.3 };
    expect(judge(0.2, limits, 0.1)).toBe("proven"); // 0.2 + 0.1 is 0.30000000000000004
    expect(judge(0.4, limits, 0.1)).toBe("unproven");
    expect(judge(0.4 + 1e-9, limits, 0.1)).toBe("fails");
    expect(judge(0.2 + 1e-9, limits, 0.1)).toBe("unproven");
  });

  test("no number and no limit give no answer; a limit without end limits nothing", () => {
    expect(judge(Number.NaN, { atMost: 1 })).toBe("no answer");
    expect(judge(1, { atMost: Number.NaN })).toBe("no answer");
    expect(judge(1, {})).toBe("no answer");
    expect(judge(1, { atMost: 1 }, -1)).toBe("no answer");
    expect(judge(1, { atMost: Number.POSITIVE_INFINITY })).toBe("proven");
    expect(judge(1, { atLeast: Number.POSITIVE_INFINITY })).toBe("fails");
    expect(atMost(Number.NaN, 1)).toBe(false);
    expect(atMost(2, 1, Number.POSITIVE_INFINITY)).toBe(false);
  });
});
