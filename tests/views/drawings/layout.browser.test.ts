// In a real browser, with its own fonts: words stay in the picture and off each other, at every width.
import type { Browser, Page } from "playwright-core";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { launch } from "../browser.ts";
import { harnessCode, styles } from "./harness-code.ts";
import { samples } from "./samples.ts";

let browser: Browser;
let page: Page;
const complaints: string[] = [];

beforeAll(async () => {
  const [opened, code, css] = await Promise.all([launch(), harnessCode(), styles()]);
  browser = opened;
  page = await browser.newPage({ viewport: { width: 1200, height: 900 } });
  page.on("console", (message) => complaints.push(message.text()));
  page.on("pageerror", (error) => complaints.push(error.message));
  await page.setContent("<!doctype html><title>pictures</title><body></body>");
  await page.addStyleTag({ content: css });
  await page.addScriptTag({ content: code });
});
afterAll(async () => {
  await browser.close();
});

/** Words outside the picture, and pairs of words that cover each other by more than a hair. Runs in the page. */
function clashes(): string[] {
  const root = document.querySelector("figure > svg");
  if (!root) return ["no picture"];
  const sheet = root.getBoundingClientRect();
  const words = [...root.querySelectorAll("text")].map((element) => {
    const { left, right, top, bottom } = element.getBoundingClientRect();
    // the room a font leaves above and below its letters differs; the letters stand on the line, 0.72 em high
    const at = element.getScreenCTM();
    const lying = at && at.b === 0 && element.getNumberOfChars() > 0;
    const line = lying ? at.d * element.getStartPositionOfChar(0).y + at.f : 0;
    const em = at ? at.d * Number.parseFloat(getComputedStyle(element).fontSize) : 0;
    const high = lying
      ? { top: line - 0.72 * em, bottom: line + 0.05 * em }
      : { top: top + 2.5, bottom: bottom - 2.5 };
    return { said: element.textContent ?? "", left, right, ...high };
  });
  const outside = words
    .filter(
      (w) =>
        w.left < sheet.left - 1 ||
        w.right > sheet.right + 1 ||
        w.top < sheet.top - 1 ||
        w.bottom > sheet.bottom + 1,
    )
    .map((w) => `outside: ${w.said}`);
  const covered = words.flatMap((a, i) =>
    words
      .slice(i + 1)
      .filter((b) => a.left < b.right - 1.5 && b.left < a.right - 1.5 && a.top < b.bottom && b.top < a.bottom)
      .map((b) => `${a.said} covers ${b.said}`),
  );
  const styled = [...root.querySelectorAll("[style], style")].map(({ tagName }) => `style on ${tagName}`);
  return [...outside, ...covered, ...styled];
}

describe.each([288, 328, 640, 890])("at %i px", (width) => {
  test.each(samples.map(({ name }) => name))("%s keeps its words apart", async (name) => {
    await page.evaluate(([sample, at]) => window.drawSample(sample, at), [name, width] as const);
    expect(await page.evaluate(clashes)).toEqual([]);
    expect(complaints).toEqual([]);
  });
});
