// Defaults that matter stand as warnings; outside its range a number is shown and proves nothing; what
// would be ignored is refused by name.
import { describe, expect, test } from "vitest";
import { methods, solve } from "../../src/methods/index.ts";
import { sentence } from "../../src/problem.ts";
import { goodFor } from "./good-inputs.ts";
import { answer, expectHouseWording, type Inputs, refusal, solveAccepted } from "./helpers.ts";

const methodOf = (id: string) => {
  const found = methods.get(id);
  if (!found) throw new Error(`no method ${id}`);
  return found;
};

const without = (id: string, name: string): Inputs => {
  const { [name]: _, ...rest } = goodFor(id);
  return rest;
};

describe("a default that matters stands as a warning beside the answer", () => {
  const cases: readonly (readonly [id: string, name: string, taken: string])[] = [
    ["preload-bounds", "relaxation", "0 %"],
    ["preload-window", "relaxation", "0 %"],
    ["preload-window", "separationFactor", "1"],
    ["preload-window", "tripLoad", "0 kN"],
    ["preload-window", "tripFactor", "1"],
    ["preload-window", "assemblyShare", "1"],
    ["assembly-preload-limit", "torsionFactor", "1.5"],
    ["nut-factor-trial", "coverage", "95 %"],
    ["nut-factor-trial", "confidence", "95 %"],
  ];
  test.each(cases)("%s %s", (id, name, taken) => {
    const found = answer(methodOf(id).solveNamed(without(id, name)));
    const said = found.warnings.filter(({ code }) => code === "assumed");
    expect(said).toHaveLength(1);
    expect(said[0]).toMatchObject({ got: `nothing, so ${taken} is taken`, must: `be given as ${name}` });
    if (said[0]) expectHouseWording(said[0]);
    expect(found.spoilt).toEqual({});
    expect(answer(methodOf(id).solveNamed(goodFor(id))).warnings).toEqual([]);
  });

  test("relaxation is asked for under NASA-STD-5020, and no torque tolerance is spoken of under VDI 2230", () => {
    const nasa = answer(
      solve("preload-bounds", { ...without("preload-bounds", "relaxation"), standard: "NASA-STD-5020" }),
    );
    expect(nasa.warnings.map(sentence).join()).toMatch(
      /relaxation: got nothing, so 0 % is taken.*at least 5 %/,
    );
    const vdi = answer(
      solve("preload-bounds", {
        nominalPreload: "148 kN",
        tighteningFactor: "1.6",
        relaxation: "5 %",
        standard: "VDI 2230",
      }),
    );
    expect([...vdi.notes, ...vdi.warnings.map(sentence)].join()).not.toContain("tolerance of the torque");
  });
});

describe("outside its range a number is shown and proves nothing", () => {
  const cases: readonly (readonly [id: string, change: Inputs, spoilt: readonly string[]])[] = [
    [
      "clamped-stiffness-fit",
      { grip: "300 mm" },
      ["fitA", "fitB", "halfStiffness", "relativeStiffness", "stiffness"],
    ],
    [
      "clamped-stiffness-fit",
      { grip: "10 mm" },
      ["fitA", "fitB", "halfStiffness", "relativeStiffness", "stiffness"],
    ],
    ["preload-bounds", { thermalChangeMin: "-200 kN" }, ["minimum"]],
    [
      "nut-factor-trial",
      { stretches: ["0.21 mm", "0.1 mm", "0.05 mm", "0.3 mm", "0.25 mm"] },
      ["minimumPreload"],
    ],
    [
      "elastic-interaction",
      { passLoads: ["100 kN"], coefficients: "", neighbours: [{ apart: "1", change: "-0.9" }] },
      ["compensated", "residual", "spread"],
    ],
  ];
  test.each(cases)("%s %o", (id, change, spoilt) => {
    const found = answer(solveAccepted(methodOf(id), { ...goodFor(id), ...change }));
    expect(Object.keys(found.spoilt).toSorted()).toEqual(spoilt);
  });

  test("a thread limit that is worked and not tabulated proves nothing", () => {
    const found = answer(solve("thread-limits", { designation: "M24x3", toleranceClass: "8g" }));
    expect(Object.keys(found.spoilt)).toContain("pitchMin");
    expect(answer(solve("thread-limits", { designation: "M24x3", toleranceClass: "6g" })).spoilt).toEqual({});
  });

  const advice: readonly (readonly [id: string, change: Inputs])[] = [
    ["thread-stripping", { engagedLength: "6 mm" }],
    ["assembly-stress", { threadTorque: "900 N.m" }],
    ["loosening-torque", { threadFriction: "0.01", bearingFriction: "0.001" }],
    ["nut-factor-trial", { stretches: ["0.21 mm", "0.212 mm", "0.211 mm", "0.213 mm"] }],
    ["preload-window", { scatter: "35 %" }],
    ["set-torque", { runOnTorque: "600 N.m" }],
  ];
  test.each(advice)("%s %o: advice, and every number holds", (id, change) => {
    const found = answer(methodOf(id).solveNamed({ ...goodFor(id), ...change }));
    expect(found.warnings.length).toBeGreaterThan(0);
    expect(found.spoilt).toEqual({});
  });
});

