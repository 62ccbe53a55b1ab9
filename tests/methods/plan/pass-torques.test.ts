import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { solve } from "../../../src/methods/index.ts";
import { passTorques } from "../../../src/methods/plan/pass-torques.ts";
import { cells } from "../cells.ts";
import { order, recordRows } from "../demo.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, deepFreeze, expectClose, of, refusal, si, testLimits } from "../helpers.ts";

const id = "pass-torques";
const good = goodFor(id);

describe("limits", () => {
  testLimits(passTorques, good, {
    'finalTorque > "0 N.m"': { finalTorque: "0 N.m" },
    "smallest(fractions.fraction) > 0": { fractions: ["0 %", "100 %"] },
    "largest(fractions.fraction) <= 1": { fractions: ["30", "60", "100"] },
    "largest(fractions.fraction) >= 1": { fractions: ["30 %", "60 %"] },
    'smallest(runOn.torque) >= "0 N.m"': {
      runOn: [
        { position: "5", torque: "-1 N.m" },
        { position: "12", torque: "31 N.m" },
      ],
    },
    'smallest(passes.set) > "0 N.m"': { adapters: [{ position: "12", length: "700 mm", angle: "180 deg" }] },
  });
});

test("passes that fall are refused by their numbers; a repeated last pass is not", () => {
  const said = refusal(solve(id, { ...good, fractions: ["30 %", "100 %", "60 %"] }));
  expect([said.code, said.got]).toEqual(["falling-pass", "60.00 % in pass 3 after 100.0 %"]);
  expect(answer(solve(id, { ...good, fractions: ["30 %", "60 %", "100 %", "100 %"] })).warnings).toEqual([]);
});

describe("demo (invented figures)", () => {
  const written = recordRows().filter((row) => row.pass.startsWith("pass"));
  const runOn = order.map((position) => ({
    position,
    torque: written.find((row) => row.position === position)?.runOn ?? "",
  }));
  const adapters = ["9", "12"].map((position) => ({ position, length: "60 mm" }));
  const passes = cells(
    solve(id, {
      finalTorque: "500 N.m",
      fractions: ["30 %", "60 %", "100 %"],
      runOn,
      adapters,
      wrenchLength: "650 mm",
    }),
    "passes",
  );
  const of5 = passes.filter((row) => row["position"] === "5").map((row) => Math.round(Number(row["set"])));

  test("position 5 is set to 176, 326, 526", () => expect(of5).toEqual([176, 326, 526]));

  test("every setting of the record is the one planned, but the sum turned round at position 12", () => {
    const apart = written.filter((row) => {
      const planned = passes.find((p) => p["pass"] === row.pass && p["position"] === row.position);
      return Math.abs(Number(planned?.["set"]) - Number(row.set.replace(" N.m", ""))) > 0.5;
    });
    expect(apart.map((row) => `${row.pass} ${row.position}`)).toEqual(["pass 3 12"]);
  });

  test("60 rows, pass by pass in the order given", () => {
    expect(passes).toHaveLength(60);
    expect(passes.slice(20, 40).map((row) => row["position"])).toEqual(order);
  });
});

describe("laws", () => {
  test("the setting less the adapter's part is net and run-on; without an adapter it is their sum", () => {
    const some = fc.record({
      torque: fc.double({ min: 1, max: 5000, noNaN: true }),
      run: fc.double({ min: 0, max: 90, noNaN: true }),
      length: fc.double({ min: 0.01, max: 0.3, noNaN: true }),
      angle: fc.double({ min: 0, max: 1.5, noNaN: true }),
    });
    fc.assert(
      fc.property(some, ({ torque, run, length, angle }) => {
        const found = cells(
          solve(id, {
            finalTorque: of("torque", torque),
            fractions: ["50 %", "100 %"],
            runOn: [
              { position: "a", torque: of("torque", run) },
              { position: "b", torque: of("torque", run) },
            ],
            adapters: [{ position: "b", length: of("length", length), angle: of("angle", angle) }],
            wrenchLength: "650 mm",
          }),
          "passes",
        );
        const [half, halfAdapted, full] = found;
        expectClose(Number(half?.["set"]), torque / 2 + run);
        expectClose(Number(full?.["set"]), torque + run);
        const hand = 0.65 / (0.65 + length * Math.cos(angle));
        expectClose(Number(halfAdapted?.["set"]), (torque / 2 + run) * hand, 1e-12);
      }),
    );
  });

  test("an adapter at a right angle changes nothing", () => {
    const square = solve(id, { ...good, adapters: [{ position: "12", length: "60 mm", angle: "90 deg" }] });
    expectClose(Number(cells(square, "passes")[5]?.["set"]), 531, 1e-12);
  });
});

describe("edges", () => {
  test("no positions: one row for each pass stands for all", () => {
    const plain = solve(id, { finalTorque: "100 N.m", fractions: ["30 %", "100 %"] });
    expect(cells(plain, "passes").map((row) => [row["position"], row["set"]])).toEqual([
      ["all", 30],
      ["all", 100],
    ]);
    expect(si(plain, "largestSet")).toBe(100);
  });

  test.each([
    ["a nut without a run-on among others that have one", { order: ["5", "12", "7"] }, "every position"],
    ["a run-on for a position that is not there", { order: ["5"] }, "one of the positions"],
    [
      "an adapter for a position that is not there",
      { adapters: [{ position: "99", length: "60 mm" }] },
      "one of the positions",
    ],
    ["a position twice in the order", { order: ["5", "12", "5"] }, "once"],
  ])("%s is refused", (_, change, must) =>
    expect(refusal(solve(id, { ...good, ...change })).must).toContain(must),
  );

  test("an adapter without the length of the wrench is refused", () => {
    const { wrenchLength: _, ...rest } = good;
    expect(refusal(solve(id, rest)).must).toContain("wrenchLength");
  });

  test("inputs are not changed", () => {
    answer(solve(id, deepFreeze(structuredClone(good))));
  });
});
