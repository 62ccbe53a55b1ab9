// Nothing that a person entered is lost: a file opened again, a file that has moved on, a second tab, a shut store,
// and each step back and forth.
import { readFile } from "node:fs/promises";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { entry, launch, line, newPage, type Served, serve, type Tab } from "./browser.ts";

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
});
afterEach(async () => {
  expect(tab.complaints).toEqual([]);
  await tab.context.close();
});

const rowsOf = (rows: readonly string[]): string => rows.map((row) => `      ${row}\n`).join("");

/** An invented page of one given and one table; what is not said is as usual. */
const file = (
  said: { readonly torque?: string; readonly reading?: string; readonly rows?: readonly string[] } = {},
): string => `splitline: 1
title: Bores, invented
page:
  - given: torque
    says: Net torque
    value: ${said.torque ?? "500 N.m"}
    source: old card
  - reading: ${said.reading ?? "holes"}
    says: Bores as read
    columns: { position: tag, diameter: length }
    key: [position]
    expect: { position: [1, 2, 3, 4, 5, 6, 7, 8] }
    rows: |
      position,diameter/mm
${rowsOf(said.rows ?? ["1,25.011"])}`;

const name = "bores.yaml";

async function put(text: string, on = page, called = name): Promise<void> {
  await on.setInputFiles("input[type=file]", {
    name: called,
    mimeType: "text/yaml",
    buffer: Buffer.from(text),
  });
}

const title = (on = page) => on.getByRole("heading", { level: 1, name: "Bores, invented" });

async function open(text = file(), on = page): Promise<void> {
  await on.goto(`${served.url}/index.html`);
  await on.waitForSelector("article h1");
  await put(text, on);
  await title(on).waitFor();
}

const bench = () => page.locator("dialog.bench");

async function read(values: readonly string[], reading = "holes"): Promise<void> {
  await line(page, reading)
    .getByRole("button", { name: /^Enter readings/ })
    .click();
  await bench().locator(".bench-place").waitFor();
  for (const value of values) {
    await page.keyboard.type(value);
    await page.keyboard.press("Enter");
  }
  await bench().getByRole("button", { name: "Close" }).click();
}

async function download(press: () => Promise<void>): Promise<string> {
  const waiting = page.waitForEvent("download");
  await press();
  return await readFile(await (await waiting).path(), "utf8");
}

const asCsv = (on = page, reading = "holes"): Promise<string> =>
  download(() => line(on, reading).getByRole("button", { name: "Save as CSV" }).click());

const five = ["25.012", "25.013", "25.014", "25.015", "25.016"];
const ask = () => page.locator("dialog.ask");
const aside = () => page.locator(".kept-aside");
const step = (words: string) =>
  page.locator(".changed-bar").getByRole("button", { name: `${words} last change` });

