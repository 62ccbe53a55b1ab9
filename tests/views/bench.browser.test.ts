import { readFile } from "node:fs/promises";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import { emptyPage, holesToRead, shanksToRead, type Wanted } from "./bench-page.ts";
import { launch, line, newPage, type Served, serve, type Tab } from "./browser.ts";

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
  tab = await newPage(browser, { viewport: { width: 390, height: 844 }, hasTouch: true, isMobile: true });
  page = tab.page;
});
afterEach(async () => {
  expect(tab.complaints).toEqual([]);
  await tab.context.close();
});

async function open(text = emptyPage, name = "to-be-read.yaml"): Promise<void> {
  await page.goto(`${served.url}/index.html`);
  await page.waitForSelector("article h1");
  await page.setInputFiles("input[type=file]", { name, mimeType: "text/yaml", buffer: Buffer.from(text) });
  await page.getByRole("heading", { level: 1, name: "To be read" }).waitFor();
}

const bench = () => page.locator("dialog.bench");
const place = () => bench().locator(".bench-place");
const key = (name: string) => bench().locator(".keypad").getByRole("button", { name, exact: true });
async function enterReadings(name: string): Promise<void> {
  await line(page, name)
    .getByRole("button", { name: /^Enter readings/ })
    .click();
  await place().waitFor();
}
const keep = (name: string) => bench().locator(".bench-ask").getByRole("button", { name, exact: true });

/** The rows as they would go into a file: what was kept, not what a screen shows. */
async function kept(name: string): Promise<readonly string[]> {
  const download = page.waitForEvent("download");
  await line(page, name).getByRole("button", { name: "Save as CSV" }).click();
  return (await readFile(await (await download).path(), "utf8")).trim().split("\n").slice(1);
}

/** Types the last two figures of each and Enter; gives how many were asked about. */
async function type(wanted: readonly Wanted[]): Promise<number> {
  let asked = 0;
  for (const { place: where, value } of wanted) {
    await page.waitForFunction(
      (words) => document.querySelector(".bench-place")?.textContent === words,
      where,
    );
    for (const figure of value.slice(-2)) await key(figure).click();
    await key("enter").click();
    if (await bench().locator(".bench-ask").isVisible()) {
      asked += 1;
      await keep(value).click();
    }
  }
  return asked;
}

const withValues = (wanted: readonly Wanted[]): readonly string[] => wanted.map(({ value }) => value);

test("168 readings take two figures and Enter each; a reload in the middle loses none", {
  timeout: 240_000,
}, async () => {
  const [holes, shanks] = await Promise.all([holesToRead(), shanksToRead()]);
  expect([holes.length, shanks.length]).toEqual([96, 72]);
  await open();
  await enterReadings("holes");
  expect(await type(holes.slice(0, 41))).toBe(0);
  await page.reload(); // at once after Enter
  await line(page, "holes").getByText("41 rows; 55 missing").waitFor();
  await enterReadings("holes");
  expect(await type(holes.slice(41))).toBe(0);
  await bench().getByText("96 of 96 read").waitFor();
  await bench().getByRole("button", { name: "Close" }).click();
  await enterReadings("shanks");
  // Bolt 11 is worn: 90 could mean 25.090 or 24.990, so the first of its six readings is asked about.
  expect(await type(shanks)).toBe(1);
  await bench().getByText("72 of 72 read").waitFor();
  await bench().getByRole("button", { name: "Close" }).click();
  await page.reload();
  await line(page, "shanks").getByText("72 rows; none missing").waitFor();
  expect((await kept("holes")).map((row) => row.split(",")[3])).toEqual(withValues(holes));
  expect((await kept("shanks")).map((row) => row.split(",")[3])).toEqual(withValues(shanks));
});

const begun = emptyPage.replace(
  "diameter/mm,state,reason\n  - reading: shanks",
  `diameter/mm,state,reason
      1,up outer,along,25.012,,
      1,up outer,across,25.011,,
      1,up split,along,25.011,,
  - reading: shanks`,
);

