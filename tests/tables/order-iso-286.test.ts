// Laws of order that the tables of ISO 286 keep, and what they print twice.
import { describe, expect, test } from "vitest";
import { isProblem } from "../../src/problem.ts";
import { iso286Ranges, toleranceLimits } from "../../src/tables/iso-286.ts";
import { climbs, rises } from "./order.ts";

const letters = "A B C D E F G H J JS K M N P R S T U V X Y Z ZA ZB ZC".split(" ");

describe("ISO 286", () => {
  const tolerances = iso286Ranges.tolerances();
  const holes = iso286Ranges.holes();
  const shafts = iso286Ranges.shafts();
  const ofHole = (letter: string): string =>
    letter <= "H"
      ? `${letter}_EI`
      : letter === "K" || letter === "N"
        ? `${letter}_base_ES_le8`
        : `${letter}_base_ES`;
  const ofShaft = (letter: string): string =>
    letter <= "h" ? `${letter}_es` : letter === "k" ? "k_4to7_ei" : `${letter}_ei`;
  const tabulated = letters.filter((letter) => letter !== "J" && letter !== "JS");

  test.each([
    ["tolerances", tolerances],
    ["holes", holes],
    ["shafts", shafts],
  ])("the ranges of the %s run from 0 to 500 mm without a gap or an overlap", (_, ranges) => {
    expect(ranges.map(({ over }) => over)).toEqual([0, ...ranges.slice(0, -1).map(({ upto }) => upto)]);
    climbs(
      ranges.map(({ upto }) => upto),
      "upto",
    );
    expect(ranges.at(-1)?.upto).toBe(500);
  });

  test("tolerances grow with grade and with size", () => {
    const grades = Array.from({ length: 18 }, (_, i) => `IT${i + 1}`);
    for (const range of tolerances)
      climbs(
        grades.map((grade) => range.line(grade)),
        `${range.upto}`,
      );
    for (const grade of grades)
      rises(
        tolerances.map((range) => range.line(grade)),
        grade,
      );
  });

  test("deviations of one letter grow with size, those of one size in the order of the letters", () => {
    for (const letter of tabulated) {
      const small = letter.toLowerCase();
      rises(
        shafts
          .map((range) => Math.abs(range.line(ofShaft(small)) ?? Number.NaN))
          .filter((v) => !Number.isNaN(v)),
        small,
      );
    }
    for (const range of shafts)
      rises(
        tabulated.map((letter) => range.line(ofShaft(letter.toLowerCase()))),
        `${range.upto}`,
      );
  });

  // Each deviation is printed twice, for the shaft and with the other sign for the hole.
  test("the deviation of a hole is that of the shaft with the other sign, before delta", () => {
    holes.forEach((hole, i) => {
      for (const letter of tabulated) {
        const printed = hole.line(ofHole(letter));
        const turned = printed === undefined ? undefined : 0 - printed;
        expect(turned, `${letter} ${hole.upto}`).toBe(shafts[i]?.line(ofShaft(letter.toLowerCase())));
      }
    });
  });

  test("delta is the step between two grades; J and j grow with size", () => {
    for (const range of holes) {
      const of = tolerances.find(({ over, upto }) => range.over >= over && range.upto <= upto);
      for (const grade of [3, 4, 5, 6, 7, 8]) {
        const step = (of?.line(`IT${grade}`) ?? 0) - (of?.line(`IT${grade - 1}`) ?? 0);
        const delta = range.line(`delta_IT${grade}`);
        expect(delta, `${range.upto} IT${grade}`).toBe(range.upto <= 3 ? 0 : step);
      }
    }
    for (const column of ["J6_ES", "J7_ES", "J8_ES"])
      rises(
        holes.map((range) => range.line(column)),
        column,
      );
    for (const column of ["j5_j6_ei", "j7_ei"])
      rises(
        shafts.map((range) => -(range.line(column) ?? Number.NaN)),
        column,
      );
    for (const range of holes) climbs([range.line("J6_ES"), range.line("J7_ES"), range.line("J8_ES")], "J");
  });

  test("the upper limit of every class lies above the lower one", () => {
    const classes = [...letters, ...letters.map((letter) => letter.toLowerCase())].flatMap((letter) =>
      Array.from({ length: 18 }, (_, i) => `${letter}${i + 1}`),
    );
    const found = classes.flatMap((name) => holes.map(({ upto }) => toleranceLimits(upto, name)));
    const limits = found.flatMap((one) => (isProblem(one) ? [] : [one]));
    expect(limits.length).toBeGreaterThan(20_000);
    expect(limits.filter(({ upper_um, lower_um }) => upper_um <= lower_um)).toEqual([]);
  });
});
