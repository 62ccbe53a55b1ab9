// What pictures draw and say, as text beside what was stored. A changed text is kept as *.changed beside
// the stored one; look at the picture before taking it over.
import { existsSync, mkdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, test } from "vitest";
import type { PictureInputs } from "../../../src/engine/line.ts";
import { isProblem, problem, sentence } from "../../../src/problem.ts";
import { gaps, list, mm, oneHole, si, text } from "./demo-lists.ts";
import { answer, type Drawing } from "./drawn.ts";
import { drawnText, PlainElement, usePlainDocument } from "./plain-document.ts";
import { samples } from "./samples.ts";

beforeAll(usePlainDocument);

const stored = (name: string): string =>
  fileURLToPath(new URL(`saved/${name.replace(/\W+/g, "-")}.txt`, import.meta.url));

async function drawn(picture: string, inputs: PictureInputs): Promise<Drawing> {
  const found = await answer(picture, inputs);
  if (isProblem(found)) throw new Error(sentence(found));
  return found;
}

async function trouble(picture: string, inputs: PictureInputs): Promise<string> {
  const found = await answer(picture, inputs);
  return isProblem(found) ? sentence(found) : "drawn";
}

function asPlain(drawing: Drawing, width: number): PlainElement {
  const root: unknown = drawing.draw(width);
  if (!(root instanceof PlainElement)) throw new Error("drawn in another document");
  return root;
}

function textOf(drawing: Drawing): string {
  const { title, head, rows } = drawing.table;
  return [
    drawing.sentence,
    ...(drawing.source === undefined ? [] : [`limits: ${drawing.source}`]),
    "",
    title,
    ...[head, ...rows].map((cells) => cells.join(" | ")),
    ...[328, 890].flatMap((width) => ["", `at ${width}`, drawnText(asPlain(drawing, width))]),
    "",
  ].join("\n");
}

describe("saved drawings", () => {
  test.each(samples)("$name is drawn as stored", async ({ name, picture, inputs }) => {
    const now = textOf(await drawn(picture, inputs));
    const file = stored(name);
    if (!existsSync(file) && process.env["CI"] === undefined) {
      mkdirSync(fileURLToPath(new URL("saved/", import.meta.url)), { recursive: true });
      writeFileSync(file, now);
    }
    const before = readFileSync(file, "utf8");
    if (now === before) rmSync(`${file}.changed`, { force: true });
    else writeFileSync(`${file}.changed`, now);
    expect(now).toBe(before);
  });
});

