import { readFile } from "node:fs/promises";
import type { Browser, Page } from "playwright-core";
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from "vitest";
import {
  entry,
  launch,
  line,
  newPage,
  openSample,
  type Served,
  samplePath,
  serve,
  type Tab,
} from "./browser.ts";

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
  await openSample(page, served.url);
});
afterEach(async () => {
  expect(tab.complaints).toEqual([]); // console errors, exceptions, policy violations
  await tab.context.close();
});

const result = (name: string) => line(page, name).locator(".result");
const says = (name: string, words: string) =>
  result(name).getByText(words, { exact: false }).first().waitFor();

describe("an edit", () => {
  test("changes everything downstream and keeps the text as typed", async () => {
    await says("tension", "209.8");
    await entry(page, "netTorque").fill("500 N.m");
    await says("tension", "148.8");
    await says("shareOfProof", "0.7036");
    await says("proofShare", "proven");
    await says("netTorque", "read as torque");
    expect(await entry(page, "netTorque").inputValue()).toBe("500 N.m");
  });

  test("leaves lines that do not depend on it untouched", async () => {
    const other = line(page, "meanHole").locator(".figure");
    await other.evaluate((figure) => figure.setAttribute("data-seen", "before"));
    await entry(page, "netTorque").fill("500 N.m");
    await says("tension", "148.8");
    expect(await other.getAttribute("data-seen")).toBe("before");
  });

  test("never moves the focus", async () => {
    await entry(page, "netTorque").click();
    await page.keyboard.press("End");
    await page.keyboard.type(" x");
    await line(page, "netTorque").locator(".problem").waitFor();
    expect(await page.evaluate(() => document.activeElement?.id)).toBe("line-netTorque-entry");
  });

  test("marks what changed and is said in one sentence", async () => {
    await entry(page, "netTorque").fill("500 N.m");
    await page.locator("#line-tension.changed").waitFor();
    const status = page.locator('[role="status"]').filter({ hasText: "Net torque at the nut changed" });
    await status.waitFor({ state: "attached" });
    expect(await status.textContent()).toMatch(/4 checks: .*1 waived\.$/);
  });
});

describe("a problem", () => {
  test("stands beside the field, tied to it, and a tap on the suggestion mends it", async () => {
    const field = entry(page, "netTorque");
    await field.fill("30 nm");
    const problem = line(page, "netTorque").locator(".problem");
    await problem.getByText("newton metre is N·m").waitFor();
    expect(await field.getAttribute("aria-invalid")).toBe("true");
    const described = (await field.getAttribute("aria-describedby")) ?? "";
    const text = await page.evaluate(
      (ids) =>
        ids
          .split(" ")
          .map((id) => document.getElementById(id)?.textContent ?? "")
          .join(" "),
      described,
    );
    expect(text).toContain("30 nm");
    await problem.getByRole("button", { name: "30 N·m" }).click();
    await problem.waitFor({ state: "detached" });
    expect(await field.inputValue()).toBe("30 N.m");
    expect(await field.getAttribute("aria-invalid")).toBeNull();
  });

  test("leaves no answer downstream, naming the line where it began", async () => {
    await entry(page, "netTorque").fill("");
    await says("proofShare", "no answer");
    expect(await result("proofShare").textContent()).toBe("no answer");
    const link = line(page, "proofShare")
      .locator(".body")
      .getByRole("link", { name: /line 3, Net torque at the nut/ });
    await link.click();
    await page.waitForFunction(() => document.activeElement?.id === "line-netTorque");
    await page.locator(".summary").getByText("lines wait for it").waitFor();
  });

  test("is asked about once when a reading was not meant by everybody", async () => {
    await entry(page, "netTorque").fill("6 kg-m");
    const problem = line(page, "netTorque").locator(".problem");
    await problem.getByRole("button", { name: "Yes, as read" }).click();
    await problem.waitFor({ state: "detached" });
    await says("netTorque", "58.84 N·m");
    await page.reload();
    await says("netTorque", "58.84 N·m");
    expect(await problem.count()).toBe(0);
  });
});

describe("what was typed", () => {
  test("is there after a reload, even when it cannot be read", async () => {
    await entry(page, "netTorque").fill("not a torque");
    await says("tension", "no answer");
    await page.reload();
    await says("tension", "no answer");
    expect(await entry(page, "netTorque").inputValue()).toBe("not a torque");
    await page.getByText("Changed here, not saved to a file").waitFor();
  });

  test("can be taken back, one change at a time and all at once", async () => {
    await entry(page, "netTorque").fill("500 N.m");
    await entry(page, "nutFactor").fill("0.2");
    await says("tension", "104.2");
    await page.getByRole("button", { name: "Undo last change" }).click();
    await says("tension", "148.8");
    expect(await entry(page, "nutFactor").inputValue()).toBe("0.14");
    await page.getByRole("button", { name: "Back to the file" }).click();
    await page.getByRole("button", { name: /Drop all changes/ }).click();
    await says("tension", "209.8");
    expect(await entry(page, "netTorque").inputValue()).toBe("520 lbf.ft");
  });

  test("goes into the saved file and nothing computed does", async () => {
    await entry(page, "netTorque").fill("500 N.m");
    await says("tension", "148.8");
    const download = page.waitForEvent("download");
    await page.locator(".changed-bar").getByRole("button", { name: "Save file" }).click();
    const saved = await readFile(await (await download).path(), "utf8");
    const file = (await readFile(samplePath, "utf8")).replace("520 lbf.ft", "500 N.m");
    const left = '"not stated for this value; for 520 lbf.ft: old torque card"';
    expect(saved).toBe(file.replace("source: old torque card", `source: ${left}`));
    await page.locator(".changed-bar").waitFor({ state: "hidden" });
    await page.reload();
    await says("tension", "148.8");
    expect(await page.locator(".changed-bar").isVisible()).toBe(false);
  });
});

