import { describe, expect, test } from "vitest";
import {
  dimensions,
  dimensionWords,
  divideDimensions,
  multiplyDimensions,
  powerDimension,
  sameDimension,
} from "../../src/units/dimension.ts";
import { kinds, kindsAgree, kindsOf } from "../../src/units/kind.ts";

test("dimensions multiply, divide and take roots", () => {
  const { force, length, torque, area } = dimensions;
  expect(multiplyDimensions(force, length)).toEqual(torque);
  expect(divideDimensions(torque, length)).toEqual(force);
  expect(powerDimension(area, 0.5)).toEqual(length);
  expect(sameDimension(powerDimension(powerDimension(length, 1 / 3), 3), length)).toBe(true);
  expect(Object.is(powerDimension(force, 0).mass, 0)).toBe(true);
});

test("dimensionWords(d) prefers the name of a kind", () => {
  expect(dimensionWords(dimensions.force)).toBe("force");
  expect(dimensionWords(dimensions.stress)).toBe("stress");
  expect(dimensionWords(powerDimension(dimensions.length, 2))).toBe("area");
  expect(dimensionWords(powerDimension(dimensions.length, 5))).toBe("length^5");
  expect(dimensionWords(multiplyDimensions(dimensions.mass, dimensions.length))).toBe("mass length");
  expect(dimensionWords(divideDimensions(dimensions.length, dimensions.temperature))).toBe(
    "length/temperature",
  );
  expect(
    dimensionWords(
      divideDimensions(dimensions.mass, multiplyDimensions(dimensions.length, dimensions.temperature)),
    ),
  ).toBe("mass/(length temperature)");
});

describe("kinds", () => {
  test("kindsOf(d) lists what shares a dimension", () => {
    expect(kindsOf(dimensions.ratio)).toEqual(["ratio", "count", "angle"]);
    expect(kindsOf(dimensions.torque)).toEqual(["torque", "energy", "torsional stiffness"]);
    expect(kindsOf(dimensions.temperature)).toEqual(["temperature", "temperature difference"]);
  });
  test("only stress with pressure and ratio with count stand for each other", () => {
    const names = Object.values(kinds).map((info) => info.kind);
    const pairs = names.flatMap((a) =>
      names.filter((b) => a < b && kindsAgree(a, b)).map((b) => `${a}, ${b}`),
    );
    expect(pairs).toEqual(["count, ratio", "pressure, stress"]);
    for (const a of names) for (const b of names) expect(kindsAgree(a, b)).toBe(kindsAgree(b, a));
  });
});
