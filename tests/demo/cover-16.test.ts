// A second machine from data alone: every planted problem of demo-data/cover-16.md and nothing else.
import { beforeAll, describe, expect, test } from "vitest";
import type { OpenPage } from "../../src/engine/opened.ts";
import { expectNotProven, figure, notProven, openNotebook, tableAt, textAt } from "./helpers.ts";

const inch = 0.0254;
const thou = inch / 1000;
const lbf = 4.4482216152605;
const percent = 0.01;

describe("as found", () => {
  let page: OpenPage;
  beforeAll(async () => {
    page = await openNotebook("cover-16-as-found");
  });

  test("planted problems 1 to 10", () =>
    expectNotProven(page, [
      ["twist", "3", "fails", /^0\.013 in against at most 0\.006 in$/],
      ["level", "3", "fails", /^1\.862 thou\/in against at most 0\.6707 thou\/in$/],
      ["notStuck", "3", "fails", /^1\.462 against at most 1\.1$/],
      ["oval", "7", "fails", /^0\.6 thou ± [\d.]+ thou against at most 0\.4 thou$/],
      ["oval", "15", "no answer", /hole 15, bottom, round: not measured yet/],
      ["taper", "13", "fails", /^0\.5 thou ± [\d.]+ thou against at most 0\.35 thou$/],
      ["taper", "15", "no answer", /hole 15, bottom, round: not measured yet/],
      ["tight", "15", "no answer", /hole 15, bottom, round: not measured yet/],
      ["loose", "3", "fails", /^1\.07 thou ± 0\.13 thou against at most 0\.6 thou$/],
      ["loose", "11", "unproven", /^0\.57 thou ± 0\.13 thou against at most 0\.6 thou/],
      ["loose", "15", "no answer", /hole 15, bottom, round: not measured yet/],
      ["mark", "5", "fails", /^none, must be 3 lines$/],
      ["unstretched", "12", "fails", /^12 thou against at most 5 thou$/],
      ["protrudes", "14", "fails", /^0\.04 in against at least 0\.1 in$/],
      ["runOn", "6", "fails", /^1\.500 lbf\.ft against at least 4 lbf\.ft/],
    ]));
  test("the one missing reading is counted, and no other", () => {
    expect(tableAt(page, "holes").missing).toBe(1);
    for (const name of ["gaps", "loads", "shanks", "bolts"])
      expect(tableAt(page, name).missing, name).toBe(0);
  });
  test("bolt 9 was warm: 0.44 thou are taken off, and its fit is proven", () => {
    figure(page, "shankCorrection.correction@9", "-0.44", thou);
    expect(notProven(page).some(({ check, key }) => key === "9" && ["tight", "loose"].includes(check))).toBe(
      false,
    );
  });
  test("step 2 is ratio 1.06", () => figure(page, "pull.ratio@2", "1.06"));
});

describe("tightening", () => {
  let page: OpenPage;
  beforeAll(async () => {
    page = await openNotebook("cover-16-tightening");
  });

  test("planted problems 11 to 15", () =>
    expectNotProven(page, [
      ["passesAddUp", "position 9, pass 2", "fails", /missing row/],
      ["passesAddUp", "position 15, pass 3", "fails", /ratio 0\.9346; net 186\.0 lbf\.ft; .*run-on left out/],
      ["passesAddUp", "position 2, pass 3", "fails", /angle 31\.00 deg; the nut ran on/],
      ["passesAddUp", "position 6, pass 3", "fails", /ratio 1\.357; .*scale in N\.m, and written as lbf\.ft/],
      ["passesAddUp", "position 12, pass 3", "fails", /ratio 1\.125; net 226\.5 lbf\.ft; .*adapter left out/],
    ]));
  test("63 of 64 rows", () => {
    const record = tableAt(page, "record");
    expect([record.rows, record.missing]).toEqual([63, 1]);
  });
  test("opposite pairs round the circle", () =>
    expect(textAt(page, "sequence.sequence")).toBe("1 9 5 13 3 11 7 15 2 10 6 14 4 12 8 16"));
  test("20 000 lbf, 88 % of proof at the top of scatter", () => {
    figure(page, "tension", "20000", lbf);
    figure(page, "belowProof", "88", percent);
  });
});
