// Tables on the page: readings with their states, answers and checks by row, tables in from CSV and out.
import { readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { launch, line, newPage, type Served, serve, type Tab } from "./browser.ts";

const tablesPath = fileURLToPath(new URL("tables.yaml", import.meta.url));

let browser: Browser;
let served: Served;
let tab: Tab;
let page: Page;

beforeAll(async () => {
  [browser, served] = await Promise.all([launch(), serve()]);
});
afterAll(async () => {
  await browser.close();
  await served.close();
});
beforeEach(async () => {
  tab = await newPage(browser);
  page = tab.page;
  await page.goto(`${served.url}/index.html`);
  await page.waitForSelector("article h1");
  await page.setInputFiles("input[type=file]", tablesPath);
  await page.getByRole("heading", { level: 1, name: "Holes and bolts by thumb" }).waitFor();
});
afterEach(async () => {
  expect(tab.complaints).toEqual([]);
  await tab.context.close();
});

describe("a table of readings", () => {
  test("says what is missing, odd, corrected and set aside, each with a mark of its own", async () => {
    const holes = line(page, "holes");
    await holes.locator(".reading-notes li").first().waitFor(); // the tables are a part of their own
    const notes = await holes
      .locator(".reading-notes li")
      .evaluateAll((lines) => lines.map((one) => one.textContent?.replace(/\s+/g, " ").trim()));
    expect(notes).toEqual([
      "missing8 wanted: hole 5, all 8",
      "oddhole 3, lower split, along: 25.055 lies farther than 10 µm from the middle of hole 3; keep, correct or set aside",
      "correctedhole 1, upper split, along: 25.111 mm to 25.011 mm; typed wrong",
      "set asidehole 3, lower split, across: 25.034 mm; gauge slipped",
    ]);
    const shapes = await holes
      .locator(".reading-notes svg")
      .evaluateAll((marks) => marks.map((mark) => mark.innerHTML));
    expect(new Set(shapes).size).toBe(4);
    await page.locator(".summary").getByText("8 of 24 readings missing").waitFor();
    await page.locator(".summary").getByText("1 of 24 readings asked about").waitFor();
  });

  test("with two keys reads as a plan, without as rows; a blank is missing and never zero", async () => {
    await line(page, "holes").locator(".plan tbody tr").first().waitFor();
    expect(await line(page, "holes").locator(".plan tbody tr").count()).toBe(3);
    await line(page, "trial").locator("td.missing").first().waitFor();
    expect(await line(page, "trial").locator("td.missing").allTextContents()).toEqual(["missing"]);
  });

  test("opens the entry at the place that was tapped", async () => {
    await line(page, "holes").getByRole("button", { name: "hole 5, all 8" }).click();
    await page.locator(".bench-place").getByText("hole 5, upper outer, along").waitFor();
  });
});

describe("answers by row", () => {
  test("stand in one table with units in the heads; a row opens to its working and answers why", async () => {
    const pair = line(page, "pair");
    const heads = await pair.locator("thead th").allTextContents();
    expect(heads[0]).toBe("position");
    expect(heads.some((head) => head.endsWith("Loosest clearance / µm"))).toBe(true);
    expect(await pair.locator("tbody tr:not(.row-detail) th").allTextContents()).toEqual(["1", "3", "5"]);
    const row = pair.getByRole("button", { name: "pair 3, working" });
    expect(await row.getAttribute("aria-expanded")).toBe("false");
    await row.click();
    await pair.locator(".row-detail:not([hidden]) math").first().waitFor();
    await pair.getByRole("button", { name: "why? loosest clearance of pair 3" }).click();
    const why = page.locator("dialog.why");
    await why.getByText("· position 3").first().waitFor();
    await why.getByText("· bolt 3").first().waitFor(); // the bolt that stands in hole 3
    expect(await why.locator(".why-readings tbody tr").count()).toBeGreaterThan(8);
    expect(await why.locator(".why-readings").first().textContent()).not.toContain("25.012"); // hole 1
  });

  test("follow a change in one row and keep an open row open", async () => {
    await line(page, "pair").getByRole("button", { name: "pair 3, working" }).click();
    await line(page, "holes").getByRole("button", { name: "hole 3, lower split, along" }).click();
    await page.locator(".bench-place").getByText("hole 3, lower split, along").waitFor();
    await page.keyboard.type("34");
    await page.keyboard.press("Enter");
    await page.locator(".bench-ask").getByRole("button", { name: "read again" }).click();
    await page.keyboard.press("Escape");
    await line(page, "form").getByText("25 034").first().waitFor();
    expect(await line(page, "pair").locator(".row-detail:not([hidden])").count()).toBe(1);
  });
});

describe("checks by row", () => {
  test("show exceptions first, and how many are proven", async () => {
    const loose = line(page, "loose");
    expect(await loose.locator(".rows-count").textContent()).toBe("1 of 3 proven");
    const rows = await loose
      .locator(".check-rows li")
      .evaluateAll((found) =>
        found.map((row) => [
          row.querySelector(".state")?.textContent,
          row.querySelector(".row-key")?.textContent,
        ]),
      );
    expect(rows).toEqual([
      ["fails", "pair 3, why?"],
      ["no answer", "pair 5, why?"],
      ["proven", "pair 1, why?"],
    ]);
    expect(await loose.locator(".check-rows .bar").count()).toBe(2);
    expect(
      await loose
        .locator(".proven-rows")
        .evaluate((details) => (details instanceof HTMLDetailsElement ? details.open : true)),
    ).toBe(false);
  });

  test("are named row by row at the top, each a link to its row", async () => {
    const link = page.locator(".summary").getByRole("link", { name: "pair 3" }).first();
    await link.click();
    await page.waitForFunction(() => document.activeElement?.id === "line-loose-row-3");
    expect(new URL(page.url()).hash).toContain("row=3");
    await page
      .locator(".summary")
      .getByText(/of 9 checks proven/)
      .waitFor();
  });
});

describe("a table from a file", () => {
  const panel = () => page.locator("dialog.import");
  const standing = () => line(page, "holes").locator(".caption").textContent();

  beforeEach(async () => {
    await line(page, "holes").getByRole("button", { name: "Add from CSV" }).click();
    await panel().locator("#import-text").waitFor();
  });

  test("is shown before it is taken, then taken whole, and can be taken back", async () => {
    await panel()
      .locator("#import-text")
      .fill("position;depth;direction;diameter\n5;upper outer;along;25,0120\n5;upper outer;across;25,0110\n");
    await panel().getByText("25,0120 without a unit").waitFor();
    expect(await panel().getByRole("button", { name: "Nothing to add yet" }).isDisabled()).toBe(true);
    await panel().getByLabel("unit of diameter").selectOption("mm");
    await panel().getByText("Read with semicolon between fields, decimal comma.").waitFor();
    expect(
      await panel().getByRole("region", { name: "rows as they would stand" }).locator("thead").textContent(),
    ).toContain("diameter / mm");
    await panel().getByRole("button", { name: "Add 2 readings" }).click();
    await line(page, "holes").getByText("19 rows; 6 missing").waitFor();
    await page.getByRole("button", { name: "Undo last change" }).click();
    await line(page, "holes").getByText("17 rows; 8 missing").waitFor();
  });

  test("that is wrong is named by line, and nothing is half taken", async () => {
    const rows = await standing();
    await panel()
      .locator("#import-text")
      .fill(
        "position,depth,direction,diameter/mm\n5,upper outer,along,25.012\n5,upper outer,along,25.013\n9,upper outer,along,x\n",
      );
    await panel().getByText("hole 5, upper outer, along again, after line 2").waitFor();
    await panel().getByText("Line 4, diameter: ").waitFor();
    expect(await panel().locator(".tool.strong").isDisabled()).toBe(true);
    await panel().getByRole("button", { name: "Do not add" }).click();
    expect(await standing()).toBe(rows);
    expect(await page.locator(".changed-bar").isVisible()).toBe(false);
  });

  test("with a value far from all others waits for the reason, which stands in its row", async () => {
    await panel()
      .locator("#import-text")
      .fill("position,depth,direction,diameter/mm\n5,upper outer,along,52.012\n3,upper outer,along,25.033\n");
    await panel().getByText("Line 2, diameter: 52.012 mm, but it must be near the other readings").waitFor();
    expect(await panel().locator(".tool.strong").isDisabled()).toBe(true);
    for (const [field, words] of [
      ["#import-far", "as the drawing says"],
      ["#import-reason", "read again"],
      ["#import-who", "fitter B"],
    ] as const) {
      await panel().locator(field).fill(words);
      await panel().locator(field).press("Tab");
    }
    await panel().getByRole("button", { name: "Add 2 readings" }).click();
    await line(page, "holes").getByText("19 rows; 7 missing").waitFor();
    expect(await line(page, "holes").locator(".reading-notes").textContent()).toContain(
      "read again, fitter B",
    );
  });

  test.each([
    ["holes.xlsx", Buffer.from([0x50, 0x4b, 3, 4, 0, 0]), "a spreadsheet or a zip file"],
    [
      "big.csv",
      Buffer.from(`position,depth,direction,diameter/mm\n${"1,upper outer,along,25.012\n".repeat(100_000)}`),
      "must have at most 20000 rows",
    ],
  ])("%s is answered, not taken", async (name, buffer, words) => {
    const rows = await standing();
    await panel().locator("input[type=file]").setInputFiles({ name, mimeType: "text/csv", buffer });
    await panel().getByText(words).waitFor();
    await page.keyboard.press("Escape");
    expect(await standing()).toBe(rows);
  });

  test("may be dropped on the panel", async () => {
    const data = await page.evaluateHandle(() => {
      const transfer = new DataTransfer();
      transfer.items.add(
        new File(["position,depth,direction,diameter/mm\n5,upper outer,along,25.012\n"], "holes.csv"),
      );
      return transfer;
    });
    await panel().dispatchEvent("drop", { dataTransfer: data });
    await panel().getByRole("button", { name: "Add 1 reading" }).click();
    await line(page, "holes").getByText("18 rows; 7 missing").waitFor();
  });

  test("names every control", async () => {
    await panel()
      .locator("#import-text")
      .fill("position,depth,direction,diameter/mm\n5,upper outer,along,25.012\n");
    await panel().getByRole("button", { name: "Add 1 reading" }).waitFor();
    const nameless = await panel()
      .locator("button, input, select, textarea")
      .evaluateAll((controls) =>
        controls.flatMap((control) => {
          const labels =
            control instanceof HTMLTextAreaElement || control instanceof HTMLInputElement
              ? [...(control.labels ?? [])]
              : [];
          const words = [
            control.getAttribute("aria-label"),
            control.textContent,
            ...labels.map((label) => label.textContent),
          ];
          return words.some((text) => (text ?? "").trim() !== "") ? [] : [control.outerHTML];
        }),
      );
    expect(nameless).toEqual([]);
  });
});

test("a table goes out as CSV, the same bytes each time", async () => {
  const save = async () => {
    const download = page.waitForEvent("download");
    await line(page, "holes").getByRole("button", { name: "Save as CSV" }).click();
    const got = await download;
    return [got.suggestedFilename(), await readFile(await got.path(), "utf8")] as const;
  };
  const first = await save();
  expect(first[0]).toBe("holes.csv");
  expect(first[1].split("\n").slice(0, 4)).toEqual([
    "position,depth,direction,diameter/mm,state,reason",
    "1,upper outer,along,25.012,,",
    "1,upper outer,across,25.011,,",
    "1,upper split,along,25.111,corrected,",
  ]);
  expect(await save()).toEqual(first);
});

test("on a narrow screen tables scroll inside a named region, the page never sideways", async () => {
  await page.setViewportSize({ width: 320, height: 640 });
  await page.waitForTimeout(200);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  const regions = await page
    .locator("main .scroll")
    .evaluateAll((found) =>
      found.map((one) => [
        one.getAttribute("role"),
        one.getAttribute("tabindex"),
        (one.getAttribute("aria-label") ?? "") !== "",
      ]),
    );
  expect(regions.length).toBeGreaterThan(5);
  for (const region of regions) expect(region).toEqual(["region", "0", true]);
});

test("what is touched is at least 44 px high under a finger", async () => {
  const { page: touched, context } = await newPage(browser, {
    viewport: { width: 390, height: 800 },
    hasTouch: true,
    isMobile: true,
  });
  await touched.goto(`${served.url}/index.html`);
  await touched.waitForSelector("article h1");
  await touched.setInputFiles("input[type=file]", tablesPath);
  await touched.locator("#line-loose .row-key").first().waitFor();
  const low = await touched
    .locator("main .row-key, main .place-link, main .tool, main summary")
    .evaluateAll((controls) =>
      controls
        .filter((control) => control.checkVisibility() && control.getBoundingClientRect().height < 43.5)
        .map((control) => control.outerHTML.slice(0, 120)),
    );
  expect(low).toEqual([]);
  await context.close();
});

test("on paper every row stands with its state, and one working stands for all", async () => {
  await page.evaluate(() => window.dispatchEvent(new Event("beforeprint")));
  await page.emulateMedia({ media: "print" });
  await page.setViewportSize({ width: 703, height: 1000 }); // A4 between its margins
  await line(page, "loose").getByText("pair 1").first().waitFor();
  await line(page, "pair").getByText("worked for position 1; the others run the same steps").waitFor();
  for (const hidden of [".reading-tools", ".why-link"])
    expect(await page.locator(hidden).first().isVisible()).toBe(false);
  const table = await line(page, "holes").locator(".plan").boundingBox();
  const reference = await line(page, "holes").locator(".reference").boundingBox();
  expect(table?.x).toBeGreaterThan((reference?.x ?? 0) + (reference?.width ?? 0)); // beside its reference, not below
  expect(table?.width).toBeGreaterThan(300);
});
