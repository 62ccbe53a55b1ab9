import * as fc from "fast-check";
import { describe, test } from "vitest";
import { preloadFromStretch } from "../../../src/methods/torque/preload-from-stretch.ts";
import { stretchFromPreload } from "../../../src/methods/torque/stretch-from-preload.ts";
import { goodFor } from "../good-inputs.ts";
import { between, expectClose, type Inputs, of, si, testLimits } from "../helpers.ts";

const good = goodFor("preload-from-stretch");
const solve = (change: Inputs) => preloadFromStretch.solveNamed({ ...good, ...change });

describe("hand calculation", () => {
  test("0.2 mm at 500 kN/mm is 100 kN", () => {
    expectClose(si(solve({ boltStiffness: "500 kN/mm" }), "preload"), 100_000);
  });
});

describe("laws", () => {
  test("stretchFromPreload undoes it", () => {
    fc.assert(
      fc.property(between(0, 1e-3), between(1e7, 1e10), (stretch, k) => {
        const preload = si(
          solve({ stretch: of("length", stretch), boltStiffness: of("stiffness", k) }),
          "preload",
        );
        const back = stretchFromPreload.solve({
          preload: of("force", preload),
          boltStiffness: of("stiffness", k),
        });
        expectClose(si(back, "stretch"), stretch);
      }),
    );
  });

  test("8 thou at lbf/in is the same as in SI", () => {
    const inch = si(solve({ stretch: "8 thou", boltStiffness: "1e6 lbf/in" }), "preload");
    expectClose(inch, 8000 * 4.4482216152605);
  });
});

describe("limits", () => {
  testLimits(preloadFromStretch, good, {
    "boltStiffness > 0": { boltStiffness: "0 kN/mm" },
    "stretch >= 0": { stretch: "-0.1 mm" },
  });
});