describe("a file opened again", () => {
  test("asks before it goes over readings; going on keeps them all", async () => {
    await open();
    await read(five);
    await put(file());
    await ask().getByText("Go on with 5 readings, or start anew?").waitFor();
    await ask().getByRole("button", { name: "Go on with 5 readings" }).click();
    await line(page, "holes").getByText("6 rows; 2 missing").waitFor();
    await page.reload();
    await line(page, "holes").getByText("6 rows; 2 missing").waitFor();
    expect(await aside().count()).toBe(0);
  });

  test("with Escape stays as it was", async () => {
    await open();
    await read(five);
    await put(file());
    await ask().waitFor();
    await page.keyboard.press("Escape");
    await ask().waitFor({ state: "detached" });
    await line(page, "holes").getByText("6 rows; 2 missing").waitFor();
  });

  test("started anew lists what was entered, also after a reload, and lets it out", async () => {
    await open();
    await entry(page, "torque").fill("520 N.m");
    await read(five);
    await put(file());
    await ask().getByText("Go on with 5 readings and 1 value, or start anew?").waitFor();
    await ask().getByRole("button", { name: "Start anew" }).click();
    await line(page, "holes").getByText("1 row; 7 missing").waitFor();
    await page.reload();
    await aside().getByText("5 readings and 1 value").first().waitFor();
    expect(await entry(page, "torque").inputValue()).toBe("500 N.m");
    const part = aside().getByRole("region", { name: "Bores as read" });
    expect(await download(() => part.getByRole("button", { name: "Save as CSV" }).click())).toBe(
      `position,diameter/mm\n1,25.011\n2,25.012\n3,25.013\n4,25.014\n5,25.015\n6,25.016\n`,
    );
    const kept = await download(() => aside().getByRole("button", { name: "Save as page file" }).click());
    expect(kept).toContain("value: 520 N.m");
    expect(kept).toContain("      6,25.016\n");
    await part.getByRole("button", { name: "Use all 5 places" }).click();
    await line(page, "holes").getByText("6 rows; 2 missing").waitFor();
    await aside()
      .getByRole("region", { name: "Net torque" })
      .getByRole("button", { name: "Use this" })
      .click();
    await aside().waitFor({ state: "detached" });
    expect(await entry(page, "torque").inputValue()).toBe("520 N.m");
  });

  test("lets go only when told twice", async () => {
    await open();
    await read(["25.012"]);
    await put(file());
    await ask().getByRole("button", { name: "Start anew" }).click();
    const go = aside().getByRole("button", { name: /^Let go of 1 reading/ });
    await go.click();
    await page.reload();
    await go.click();
    await go.click();
    await aside().waitFor({ state: "detached" });
    await page.reload();
    await title().waitFor();
    await page.waitForTimeout(400);
    expect(await aside().count()).toBe(0);
  });

  test("that was saved with everything in it asks nothing", async () => {
    await open();
    await read(five);
    const saved = await download(() =>
      page.locator(".changed-bar").getByRole("button", { name: "Save file" }).click(),
    );
    await put(saved);
    await line(page, "holes").getByText("6 rows; 2 missing").waitFor();
    await page.waitForTimeout(300);
    expect(await ask().count()).toBe(0);
    expect(await page.locator(".changed-bar").isVisible()).toBe(false);
  });

  test("from a second tab is not opened over the first", async () => {
    await open();
    await read(five);
    const second = await tab.context.newPage();
    await second.goto(`${served.url}/index.html`);
    await second.waitForSelector("article h1");
    await put(file({ torque: "1 N.m" }), second);
    await second.getByRole("heading", { name: "bores.yaml is open in another tab" }).waitFor();
    await second.getByRole("button", { name: "Look at it here, without entering" }).click();
    await line(second, "holes").getByText("6 rows; 2 missing").waitFor();
    expect(await entry(second, "torque").isEditable()).toBe(false);
    await second.close();
    await page.reload();
    await line(page, "holes").getByText("6 rows; 2 missing").waitFor();
  });
});

