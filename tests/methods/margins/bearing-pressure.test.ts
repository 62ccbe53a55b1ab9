import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { bearingPressure } from "../../../src/methods/margins/bearing-pressure.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, between, expectClose, expectPrinted, of, refusal, si, testLimits } from "../helpers.ts";

const good = goodFor("bearing-pressure");
const at = (change: Record<string, string>) => bearingPressure.solveNamed({ ...good, ...change });

describe("hand calculation", () => {
  test("175π N on a ring of 40 and 30 mm is 1 N/mm²; a 5 mm washer at 45 deg makes it 50 mm wide", () => {
    // π/4 (40² − 30²) = 175π mm². With the washer: 40 + 2 · 5 · tan 45° = 50: π/4 (2500 − 900) = 400π mm².
    const inputs = {
      force: of("force", 175 * Math.PI),
      outerDiameter: "40 mm",
      innerDiameter: "30 mm",
      limitPressure: "2 MPa",
    };
    const bare = bearingPressure.solve(inputs);
    expectClose(si(bare, "area"), 175 * Math.PI * 1e-6);
    expectClose(si(bare, "pressure"), 1e6);
    expectClose(si(bare, "utilisation"), 0.5);
    expectClose(
      si(
        bearingPressure.solve({ ...inputs, washerThickness: "5 mm", washerOutsideDiameter: "60 mm" }),
        "pressure",
      ),
      (175 / 400) * 1e6,
    );
  });

  test("a washer of 37 mm ends a spread to 41.25 mm: 200 kN stand on 435 MPa, not 278", () => {
    // π/4 (37² − 28²) = 459.5 mm²; π/4 (41.25² − 28²) = 720.7 mm².
    const ended = at({ washerOutsideDiameter: "37 mm" });
    expectPrinted(si(ended, "pressure"), "435.3", 1e6);
    expect(answer(ended).warnings.map((warning) => warning.why)).toEqual([
      "the washer ends before the spread does, so its outside diameter counts",
    ]);
    expect(answer(ended).spoilt).toEqual({});
    expectPrinted(si(at({}), "pressure"), "277.5", 1e6);
    expect(answer(at({})).warnings).toEqual([]);
  });

  test("a washer whose outside diameter is not given spoils what stands on its spread", () => {
    const { washerOutsideDiameter: _, ...without } = good;
    const found = answer(bearingPressure.solveNamed(without));
    expect(Object.keys(found.spoilt).toSorted()).toEqual(["area", "pressure", "utilisation"]);
    expect(found.warnings[0]?.hint).toBe("give washerOutsideDiameter");
  });

  test("an angle that is not given stands as a warning where a washer spreads the load", () => {
    const said = answer(at({ spreadAngle: "" })).warnings.find(({ code }) => code === "assumed");
    expect(said?.must).toBe("be given as spreadAngle");
  });

  test("an outside diameter without a thickness asks for the thickness", () => {
    expect(refusal(at({ washerThickness: "" })).must).toBe("be given as washerThickness");
  });
});

describe("laws", () => {
  test("pressure times area is the force", () => {
    fc.assert(
      fc.property(
        between(0, 1e6),
        between(0.01, 0.05),
        between(0.001, 0.03),
        between(0, 0.02),
        (force, hole, land, washer) => {
          const found = bearingPressure.solve({
            force: of("force", force),
            outerDiameter: of("length", hole + land),
            innerDiameter: of("length", hole),
            washerThickness: of("length", washer),
            ...(washer > 0 && { washerOutsideDiameter: of("length", hole + land + washer) }),
          });
          expectClose(si(found, "pressure") * si(found, "area"), force);
        },
      ),
    );
  });

  test("a thicker washer or a wider spread lowers the pressure, a larger hole raises it", () => {
    expect(si(at({ washerThickness: "5 mm" }), "pressure")).toBeLessThan(si(at({}), "pressure"));
    expect(si(at({ spreadAngle: "50 deg" }), "pressure")).toBeLessThan(si(at({}), "pressure"));
    expect(si(at({ innerDiameter: "29 mm" }), "pressure")).toBeGreaterThan(si(at({}), "pressure"));
  });

  test("without a washer the spread angle does not matter", () => {
    const none = { washerThickness: "", washerOutsideDiameter: "", spreadAngle: "" };
    expect(refusal(at({ ...none, spreadAngle: "30 deg" })).code).toBe("not-used");
    expect(answer(at(none)).warnings.map((warning) => warning.code)).toEqual(["limit-warning"]); // none of the angle
    expect(si(at({ ...none, washerThickness: "0 mm" }), "pressure")).toBe(si(at(none), "pressure"));
  });

  test("without a limiting pressure there is no share of it and the pressure stands", () => {
    const { limitPressure: _, ...rest } = good;
    const found = answer(bearingPressure.solveNamed(rest));
    expect(found.outputs["utilisation"]).toBeUndefined();
    expect(found.outputs["pressure"]).toEqual(answer(at({})).outputs["pressure"]);
  });
});

describe("edges", () => {
  test("no force, no pressure", () => {
    expect(si(at({ force: "0 kN" }), "pressure")).toBe(0);
  });

  test("no hole: the whole disc carries", () => {
    expectClose(
      si(
        at({ innerDiameter: "0 mm", washerThickness: "0 mm", washerOutsideDiameter: "", spreadAngle: "" }),
        "area",
      ),
      (Math.PI / 4) * 0.03325 ** 2,
    );
  });
});

describe("limits", () => {
  testLimits(bearingPressure, good, {
    "force >= 0": { force: "-1 kN" },
    "innerDiameter >= 0": { innerDiameter: "-1 mm" },
    "outerDiameter > innerDiameter": { innerDiameter: "34 mm" },
    "washerThickness >= 0": { washerThickness: "-4 mm" },
    'spreadAngle >= "0 deg"': { spreadAngle: "-79 deg" },
    'spreadAngle < "80 deg"': { spreadAngle: "80 deg" },
    "limitPressure > 0": { limitPressure: "0 MPa" },
    "washerOutsideDiameter > 0": { washerOutsideDiameter: "-44 mm" },
    "loadedDiameter > innerDiameter": { washerOutsideDiameter: "27 mm" },
    "spreadDiameter <= washerOutsideDiameter": { washerOutsideDiameter: "37 mm" },
    'unendedSpread <= "0 mm"': { washerOutsideDiameter: "" },
    "pressure <= limitPressure": { force: "600 kN" },
  });
});
