// A heading that names a unit is read in that unit, and no sentence about it names another.
import { describe, expect, test } from "vitest";
import { headingFor, meantBy, unitHint, unitSaid } from "../../src/document/column-heading.ts";
import { heading } from "../../src/document/csv.ts";
import type { ColumnKind } from "../../src/document/item.ts";

const columns: Readonly<Record<string, ColumnKind>> = {
  position: "tag",
  torque: "torque",
  d: "length",
  dM: "length",
  headA: "length",
  temp: "temperature",
  remark: "text",
};

const read = (text: string) => {
  const meant = meantBy(heading(text), columns);
  return meant && [meant.name, meant.unit];
};

describe("meantBy", () => {
  test.each<[string, string, string]>([
    ["Torque_ft_lb", "torque", "lbf.ft"],
    ["Torque ft-lb", "torque", "lbf.ft"],
    ["torque (ft lb)", "torque", "ft lb"],
    ["Torque in lb", "torque", "lbf.in"],
    ["torque, Nm", "torque", "N.m"],
    ["d thou", "d", "thou"],
    ["d_thou", "d", "thou"],
    ["d in mm", "d", "mm"],
    ["d in", "d", "in"],
    ["temp F", "temp", "degF"],
    ["Temp °C", "temp", "degC"],
    ["temp_deg_F", "temp", "degF"],
    ["head_a_mm", "headA", "mm"],
    ["Head a [mm]", "headA", "mm"],
  ])("%s is %s in %s", (text, name, unit) => {
    expect(read(text)).toEqual([name, unit]);
  });

  test.each<[string, string]>([
    ["head_a", "headA"],
    ["d_m", "dM"], // a column of that name, not d in metres
    ["Position", "position"],
    ["remark", "remark"],
  ])("%s is %s without a unit", (text, name) => {
    expect(read(text)).toEqual([name, undefined]);
  });

  test.each(["Torque_kgm", "torque note", "d_kN", "temp of ring", "position mm", "ft lb"])(
    "%s is no column of these",
    (text) => {
      expect(read(text)).toBeUndefined();
    },
  );
});

test("unitSaid finds the unit whatever stands before it", () => {
  expect(unitSaid(heading("Torqu_ft_lb"), "torque")).toBe("lbf.ft");
  expect(unitSaid(heading("up_outer_along_mm"), "length")).toBe("mm");
  expect(unitSaid(heading("up_outer_along"), "length")).toBeUndefined();
});

test("a hint gives two units to choose from, and a begun table the usual one", () => {
  expect(unitHint("torque", "torque")).toBe(
    "write the unit that the numbers are in, as in torque/N.m or torque/lbf.ft",
  );
  expect(headingFor("torque", "torque")).toBe("torque/N.m");
});
