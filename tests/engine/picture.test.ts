// What a picture cannot take is refused by name, with the nearest name, before anything is drawn.
import { describe, expect, test } from "vitest";
import type { PictureInputs } from "../../src/engine/line.ts";
import { pictureNamed } from "../../src/engine/pictures.ts";
import { pictures } from "../../src/pictures/index.ts";
import { isProblem, problem, sentence } from "../../src/problem.ts";
import { given, lineAt, open, reading, settled } from "./helpers.ts";

const pictureNames = pictures.map(({ id }) => id);

function pictureFault(name: string, inputs: PictureInputs) {
  const found = pictureNamed(name);
  return isProblem(found) ? found : found.faultOf(inputs);
}

const picture = (name: string, of: Readonly<Record<string, string>>): string =>
  `  - picture: ${name}\n    of: ${JSON.stringify(of)}`;
const lever = { wrenchLength: "650 mm", adapterLength: "60 mm", targetTorque: "500 N.m" };

async function said(name: string, of: Readonly<Record<string, string>>): Promise<string> {
  const page = await settled(given("torque", "500 N.m"), picture(name, of));
  const { value } = lineAt(page, "#2");
  return isProblem(value) ? sentence(value) : "taken";
}

describe("a picture on a page", () => {
  test("is taken with the inputs it declares", async () => {
    expect(await said("wrench", { ...lever, adapterAngle: "45 deg" })).toBe("taken");
  });

  test.each<[string, string, Readonly<Record<string, string>>, string]>([
    [
      "an input misspelt",
      "wrench",
      { ...lever, adapterAngel: "90 deg" },
      "picture wrench: got an input adapterAngel, must be given only wrenchLength, adapterLength, adapterAngle, setting, targetTorque; did you mean adapterAngle?",
    ],
    [
      "an input of another kind",
      "wrench",
      { ...lever, adapterAngle: "45 mm" },
      "picture wrench: got adapterAngle as length, must be an angle",
    ],
    [
      "a quantity whose dimension has no name, for a plain number",
      "trial-spread",
      { mean: "140 kN", spread: "3 mm^5" },
      "picture trial-spread: got spread as length^5, must be a ratio",
    ],
    [
      "a formula whose dimension has no name",
      "wrench",
      { ...lever, setting: "torque * torque" },
      "picture wrench: got setting as mass^2 length^4/time^4, must be a torque",
    ],
    [
      "a needed input missing",
      "wrench",
      { wrenchLength: "650 mm", targetTorque: "torque" },
      "picture wrench: got no adapterLength, must have a length for adapterLength; add adapterLength under of",
    ],
    [
      "none of two",
      "wrench",
      { wrenchLength: "650 mm", adapterLength: "60 mm" },
      "picture wrench: got neither setting nor targetTorque, must have one of them; add setting or targetTorque under of",
    ],
    [
      "half of a pair",
      "joint-diagram",
      { preload: "100 kN", externalLoad: "20 kN", loadFactor: "0.2", clampedStiffness: "900 kN/mm" },
      "picture joint-diagram: got clampedStiffness and no boltStiffness, must have a stiffness for boltStiffness; add boltStiffness under of",
    ],
    [
      "a list where a number is wanted",
      "run-on-bars",
      { nuts: "torque", least: "8 N.m", most: "60 N.m" },
      "picture run-on-bars: got nuts as torque, must be a list",
    ],
    [
      "an unknown picture",
      "wrnch",
      lever,
      `picture: got wrnch, must be one of ${pictureNames.join(", ")}; did you mean wrench?`,
    ],
    [
      "the name a picture had before",
      "torque-angle",
      { band: "4 deg" },
      `picture: got torque-angle, must be one of ${pictureNames.join(", ")}; it is called angle-by-nut now`,
    ],
  ])("%s is refused by name", async (_, name, of, words) => {
    expect(await said(name, of)).toBe(words);
  });

  test("a choice may be written as a word", async () => {
    const page = await settled(
      reading("gaps", { step: "tag", x: "length", y: "length", gap: "length" }, [
        "step,x/mm,y/mm,gap/mm",
        "1,0,0,2",
      ]),
      picture("gap-map", { stations: "gaps", planes: "gaps", yRuns: "up" }),
      picture("gap-map", { stations: "gaps", planes: "gaps", yRuns: "sideways" }),
    );
    const { value } = lineAt(page, "#2");
    if (isProblem(value) || value.type !== "picture") throw new Error("the picture has no inputs");
    expect(value.inputs["yRuns"]).toEqual({ kind: "text", text: "up" });
    const other = lineAt(page, "#3").value;
    if (isProblem(other) || other.type !== "picture") throw new Error("the picture has no inputs");
    expect(isProblem(other.inputs["yRuns"])).toBe(true);
  });
});

