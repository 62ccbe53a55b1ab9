import { describe, expect, test } from "vitest";
import {
  change,
  check,
  given,
  lineAt,
  method,
  open,
  pageText,
  settled,
  shown,
  siAt,
  working,
} from "./helpers.ts";

const diamond = [
  given("a", "2 kN"),
  given("b", "3 kN"),
  working("left", "a * 2"),
  working("right", "a + b"),
  working("both", "left + right"),
  working("apart", "b * 2"),
];

describe("change(name, text) runs exactly the dependents", () => {
  test("of a, in an order in which each runs after what it uses, and the values follow", async () => {
    const page = await settled(...diamond);
    const { ran, version } = await change(page, { a: "5 kN" });
    expect(ran[0]).toBe("a");
    expect(ran.toSorted()).toEqual(["a", "both", "left", "right"]);
    expect(ran.indexOf("both")).toBe(3);
    expect(version).toBe(2);
    expect([siAt(page, "left"), siAt(page, "right"), siAt(page, "both"), siAt(page, "apart")]).toEqual([
      10_000, 8_000, 18_000, 6_000,
    ]);
  });

  test("of a diamond, each once", async () => {
    const page = await settled(...diamond);
    const { ran } = await change(page, { b: "4 kN" });
    expect(ran.toSorted()).toEqual(["apart", "b", "both", "right"]);
  });

  test("and only lines that changed carry the new version", async () => {
    const page = await settled(...diamond);
    await change(page, { a: "5 kN" });
    expect(lineAt(page, "both").version).toBe(2);
    expect(lineAt(page, "apart").version).toBe(1);
    expect(lineAt(page, "b").version).toBe(1);
  });

  test("and gives what a fresh page with that text gives", async () => {
    const page = await settled(...diamond);
    await change(page, { a: "1.25 kN", b: "700 lbf" });
    const fresh = await settled(given("a", "1.25 kN"), given("b", "700 lbf"), ...diamond.slice(2));
    expect(shown(page)).toEqual(shown(fresh));
  });

  test("subscribers hear once per wave which lines changed, and not after leaving", async () => {
    const page = await settled(...diamond);
    const heard: string[][] = [];
    const leave = page.subscribe((names) => heard.push([...names].toSorted()));
    await change(page, { a: "5 kN" });
    expect(heard).toEqual([["a", "both", "left", "right"]]);
    leave();
    await change(page, { a: "6 kN" });
    expect(heard).toHaveLength(1);
  });
});

describe("a value that stays stops the wave", () => {
  test("the same text: nothing runs and nothing is reported as run", async () => {
    const page = await settled(...diamond);
    const { ran } = await change(page, { a: "2 kN" });
    expect(ran).toEqual([]);
  });

  test("the same text after another change: nothing runs", async () => {
    const page = await settled(...diamond);
    await change(page, { a: "5 kN" });
    expect((await change(page, { a: "5 kN" })).ran).toEqual([]);
  });

  test("an equal result, max(a, b) with the smaller one raised: the lines behind it do not run", async () => {
    const page = await settled(
      given("a", "2 kN"),
      given("b", "9 kN"),
      working("more", "max(a, b)"),
      working("twice", "2 * more"),
      check("enough", "twice", { atLeast: "1 kN" }),
    );
    const before = lineAt(page, "twice").value;
    const { ran } = await change(page, { a: "3 kN" });
    // `more` shows other numbers in its working, so it is new; its value is not, so `twice` need not run.
    expect(ran).toEqual(["a", "more"]);
    expect(lineAt(page, "twice").value).toBe(before);
  });

  test("an equal truth behind a comparison: the lines behind it do not run", async () => {
    const page = await settled(
      given("a", "2 kN"),
      working("small", 'a < "100 kN"'),
      working("chosen", 'small ? "1 mm" : "2 mm"'),
    );
    const { ran } = await change(page, { a: "3 kN" });
    expect(ran).toEqual(["a", "small"]);
  });

  test("the working still shows the new numbers where the result stayed", async () => {
    const page = await settled(given("a", "2 kN"), given("b", "9 kN"), working("more", "max(a, b)"));
    await change(page, { a: "3 kN" });
    const { value } = lineAt(page, "more");
    expect(JSON.stringify("step" in value && value.step.numbers())).toContain('"3"');
  });

  test("a check shows the new numbers too where its value stayed", async () => {
    const items = [given("a", "2 kN"), given("b", "3 mm"), check("product", "a * b", { atMost: "100 N.m" })];
    const page = await settled(...items);
    await change(page, { a: "3 kN", b: "2 mm" });
    expect(shown(page)).toEqual(
      shown(await settled(given("a", "3 kN"), given("b", "2 mm"), ...items.slice(2))),
    );
  });

  test("a check keeps up with a limit and an uncertainty that move by less than its words show", async () => {
    const at = (limit: string, doubt: string) => [
      given("a", "2 kN"),
      given("limit", limit),
      given("doubt", doubt),
      check("below", "a", { atMost: "limit", uncertainty: "doubt" }),
    ];
    const page = await settled(...at("5 kN", "0.12345 kN"));
    await change(page, { doubt: "0.12349 kN", limit: "5.0000000000001 kN" });
    expect(shown(page)).toEqual(shown(await settled(...at("5.0000000000001 kN", "0.12349 kN"))));
  });

  test("another spelling of the same quantity is a new text but the same number: one level runs", async () => {
    const page = await settled(
      given("a", "2 kN"),
      working("twice", "2 * a"),
      working("fourfold", "2 * twice"),
    );
    const { ran } = await change(page, { a: "2000 N" });
    expect(ran).toEqual(["a", "twice"]);
    expect(siAt(page, "fourfold")).toBe(8000);
  });
});

