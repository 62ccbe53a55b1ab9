// The plotting library comes with the first chart and not before, and keeps the policy of the page.
import type { Browser } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launch, newPage, type Served, serve } from "../browser.ts";

let browser: Browser;
let served: Served;
beforeAll(async () => {
  [browser, served] = await Promise.all([launch(), serve()]);
});
afterAll(async () => {
  await browser.close();
  await served.close();
});

/** Whether the library was fetched, and what the charts of a page hold. */
async function opened(id: string, pictures: number) {
  const { page, context, complaints } = await newPage(browser);
  const files: string[] = [];
  page.on("request", (request) => files.push(new URL(request.url()).pathname));
  await page.goto(`${served.url}/index.html#page=${id}`);
  await page.waitForFunction((n) => document.querySelectorAll("svg.drawing").length >= n, pictures);
  const found = await page.evaluate(() =>
    [...document.querySelectorAll("svg.drawing")].map((drawing) => ({
      role: drawing.getAttribute("role"),
      said: drawing.getAttribute("aria-label") ?? "",
      below: drawing.parentElement?.querySelector("figcaption")?.textContent ?? "",
      rows: drawing.parentElement?.querySelectorAll("details tbody tr").length ?? 0,
      smallest: Math.min(
        ...[...drawing.querySelectorAll("text")].map((each) =>
          Number.parseFloat(getComputedStyle(each).fontSize),
        ),
      ),
    })),
  );
  await context.close();
  expect(complaints).toEqual([]);
  return { found, fetched: files.some((file) => /\/chart-[\w-]+\.js$/.test(file)) };
}

describe("charts", () => {
  test("a page of drawings does not fetch the library", async () => {
    expect((await opened("one-bolt", 2)).fetched).toBe(false);
  });

  test.each([
    ["pump-2-tightening", 3],
    ["pump-2-as-found", 5],
    ["pump-2-old-card", 4],
  ])(
    "%s fetches it, and each picture keeps its sentence, its table and its size of type",
    async (id, count) => {
      const { found, fetched } = await opened(id, count);
      expect(fetched).toBe(true);
      expect(found).toHaveLength(count);
      for (const { role, said, below, rows, smallest } of found) {
        expect(role).toBe("img");
        expect(said).toContain(below);
        expect(below.length).toBeGreaterThan(20);
        expect(rows).toBeGreaterThan(0);
        expect(smallest).toBeGreaterThanOrEqual(13);
      }
    },
  );
});