test("a file that cannot be read lists its problems and loses nothing", async () => {
  await entry(page, "netTorque").fill("500 N.m");
  await says("tension", "148.8");
  const bad = "splitline: 1\ntitle: Bad\npage:\n  - given: x\n    valu: 3 kN\n";
  await page.setInputFiles("input[type=file]", {
    name: "bad.yaml",
    mimeType: "text/yaml",
    buffer: Buffer.from(bad),
  });
  await page.getByRole("heading", { name: "bad.yaml cannot be opened yet" }).waitFor();
  expect(await page.locator(".open-problems").textContent()).toMatch(/bad\.yaml:5:\d+/);
  expect(await entry(page, "netTorque").inputValue()).toBe("500 N.m");
});

test("a working is MathML in three lines, and the same in words", async () => {
  const lines = line(page, "tension").locator(".working-lines .right-side math");
  expect(await lines.count()).toBe(3);
  const first = await lines.first().evaluate((math) => ({
    space: math.namespaceURI,
    spoken: math.getAttribute("aria-label"),
    fraction: [...(math.querySelector("mfrac")?.children ?? [])].map((part) => part.textContent),
  }));
  expect(first).toEqual({
    space: "http://www.w3.org/1998/Math/MathML",
    spoken: "F = T / (K · d)",
    fraction: ["T", "K·d"],
  });
  expect(await lines.nth(1).getAttribute("aria-label")).toBe("= 520 lbf·ft / (0.14 · 24 mm)");
  expect(await lines.nth(2).getAttribute("aria-label")).toBe("= 209.8 kN");
});

test("each state is a word with a mark of its own shape", async () => {
  const states = await page
    .locator(".row.check .state")
    .evaluateAll((found) =>
      found.map((state) => [state.textContent, state.querySelector("svg")?.innerHTML] as const),
    );
  expect(states.map(([word]) => word)).toEqual(["fails", "proven", "unproven", "waived"]);
  expect(new Set(states.map(([, shape]) => shape)).size).toBe(4);
});

test("the limit stands at the same place on every check", async () => {
  const places = await page
    .locator(".row.check .bar")
    .evaluateAll((bars) => bars.map((bar) => [...bar.querySelectorAll(".limit")].at(-1)?.getAttribute("x1")));
  expect(places.length).toBe(4);
  expect(new Set(places).size).toBe(1);
});

test("why? answers with the chain back to what was given", async () => {
  await line(page, "proofShare").locator(".answer").click();
  const panel = page.locator("dialog.why");
  await panel.getByRole("link", { name: /Net torque at the nut/ }).waitFor();
  const text = (await panel.textContent()) ?? "";
  for (const words of [
    "Share of proof",
    "Preload",
    "given, typed as 520 lbf.ft",
    "old torque card",
    "Nut factor",
    "Proof load",
  ])
    expect(text).toContain(words);
  await page.keyboard.press("Escape");
  await panel.waitFor({ state: "hidden" });
});

test("a part that cannot be fetched is said", async () => {
  const { page: mine, context } = await newPage(browser); // its complaints are the browser's own of what was not fetched
  await mine.route("**/why-panel*.js", (route) => route.abort());
  await openSample(mine, served.url);
  await line(mine, "proofShare").locator(".answer").click();
  await mine
    .getByRole("alert")
    .getByText("A part of the page could not be fetched: the connection is gone.")
    .waitFor();
  await context.close();
});

test("a missing reading says so and is never zero", async () => {
  await line(page, "holes").locator("td.missing").first().waitFor(); // the tables are a part of their own
  expect(await line(page, "holes").locator("td.missing").allTextContents()).toEqual(["missing"]);
  await says("meanHole", "25.0215");
});

test("the keyboard alone is enough", async () => {
  await entry(page, "netTorque").focus();
  await page.keyboard.press("ControlOrMeta+a");
  await page.keyboard.type("500 N.m");
  await says("tension", "148.8");
  for (let i = 0; i < 30; i += 1) {
    await page.keyboard.press("Tab");
    if (await page.evaluate(() => document.activeElement?.matches("#line-tension .answer"))) break;
  }
  await page.keyboard.press("Enter");
  await page.locator("dialog.why[open]").waitFor();
  await page.keyboard.press("Escape");
  await page.locator("dialog.why").waitFor({ state: "hidden" });
  expect(await page.evaluate(() => document.activeElement?.matches("#line-tension .answer"))).toBe(true);
  await page.keyboard.press("u");
  await page.locator("dialog.units[open]").waitFor();
  await page.keyboard.type("140 in lb");
  await page.locator("dialog.units").getByText("15.82").waitFor();
});

test("every control has a name", async () => {
  const nameless = await page.locator("main, nav, .changed-bar, body > input").evaluateAll((parts) =>
    parts
      .flatMap((part) =>
        part.matches("input") ? [part] : [...part.querySelectorAll("input, select, button, summary, a")],
      )
      .flatMap((control) => {
        const labels =
          control instanceof HTMLInputElement || control instanceof HTMLSelectElement
            ? [...(control.labels ?? [])]
            : [];
        const name = [
          control.getAttribute("aria-label"),
          ...labels.map((label) => label.textContent),
          control.textContent,
        ];
        return name.some((text) => (text ?? "").trim() !== "") ? [] : [control.outerHTML];
      }),
  );
  expect(nameless).toEqual([]);
});
