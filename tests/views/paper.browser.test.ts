import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launch, line, newPage, openSample, type Served, serve } from "./browser.ts";

let browser: Browser;
let served: Served;

beforeAll(async () => {
  [browser, served] = await Promise.all([launch(), serve()]);
});
afterAll(async () => {
  await browser.close();
  await served.close();
});

describe("on paper", () => {
  test.each(["A4", "Letter"])("%s has the three fields, everything open and no controls", async (format) => {
    const { page, context, complaints } = await newPage(browser);
    await openSample(page, served.url);
    await page.locator("#line-tension .figure").waitFor();
    await page.setViewportSize({ width: format === "A4" ? 700 : 720, height: 1000 });
    await page.emulateMedia({ media: "print" });
    const fields = await line(page, "tension").evaluate((row) =>
      ["reference", "head", "body", "result"].map((name) => {
        const box = row.querySelector(`:scope > .${name}`)?.getBoundingClientRect();
        return {
          left: Math.round(box?.left ?? -1),
          width: Math.round(box?.width ?? 0),
          height: Math.round(box?.height ?? 0),
        };
      }),
    );
    const [reference, head, body, result] = fields;
    for (const field of fields) expect(field.width * field.height).toBeGreaterThan(0);
    expect(head?.left).toBeGreaterThan(reference?.left ?? 0);
    expect(body?.left).toBe(head?.left);
    expect(result?.left).toBeGreaterThan(head?.left ?? 0);
    const inside = line(page, "tension").locator(".more-content");
    await inside.getByText("Speck").first().waitFor(); // the source stands inside a closed part on the screen
    for (const hidden of [".top-bar", ".why-word", ".more > summary"])
      expect(await page.locator(hidden).first().isVisible()).toBe(false);
    expect(await page.locator(".box").count()).toBe(3);
    const pdf = await page.pdf({ format });
    expect(pdf.subarray(0, 5).toString()).toBe("%PDF-");
    expect(pdf.toString("latin1").match(/\/Type \/Page\b/g)?.length).toBeGreaterThan(1);
    expect(complaints).toEqual([]);
    await context.close();
  });

  test("what was closed on the screen is closed again afterwards", async () => {
    const { page, context } = await newPage(browser);
    await openSample(page, served.url);
    const open = () => page.locator("main details[open]").count();
    await page.evaluate(() => window.dispatchEvent(new Event("beforeprint")));
    expect(await open()).toBeGreaterThan(5);
    await page.evaluate(() => window.dispatchEvent(new Event("afterprint")));
    expect(await open()).toBe(0);
    await context.close();
  });
});

describe("narrow and dark", () => {
  test("at 320 px nothing makes the page scroll sideways", async () => {
    const { page, context } = await newPage(browser, { viewport: { width: 320, height: 640 } });
    await openSample(page, served.url);
    await page.locator("#line-tension .figure").waitFor();
    await page.locator("figure .drawing").first().waitFor();
    const widths = await page.evaluate(() => [document.documentElement.scrollWidth, innerWidth]);
    expect(widths[0]).toBeLessThanOrEqual(widths[1] ?? 0);
    await context.close();
  });

  test("every page of the project opens, fits 320 px and complains of nothing", async () => {
    const { page, context, complaints } = await newPage(browser, { viewport: { width: 320, height: 640 } });
    await page.goto(`${served.url}/index.html`);
    await page.waitForSelector("article h1");
    const addresses = await page
      .locator(".pages a")
      .evaluateAll((links) => links.map((link) => link.getAttribute("href") ?? ""));
    expect(addresses.length).toBeGreaterThan(0);
    for (const address of addresses) {
      await page.goto(`${served.url}/index.html${address}`);
      await page.reload();
      await page.waitForSelector("article h1");
      await page.waitForFunction(
        () =>
          document.querySelectorAll(".row.picture:not(.unanswered)").length ===
          document.querySelectorAll(".drawing").length,
      );
      expect(await page.locator(".open-problems").count(), address).toBe(0);
      expect(await page.evaluate(() => document.documentElement.scrollWidth), address).toBeLessThanOrEqual(
        320,
      );
    }
    expect(complaints).toEqual([]);
    await context.close();
  });

  test.each(["light", "dark"] as const)("contrast holds in the %s theme", async (colorScheme) => {
    const { page, context } = await newPage(browser, { colorScheme });
    await openSample(page, served.url);
    const least = {
      ".figure b": 4.5,
      "#line-tension .figure b": 7,
      ".entry input": 7,
      ".read": 4.5,
      ".reference": 4.5,
      ".tool": 4.5,
      ".finding a": 4.5,
      ".state.fails": 4.5,
      ".caption": 4.5,
    };
    for (const [selector, ratio] of Object.entries(least))
      expect(await page.locator(selector).first().evaluate(contrast), selector).toBeGreaterThanOrEqual(ratio);
    await context.close();
  });

  test("what is touched is at least 44 px high", async () => {
    const { page, context } = await newPage(browser, {
      viewport: { width: 390, height: 800 },
      hasTouch: true,
      isMobile: true,
    });
    await openSample(page, served.url);
    const low = await page
      .locator("main input, main select, main .answer, nav .tool, main summary")
      .evaluateAll((controls) =>
        controls
          .filter((control) => control.checkVisibility() && control.getBoundingClientRect().height < 43.5)
          .map((control) => control.outerHTML.slice(0, 120)),
      );
    expect(low).toEqual([]);
    await context.close();
  });
});