describe("a reading", () => {
  beforeEach(async () => {
    await open(begun);
    await enterReadings("holes");
    await place().getByText("hole 1, up split, across").waitFor();
  });

  test("shows the front digits that stand, and what Enter would keep", async () => {
    const figure = bench().locator(".bench-figure");
    expect(await figure.textContent()).toBe("25.0··mm");
    await key("5").click();
    expect(await figure.textContent()).toBe("25.005mm");
    await key("rub out").click();
    await page.keyboard.type("24.99");
    expect(await figure.textContent()).toBe("24.99mm");
  });

  test("far from its group is asked about, and a second Enter never keeps it", async () => {
    await page.keyboard.type("102");
    await page.keyboard.press("Enter");
    await bench()
      .getByText("25.102 is 91 µm from the others of hole 1: keep or type again?", { exact: true })
      .waitFor();
    await page.keyboard.press("Enter");
    await bench().locator(".bench-ask").waitFor({ state: "detached" });
    expect(await place().textContent()).toBe("hole 1, up split, across");
    await page.keyboard.type("25.102");
    await page.keyboard.press("Enter");
    await keep("Keep 25.102").click();
    await place().getByText("hole 1, lo split, along").waitFor();
    await bench().getByRole("button", { name: "Close" }).click();
    await line(page, "holes").locator("td.odd").getByText("25.102").waitFor();
    await page.locator(".summary").getByText("1 of 96 readings asked about").waitFor();
    expect((await kept("holes")).at(-1)).toBe("1,up split,across,25.102,odd,kept when asked");
  });

  test("may name its own unit", async () => {
    await key("letters, for a unit or a sign").click();
    await page.keyboard.type("0.985 in");
    await bench().getByText("read as 25.019 mm").waitFor();
    await page.keyboard.press("Enter");
    await place().getByText("hole 1, lo split, along").waitFor();
    await bench().getByRole("button", { name: "Close" }).click();
    await line(page, "holes").locator("td").getByText("0.985 in").waitFor();
    await line(page, "hole").getByText("25.019").first().waitFor();
  });

  test("that cannot be read stays missing with its reason, and can be read later", async () => {
    await bench().getByRole("button", { name: "Cannot be read" }).click();
    await bench().locator("#bench-who").fill("fitter B");
    await keep("surface scored").click();
    await place().getByText("hole 1, lo split, along").waitFor();
    await bench().getByRole("button", { name: "Close" }).click();
    await line(page, "holes").getByText(": not read: surface scored").waitFor();
    await line(page, "holes").getByRole("button", { name: "hole 1, up split, across" }).click();
    await page.keyboard.type("13");
    await page.keyboard.press("Enter");
    await bench().getByRole("button", { name: "Close" }).click();
    expect((await kept("holes")).slice(-2)).toEqual([
      "1,up split,across,,corrected,not read: surface scored,fitter B",
      "1,up split,across,25.013,,read later,",
    ]);
  });

  test("that stands is corrected by a row with a reason, and stays", async () => {
    await bench().getByRole("button", { name: "place before" }).click();
    await place().getByText("hole 1, up split, along").waitFor();
    await page.keyboard.type("14");
    await page.keyboard.press("Enter");
    await bench().getByText("Why 25.014 in place of 25.011? The first stays in the table.").waitFor();
    await bench().locator("#bench-who").fill("fitter B");
    await keep("read again").click();
    await bench().getByRole("button", { name: "Close" }).click();
    await line(page, "holes").getByText("to 25.014 mm; read again, fitter B").waitFor();
    expect(await line(page, "holes").locator(".reading-notes s").textContent()).toBe("25.011 mm");
    expect((await kept("holes")).slice(-2)).toEqual([
      "1,up split,along,25.011,corrected,,",
      "1,up split,along,25.014,,read again,fitter B",
    ]);
  });

  test("set aside keeps its value and is used no more", async () => {
    await bench().getByRole("button", { name: "place before" }).click();
    await bench().getByRole("button", { name: "Set aside" }).click();
    await bench().locator("#bench-who").fill("fitter B");
    await bench().locator("#bench-reason").fill("dirt on the anvil");
    await page.keyboard.press("Enter");
    await bench().getByRole("button", { name: "Close" }).click();
    expect((await kept("holes")).at(-1)).toBe("1,up split,along,25.011,set aside,dirt on the anvil,fitter B");
    await line(page, "holes").getByText("; dirt on the anvil, fitter B").waitFor();
  });

  test("is taken back by Undo, in the same corner in every state", async () => {
    const undo = key("take back the last entry");
    const corner = await undo.boundingBox();
    await page.keyboard.type("12");
    await page.keyboard.press("Enter");
    await place().getByText("hole 1, lo split, along").waitFor();
    await page.keyboard.type("90");
    await page.keyboard.press("Enter");
    await bench().locator(".bench-ask").waitFor();
    expect(await undo.boundingBox()).toEqual(corner);
    await undo.click();
    await bench().getByText("Taken back: hole 1, up split, across.").waitFor();
    expect(await place().textContent()).toBe("hole 1, up split, across");
    expect(await undo.isDisabled()).toBe(true);
  });
});

test("by keyboard alone: in, typed, asked, out", async () => {
  await open(begun);
  const enter = line(page, "holes").getByRole("button", { name: /^Enter readings/ });
  await enter.focus();
  await page.keyboard.press("Enter");
  await place().getByText("hole 1, up split, across").waitFor();
  await page.keyboard.type("12");
  await page.keyboard.press("Enter");
  await page.keyboard.type("90");
  await page.keyboard.press("Enter");
  await bench().locator(".bench-ask").waitFor();
  await page.keyboard.press("Shift+Tab");
  await page.keyboard.press("Shift+Tab");
  expect(await page.evaluate(() => document.activeElement?.textContent)).toBe("24.990");
  await page.keyboard.press("Enter");
  await place().getByText("hole 1, lo split, across").waitFor();
  await page.keyboard.type("x");
  await page.keyboard.press("Enter");
  await bench().locator("[aria-invalid]").waitFor();
  await page.keyboard.press("Escape");
  await bench().waitFor({ state: "hidden" });
  expect((await kept("holes")).slice(-2)).toEqual([
    "1,up split,across,25.012,,",
    "1,lo split,along,24.990,,",
  ]);
});

