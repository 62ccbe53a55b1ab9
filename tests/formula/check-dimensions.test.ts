import { describe, expect, test } from "vitest";
import { checkDimensions, type Typed } from "../../src/formula/check-dimensions.ts";
import { parse } from "../../src/formula/parse.ts";
import { columnOf } from "../../src/formula/refusal.ts";
import { isProblem, type Problem, problem } from "../../src/problem.ts";
import { dimensionWords, sameDimension } from "../../src/units/dimension.ts";
import { type Kind, kinds } from "../../src/units/kind.ts";

const kindOf: Readonly<Record<string, Kind>> = {
  torque: "torque",
  energy: "energy",
  force: "force",
  stress: "stress",
  pressure: "pressure",
  length: "length",
  diameter: "length",
  area: "area",
  ratio: "ratio",
  number: "count",
  angle: "angle",
  hot: "temperature",
  cold: "temperature",
  rise: "temperature difference",
  expansion: "expansion",
  stiffness: "stiffness",
};
const columnKinds: Readonly<Record<string, Kind>> = {
  "segments.length": "length",
  "segments.area": "area",
  "holes.temperature": "temperature",
};

function typeOf(name: string): Typed | Problem {
  const kind = kindOf[name];
  if (kind) return { kind, dimension: kinds[kind].dimension };
  const column = columnKinds[name];
  if (column) return { kind: column, dimension: kinds[column].dimension, column: true };
  return name === "open"
    ? { dimension: kinds.ratio.dimension, truth: true }
    : problem({ code: "unknown-name", what: name });
}

function checked(text: string): Typed | Problem {
  const tree = parse(text);
  return isProblem(tree) ? tree : checkDimensions(tree, typeOf);
}

function refused(text: string): Problem {
  const found = checked(text);
  if (!isProblem(found)) throw new Error(`${text} passed`);
  return found;
}

describe("checkDimensions(tree, typeOf) finds the dimension and, where it is known, the kind", () => {
  test.each<[string, Kind, Kind | undefined]>([
    ["torque / (0.2 * diameter)", "force", undefined],
    ["2 * torque", "torque", "torque"],
    ["torque * ratio / number", "torque", "torque"],
    ["force * length", "torque", undefined],
    ["torque + force * length", "torque", "torque"],
    ["energy + force * length", "energy", "energy"],
    ["torque * angle", "energy", undefined],
    ["2 * pi * torque + energy", "energy", "energy"],
    ["torque * (length / diameter) + energy", "energy", "energy"],
    ["2 * 3 * torque * cos(angle)", "torque", "torque"],
    ["tan(angle) - angle", "angle", "angle"],
    ["stress + pressure", "stress", "stress"],
    ["force / area - pressure", "stress", "pressure"],
    ["-force", "force", "force"],
    ["abs(force)", "force", "force"],
    ["sqrt(area)", "length", undefined],
    ["sqrt(stress^2 + 3 * pressure^2)", "stress", undefined],
    ["(diameter^3)^(1/3)", "length", undefined],
    ["area^0.5", "length", undefined],
    ["diameter^-2 * force", "stress", undefined],
    ["diameter^(2 - 1)", "length", "length"],
    ["ratio^angle", "ratio", undefined],
    ["min(force, 2 * force, 0)", "force", "force"],
    ["max(0, force)", "force", "force"],
    ["ratio > 1 ? force : 0", "force", "force"],
    ["sin(angle) + tan(ratio)", "ratio", undefined],
    ["asin(ratio)", "angle", "angle"],
    ["atan(length / diameter) + angle", "angle", "angle"],
    ["exp(ratio) + ln(length / diameter) + log10(2)", "ratio", undefined],
    ["round(number)", "ratio", undefined],
    ["expansion * rise * length", "length", undefined],
    ["hot - cold", "temperature difference", "temperature difference"],
    ["hot + rise", "temperature", "temperature"],
    ["rise + hot", "temperature", "temperature"],
    ["hot - rise", "temperature", "temperature"],
    ["rise - rise", "temperature difference", "temperature difference"],
    ["max(hot, cold)", "temperature", "temperature"],
    ["expansion * (hot - cold) * length", "length", undefined],
    ["pi * diameter^2 / 4", "area", undefined],
  ])("%s is of %s", (text, dimension, kind) => {
    const found = checked(text);
    if (isProblem(found)) throw new Error(`${found.what} ${found.got}`);
    expect(dimensionWords(found.dimension)).toBe(dimensionWords(kinds[dimension].dimension));
    expect(found.kind).toBe(kind);
    expect(found.truth ?? false).toBe(false);
  });

  test.each<[string, Kind]>([
    ['"5 kN" + force', "force"],
    ['torque + "5 N.m"', "torque"],
    ['energy + "5 N.m"', "energy"],
    ['hot + "20 K"', "temperature"],
    ['rise + "20 K"', "temperature difference"],
    ['hot - "20 degC"', "temperature difference"],
  ])("%s takes a quantity for what it can be", (text, kind) => {
    expect(checked(text)).toMatchObject({ kind });
  });

  test("a comparison is a truth", () => {
    expect(checked("force > 0")).toMatchObject({ truth: true });
    expect(checked("force > 0 ? torque < energy / 2 : open")).toSatisfy(isProblem);
    expect(checked("force > 0 ? stress < pressure : open")).toMatchObject({ truth: true });
    expect(checked("open ? force : 0")).toMatchObject({ kind: "force" });
  });

  test("a literal 0 fits any dimension, 0 times something does not", () => {
    expect(checked("force + 0")).toMatchObject({ kind: "force" });
    expect(checked("0 > force")).toMatchObject({ truth: true });
    expect(checked("-0 + torque")).toMatchObject({ kind: "torque" });
    expect(checked("0")).toMatchObject({ anyDimension: true });
    expect(refused("0 * length + force").code).toBe("formula-unlike-dimensions");
    expect(refused("1 + force").code).toBe("formula-unlike-dimensions");
  });
});