describe("what the demo files must show", () => {
  const sample = (name: string) => {
    const found = samples.find((each) => each.name === name);
    if (!found) throw new Error(`no sample ${name}`);
    return drawn(found.picture, found.inputs);
  };

  test("the fit map has twenty places and twelve rings judged: 4 proven, 3 unproven, 5 fail", async () => {
    const { sentence: words, table } = await sample("fit-map as found");
    expect(table.rows).toHaveLength(20);
    const states = table.rows.map(([, , state]) => state);
    const count = (state: string) => states.filter((each) => each === state).length;
    expect([count("proven"), count("unproven"), count("fails"), count("not judged")]).toEqual([4, 3, 5, 8]);
    expect(words).toContain("8 (oval), 13 (loose, taper), 15 (class) and 20 (pin)");
  });

  test("every state on the fit map is a word and a mark of its own shape", async () => {
    const drawing = await sample("fit-map as found");
    for (const width of [328, 890]) {
      const lines = drawnText(asPlain(drawing, width)).split("\n");
      for (const [state, n] of [
        ["proven", 4],
        ["unproven", 3],
        ["fails", 5],
      ] as const) {
        expect(lines.filter((line) => line.includes(`svg state-mark ${state}`))).toHaveLength(n);
        expect(lines.filter((line) => new RegExp(`"${state}[",]`).test(line))).toHaveLength(n);
      }
    }
  });

  test("the gap map names the stuck corner, the tilt above its limit and the twist", async () => {
    const { sentence: words } = await sample("gap-map stuck corner");
    for (const part of ["tilt 0.71 mm/m, above the 0.43 allowed", "twist 0.18 mm", "de right, 1.25 mm"])
      expect(words).toContain(part);
  });

  test("the dowel limit opens from 0.40 to 1.20 mm/m and ends at 30 mm", async () => {
    const { table, sentence: words } = await sample("dowel-limit");
    expect(words).toContain("0.40 mm/m at the start");
    expect(table.rows.map(([step, , , allowed]) => [step, allowed])).toEqual([
      ["0", "0.40"],
      ["1", "0.41"],
      ["2", "0.41"],
      ["3", "0.43"],
      ["4", "0.43"],
      ["5", "0.48"],
      ["6", "0.60"],
      ["7", "1.20"],
      ["8", "free"],
    ]);
  });

  test("the tightening map lights the next position with its own set torque", async () => {
    const { sentence: words } = await sample("tightening-map passed over");
    expect(words).toContain("19 of 20 done; next is position 14, set 329 N·m");
  });

  test("the record shows four odd rows: angle at 4, torque at 7 and 12, a gap at 14", async () => {
    const { sentence: words } = await sample("angle-by-nut third pass");
    expect(words).toContain("Outside: 4 (6°, low).");
    expect(words).toContain("7 (361 N·m, low), 12 (602.5 N·m, high)");
    expect((await sample("tightening-map all written")).sentence).toContain("Missing in pass 2: 14.");
  });

  test("torque against angle sets the three odd nuts apart, each by what is off", async () => {
    const drawing = await sample("torque-against-angle third pass");
    for (const width of [328, 890]) {
      const words = drawnText(asPlain(drawing, width));
      for (const odd of ["4: angle low", "7: torque low", "12: torque high"])
        expect(words).toContain(`"${odd}" (limit-text)`);
      expect(words.match(/circle outlier/g)).toHaveLength(3);
      expect(words.match(/circle point/g)).toHaveLength(20);
    }
    // The nuts that lie on one place are counted where there is room: 20 less the three odd ones.
    const counts = [...drawnText(asPlain(drawing, 890)).matchAll(/"×(\d+)"/g)].map(([, n]) => Number(n));
    expect(counts.reduce((sum, n) => sum + n, 0)).toBe(17);
    expect(drawnText(asPlain(drawing, 328))).not.toContain("×");
  });

  test("fits against limits: 7 proven, 2 fail, 3 whose uncertainty crosses a limit", async () => {
    const drawing = await sample("fits-against-limits as found");
    const { sentence: words, table } = drawing;
    expect(words).toContain("7 of 12 fits are proven between −10 and 15 µm. Fails: 3 and 13.");
    expect(words).toContain("Unproven: 11, 16 and 18.");
    expect(table.rows.find(([position]) => position === "18")).toEqual([
      "18",
      "9.4",
      "11.7",
      "3.6",
      "unproven",
    ]);
    for (const width of [328, 890]) {
      const lines = drawnText(asPlain(drawing, width)).split("\n");
      for (const label of ["tightest −10", "loosest 15"])
        expect(lines.filter((line) => line.includes(`"${label}" (limit-text)`))).toHaveLength(1);
      for (const [state, n] of [
        ["proven", 7],
        ["unproven", 3],
        ["fails", 2],
      ] as const)
        expect(lines.filter((line) => line.includes(`svg state-mark ${state}`))).toHaveLength(n);
    }
  });

  test("the trial: 134.0 to 150.3 kN about 142.4, supports 19.1 % within 20 %", async () => {
    const { sentence: words, table } = await sample("trial-spread");
    // 0.205 and 0.230 mm over 1.53 um/kN are 133.99 and 150.33 kN; the mean of the six, 0.21783 mm, 142.37 kN.
    expect(words).toBe(
      "Preload of 6 bolts from 134.0 kN to 150.3 kN, mean 142.4 kN. The trial supports ±19.1 %, within the ±20 % counted with.",
    );
    expect(table.rows.map(([bolt, , off]) => [bolt, off])).toContainEqual(["2", "−5.9 %"]);
  });
});

describe("one changed reading", () => {
  test("changes number, lowest corner and table of the gap map", async () => {
    const lists = ({ stations, planes, tiltLimit }: ReturnType<typeof gaps>) => ({
      stations,
      planes,
      tiltLimit,
    });
    const step = text("3");
    const before = await drawn("gap-map", { ...lists(gaps()), step });
    const other = gaps((name, at, gap) => (name === "de_right" && at === "3" ? 1.95 : gap));
    const after = await drawn("gap-map", { ...lists(other), step });
    expect(after.sentence).not.toBe(before.sentence);
    expect(after.sentence).toContain("Lowest at mid right, 1.62 mm");
    expect(drawnText(asPlain(after, 328))).toContain('"1.95"');
    expect(after.table.rows[3]).toContain("1.95");
    expect(after.table.rows[2]).toEqual(before.table.rows[2]);
  });

  test("fills a box of the hole section", async () => {
    const some = oneHole("8", ["lo_outer across"]);
    const depth = text("lo_outer");
    const open = list([...some.rows, { position: text("8"), depth, direction: text("across") }]);
    const before = await drawn("hole-section", { readings: open, nominal: mm(25) });
    expect(before.sentence).toContain("7 of 8 readings");
    expect(before.sentence).toContain("Next: lo outer across.");
    const filled = list([
      ...some.rows,
      { position: text("8"), depth, direction: text("across"), diameter: mm(25.0021) },
    ]);
    const after = await drawn("hole-section", { readings: filled, nominal: mm(25) });
    expect(after.sentence).toContain("8 of 8 readings, smallest 25.0021 mm at lo outer across");
    expect(drawnText(asPlain(after, 328))).toContain('"25.0021"');
  });
});

