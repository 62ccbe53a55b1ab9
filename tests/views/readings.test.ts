// The parts of entering readings that need no page: front digits, questions, rows as text, places, changes kept.
import { assert, constantFrom, property, string } from "fast-check";
import { describe, expect, test } from "vitest";
import type { ReadingItem } from "../../src/document/item.ts";
import { readPage } from "../../src/document/read.ts";
import { backwards, spliced, spliceOf } from "../../src/document/splice.ts";
import type { TableValue } from "../../src/engine/line.ts";
import { readingValue } from "../../src/engine/reading.ts";
import { isProblem, type Problem, sentence } from "../../src/problem.ts";
import { filled, frontOf, frontOfNominal, neighbours, zeroSlip } from "../../src/readings/front-digits.ts";
import { decimalsRead } from "../../src/readings/nominal.ts";
import { nextWanted, type Step, stepsOf } from "../../src/readings/places.ts";
import { questionAbout } from "../../src/readings/plausible.ts";
import { readingCsv } from "../../src/readings/reading-csv.ts";
import { cannotRead, correct, setAside, take } from "../../src/readings/take.ts";
import { onScreen } from "../../src/units/on-screen.ts";
import { quantity } from "../../src/units/quantity.ts";
import { emptyPage } from "./bench-page.ts";

const { page } = readPage(emptyPage, "page.yaml");
const found = page?.items.find((item) => item.kind === "reading");
if (found?.kind !== "reading") throw new Error("the page did not open");
const holes: ReadingItem = found;
const heads = "position,depth,direction,diameter/mm,state,reason\n";

function tableOf(rows: string) {
  const value = readingValue(holes, rows, "page");
  if (isProblem(value)) throw new Error(sentence(value));
  if (value.type !== "table") throw new Error(value.type);
  return value;
}

function stepAt(rows: string, words: string): Step {
  const step = stepsOf(holes, tableOf(rows)).find((one) => one.words === words);
  if (!step) throw new Error(`no ${words}`);
  return step;
}

const ok = (text: string | Problem): string => {
  if (isProblem(text)) throw new Error(sentence(text));
  return text;
};

const csvOf = (made: ReturnType<typeof readingCsv>): string => {
  if (isProblem(made)) throw new Error(sentence(made));
  return made.csv;
};

describe("front digits", () => {
  const front = frontOf(["25.012", "25.034", "24.990"]);
  test.each([
    ["12", "25.012"],
    ["5", "25.005"],
    ["112", "25.112"],
    ["24990", "24.990"],
    ["24.99", "24.99"],
    ["-3", "-3"],
    ["0.985 in", "0.985 in"],
  ])("%s means %s behind 25.0", (typed, meant) => {
    expect(filled(typed, front)).toMatchObject({ text: meant });
  });
  test("more figures than the others have are never guessed at", () => {
    expect(filled("250125", front)).toEqual({ tooMany: "250125" });
  });
  test("stand only where most readings agree on them and there are two decimals", () => {
    expect(frontOf(["25.0", "26.1"])).toBeUndefined();
    expect(frontOf(["1.25", "7.31", "19.40"])).toBeUndefined();
    expect(frontOf([])).toBeUndefined();
    expect(filled("12", undefined)).toMatchObject({ text: "12" });
  });
  test("come from a nominal where nothing has been read", () => {
    expect(frontOfNominal(25, 3)?.front).toBe("25.0");
    expect(frontOfNominal(0.9843, 4)?.front).toBe("0.98");
    expect(frontOfNominal(25, 1)).toBeUndefined();
  });
  test("of tenths of a thou: 03 behind 0.75 is 0.7503, and .7503 is the same in full", () => {
    const tenths = frontOf(["0.7502", ".7504", "0.7501"]);
    expect(tenths).toEqual({ front: "0.75", open: 2 });
    expect(filled("03", tenths)).toEqual({ text: "0.7503", byFront: true });
    expect(filled(".7503", tenths)).toEqual({ text: "0.7503", byFront: false });
    expect(filled(".7503", undefined)).toEqual({ text: "0.7503", byFront: false });
  });
  test("with a zero too many or too few have the reading that was meant beside them", () => {
    const tenths = { front: "0.75", open: 2 };
    expect(zeroSlip("0.75003", tenths)).toBe("0.7503");
    expect(zeroSlip("0.753", tenths)).toBe("0.7503");
    for (const text of ["0.7503", "0.75123", "0.78003", "0.75", "0.7503 in"])
      expect(zeroSlip(text, tenths)).toBeUndefined();
  });
  test.each([
    ["3 um", 0.003, 3],
    ["2 um", 0.002, 3],
    ["5 um", 0.005, 3],
    ["10 um, a hundredth or a thousandth", 0.01, undefined],
    ["0.1 thou, tenths or halves of tenths", 0.0001, undefined],
    ["0.08 thou", 0.00008, undefined],
    ["0.5 thou", 0.0005, 4],
  ])("a gauge of %s gives decimals only where no other number is likely", (_, uncertainty, decimals) => {
    expect(decimalsRead(uncertainty)).toBe(decimals);
  });
  test("have neighbours with the same last figures", () => {
    expect(front && neighbours("25.090", front)).toEqual(["24.990", "25.190"]);
  });
});