/** Contrast of a text with what lies behind it (WCAG 2.2, 1.4.3). Runs in the page. */
function contrast(element: Element): number {
  const channels = (color: string): number[] => (color.match(/[\d.]+/g) ?? []).map(Number);
  const luminance = (color: string): number => {
    const [r = 0, g = 0, b = 0] = channels(color).map((c) =>
      c / 255 <= 0.04045 ? c / 255 / 12.92 : ((c / 255 + 0.055) / 1.055) ** 2.4,
    );
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  let behind: Element | null = element;
  while (behind && channels(getComputedStyle(behind).backgroundColor)[3] === 0) behind = behind.parentElement;
  const ground = behind ? getComputedStyle(behind).backgroundColor : "rgb(255, 255, 255)";
  const [light = 1, dark = 0] = [luminance(getComputedStyle(element).color), luminance(ground)].sort(
    (a, b) => b - a,
  );
  return (light + 0.05) / (dark + 0.05);
}

describe("pictures", () => {
  test("change with the page, and say the same in a sentence and a table", async () => {
    const { page, context, complaints } = await newPage(browser);
    await openSample(page, served.url);
    const window = page.locator(".row.picture").filter({ hasText: "The window" });
    await window.getByRole("img", { name: /between 273\.0 N·m and 592\.2 N·m/ }).waitFor();
    await page.locator("#line-scatter-entry").fill("10 %");
    const drawing = window.getByRole("img", { name: /between 242\.7 N·m and 646\.0 N·m/ });
    await drawing.waitFor();
    await window.locator("summary").click();
    await window.getByRole("cell", { name: "±10 %, this page" }).waitFor();
    expect(await window.getByRole("row").filter({ hasText: "this page" }).textContent()).toContain(
      "242.7 N·m646.0 N·myes",
    );
    expect(complaints).toEqual([]);
    await context.close();
  });

  test("a closed window says that no torque passes, never a midpoint", async () => {
    const { page, context } = await newPage(browser);
    await openSample(page, served.url);
    await page.locator("#line-load-entry").fill("200 kN");
    const window = page.locator(".row.picture").filter({ hasText: "The window" });
    await window
      .getByRole("img", { name: /no torque passes: the floor of .* lies above the ceiling/ })
      .waitFor();
    await context.close();
  });

  test("an input without an answer is named", async () => {
    const { page, context } = await newPage(browser);
    await openSample(page, served.url);
    await page.locator("#line-load-entry").fill("65");
    const window = page.locator(".row.picture").filter({ hasText: "The window" });
    await window.getByText("no answer for separationLoad").waitFor();
    expect(await window.getByRole("img").count()).toBe(0);
    await context.close();
  });

  test("an unknown picture lists the ones there are, and says where the file asks for it", async () => {
    const { page, context } = await newPage(browser);
    await openSample(page, served.url);
    await page.getByText("must be one of joint-diagram, preload-window, wrench, fit-bar").first().waitFor();
    const row = page.locator(".row.picture").filter({ hasText: "Not known" });
    await row.getByText("In the file: sample.yaml:104:14", { exact: true }).waitFor();
    await context.close();
  });
});