describe("what is missing", () => {
  const found = samples[0]?.inputs ?? {};
  const { pairs: _, ...withoutPairs } = found;

  test.each<[string, string, PictureInputs]>([
    [
      "picture fit-map: got no pairs, must have a list for pairs; add pairs under of",
      "fit-map",
      withoutPairs,
    ],
    [
      "picture fit-map: got no answer for pairs; holes: got nothing",
      "fit-map",
      { ...found, pairs: problem({ code: "missing-input", what: "holes", got: "nothing" }) },
    ],
    [
      "pin row 1 · picture fit-map: got no state, must have a text for state",
      "fit-map",
      { ...found, pin: list([{ position: text("1") }]) },
    ],
    [
      "picture fit-map: got position 21 in pairs, must be one of the positions drawn",
      "fit-map",
      { ...found, pairs: list([{ position: text("21"), state: text("proven") }]) },
    ],
    [
      "nuts row 1 · picture run-on-bars: got runOn as length, must be a torque",
      "run-on-bars",
      { nuts: list([{ position: text("1"), runOn: mm(3) }]), least: si("torque", 8), most: si("torque", 60) },
    ],
    [
      "picture torque-against-angle: got no torque in record, must have at least one; the torque at the nut stands in the rows that count of record-findings",
      "torque-against-angle",
      { record: list([{ position: text("1"), angle: si("angle", 0.2) }]), band: si("angle", 0.07) },
    ],
    [
      "picture trial-spread: got no preload in trial, must have at least one",
      "trial-spread",
      { trial: list([{ position: text("5") }]), mean: si("force", 1e5), spread: si("ratio", 0.2) },
    ],
    [
      "picture hole-section: got 2 positions, must say which one in position",
      "hole-section",
      { readings: list([...oneHole("1").rows, ...oneHole("3").rows]), nominal: mm(25) },
    ],
    [
      "picture gap-map: got step 12, must be one of 0, 1, 2, 3, 4, 5, 6, 7, 8",
      "gap-map",
      { stations: gaps().stations, planes: gaps().planes, step: si("count", 12) },
    ],
  ])("%s", async (words, picture, inputs) => {
    expect(await trouble(picture, inputs)).toBe(words);
  });

  test("a pair without an answer is drawn as no answer, never as proven", async () => {
    const pairs = list([{ position: text("1"), problem: text("shank: got nothing") }]);
    const drawing = await drawn("fit-map", {
      ...found,
      pairs,
      oval: list([]),
      taper: list([]),
      pin: list([]),
      class: list([]),
    });
    expect(drawing.sentence).toContain("0 of 1 holes proven. No answer: 1.");
    expect(drawnText(asPlain(drawing, 890))).toContain("state-mark no-answer");
  });
});

describe("a plan is turned, never mirrored", () => {
  test("on a narrow sheet x runs up and the left side stays on the left", async () => {
    const drawing = await drawn("fit-map", samples[0]?.inputs ?? {});
    const at = (width: number, position: string) => {
      const line = drawnText(asPlain(drawing, width))
        .split("\n")
        .find((each) => new RegExp(`middle "${position}"`).test(each));
      return (line ?? "").split(" ")[0]?.split(",").map(Number) ?? [];
    };
    const turn = (width: number) => {
      const [[ax = 0, ay = 0], [bx = 0, by = 0], [cx = 0, cy = 0]] = [
        at(width, "1"),
        at(width, "10"),
        at(width, "11"),
      ];
      return Math.sign((bx - ax) * (cy - by) - (by - ay) * (cx - bx));
    };
    expect(turn(328)).toBe(turn(890));
    expect(at(328, "1")[1]).toBeGreaterThan(at(328, "10")[1] ?? 0);
    expect(at(328, "1")[0]).toBeLessThan(at(328, "20")[0] ?? 0);
  });
});