describe("a value far from its group", () => {
  const rows = `${heads}1,up outer,along,25.010,,\n1,up outer,across,25.012,,\n1,up split,along,25.011,,\n`;
  const ask = (text: string, where = "hole 1, up split, across", item = holes) => {
    const value = quantity(text.includes(" ") ? text : `${text} mm`, "length");
    if (isProblem(value)) throw new Error(sentence(value));
    const table = tableOf(rows);
    return questionAbout({ item, table, step: stepAt(rows, where), text, value, front: frontOf(["25.010"]) })
      ?.words;
  };
  /** The question about a reading in inches. */
  const inch = (text: string, others: readonly string[]) => askedInInches(text, others)?.choices;
  const inchWords = (text: string, others: readonly string[]) => askedInInches(text, others)?.words;
  const askedInInches = (text: string, others: readonly string[]) => {
    const value = quantity(`${text} in`, "length");
    if (isProblem(value)) throw new Error(sentence(value));
    const inches = heads.replace("/mm", "/in");
    const places = ["up outer,along", "up outer,across", "up split,along"];
    const table = tableOf(inches + others.map((other, i) => `1,${places[i]},${other},,\n`).join(""));
    const item = { ...holes, odd: { diameter: "0.5 thou" } };
    const step = stepAt(inches, "hole 1, up split, across");
    return questionAbout({ item, table, step, text, value, front: { front: "0.75", open: 2 } });
  };
  test("is asked about in words", () => {
    expect(ask("25.102")).toBe("25.102 is 91 µm from the others of hole 1: keep or type again?");
  });
  test("as the first of all is held against the nominal", () => {
    const first = (text: string) => {
      const value = quantity(`${text} mm`, "length");
      if (isProblem(value)) throw new Error(sentence(value));
      const step = stepAt(heads, "hole 1, up outer, along");
      return questionAbout({
        item: holes,
        table: tableOf(heads),
        step,
        text,
        value,
        front: frontOfNominal(25, 3),
      })?.words;
    };
    expect(first("25.102")).toBe(
      "25.102 does not begin with 25.0, as the nominal of the page: keep or type again?",
    );
    expect(first("25.012")).toBeUndefined();
  });
  test("as the first of all with a zero too many or too few is asked about by name", () => {
    expect(inch("0.75003", [])).toEqual(["0.75003", "0.7503"]);
    expect(inch("0.753", [])).toEqual(["0.753", "0.7503"]);
    expect(inch("0.7503", [])).toBeUndefined();
  });
  test("ten times off among the others is asked about by name", () => {
    const others = ["0.7503", "0.7504", "0.7502"];
    expect(inch("0.75003", others)).toEqual(["0.75003", "0.7503"]);
    expect(inch("0.753", others)).toEqual(["0.753", "0.7503"]);
    expect(inchWords("0.753", others)).toBe("0.753 is 2.7 thou from the others of hole 1: was 0.7503 meant?");
    expect(inch("0.7505", others)).toBeUndefined();
    expect(inch("0.75035", others)).toBeUndefined(); // read to a half of a tenth
  });
  test("is not asked about within the limit of the page", () => {
    expect(ask("25.041")).toBeUndefined();
    expect(ask("0.985 in")).toBeUndefined();
  });
  test("whose neighbour lies nearer is asked about by name", () => {
    expect(ask("25.090")).toContain("was 24.990 meant?");
  });
  test("in a group of its own is measured by all, with more room", () => {
    expect(ask("25.060", "hole 3, up outer, along")).toBeUndefined();
    expect(ask("52.012", "hole 3, up outer, along")).toContain("of this table");
  });
  test("is not asked about where the page states no limit and little has been read", () => {
    const { odd: _odd, ...item } = holes;
    expect(ask("25.041", "hole 1, up split, across", item)).toBeUndefined();
  });
});