describe("every declared input", () => {
  const all = pictures.flatMap(({ id, of }) => Object.keys(of).map((input) => [id, input] as const));

  test.each(all)("%s: %s misspelt is refused with the right name beside it", (name, input) => {
    const wrong = `${input}x`;
    const fault = pictureFault(name, { [wrong]: { kind: "text", text: "x" } });
    expect(fault?.code).toBe("unknown-input");
    expect(fault?.got).toContain(wrong);
    expect(fault?.suggestions).toContain(input);
  });

  test.each(pictureNames.map((name) => [name]))(
    "%s without its inputs names the first one missing",
    (name) => {
      const fault = pictureFault(name, {});
      expect(fault?.code).toBe("missing-input");
      expect(fault?.hint).toMatch(/^add \w+ under of$/);
    },
  );
});

test("an input without an answer is no fault of the picture", () => {
  const none = problem({ code: "missing", what: "gauge", got: "nothing" });
  const inputs = { nuts: none, least: none, most: none };
  expect(pictureFault("run-on-bars", inputs)).toBeUndefined();
});

test("a further list of the fit map that is no check is that list misspelt", () => {
  const rows = [{ position: { kind: "text", text: "1" } }] as const;
  const fault = pictureFault("fit-map", { froms: { kind: "list", rows } });
  expect(fault?.hint).toBe("did you mean forms?");
});

test("a page with a misspelt picture still opens", () => {
  expect(open(`splitline: 1\ntitle: a page\npage:\n${picture("wrnch", lever)}\n`).lines()).toHaveLength(1);
});

test("a picture says why what it draws may not hold, and draws no held verdict as proven", async () => {
  const page = await settled(
    reading("places", { position: "tag", x: "length", y: "length" }, [
      "position,x/mm,y/mm",
      "1,0,0",
      "2,9,0",
    ]),
    `  - reading: holes
    columns: { position: tag, depth: tag, direction: tag, diameter: length, state: tag, reason: text }
    key: [position, depth, direction]
    expect: { position: [1, 2], depth: [a], direction: [along, across] }
    rows: |
      position,depth,direction,diameter/mm,state,reason
      1,a,along,25.010,,
      1,a,across,25.010,,
      2,a,along,25.011,,
      2,a,across,25.030,set aside,gauge slipped`,
    `  - working: pair
    each: holes
    key: position
    by: fit-of-pair
    of: ${JSON.stringify({
      holeSmallest: "smallest(holes.diameter)",
      holeLargestDepthMean: "largest(holes.diameter)",
      shankLargest: "25.000 mm",
      shankMean: "25.000 mm",
      tightestAllowed: "-10 um",
      loosestAllowed: "15 um",
      holeUncertainty: "1 um",
      shankUncertainty: "1 um",
    })}`,
    picture("fit-map", {
      positions: "places",
      pairs: "pair",
      tightestAllowed: "-10 um",
      loosestAllowed: "15 um",
    }),
    picture("hole-section", { readings: "holes", nominal: "25 mm", position: "2" }),
  );
  const drawn = (name: string) => {
    const { value } = lineAt(page, name);
    if (isProblem(value)) throw new Error(sentence(value));
    if (value.type !== "picture") throw new Error(value.type);
    return value;
  };
  expect(drawn("#5").reservations.map(({ code }) => code)).toEqual(["readings-set-aside"]);
  const map = drawn("#4");
  expect(map.reservations.map(({ what }) => what)).toEqual(["position 2 with 1 reading set aside"]);
  const pairs = map.inputs["pairs"];
  if (!pairs || isProblem(pairs) || pairs.kind !== "list") throw new Error("no pairs");
  expect(pairs.rows.map((row) => row["state"])).toEqual([
    { kind: "text", text: "proven" },
    { kind: "text", text: "unproven" },
  ]);
});