describe("a file that has moved on", () => {
  async function movesOn(text: string): Promise<void> {
    await put(text);
    await ask()
      .getByRole("button", { name: /^Go on with/ })
      .click();
    await title().waitFor();
  }

  test("keeps its correction, and readings at other places go on without a question", async () => {
    await open();
    await read(five.slice(0, 2));
    await movesOn(file({ rows: ["1,25.021", "8,25.018"] }));
    await line(page, "holes").getByText("4 rows; 4 missing").waitFor();
    expect(await asCsv()).toBe("position,diameter/mm\n1,25.021\n8,25.018\n2,25.012\n3,25.013\n");
    expect(await aside().count()).toBe(0);
  });

  test("where both say something else the file stands, both are shown, and the person chooses", async () => {
    await open();
    await read(five.slice(0, 2));
    await entry(page, "torque").fill("520 N.m");
    await movesOn(file({ torque: "510 N.m", rows: ["1,25.011", "2,25.032"] }));
    await aside().getByText("1 reading and 1 value").first().waitFor();
    expect(await asCsv()).toBe("position,diameter/mm\n1,25.011\n2,25.032\n3,25.013\n");
    expect(await entry(page, "torque").inputValue()).toBe("510 N.m");
    const row = aside().getByRole("row", { name: /hole 2/ });
    expect(await row.textContent()).toMatch(/hole 2\s*25\.032 mm\s*25\.012 mm/);
    await row.getByRole("button", { name: /Use this/ }).click();
    await line(page, "holes").getByText("as read here, in place of 25.032 mm in the file").first().waitFor();
    expect(await asCsv()).toContain(
      '2,25.032,corrected,,\n3,25.013,,,\n2,25.012,,"as read here, in place of 25.032 mm in the file",',
    );
    await step("Undo").click();
    await aside()
      .getByRole("row", { name: /hole 2/ })
      .waitFor();
  });

  test("and no longer has the reading keeps its rows to be let out", async () => {
    await open();
    await read(five);
    await movesOn(file({ reading: "bores" }));
    const part = aside().getByRole("region", { name: "Bores as read" });
    await part.getByText("The file has no line called holes any more.").waitFor();
    expect(await download(() => part.getByRole("button", { name: "Save as CSV" }).click())).toContain(
      "6,25.016",
    );
    await page.reload();
    await part.waitFor();
  });

  /** The page of the folder as its file stands after a change. */
  async function folderPage(change: (text: string) => string): Promise<void> {
    await page.route(/pump-2-old-card-[\w-]+\.js$/, async (route) => {
      const response = await route.fetch();
      await route.fulfill({ response, body: change(await response.text()) });
    });
  }

  async function begunInFolder(): Promise<void> {
    await page.goto(`${served.url}/index.html#page=pump-2-old-card`);
    await entry(page, "netTorque").fill("501 N.m");
    await page.locator(".changed-bar").getByText("Changed here").waitFor();
  }

  test("in the folder keeps its correction over what was stored before", async () => {
    await begunInFolder();
    await folderPage((text) => text.replaceAll("value: 500 N.m", "value: 505 N.m"));
    await page.reload();
    await aside()
      .getByRole("row", { name: /505\s+N.m\s+501 N.m/ })
      .waitFor();
    expect(await entry(page, "netTorque").inputValue()).toBe("505 N.m");
    await page.reload();
    await aside()
      .getByRole("row", { name: /501 N.m/ })
      .waitFor();
  });

  test("in the folder and cannot be opened lists what was entered", async () => {
    await begunInFolder();
    await folderPage((text) => text.replaceAll("splitline: 1", "splitline: 7"));
    await page.reload();
    await page.getByText("pump-2-old-card.yaml cannot be opened yet").waitFor();
    await aside().getByText("501 N.m").waitFor();
    const kept = await download(() => aside().getByRole("button", { name: "Save as page file" }).click());
    expect(kept).toContain("value: 501 N.m");
    await page.unroute(/pump-2-old-card-[\w-]+\.js$/);
    await page.reload();
    await page.waitForFunction(
      () => document.querySelector<HTMLInputElement>("#line-netTorque-entry")?.value === "501 N.m",
    );
  });
});

