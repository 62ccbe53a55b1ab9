import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { solve } from "../../../src/methods/index.ts";
import { shearBearingTearOut } from "../../../src/methods/shear/shear-bearing-tear-out.ts";
import { cells } from "../cells.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, deepFreeze, expectClose, expectPrinted, of, refusal, si, testLimits } from "../helpers.ts";

const id = "shear-bearing-tear-out";
const good = goodFor(id);
const { strengths: _, ...bare } = good;

describe("limits", () => {
  testLimits(shearBearingTearOut, good, {
    "shear > 0": { shear: "0 kN" },
    "plateThickness > 0": { plateThickness: "0 mm" },
    "edgeDistance > 0": { edgeDistance: "0 mm" },
    "edgeDistance >= 1.5 * shankDiameter": { edgeDistance: "30 mm" },
    "threadArea > 0": { threadArea: "0 mm2" },
    "netWidth > 0": { netWidth: "-2 mm" },
    "count >= 1": { count: "0" },
    "planes >= 1": { planes: "0" },
    "shearStrength > 0": { strengths: [{ shear: "0 MPa" }] },
    "bearingStrength > 0": { strengths: [{ bearing: "0 MPa" }] },
    "tearOutStrength > 0": { strengths: [{ tearOut: "-1 MPa" }] },
    "netStrength > 0": { strengths: [{ net: "0 MPa" }] },
    "wantedFactor > 0": { wantedFactor: "0" },
  });
});

test("too near to the edge the tear-out figures do not hold, the others do", () => {
  const near = answer(solve(id, { ...good, edgeDistance: "30 mm" }));
  expect(Object.keys(near.spoilt).toSorted()).toEqual([
    "factors",
    "tearOutCapacity",
    "tearOutFactor",
    "tearOutStress",
  ]);
});

test("demo (invented figures): 150 kN on 12 shanks is 25 MPa, on 4 it is 76 MPa", () => {
  expectPrinted(si(solve(id, good), "shearStress"), "25", 1e6);
  expectPrinted(si(solve(id, { ...good, count: "4" }), "shearStress"), "76", 1e6);
});

describe("strengths", () => {
  test("the factors stand in the list and alone, and agree; only those given are listed", () => {
    const solution = solve(id, good);
    expect(cells(solution, "factors").map((row) => row["mode"])).toEqual([
      "shear",
      "bearing",
      "tear-out",
      "net section",
    ]);
    expectClose(Number(cells(solution, "factors")[2]?.["factor"]), si(solution, "tearOutFactor"));
    expect(cells(solve(id, bare), "factors")).toEqual([]);
    expect(cells(solve(id, { ...bare, bearingStrength: "85 ksi" }), "factors")).toHaveLength(1);
  });

  test("fields and a row are the same; both at once are refused", () => {
    const fields = { shearStrength: "380 MPa", netStrength: "400 MPa" };
    const row = { strengths: '{"shear": "380 MPa", "net": "400 MPa"}' };
    expect(cells(solve(id, { ...bare, ...fields }), "factors")).toEqual(
      cells(solve(id, { ...bare, ...row }), "factors"),
    );
    expect(refusal(solve(id, { ...bare, ...fields, ...row })).code).toBe("given-twice");
  });

  test("threads in the shear plane need their area", () => {
    expect(refusal(solve(id, { ...good, shearPlane: "threads" })).must).toContain("threadArea");
    const cut = solve(id, { ...good, shearPlane: "threads", threadArea: "245.4369260617026 mm2" });
    expectClose(si(cut, "shearStress"), 2 * si(solve(id, good), "shearStress")); // half of 25 mm's circle
  });
});

describe("laws", () => {
  const length = fc.double({ min: 0.002, max: 0.5, noNaN: true });
  const some = fc.record({
    shear: fc.double({ min: 1, max: 1e6, noNaN: true }).map((n) => of("force", n)),
    shankDiameter: length.map((n) => of("length", n)),
    plateThickness: length.map((n) => of("length", n)),
    edgeDistance: length.map((n) => of("length", n)),
    netWidth: length.map((n) => of("length", n)),
    count: fc.integer({ min: 1, max: 30 }).map((n) => of("count", n)),
    planes: fc.integer({ min: 1, max: 2 }).map((n) => of("count", n)),
    shearStrength: fc.constant("380 MPa"),
    bearingStrength: fc.constant("700 MPa"),
    tearOutStrength: fc.constant("230 MPa"),
    netStrength: fc.constant("400 MPa"),
  });

  test("loaded with a capacity, that way to fail has just the wanted factor", () => {
    fc.assert(
      fc.property(some, fc.constantFrom("shear", "bearing", "tearOut", "net"), (inputs, mode) => {
        const capacity = si(solve(id, { ...inputs, wantedFactor: "1.5" }), `${mode}Capacity`);
        expectClose(si(solve(id, { ...inputs, shear: of("force", capacity) }), `${mode}Factor`), 1.5, 1e-12);
      }),
    );
  });

  test("twice the bolts halve shear, bearing and tear-out; the net section does not notice", () => {
    fc.assert(
      fc.property(some, (inputs) => {
        const [one, two] = [
          solve(id, inputs),
          solve(id, { ...inputs, count: of("count", 2 * inputs.count.si) }),
        ];
        for (const name of ["shearStress", "bearingStress", "tearOutStress"])
          expectClose(si(one, name), 2 * si(two, name));
        expect(si(one, "netStress")).toBe(si(two, "netStress"));
      }),
    );
  });
});

test("what is left out has no stress, never 0", () => {
  const { edgeDistance: __, netWidth: ___, ...least } = bare;
  const solution = answer(solve(id, deepFreeze(least)));
  expect(Object.keys(solution.outputs)).toEqual(["shearStress", "bearingStress", "factors"]);
});
