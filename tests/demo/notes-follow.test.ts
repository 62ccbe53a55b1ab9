// Notes of the demo pages say what the sums say, before a change and after it.
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { OpenPage } from "../../src/engine/opened.ts";
import { plainText } from "../../src/engine/prose.ts";
import { noteOfLine } from "../../src/engine/unbound-numbers.ts";
import { change, open } from "../engine/helpers.ts";

async function demo(name: string): Promise<OpenPage> {
  const text = readFileSync(new URL(`../../notebooks/${name}.yaml`, import.meta.url), "utf8");
  const page = open(text);
  await page.settle();
  return page;
}

/** All notes of a page as one text. */
const notes = (page: OpenPage): string =>
  page
    .lines()
    .flatMap((line) => {
      const note = noteOfLine(line);
      return note ? [plainText(note)] : [];
    })
    .join("\n");

interface Case {
  readonly page: string;
  readonly typed: Readonly<Record<string, string>>;
  readonly before: readonly string[];
  readonly after: readonly string[];
}

const cases: readonly Case[] = [
  {
    page: "pump-2-as-found",
    typed: { loosestAllowed: "30 um" },
    before: ["proven up to 11.4 µm, fails above 18.6 µm", "fails: 3, 13", "26.7 µm, the owner allows 15 µm"],
    after: ["proven up to 26.4 µm, fails above 33.6 µm", "unproven: 3", "26.7 µm, the owner allows 30 µm"],
  },
  {
    page: "pump-2-as-found",
    typed: { cardTorque: "300 lbf.ft" },
    before: ["416.7 MPa against a yield of 300.0 MPa"],
    after: ["240.4 MPa against a yield of 300.0 MPa"],
  },
  {
    page: "pump-2-after-rework",
    typed: { preload: "100 kN" },
    before: ["at a preload of 148.3 kN"],
    after: ["at a preload of 100 kN"],
  },
  {
    page: "pump-2-opening",
    typed: { mass: "2000 kg" },
    before: ["6.913 times the weight", "(3.341 kN)", "Load cell: 8 of 9 proven; fails: 3."],
    after: ["4.079 times the weight", "(5.662 kN)", "Load cell: 9 of 9 proven."],
  },
  {
    page: "pump-2-old-card",
    typed: { cardTorque: "600 N.m", tableScatter: "30 %" },
    before: ["says 520 lbf·ft (705.0 N·m)", "minus 25 % on a nut factor is plus 33.33 %, minus 20.00 %"],
    after: ["says 600 N·m", "minus 30 % on a nut factor is plus 42.86 %, minus 23.08 %"],
  },
  {
    page: "pump-2-tightening",
    typed: { netTorque: "450 N.m" },
    before: ["tightened to 500 N·m net", "537.0 N·m is the most", "10.45° are elastic"],
    after: ["tightened to 450 N·m net", "487.0 N·m is the most", "; what the nuts turn more"],
  },
  {
    page: "pump-2-next-time",
    typed: { holeDoubt: "1 um" },
    before: ["real beyond 5.1 µm"],
    after: ["real beyond 3.2 µm"],
  },
  {
    page: "cover-16-as-found",
    typed: { loosestAllowed: "1.5 thou" },
    before: ["Loose: 5 of 8 proven; fails: 3; no answer: 15; unproven: 11."],
    after: ["Loose: 7 of 8 proven; no answer: 15."],
  },
  {
    page: "cover-16-tightening",
    typed: { netTorque: "150 lbf.ft" },
    before: ["go to 200 lbf·ft net"],
    after: ["go to 150 lbf·ft net"],
  },
];

describe("a changed given is told by every note that speaks of it", () => {
  test.each(cases)("$page, $typed", async ({ page: name, typed, before, after }) => {
    const page = await demo(name);
    for (const words of before) expect(notes(page)).toContain(words);
    await change(page, typed);
    for (const words of after) expect(notes(page)).toContain(words);
    for (const words of before) if (!after.includes(words)) expect(notes(page)).not.toContain(words);
  });
});