describe("undo and redo", () => {
  test("take one step each, both ways, by button and by key, and survive a reload", async () => {
    await open();
    const torque = entry(page, "torque");
    for (const text of ["510 N.m", "520 N.m", "530 N.m"]) await torque.fill(text);
    await line(page, "torque")
      .getByLabel(/^Source of this value/)
      .fill("card B");
    await read(["25.012", "25.013"]);
    const now = async () => [
      await torque.inputValue(),
      await page.locator("#line-torque-source").inputValue(),
      /(\d) rows?;/.exec((await line(page, "holes").locator(".caption").textContent()) ?? "")?.[1],
    ];
    const states = [
      ["500 N.m", "", "1"],
      ["510 N.m", "", "1"],
      ["520 N.m", "", "1"],
      ["530 N.m", "", "1"],
      ["530 N.m", "card B", "1"],
      ["530 N.m", "card B", "2"],
      ["530 N.m", "card B", "3"],
    ];
    const settles = (state: readonly string[] | undefined) => expect.poll(now).toEqual(state);
    await settles(states[6]);
    for (const state of states.slice(3, 6).toReversed()) {
      await step("Undo").click();
      await settles(state);
    }
    await page.reload();
    await settles(states[3]);
    await page.locator("h1").click();
    for (const state of states.slice(0, 3).toReversed()) {
      await page.keyboard.press("Control+z");
      await settles(state);
    }
    expect(await step("Undo").isDisabled()).toBe(true);
    for (const [i, key] of ["Control+Shift+z", "Control+y", "Control+Shift+Z"].entries()) {
      await page.keyboard.press(key);
      await settles(states[i + 1]);
    }
    for (const state of states.slice(4)) {
      await step("Redo").click();
      await settles(state);
    }
    expect(await step("Redo").isDisabled()).toBe(true);
  });

  test("a new change ends what could be made again", async () => {
    await open();
    await entry(page, "torque").fill("510 N.m");
    await step("Undo").click();
    await entry(page, "torque").fill("520 N.m");
    expect(await step("Redo").isDisabled()).toBe(true);
  });

  test("leave Ctrl+Z in an entry to the entry", async () => {
    await open();
    await read(["25.012"]);
    await entry(page, "torque").focus();
    await page.keyboard.press("End");
    await page.keyboard.type("x");
    await page.keyboard.press("Control+z");
    await expect.poll(() => entry(page, "torque").inputValue()).toBe("500 N.m");
    await line(page, "holes").getByText("2 rows; 6 missing").waitFor();
  });

  test("stand at the bench as well", async () => {
    await open();
    await line(page, "holes")
      .getByRole("button", { name: /^Enter readings/ })
      .click();
    await bench().locator(".bench-place").waitFor();
    await page.keyboard.type("25.012");
    await page.keyboard.press("Enter");
    await bench().getByRole("button", { name: "take back the last entry" }).click();
    await bench().getByText("Taken back: hole 2.").waitFor();
    await bench().getByRole("button", { name: "Put back" }).click();
    await bench().getByText("Put back: hole 2.").waitFor();
    await page.keyboard.press("Control+z");
    await bench().getByText("Taken back: hole 2.").waitFor();
    await page.keyboard.press("Control+y");
    await bench().getByText("Put back: hole 2.").waitFor();
    await bench().getByRole("button", { name: "Close" }).click();
    expect(await asCsv()).toBe("position,diameter/mm\n1,25.011\n2,25.012\n");
  });

  test.each([390, 1440])("have buttons for gloves at %i px", async (width) => {
    await page.setViewportSize({ width, height: 844 });
    await open();
    await entry(page, "torque").fill("510 N.m");
    for (const words of ["Undo", "Redo"]) {
      const box = await step(words).boundingBox();
      expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(56);
    }
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  });
});

describe("at the bench", () => {
  const tables = `splitline: 1
title: Bores, invented
page:
  - reading: record
    says: Record as first written
    columns: { pass: tag, position: tag, read: torque, wrench: tag }
    key: [pass, position]
    expect: { pass: [1, 2], position: [5, 15] }
    rows: |
      pass,position,read/N.m,wrench
      1,5,176,W1
  - reading: redone
    says: Correcting rows
    columns: { pass: tag, position: tag, read: torque, wrench: tag, reason: text }
    key: [pass, position]
    rows: |
      pass,position,read/N.m,wrench,reason
      1,15,184,W1,no row was written
`;
  const place = () => bench().locator(".bench-place");

  test("the next position passes over what stands in a correcting table, and says so there", async () => {
    await open(tables);
    await line(page, "record")
      .getByRole("button", { name: /^Enter readings/ })
      .click();
    await place().getByText("pass 2, position 5, read").waitFor();
    await bench().getByRole("button", { name: "place before" }).click();
    await bench().getByText("stands in Correcting rows: no row was written").waitFor();
  });

  test("a refused reading of a row stays refused after the next one, and after a reload", async () => {
    await open(tables);
    await line(page, "record")
      .getByRole("button", { name: /^Enter readings/ })
      .click();
    await place().getByText("pass 2, position 5, read").waitFor();
    await bench().getByRole("button", { name: "next place" }).click();
    await place().getByText("pass 2, position 5, wrench").waitFor();
    await bench().getByRole("button", { name: "Cannot be read" }).click();
    await bench().locator("#bench-who").fill("fitter B");
    await bench().locator(".bench-ask").getByRole("button", { name: "out of reach" }).click();
    await place().getByText("pass 2, position 15, read").waitFor();
    await bench().getByRole("button", { name: "place before" }).click();
    await bench().getByRole("button", { name: "place before" }).click();
    await place().getByText("pass 2, position 5, read").waitFor();
    await page.keyboard.type("329");
    await page.keyboard.press("Enter");
    await place().getByText("pass 2, position 15, read").waitFor();
    await page.reload();
    await title().waitFor();
    expect(await asCsv(page, "record")).toContain("2,5,329,,wrench not read: out of reach,fitter B");
  });
});