describe("rows", () => {
  const rows = `${heads}1,up outer,along,25.102,,\n1,up outer,across,,,\n`;
  const at = (words: string, text = rows) => ({ item: holes, rows: text, step: stepAt(text, words) });
  test("take a reading where there is none, or fill a blank that is there", () => {
    expect(ok(take(at("hole 3, up outer, along"), "25.034"))).toBe(`${rows}3,up outer,along,25.034,,\n`);
    expect(ok(take(at("hole 1, up outer, across"), "25.011"))).toBe(
      rows.replace("across,,", "across,25.011,"),
    );
  });
  test("keep what is corrected", () => {
    const after = ok(correct(at("hole 1, up outer, along"), "25.012", "digits swapped", "fitter B"));
    expect(after.split("\n")[0]).toMatch(/,reason,by$/);
    expect(after).toContain("\n1,up outer,along,25.012,,digits swapped,fitter B\n");
    expect(tableOf(after).states).toEqual(["corrected", "missing", "entered"]);
  });
  test("keep what is set aside, with what it had corrected", () => {
    const once = ok(correct(at("hole 1, up outer, along"), "25.012", "digits swapped", "fitter B"));
    const after = ok(setAside(at("hole 1, up outer, along", once), "gauge slipped", "fitter B"));
    expect(after).toContain("25.012,set aside,digits swapped; gauge slipped,fitter B");
    expect(tableOf(after).states.filter((state) => state === "entered")).toEqual([]);
  });
  test("leave missing what cannot be read, and do not ask for it again", () => {
    const after = ok(cannotRead(at("hole 1, up outer, across"), "surface scored", "fitter B"));
    const steps = stepsOf(holes, tableOf(after));
    expect(steps[1]).toMatchObject({ state: "missing", reason: "not read: surface scored" });
    expect(nextWanted(steps, 0)).toBe(2);
  });
  describe("of several quantities", () => {
    const { uncertainty: _uncertainty, ...bare } = holes;
    const record: ReadingItem = {
      ...bare,
      columns: { position: "tag", read: "torque", angle: "angle", wrench: "tag" },
      key: ["position"],
      expect: { position: ["5", "15"] },
      odd: { angle: "4 deg" },
    };
    const start = "position,read/N.m,angle/deg,wrench\n";
    const table = (text: string): TableValue => {
      const value = readingValue(record, text, "page");
      if (isProblem(value) || value.type !== "table") throw new Error("no table");
      return value;
    };
    const steps = (text: string) => stepsOf(record, table(text));
    const step = (text: string, words: string) => {
      const found = steps(text).find((one) => one.words === words);
      if (!found) throw new Error(words);
      return { item: record, rows: text, step: found };
    };
    test("a refused one stays refused while the others of its row are read", () => {
      const refused = ok(cannotRead(step(start, "hole 5, wrench"), "no tag on it", "fitter B"));
      expect(steps(refused)[2]).toMatchObject({ state: "missing", reason: "wrench not read: no tag on it" });
      expect(nextWanted(steps(refused), 2)).toBe(3);
      expect(nextWanted(steps(refused), -1)).toBe(0); // the torque of the same row is still wanted
      const read = ok(take(step(refused, "hole 5, read"), "529"));
      expect(read).toBe(
        "position,read/N.m,angle/deg,wrench,reason,by\n5,529,,,wrench not read: no tag on it,fitter B\n",
      );
      const both = ok(cannotRead(step(read, "hole 5, angle"), "dial hidden", "fitter B"));
      expect(
        steps(both)
          .slice(1)
          .map(({ reason }) => reason),
      ).toEqual(["angle not read: dial hidden", "wrench not read: no tag on it", "", "", ""]);
      const later = ok(take(step(both, "hole 5, angle"), "12"));
      expect(steps(later)[1]).toMatchObject({ text: "12", state: "entered" });
      expect(steps(later)[2]).toMatchObject({ state: "missing", reason: "wrench not read: no tag on it" });
    });
    test("a blank beside the reason of a correction is wanted", () => {
      const text = "position,read/N.m,angle/deg,wrench,reason\n5,392,12,W1,\n5,529,,W1,lbf.ft scale\n";
      expect(nextWanted(steps(text), -1)).toBe(1);
    });
    test("a row is odd by the column that is, and by no other", () => {
      const text = `${start}5,529,12,W1\n15,530,13,W1\n5,1,1,W1\n`;
      const { key: _key, expect: _expect, ...three } = record;
      const value = readingValue(three, text.replace("5,1,1", "6,531,40"), "page");
      if (isProblem(value) || value.type !== "table") throw new Error("no table");
      expect(stepsOf(three, value).flatMap(({ state, words }) => (state === "odd" ? [words] : []))).toEqual([
        "row 3, angle",
      ]);
    });
  });
  test("what may stay blank is not wanted", () => {
    const item = { ...holes, may: ["diameter"] };
    expect(nextWanted(stepsOf(item, tableOf(heads)), -1)).toBeUndefined();
    expect(nextWanted(stepsOf(holes, tableOf(heads)), -1)).toBe(0);
  });
  test("a table without a column for reasons gains one", () => {
    const bare = {
      ...holes,
      columns: { position: "tag", depth: "tag", direction: "tag", diameter: "length" },
    } as const;
    const answer = ok(
      correct(
        {
          item: bare,
          rows: rows.replaceAll(",state,reason", "").replaceAll(/,,$/gm, ""),
          step: stepAt(rows, "hole 1, up outer, along"),
        },
        "25.0",
        "x",
        "fitter B",
      ),
    );
    expect(answer.split("\n")[0]).toMatch(/,reason,by$/);
    const value = readingValue({ ...holes, ...bare }, answer, "page");
    if (isProblem(value)) throw new Error(sentence(value));
    expect(value).toMatchObject({ type: "table", states: ["corrected", "missing", "entered"] });
  });
  test("go out as CSV and mean the same when they come in again", () => {
    const after = ok(correct(at("hole 1, up outer, along"), "25.012", '=1+2, "so"', "fitter B"));
    const made = () => readingCsv(holes, after, false);
    const out = csvOf(made());
    expect(out).toBe(csvOf(made()));
    expect(out).toMatch(/25\.012.*"'=1\+2, ""so"""/);
    const { states } = tableOf(out);
    expect(states).toEqual(tableOf(after).states);
  });
});

test("a change kept as one place gives both texts back", () => {
  const text = string({ unit: constantFrom("a", "b", "\n", ","), maxLength: 30 });
  assert(
    property(text, text, (before, after) => {
      const splice = spliceOf(before, after);
      expect(spliced(before, splice)).toBe(after);
      expect(spliced(after, backwards(splice))).toBe(before);
    }),
  );
});

describe("units in a sentence", () => {
  test.each([
    ["must be above 500 N.m; 12 um off", "must be above 500 N·m; 12 µm off"],
    ["is kgf.m meant?", "is kgf·m meant?"],
    ['got "6 N.m", in lbf.ft', 'got "6 N.m", in lbf·ft'],
    ["tension.preload in pump.yaml:5 at 20 degC.", "tension.preload in pump.yaml:5 at 20 °C."],
    ["5 mm2, and 3 kN/mm", "5 mm², and 3 kN/mm"],
  ])("%s", (typed, shown) => {
    expect(onScreen(typed)).toBe(shown);
  });
});