describe("keeping", () => {
  test("a shut first store leaves the one on disk", async () => {
    await page.addInitScript(() => {
      Storage.prototype.setItem = () => {
        throw new Error("full");
      };
    });
    await page.goto(`${served.url}/index.html#page=pump-2-old-card`);
    await page.waitForSelector("#line-netTorque-entry");
    await page.locator("#line-netTorque-entry").fill("500 N.m");
    await page.waitForTimeout(300);
    await page.reload();
    await page.waitForSelector("#line-netTorque-entry");
    expect(await page.locator("#line-netTorque-entry").inputValue()).toBe("500 N.m");
  });

  test("two shut stores are said, on the page and at the bench", async () => {
    await page.addInitScript(() => {
      Storage.prototype.setItem = () => {
        throw new Error("full");
      };
      IDBFactory.prototype.open = () => {
        throw new Error("shut");
      };
    });
    await page.goto(`${served.url}/index.html#page=pump-2-as-found`);
    await page.waitForSelector("#line-nominal-entry");
    await page.locator("#line-nominal-entry").fill("26 mm");
    await page.getByText("this browser cannot keep it, so save before you leave").waitFor();
    await enterReadings("holes");
    await bench().getByText("Save the file before you leave.").waitFor();
  });

  test("a second tab says that it takes nothing, and never writes over the first", async () => {
    await page.goto(`${served.url}/index.html#page=pump-2-old-card`);
    await page.waitForSelector("#line-netTorque-entry");
    const second = await tab.context.newPage();
    await second.goto(`${served.url}/index.html#page=pump-2-old-card`);
    await second.getByText("Open in another tab too").waitFor();
    await page.locator("#line-netTorque-entry").fill("500 N.m");
    expect(await second.locator("#line-netTorque-entry").isEditable()).toBe(false);
    await second.close();
    await page.reload();
    await page.waitForSelector("#line-netTorque-entry");
    expect(await page.locator("#line-netTorque-entry").inputValue()).toBe("500 N.m");
  });
});

describe("the entry screen", () => {
  test.each([
    [320, 568],
    [390, 667],
    [390, 844],
    [844, 390],
    [820, 1180],
    [1440, 900],
  ])("at %i by %i has targets of 56 px, figures of 40 px and nothing out of sight", async (width, height) => {
    await page.setViewportSize({ width, height });
    await open(begun);
    await enterReadings("holes");
    await place().getByText("hole 1, up split, across").waitFor();
    const measure = () =>
      bench().evaluate((dialog) => {
        const seen = [...dialog.querySelectorAll("button")].filter((button) => button.checkVisibility());
        const small = seen.flatMap((button) => {
          const box = button.getBoundingClientRect();
          return box.height >= 55.5 && box.width >= 55.5 ? [] : [button.outerHTML];
        });
        const hidden = [...dialog.querySelectorAll(".keypad button, .bench-figure")].flatMap((part) => {
          const { left, right, top, bottom } = part.getBoundingClientRect();
          return left >= -1 && top >= -1 && right <= innerWidth + 1 && bottom <= innerHeight + 1
            ? []
            : [part.className];
        });
        const figure = dialog.querySelector(".bench-figure");
        return { small, hidden, figure: figure ? Number.parseFloat(getComputedStyle(figure).fontSize) : 0 };
      });
    const calm = await measure();
    expect(calm.small).toEqual([]);
    expect(calm.hidden).toEqual([]);
    expect(calm.figure).toBeGreaterThanOrEqual(40);
    await page.keyboard.type("90");
    await page.keyboard.press("Enter");
    const asking = await measure();
    expect(asking.small).toEqual([]);
    expect(asking.hidden.filter((name) => name !== "bench-figure")).toEqual([]);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(width);
  });

  test("names every control and says each entry", async () => {
    await open(begun);
    await enterReadings("holes");
    const nameless = await bench()
      .locator("button, input")
      .evaluateAll((controls) =>
        controls.flatMap((control) => {
          const by = control.getAttribute("aria-labelledby");
          const words = [
            control.getAttribute("aria-label"),
            by && document.getElementById(by)?.textContent,
            control.textContent,
          ];
          return words.some((text) => (text ?? "").trim() !== "") ? [] : [control.outerHTML];
        }),
      );
    expect(nameless).toEqual([]);
    await page.keyboard.type("12");
    await page.keyboard.press("Enter");
    await bench().getByRole("status").getByText("hole 1, up split, across: 25.012.").waitFor();
  });
});
