import { expect, test } from "vitest";
import { isProblem, sentence } from "../../src/problem.ts";
import { standardTolerance, toleranceLimits } from "../../src/tables/iso-286.ts";

const limits = (size: number, designation: string): [number, number] => {
  const found = toleranceLimits(size, designation);
  if (isProblem(found)) throw new Error(sentence(found));
  return [found.upper_um, found.lower_um];
};

test("printed limits come back: [upper, lower] in micrometres", () => {
  const printed: readonly (readonly [number, string, number, number])[] = [
    [25, "k6", 15, 2],
    [12, "m6", 18, 7],
    [35, "f7", -25, -50],
    [100, "s6", 93, 71],
    [30, "h6", 0, -13],
    [25, "H7", 21, 0],
    [25, "H12", 210, 0],
    [25, "K7", 6, -15],
    [25, "M7", 0, -21],
    [25, "R7", -20, -41],
    [60, "R7", -30, -60],
    [190, "R7", -60, -106],
    [130, "M6", -8, -33],
    [50, "P7", -17, -42],
    [280, "M6", -9, -41],
    [100, "JS7", 17.5, -17.5],
    [21, "k6", 15, 2],
    [17, "b11", -150, -260],
    [350, "A13", 2090, 1200],
    [100, "E8", 126, 72],
    [25, "R10", -28, -112],
  ];
  for (const [size, designation, upper, lower] of printed)
    expect(limits(size, designation), `${size} ${designation}`).toEqual([upper, lower]);
});

test("the corrected limits of ISO 286-2:1988 are kept, not the first print", () => {
  expect(limits(350, "A13")[0]).not.toBe(2000);
  expect(limits(100, "E8")[0]).not.toBe(125);
  expect(limits(25, "R10")[0]).not.toBe(-10);
  expect(limits(300, "f9")[1]).toBe(-186);
});

test("delta rule: a fit of the shaft basis is the same fit as that of the hole basis", () => {
  const pairOf = (size: number, hole: string, shaft: string) => {
    const [upper, lower] = limits(size, hole);
    const [shaftUpper, shaftLower] = limits(size, shaft);
    return [upper - shaftLower, lower - shaftUpper];
  };
  for (const letter of ["p", "r", "s", "u", "x", "z", "zc"]) {
    for (const size of [
      3.5, 5, 9, 12, 16, 20, 25, 35, 45, 60, 75, 90, 110, 130, 170, 190, 240, 300, 380, 420, 500,
    ]) {
      expect(pairOf(size, `${letter.toUpperCase()}7`, "h6"), `${size} ${letter}`).toEqual(
        pairOf(size, "H7", `${letter}6`),
      );
    }
  }
  for (const letter of ["k", "m", "n"])
    expect(pairOf(40, `${letter.toUpperCase()}7`, "h6")).toEqual(pairOf(40, "H7", `${letter}6`));
});

test("coarser grades take no delta", () => {
  expect(limits(25, "P8")[0]).toBe(-22);
  expect(limits(25, "N9")[0]).toBe(0);
  expect(limits(25, "M9")[0]).toBe(-8);
  expect(limits(2, "N9")[0]).toBe(-4);
});

test("ranges are over and up to and including", () => {
  expect(limits(18, "H7")).toEqual([18, 0]);
  expect(limits(18.001, "H7")).toEqual([21, 0]);
  expect(limits(50.000_000_000_1, "H7")).toEqual([25, 0]);
  expect(limits(24, "u6")).toEqual([54, 41]);
  expect(limits(24.5, "u6")).toEqual([61, 48]);
});

test("k takes its lower deviation in grades 4 to 7 only, j and J in the grades tabulated", () => {
  expect(limits(25, "k7")[1]).toBe(2);
  expect(limits(25, "k8")[1]).toBe(0);
  expect(limits(25, "k3")[1]).toBe(0);
  expect(limits(25, "j6")[1]).toBe(-4);
  expect(limits(25, "J7")[0]).toBe(12);
  for (const text of ["j8", "J9", "J5"]) expect(isProblem(toleranceLimits(25, text)), text).toBe(true);
});

test("nothing is invented: sizes, letters and grades outside the standard are Problems", () => {
  for (const size of [0, -1, 500.1, Number.NaN, Number.POSITIVE_INFINITY])
    expect(isProblem(toleranceLimits(size, "H7")), String(size)).toBe(true);
  for (const text of [
    "",
    "H",
    "7",
    "I7",
    "O7",
    "Q7",
    "W7",
    "cd6",
    "Js7",
    "jS7",
    "H0",
    "H01",
    "H19",
    "H7/k6",
    "H-7",
  ])
    expect(isProblem(toleranceLimits(25, text)), text).toBe(true);
  for (const [size, text] of [
    [20, "t6"],
    [12, "v6"],
    [16, "y6"],
    [20, "T7"],
    [1, "a11"],
    [1, "B11"],
    [1, "H14"],
    [0.9, "N9"],
    [10, "K9"],
  ] as const) {
    expect(isProblem(toleranceLimits(size, text)), `${size} ${text}`).toBe(true);
  }
  const mixed = toleranceLimits(25, "Js7");
  expect(isProblem(mixed) && mixed.suggestions).toEqual(["JS7", "js7"]);
});

test("tolerance values are those of Table 1", () => {
  for (const [size, grade, value] of [
    [10, 14, 360],
    [100, 14, 870],
    [25, 6, 13],
    [50, 7, 25],
    [480, 6, 40],
    [3, 1, 0.8],
    [500, 18, 9700],
  ] as const) {
    expect(standardTolerance(size, grade)).toBe(value);
  }
  expect(isProblem(standardTolerance(25, 6.5))).toBe(true);
});

test("upper minus lower is the tolerance of the grade, and hole A to H mirrors shaft a to h", () => {
  for (const letter of "a b c d e f g h m n p r s u".split(" ")) {
    for (const grade of [5, 6, 7, 8, 9, 11]) {
      const [upper, lower] = limits(40, `${letter}${grade}`);
      expect(upper - lower).toBe(standardTolerance(40, grade));
      if (letter <= "h") {
        const [, holeLower] = limits(40, `${letter.toUpperCase()}${grade}`);
        expect(holeLower + upper).toBe(0);
      }
    }
  }
});