describe("changes close together", () => {
  test("two changes before settling give one wave with the dependents of both, each given named", async () => {
    const page = await settled(...diamond);
    const { ran, version } = await change(page, { a: "5 kN", b: "1 kN" });
    expect(ran.toSorted()).toEqual(["a", "apart", "b", "both", "left", "right"]);
    expect(version).toBe(3);
    expect(siAt(page, "both")).toBe(16_000);
  });

  test("the same given twice before settling: the last text counts", async () => {
    const page = await settled(...diamond);
    page.change("a", "5 kN");
    page.change("a", "7 kN");
    await page.settle();
    expect(siAt(page, "both")).toBe(24_000);
  });

  test("there and back before settling: the page is as before", async () => {
    const page = await settled(...diamond);
    const before = shown(page);
    page.change("a", "5 kN");
    page.change("a", "2 kN");
    await page.settle();
    expect(shown(page)).toEqual(before);
  });

  test("a change at any moment of a running wave: settle() waits for both", async () => {
    const items = [
      given("a", "2 kN"),
      given("b", "3 kN"),
      working("one", "a + b"),
      working("two", "one * 2"),
      working("three", "two + b"),
      method("four", "service-bolt-load", { preload: "three", externalLoad: "a", loadFactor: "0.2" }),
    ];
    const expected = shown(await settled(given("a", "5 kN"), given("b", "11 kN"), ...items.slice(2)));
    for (let ticks = 0; ticks < 80; ticks++) {
      const page = await settled(...items);
      page.change("a", "5 kN");
      for (let i = 0; i < ticks; i++) await Promise.resolve();
      page.change("b", "11 kN");
      await page.settle();
      expect(shown(page), `after ${ticks} ticks`).toEqual(expected);
    }
  });

  test("a change while the page is still opening: settle() waits for both", async () => {
    for (let ticks = 0; ticks < 40; ticks++) {
      const page = open(pageText(...diamond));
      for (let i = 0; i < ticks; i++) await Promise.resolve();
      page.change("a", "5 kN");
      await page.settle();
      expect(siAt(page, "both"), `after ${ticks} ticks`).toBe(18_000);
    }
  });

  test("a subscriber that changes a given starts a further wave, and settle() after it sees both", async () => {
    const page = await settled(...diamond);
    const leave = page.subscribe((names) => {
      if (names.includes("a")) page.change("b", "10 kN");
    });
    page.change("a", "5 kN");
    await page.settle();
    await page.settle();
    leave();
    expect(siAt(page, "both")).toBe(25_000);
  });

  test("a page that is closed does not hang those who wait for it", async () => {
    const page = open(pageText(...diamond));
    page.dispose();
    const first = await Promise.race([page.settle().then(() => "settled"), later(200)]);
    expect(first).toBe("settled");
  });
});

const later = (turns: number): Promise<string> =>
  Array.from({ length: turns }).reduce<Promise<string>>(
    (wait) => wait.then(() => "still waiting"),
    Promise.resolve(""),
  );
