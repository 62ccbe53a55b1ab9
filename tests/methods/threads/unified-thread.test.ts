import { describe, expect, test } from "vitest";
import { unifiedThread } from "../../../src/methods/threads/unified-thread.ts";
import { answer, expectClose, expectPrinted, refusal, si } from "../helpers.ts";

const inch = 0.0254;

describe("hand calculation", () => {
  test("3/8-24 UNF has the stress area 0.0878 in² worked from its printed pitch diameter", () => {
    // d2 = 0.375 − 0.649519/24 = 0.34794 → 0.3479 in, as printed to four places.
    // At = π (d2/2 − 0.16238/24)² = 0.0878092286706083 in² (30 digits, separately).
    const thread = unifiedThread.solve({ designation: "3/8-24 UNF" });
    expectClose(si(thread, "pitchDiameter"), 0.3479 * inch, 1e-14);
    expectClose(si(thread, "pitch"), inch / 24, 1e-14);
    expectClose(si(thread, "stressArea"), 0.0878092286706083 * inch ** 2, 1e-13);
    expectPrinted(si(thread, "stressArea"), "0.0878", inch ** 2);
  });

  test("1/2-13 has the printed stress area 0.1419 in²", () => {
    expectPrinted(si(unifiedThread.solve({ designation: "1/2-13" }), "stressArea"), "0.1419", inch ** 2);
  });
});

describe("laws", () => {
  test("1/2-13 and 1/2-13 UNC are the same thread", () => {
    const named = answer(unifiedThread.solve({ designation: "1/2-13 UNC" }));
    expect(named.outputs).toEqual(answer(unifiedThread.solve({ designation: "1/2-13" })).outputs);
  });

  test.each(["#10-32 UNF", "1/4-20", "3/8-24 UNF", "1-8 UNC", "1-1/4-7"])(
    "%s: minor < pitch < major, and the area is that of the stress diameter",
    (designation) => {
      const thread = unifiedThread.solve({ designation });
      expect(si(thread, "minorDiameterExternal")).toBeLessThan(si(thread, "minorDiameterInternal"));
      expect(si(thread, "minorDiameterInternal")).toBeLessThan(si(thread, "pitchDiameter"));
      expect(si(thread, "pitchDiameter")).toBeLessThan(si(thread, "majorDiameter"));
      expectClose(si(thread, "stressArea"), (Math.PI / 4) * si(thread, "stressDiameter") ** 2);
    },
  );

  test("the fine series leaves more stress area than the coarse one", () => {
    const area = (designation: string) => si(unifiedThread.solve({ designation }), "stressArea");
    expect(area("3/8-24")).toBeGreaterThan(area("3/8-16"));
  });
});

describe("refusals", () => {
  test.each(["M24", "3/8", "3/8-25", "3/0-24", "", "1/2-13 UNX"])("%s is refused", (designation) => {
    expect(refusal(unifiedThread.solve({ designation })).code).toBeTruthy();
  });
});