describe("what would be ignored is refused by name", () => {
  const order = ["1", "2", "3", "4"];
  const cases: readonly (readonly [id: string, inputs: Inputs, words: RegExp])[] = [
    [
      "preload-bounds",
      { nominalPreload: "148 kN", tighteningFactor: "1.6", torqueTolerance: "4 %", standard: "VDI 2230" },
      /torqueTolerance.*VDI 2230 does not use it/,
    ],
    [
      "preload-bounds",
      { nominalPreload: "148 kN", scatter: "20 %", fastenerCount: "8" },
      /fastenerCount.*plain does not use it/,
    ],
    [
      "bolt-stiffness",
      { segments: [{ length: "97 mm", area: "490 mm2", diameter: "25 mm" }], modulus: "205 GPa" },
      /segments 1.*diameter beside area/,
    ],
    [
      "elastic-interaction",
      { order, neighbours: [{ apart: "2.5", change: "-0.1" }], passLoads: ["100 kN"] },
      /2\.5.*whole number/,
    ],
    [
      "elastic-interaction",
      { order, neighbours: [{ apart: "3", change: "-0.1" }], passLoads: ["100 kN"] },
      /3 places apart.*at most 2/,
    ],
    [
      "elastic-interaction",
      {
        order,
        neighbours: [
          { apart: "1", change: "-0.1" },
          { apart: "1", change: "-0.2" },
        ],
        passLoads: ["100 kN"],
      },
      /rows 1 and 2.*given once/,
    ],
    [
      "elastic-interaction",
      {
        order,
        coefficients: [{ position: "1", by: "2", change: "-0.1" }],
        arrangement: "line",
        passLoads: ["100 kN"],
      },
      /arrangement.*left out/,
    ],
    [
      "torque-from-friction",
      { ...goodFor("torque-from-friction"), threadHalfAngle: "30 deg", form: "VDI 2230" },
      /threadHalfAngle.*VDI 2230/,
    ],
    [
      "assembly-preload-limit",
      {
        yieldStress: "660 MPa",
        pitch: "3 mm",
        pitchDiameter: "22.05 mm",
        minorDiameterExternal: "20.32 mm",
        threadFriction: "0.12",
        bearingFriction: "0.12",
      },
      /bearingFriction.*given with bearingMeanDiameter/,
    ],
    [
      "bolt-stiffness",
      { segments: '[{"length": "97 mm", "area": "490 mm2", "area": "500 mm2"}]', modulus: "205 GPa" },
      /area twice/,
    ],
  ];
  test.each(cases)("%s %o", (id, inputs, words) => {
    const said = refusal(solve(id, inputs));
    expect(sentence(said)).toMatch(words);
    expectHouseWording(said);
  });
});
