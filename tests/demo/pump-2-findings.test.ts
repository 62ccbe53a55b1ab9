// The demo pages find every planted problem, with its reason, and nothing else.
import { expect, test } from "vitest";
import { expectNotProven, notProven, openNotebook, tableAt } from "./helpers.ts";

test("opening: step 3 fails on tilt, twist and load cell, every other step and count is quiet", async () => {
  expectNotProven(await openNotebook("pump-2-opening"), [
    ["twist", "3", "fails", /^0\.175 mm against at most 0\.1 mm$/],
    ["level", "3", "fails", /^0\.7062 mm\/m against at most 0\.4252 mm\/m$/],
    ["notStuck", "3", "fails", /^1\.614 against at most 1\.1$/],
  ]);
});

test("as found: the twelve planted problems of holes and bolts", async () => {
  const page = await openNotebook("pump-2-as-found");
  expectNotProven(page, [
    ["oval", "8", "fails", /^21 um ± [\d.]+ um against at most 10 um$/],
    ["taper", "13", "fails", /^16\.5 um ± [\d.]+ um against at most 10 um$/],
    ["pin", "20", "fails", /^sticks at split line, must be passes$/],
    ["tight", "16", "unproven", /^-12\.6 um ± 3\.6 um against at least -10 um/],
    ["loose", "3", "fails", /^26\.7 um ± 3\.6 um against at most 15 um$/],
    ["loose", "11", "unproven", /^13\.9 um ± 3\.6 um against at most 15 um/],
    ["loose", "13", "fails", /^20\.4 um ± 3\.6 um against at most 15 um$/],
    ["loose", "18", "unproven", /^11\.7 um ± 3\.6 um against at most 15 um/],
    ["mark", "15", "fails", /^5\.6, must be 8\.8$/],
    ["unstretched", "15", "fails", /^0\.32 mm against at most 0\.05 mm$/],
    ["protrudes", "17", "fails", /^1 mm against at least 3 mm$/],
    ["runOn", "10", "fails", /^3\.000 N\.m against at least 8 N\.m/],
    ["runOn", "20", "fails", /^74\.00 N\.m against .* at most 60 N\.m$/],
  ]);
});

test("as found: no reading is missing, and two of hole 8 are odd and kept", async () => {
  const page = await openNotebook("pump-2-as-found");
  const holes = tableAt(page, "holes");
  const odd = holes.states.flatMap((state, i) =>
    state === "entered" ? [] : [`${state}: ${holes.columns.map(({ typed }) => typed[i]).join(" ")}`],
  );
  expect(odd).toEqual([
    "odd: 8 upper half, outer end along 25.027",
    "odd: 8 upper half, at the split across 25.005",
  ]);
  for (const name of ["holes", "shanks", "bolts", "holeTemperatures", "boltTemperatures"])
    expect(tableAt(page, name).missing, name).toBe(0);
  expect(tableAt(page, "shanks").states.every((state) => state === "entered")).toBe(true);
});

test("after rework: nothing is left that is not proven", async () => {
  expect(notProven(await openNotebook("pump-2-after-rework"))).toEqual([]);
});

test("tightening: four findings in passes 1 to 3, none in the check pass nor in the correcting rows", async () => {
  const page = await openNotebook("pump-2-tightening");
  expectNotProven(page, [
    ["passesAddUp", "position 14, pass 2", "fails", /missing row/],
    ["passesAddUp", "position 4, pass 3", "fails", /^angle; .*angle 6\.000 deg; torque went into friction/],
    ["passesAddUp", "position 7, pass 3", "fails", /ratio 0\.738\d; net 361\.0 N\.m; .*lbf\.ft/],
    [
      "passesAddUp",
      "position 12, pass 3",
      "fails",
      /ratio 1\.193; net 602\.5 N\.m; .*adapter sum turned round/,
    ],
  ]);
  const record = tableAt(page, "record");
  expect([record.rows, record.missing, record.wanted]).toEqual([79, 1, [{ pass: "pass 2", position: "14" }]]);
});

test("next time: 21 um is a change, 4 um is none", async () => {
  expectNotProven(await openNotebook("pump-2-next-time"), [
    ["unchanged", "8", "fails", /^21 um against at most 5\.1 um$/],
  ]);
});
