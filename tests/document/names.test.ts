import { expect, test } from "vitest";
import { checkName, isReserved, toCamelCase } from "../../src/document/names.ts";
import { columnFunctions, isFunctionName, scalarFunctions } from "../../src/formula/functions.ts";

test("every function of the formula language, and pi, is reserved", () => {
  for (const name of [...scalarFunctions, ...columnFunctions])
    expect(isFunctionName(name) && isReserved(name)).toBe(true);
  expect(isReserved("pi")).toBe(true);
});

test.each([
  ["net torque", "netTorque"],
  ["head_a", "headA"],
  ["Nut-Factor", "nutFactor"],
  ["MPa", "mPa"],
  ["ID", "id"],
  ["3 bolts", "bolts"],
])("toCamelCase(%j) is %s", (text, name) => {
  expect(toCamelCase(text)).toBe(name);
});

test("checkName accepts camelCase and nothing else", () => {
  for (const name of ["a", "nutFactor", "bolt2", "aB3c"]) expect(checkName(name, "x")).toBeUndefined();
  for (const name of ["", "A", "nut-factor", "nut_factor", "2a", "é", "a b", "a.b", "x".repeat(61)])
    expect(checkName(name, "x")?.code).toBe("bad-name");
});
