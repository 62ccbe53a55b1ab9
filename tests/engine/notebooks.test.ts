// Every page in notebooks/ opens and shows what is stored in tests/saved-views/. On a change the new
// view is kept beside the old one as <page>.new.txt: read the difference, then replace the old one.
import { existsSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { isProblem } from "../../src/problem.ts";
import { change, open, shown } from "./helpers.ts";
import { viewText } from "./view-text.ts";

const notebooks = new URL("../../notebooks/", import.meta.url);
const saved = new URL("../saved-views/", import.meta.url);
const files = readdirSync(notebooks).filter((name) => name.endsWith(".yaml"));

test("there are pages to open", () => {
  expect(files).toContain("pump-2-old-card.yaml");
});

describe.each(files)("%s", (file) => {
  const text = readFileSync(new URL(file, notebooks), "utf8");

  test("opens without problems and every line has an answer", async () => {
    const page = open(text);
    await page.settle();
    const without = page.lines().filter((line) => isProblem(line.value));
    expect(without.map((line) => line.name)).toEqual([]);
  });

  test("shows the stored view: state, reason and digits", async () => {
    const page = open(text);
    await page.settle();
    const view = viewText(page);
    const store = new URL(`${file.replace(/\.yaml$/, "")}.txt`, saved);
    const beside = new URL(store.href.replace(/\.txt$/, ".new.txt"));
    const before = existsSync(store) ? readFileSync(store, "utf8") : undefined;
    if (before === view) rmSync(beside, { force: true });
    else writeFileSync(beside, view);
    if (before === undefined) expect.fail(`no stored view: read ${beside.pathname}, then rename it to .txt`);
    expect(view).toBe(before);
  });

  test("shows the same twice, and its text is untouched by settling", async () => {
    const [one, two] = [open(text), open(text)];
    await one.settle();
    await two.settle();
    expect(viewText(one)).toBe(viewText(two));
    expect(one.text()).toBe(text);
  });

  test("each given typed anew with the same text leaves the page as it is", async () => {
    const page = open(text);
    await page.settle();
    const before = shown(page);
    for (const line of page.lines())
      if (line.item.kind === "given") {
        const typed = line.item.value;
        await change(page, { [line.name]: `${typed}0` });
        await change(page, { [line.name]: typed });
      }
    expect(shown(page)).toEqual(before);
    expect(page.text()).toBe(text);
  });
});

test.each(files)("no heading of a check in %s claims that it holds: each is a question", (file) => {
  const { page } = open(readFileSync(new URL(file, notebooks), "utf8"));
  const claims = page.items.flatMap((item) =>
    item.kind === "check" && !item.says?.endsWith("?") ? [item.says ?? item.name] : [],
  );
  expect(claims).toEqual([]);
});

test("every stored view belongs to a page", () => {
  const views = readdirSync(saved).filter((name) => name.endsWith(".txt") && !name.endsWith(".new.txt"));
  for (const view of views) expect(files).toContain(view.replace(/\.txt$/, ".yaml"));
});
