import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { loadShare } from "../../../src/methods/stiffness/load-share.ts";
import { goodFor } from "../good-inputs.ts";
import { between, expectClose, expectPrinted, of, si, testLimits } from "../helpers.ts";

const good = goodFor("load-share");
const share = (kb: number, km: number, n = 1) =>
  si(
    loadShare.solve({
      boltStiffness: of("stiffness", kb),
      clampedStiffness: of("stiffness", km),
      loadIntroduction: of("ratio", n),
    }),
    "loadFactor",
  );

describe("hand calculation", () => {
  test("a bolt a third as stiff as the parts feels a quarter of the load, an eighth at n = 0.5", () => {
    expect(share(1e9, 3e9)).toBe(0.25);
    expect(share(1e9, 3e9, 0.5)).toBe(0.125);
  });

  test("5.21 against 8.95 Mlbf/in gives the printed 0.368 of Shigley 9th ed. Example 8-4", () => {
    const found = loadShare.solve({ boltStiffness: "5.21e6 lbf/in", clampedStiffness: "8.95e6 lbf/in" });
    expectPrinted(si(found, "loadFactor"), "0.368");
  });
});

const stiffness = between(1e7, 1e10);

describe("laws", () => {
  test("lies between 0 and 1 and depends on the ratio of the stiffnesses only", () => {
    fc.assert(
      fc.property(stiffness, stiffness, between(0, 1), between(0.1, 10), (kb, km, n, f) => {
        expect(share(kb, km, n)).toBeGreaterThanOrEqual(0);
        expect(share(kb, km, n)).toBeLessThan(1);
        expectClose(share(kb, km, n), share(f * kb, f * km, n));
      }),
    );
  });

  test("bolt and parts change places: the two shares add to 1", () => {
    fc.assert(fc.property(stiffness, stiffness, (kb, km) => expectClose(share(kb, km) + share(km, kb), 1)));
  });

  test("rises with the bolt's stiffness and falls with that of the parts", () => {
    fc.assert(
      fc.property(stiffness, stiffness, (kb, km) => {
        expect(share(1.1 * kb, km)).toBeGreaterThan(share(kb, km));
        expect(share(kb, 1.1 * km)).toBeLessThan(share(kb, km));
      }),
    );
  });
});

describe("edges", () => {
  test("load introduction 0 gives 0: the load enters where the bolt cannot feel it", () => {
    expect(share(1e9, 3e9, 0)).toBe(0);
  });
});

describe("limits", () => {
  testLimits(loadShare, good, {
    "boltStiffness > 0": { boltStiffness: "0 kN/mm" },
    "clampedStiffness > 0": { clampedStiffness: "0 kN/mm" },
  });
});