describe("checkDimensions(tree, typeOf) refuses, names both sides in words, and gives the column", () => {
  test.each([
    ["force + stress", "force + stress", 7],
    ["1 - force", "plain number - force", 3],
    ["torque + energy", "torque + energy", 8],
    ["energy - torque", "energy - torque", 8],
    ["force > stress", "force > stress", 7],
    ["max(force, length)", "force and length", 1],
    ["ratio > 1 ? force : torque", "force or torque", 11],
    ["force * length + force", "torque + force", 16],
    [
      "force * length^3 + stress",
      "force length^3 + stress".replace("force length^3", "mass length^4/time^2"),
      18,
    ],
    ["hot + cold", "temperature reading + temperature reading", 5],
    ["rise - hot", "temperature difference - temperature reading", 6],
    ["0 - hot", "plain number - temperature reading", 3],
    ["hot + angle", "temperature reading + angle", 5],
    ["hot < rise", "temperature reading < temperature difference", 5],
    ["angle + number", "angle + count", 7],
    ["-hot", "the negative of a temperature reading at column 1", 2],
    ["sin(length)", "sin of length", 5],
    ["2 + exp(force / area)", "exp of stress", 15],
    ["ln(force)", "ln of force", 4],
    ["round(length)", "round of length", 7],
    ["asin(angle * length)", "asin of length", 12],
    ["2^length", "length as exponent", 3],
    ["length^ratio", "length to an exponent that may change", 7],
    ["length^pi", "length to an exponent that may change", 7],
    ["force ? 1 : 2", "force", 1],
    ["(force > 0) + 1", "the outcome of a comparison", 8],
    ["(force > 0) > (force < 1)", "the outcome of a comparison", 8],
    ["-(force > 0)", "the outcome of a comparison", 9],
    ["segments.length + length", "the whole column segments.length", 1],
    ["max(segments.length, length)", "the whole column segments.length", 5],
    ["segments.length > 0", "the whole column segments.length", 1],
    ["force > 0 ? segments.length : length", "the whole column segments.length", 13],
    ["sum(length)", "sum of one number", 5],
    ["mean(mean(segments.length))", "mean of one number", 6],
    ["sum(segments.length + segments.area)", "length + area", 21],
    ["sum(segments.length > 0)", "the outcome of a comparison", 21],
    ["sum(holes.temperature)", "the sum of temperature readings", 1],
  ])("%s: %s at column %i", (text, got, column) => {
    const found = refused(text);
    expect(found.got).toBe(got);
    expect(columnOf(found)).toBe(column);
  });

  test("a name that is not known is passed on as it is", () => {
    expect(refused("2 * unknown")).toMatchObject({ code: "unknown-name", what: "unknown" });
  });
});

describe("checkDimensions(tree, typeOf) over columns", () => {
  test.each<[string, Kind, Kind | undefined]>([
    ["count(segments.length)", "count", "count"],
    ["sum(segments.length)", "length", "length"],
    ["deviation(segments.area)", "area", "area"],
    ["mean(holes.temperature)", "temperature", "temperature"],
    ["deviation(holes.temperature)", "temperature difference", "temperature difference"],
    [
      "largest(holes.temperature) - smallest(holes.temperature)",
      "temperature difference",
      "temperature difference",
    ],
    ["sum(1/segments.length)", "expansion", undefined],
    ["sum(segments.length / (segments.area * stress))", "compliance", undefined],
    ["sum((segments.length - mean(segments.length))^2)", "area", undefined],
    ["sum(segments.length > length ? segments.length : 0)", "length", "length"],
    ["mean(max(segments.length, length))", "length", "length"],
    ["force * sum(segments.length / (segments.area * stress))", "length", undefined],
  ])("%s is of %s", (text, dimension, kind) => {
    const found = checked(text);
    if (isProblem(found)) throw new Error(`${found.what} ${found.got}`);
    if (text.includes("1/segments")) expect(found.dimension.length).toBe(-1);
    else expect(sameDimension(found.dimension, kinds[dimension].dimension)).toBe(true);
    expect(found.kind).toBe(kind);
    expect(found.column ?? false).toBe(false);
  });

  test("a bare column stays a column", () => {
    expect(checked("segments.length")).toMatchObject({ column: true, kind: "length" });
  });
});