describe("the browser's store", () => {
  test("is asked once to keep what it holds, with the first entry", async () => {
    await page.addInitScript(() => {
      navigator.storage.persist = () => {
        document.documentElement.dataset["asked"] =
          `${Number(document.documentElement.dataset["asked"] ?? 0) + 1}`;
        return Promise.resolve(true);
      };
    });
    await open();
    const asked = () => page.evaluate(() => document.documentElement.dataset["asked"]);
    expect(await asked()).toBeUndefined();
    await read(five);
    expect(await asked()).toBe("1");
    await page.reload();
    await read(["25.017"]);
    expect(await asked()).toBeUndefined();
  });

  test("shut in every way, a file still opens, and one sentence says that nothing is kept", async () => {
    await page.addInitScript(() => {
      const shut = () => {
        throw new DOMException("denied", "SecurityError");
      };
      for (const store of ["localStorage", "sessionStorage", "indexedDB"])
        Object.defineProperty(globalThis, store, { get: shut });
      navigator.locks.request = () => Promise.reject(new DOMException("denied", "SecurityError"));
    });
    await open();
    await page
      .getByText("This browser cannot keep what is entered; save the file before you leave")
      .waitFor();
    await entry(page, "torque").fill("510 N.m");
    await page.getByText("this browser cannot keep it, so save before you leave").waitFor();
    await read(["25.012"]);
    await put(file());
    await ask().getByRole("button", { name: "Go on with 1 reading and 1 value" }).click();
    await line(page, "holes").getByText("2 rows; 6 missing").waitFor();
  });

  test("held by another tab, no reading is taken that would be lost, and it says so", async () => {
    await open();
    await read(["25.012"]);
    const second = await tab.context.newPage();
    await second.goto(page.url());
    await second.getByText("nothing can be entered here").waitFor();
    expect(await entry(second, "torque").isEditable()).toBe(false);
    await line(second, "holes")
      .getByRole("button", { name: /^Enter readings/ })
      .click();
    await second.locator("dialog.bench .bench-place").waitFor();
    await second.keyboard.type("25.099");
    await second.keyboard.press("Enter");
    await second
      .locator("dialog.bench")
      .getByText(/^Not taken: /)
      .waitFor();
    await second.locator("dialog.bench").getByRole("button", { name: "Close" }).click();
    await line(second, "holes").getByText("2 rows; 6 missing").waitFor();
    await second.close();
  });
});

test("without a signal the page that stands stays, one asked for says so, and a file and a table go in and out", async () => {
  await open();
  await page.waitForTimeout(3500); // what is fetched soon is there
  await tab.context.setOffline(true);
  await page.evaluate(() => {
    location.hash = "#page=fatigue";
  });
  await page.getByRole("alert").getByText("Fatigue could not be fetched: the connection is gone.").waitFor();
  expect(await page.evaluate(() => location.hash)).toBe("#page=file%3Abores.yaml");
  await entry(page, "torque").fill("510 N.m");
  const csv = await download(() => line(page, "holes").getByRole("button", { name: "Save as CSV" }).click());
  expect(csv).toBe("position,diameter/mm\n1,25.011\n");
  await put(file({ torque: "520 N.m" }), page, "other.yaml");
  await expect.poll(() => entry(page, "torque").inputValue()).toBe("520 N.m");
  await tab.context.setOffline(false);
  await page.reload(); // some browsers do not fetch a part again that once did not come
  await page.getByRole("heading", { level: 1 }).waitFor();
  await page.evaluate(() => {
    location.hash = "#page=fatigue";
  });
  await page.getByRole("heading", { level: 1, name: "Will the bolts stand the pulsing load?" }).waitFor();
  // what the browser itself says of each file that it could not get
  tab = { ...tab, complaints: tab.complaints.filter((one) => !one.includes("INTERNET_DISCONNECTED")) };
});
