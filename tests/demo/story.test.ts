// The demo pages tell one story: what each must say, in which order, and what moves when a reading does.
import { existsSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { parseMarkdown } from "../../src/document/markdown.ts";
import type { Inline } from "../../src/document/markdown-inline.ts";
import type { OpenPage } from "../../src/engine/opened.ts";
import { expectNotProven, notProven, openNotebook, textAt } from "./helpers.ts";

const pump = ["opening", "as-found", "after-rework", "tightening", "next-time"].map(
  (name) => `pump-2-${name}`,
);
const pages = [...pump, "cover-16-as-found", "cover-16-tightening"];

const notesOf = (page: OpenPage): readonly string[] =>
  page.page.items.flatMap((item) => (item.kind === "note" ? [item.text] : []));

const linksOf = (inlines: readonly Inline[]): readonly string[] =>
  inlines.flatMap((part) =>
    part.type === "link" ? [part.href] : "inlines" in part ? linksOf(part.inlines) : [],
  );

describe.each(pages)("%s", (id) => {
  test("begins with what is invented and ends with what it does not cover and a sign-off", async () => {
    const page = await openNotebook(id);
    const notes = notesOf(page);
    expect(page.page.items[0]?.kind).toBe("note");
    expect(notes[0]).toMatch(/invented/);
    expect(notes[0]).toMatch(/asks/);
    expect(notes.at(-1)).toMatch(/\*\*What this page does not cover\*\*/);
    expect(page.page.items.at(-1)?.kind).toBe("sign-off");
  });

  test("comes to each stage once", async () => {
    const { page } = await openNotebook(id);
    const stages = page.items.map((item) => item.stage).filter((stage) => stage !== undefined);
    const begun = stages.filter((stage, i) => stage !== stages[i - 1]);
    expect(begun).toEqual([...new Set(stages)]);
  });

  test("links lead to pages that are there", async () => {
    const links = notesOf(await openNotebook(id)).flatMap((text) =>
      parseMarkdown(text).flatMap((block) =>
        block.type === "list" ? block.items.flatMap(linksOf) : linksOf(block.inlines),
      ),
    );
    expect(links.length).toBeGreaterThan(0);
    for (const link of links) {
      const named = /^#page=([a-z0-9-]+)$/.exec(link)?.[1];
      expect(existsSync(new URL(`../../notebooks/${named}.yaml`, import.meta.url)), link).toBe(true);
    }
  });

  test("every given, check and reading says where it comes from", async () => {
    const { page } = await openNotebook(id);
    const bare = page.items.flatMap((item) =>
      ["given", "check", "reading"].includes(item.kind) && item.source === undefined && "name" in item
        ? [item.name]
        : [],
    );
    expect(bare).toEqual([]);
  });
});

test("a lift is cautioned before its first gap", async () => {
  for (const id of ["pump-2-opening", "cover-16-as-found"]) {
    const { page } = await openNotebook(id);
    const gaps = page.items.findIndex((item) => item.kind === "reading" && item.name === "gaps");
    const codes = page.items.slice(0, gaps).flatMap((item) => (item.kind === "caution" ? [item.code] : []));
    expect(codes, id).toEqual(expect.arrayContaining(["C2", "C3"]));
  }
});

test("nineteen of twenty on the tray: the hold point stays closed and names the position", async () => {
  const page = await openNotebook("pump-2-opening");
  const tray = page.page.items.find((item) => item.kind === "reading" && item.name === "tray");
  if (tray?.kind !== "reading") throw new Error("no tray");
  page.enter("tray", tray.rows.replace("\n7\n", "\n"));
  page.change("firstCount", "19");
  page.change("secondCount", "19");
  await page.settle();
  expect(notProven(page).map(({ check }) => check)).toContain("boltsAllOut");
  expect(textAt(page, "boltsOut.missingPositions")).toBe("7");
});

test("two counts that differ keep the hold point closed", async () => {
  const page = await openNotebook("pump-2-opening");
  page.change("secondCount", "19");
  await page.settle();
  expect(notProven(page)[0]?.check).toBe("boltsAllOut");
});

test("bolts 5 and 6 without their temperature: looser by 4.60 um, and still judged with their doubt", async () => {
  const page = await openNotebook("pump-2-as-found");
  const item = page.page.items.find((each) => each.kind === "reading" && each.name === "boltTemperatures");
  if (item?.kind !== "reading") throw new Error("no temperatures");
  page.enter("boltTemperatures", item.rows.replaceAll(",5.0,", ",21.0,"));
  await page.settle();
  const loose = page.line("loose")?.value;
  if (!loose || !("type" in loose) || loose.type !== "checks") throw new Error("no checks");
  expect(
    loose.rows
      .filter(({ key }) => key === "5" || key === "6")
      .map(({ value }) => "why" in value && value.why),
  ).toEqual(["10.2 um ± 3.6 um against at most 15 um", "11.2 um ± 3.6 um against at most 15 um"]);
});

test("the row that was passed over, once written, is no finding any more", async () => {
  const page = await openNotebook("pump-2-tightening");
  const item = page.page.items.find((each) => each.kind === "reading" && each.name === "record");
  if (item?.kind !== "reading") throw new Error("no record");
  page.enter(
    "record",
    `${item.rows.trimEnd()}\npass 2,14,300,29.0,none,329,329,N.m,,W1,fitter B,day 1 10:18,\n`,
  );
  await page.settle();
  expectNotProven(page, [
    ["passesAddUp", "position 4, pass 3", "fails", /^angle/],
    ["passesAddUp", "position 7, pass 3", "fails", /0\.738/],
    ["passesAddUp", "position 12, pass 3", "fails", /1\.193/],
  ]);
});
