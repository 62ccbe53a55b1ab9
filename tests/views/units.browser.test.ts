import { gzipSync } from "node:zlib";
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launch, newPage, type Served, serve } from "./browser.ts";

let browser: Browser;
let served: Served;

beforeAll(async () => {
  [browser, served] = await Promise.all([launch(), serve()]);
});
afterAll(async () => {
  await browser.close();
  await served.close();
});

describe("the unit answer", () => {
  test("gives 140 in lb in two actions from any page", async () => {
    const { page, context, complaints } = await newPage(browser);
    await page.goto(`${served.url}/index.html`);
    await page.waitForSelector("article h1");
    await page.getByRole("link", { name: "Units" }).click();
    await page.keyboard.type("140 in lb");
    const panel = page.locator("dialog.units");
    await panel.getByText("15.82").first().waitFor();
    expect(await panel.locator(".answers").first().locator("li").allTextContents()).toEqual([
      "15.82\u00a0N·m",
      "11.67\u00a0lbf·ft",
      "1.613\u00a0kgf·m",
    ]);
    await panel.getByText("1 lbf·in = 0.112 984 829 027 616 7 N·m (exact)").waitFor();
    await panel.getByText("set 16 N·m, 1.2 % high").waitFor();
    expect(complaints).toEqual([]);
    await context.close();
  });

  test("keeps a wrench step that it refuses over a reload, as it was typed", async () => {
    const { page, context } = await newPage(browser);
    await page.goto(`${served.url}/units.html?q=140+lbf.in`);
    await page.getByLabel("wrench step").fill("3 blips");
    await page.locator(".set-line").getByText("not a known unit").waitFor();
    await page.reload();
    await page.locator(".set-line").getByText("not a known unit").waitFor();
    expect(await page.getByLabel("wrench step").inputValue()).toBe("3 blips");
    await context.close();
  });

  test("asks which unit a bare 140 has, and what each would mean", async () => {
    const { page, context } = await newPage(browser);
    await page.goto(`${served.url}/units.html?q=140`);
    await page.getByText("Which unit? 140 alone would mean:").waitFor();
    await page.getByRole("button", { name: "140 lbf·ft = 189.8 N·m" }).click();
    await page.getByText("torque, 140 lbf·ft").waitFor();
    expect(new URL(page.url()).searchParams.get("q")).toBe("140 lbf.ft");
    await context.close();
  });

  test("tells a temperature from a difference", async () => {
    const { page, context } = await newPage(browser);
    await page.goto(`${served.url}/units.html?q=68+degF`);
    expect(await page.locator(".answers").first().locator("li").first().textContent()).toBe("20.00\u00a0°C");
    const difference = page.locator(".other-kind").filter({ hasText: "as a temperature difference" });
    expect(await difference.locator("li").first().textContent()).toBe("37.78\u00a0K");
    await context.close();
  });

  test("says what to change in what it cannot read", async () => {
    const { page, context } = await newPage(browser);
    await page.goto(`${served.url}/units.html?q=${encodeURIComponent("1,234 mm")}`);
    await page.getByText("must have a decimal point or no comma").waitFor();
    await page.getByRole("button", { name: "1234 mm" }).click();
    await page.getByText("48.58").waitFor();
    await context.close();
  });

  test("keeps the last five questions", async () => {
    const { page, context } = await newPage(browser);
    await page.goto(`${served.url}/units.html`);
    const entry = page.getByLabel("A quantity with its unit");
    for (const text of ["1 kN", "2 kN", "3 kN", "4 kN", "5 kN", "6 kN"]) {
      await entry.fill(text);
      await entry.press("Enter");
    }
    await page.reload();
    expect(await page.locator(".recent button").allTextContents()).toEqual([
      "6 kN",
      "5 kN",
      "4 kN",
      "3 kN",
      "2 kN",
    ]);
    await context.close();
  });

  test("works at 320 px without scrolling sideways", async () => {
    const { page, context } = await newPage(browser, { viewport: { width: 320, height: 600 } });
    await page.goto(`${served.url}/units.html?q=140`);
    await page.getByText("Which unit?").waitFor();
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
    await context.close();
  });
});

describe("weight", () => {
  /** Everything the browser fetches to first show a page, gzip. */
  async function weigh(path: string, ready: string): Promise<number> {
    const { page, context } = await newPage(browser);
    let bytes = 0;
    const bodies: Promise<void>[] = [];
    page.on("response", (response) => {
      if (!/\.(?:js|css|html)$/.test(new URL(response.url()).pathname)) return;
      bodies.push(
        response.body().then((body) => {
          bytes += gzipSync(body, { level: 9 }).length;
        }),
      );
    });
    await page.goto(`${served.url}/${path}`);
    await page.waitForSelector(ready);
    await page.waitForLoadState("load");
    await Promise.all(bodies);
    await context.close();
    return bytes / 1000;
  }

  test("the unit answer loads in at most 45 kB", async () => {
    const kB = await weigh("units.html", ".question-entry");
    console.log(`unit answer: ${kB.toFixed(1)} kB gzip`);
    expect(kB).toBeLessThanOrEqual(45);
  });

  test("a page loads in at most 180 kB before its methods and pictures", async () => {
    const { page, context } = await newPage(browser);
    await page.goto(`${served.url}/index.html`);
    await page.waitForSelector("article h1");
    const files = await page.evaluate(() =>
      [
        ...document.head.querySelectorAll<HTMLScriptElement | HTMLLinkElement>(
          "script[src], link[rel=modulepreload], link[rel=stylesheet]",
        ),
      ].map((element) => ("src" in element ? element.src : element.href)),
    );
    const first = await page.request.get(`${served.url}/index.html`);
    const html = await first.text();
    const own = files.filter((file) => html.includes(new URL(file).pathname.slice(1)));
    const bodies = await Promise.all(own.map(async (file) => (await page.request.get(file)).body()));
    const kB =
      [Buffer.from(html), ...bodies].reduce((sum, body) => sum + gzipSync(body, { level: 9 }).length, 0) /
      1000;
    console.log(`page before methods and pictures: ${kB.toFixed(1)} kB gzip`);
    expect(own.length).toBeGreaterThan(1);
    expect(kB).toBeLessThanOrEqual(180);
    await context.close();
  });
});
