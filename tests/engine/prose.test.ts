// Numbers in notes are values of the page: they follow every change, and are never stale.
import { describe, expect, test } from "vitest";
import type { ProseValue } from "../../src/engine/line.ts";
import type { OpenPage } from "../../src/engine/opened.ts";
import { plainText } from "../../src/engine/prose.ts";
import { isProblem, root, sentence } from "../../src/problem.ts";
import {
  change,
  check,
  given,
  lineAt,
  method,
  open,
  pageText,
  reading,
  settled,
  working,
} from "./helpers.ts";

const note = (text: string): string => `  - note: ${JSON.stringify(text)}`;

/** The page's last item is the note. */
function noteOf(page: OpenPage): ProseValue {
  const value = page.lines().at(-1)?.value;
  if (!value || isProblem(value) || value.type !== "prose") throw new Error("no note at the end");
  return value;
}
const said = (page: OpenPage): string => plainText(noteOf(page));
const faultOf = (page: OpenPage, formula: string): string => {
  const fault = noteOf(page).bound[formula]?.problem;
  return fault ? sentence(root(fault)) : "";
};

describe("a formula between braces", () => {
  const items = [
    given("torque", "500 N.m"),
    given("arm", "0.5 m"),
    working("force", "torque / arm", { unit: "kN" }),
    check("strong", "force", { atMost: "1.2 kN" }),
    given("grade", "8.8", { as: "text" }),
    reading("gaps", { place: "tag", gap: "length" }, ["place,gap/um", "a,5", "b,15"]),
  ];

  test.each([
    ["{torque}", "500 N·m"],
    ["{force}", "1.000 kN"],
    ["{2 * force}", "2.000 kN"],
    ["{smallest(gaps.gap) - largest(gaps.gap)}", "-10 µm"],
    ["{force / torque * arm}", "1.000"],
    ["{grade}", "8.8"],
    ["{strong}", "proven"],
    ["{force < torque / arm * 2}", "yes"],
    ["{count(gaps.gap)} gaps, the widest {largest(gaps.gap)}", "2 gaps, the widest 15 µm"],
    ["set \\{torque\\} and `{torque}`", "set {torque} and {torque}"],
  ])("%s reads %s", async (text, words) => {
    expect(said(await settled(...items, note(text)))).toBe(words);
  });

  test("follows a change, through workings and checks", async () => {
    const page = await settled(...items, note("{torque} gives {force}: {strong}"));
    expect(said(page)).toBe("500 N·m gives 1.000 kN: proven");
    await change(page, { torque: "700 N.m" });
    expect(said(page)).toBe("700 N·m gives 1.400 kN: fails");
  });

  test("carries the spread that was stated with a value", async () => {
    const text = note("set {torque}");
    const typed = await settled(given("torque", "500 N.m ± 20 N.m"), text);
    const beside = await settled(given("torque", "500 N.m", { spread: { plusMinus: "20 N.m" } }), text);
    expect(said(typed)).toBe("set 500 N·m ± 20 N·m");
    expect(said(beside)).toBe("set 500 N·m ± 20 N·m");
  });

  test.each([
    ["520 lbf.ft", "520 lbf·ft (705.0 N·m)"],
    ["0.5 kN.m", "0.5 kN·m"],
    ["500 N.m", "500 N·m"],
  ])("a given of %s stands as %s beside newton metres", async (typed, words) => {
    expect(said(await settled(given("torque", typed), note("{torque}")))).toBe(words);
  });
});

describe("no answer, never a stale number", () => {
  test("a name that the page does not have is said in place, and which was meant", async () => {
    const page = await settled(given("torque", "500 N.m"), note("set {torqe} now"));
    expect(said(page)).toBe("set no answer now");
    expect(faultOf(page, "torqe")).toContain("did you mean torque?");
  });

  test("a value that loses its answer takes its number out of the note, and brings it back", async () => {
    const page = await settled(given("a", "1 kN"), working("b", "2 * a"), note("carries {b}"));
    await change(page, { a: "much" });
    expect(said(page)).toBe("carries no answer");
    await change(page, { a: "2 kN" });
    expect(said(page)).toBe("carries 4.000 kN");
  });

  test("a loop is named at the value that stands in it", async () => {
    const page = await settled(working("a", "b + 1"), working("b", "a + 1"), note("{a}"));
    expect(said(page)).toBe("no answer");
    expect(faultOf(page, "a")).toContain("a loop: a → b → a");
  });

  test.each([
    ["{thread}", "several outputs"],
    ["{gaps}", "one of place, gap"],
    ["{gaps.gap}", "the whole column gaps.gap"],
    ["{torque + force}", "torque"],
  ])("%s is refused in place", async (text, words) => {
    const page = await settled(
      given("torque", "500 N.m"),
      given("force", "5 kN"),
      method("thread", "metric-thread", { designation: "M24x3" }),
      reading("gaps", { place: "tag", gap: "length" }, ["place,gap/um", "a,5", "b,15"]),
      note(text),
    );
    expect(said(page)).toBe("no answer");
    expect(faultOf(page, text.slice(1, -1))).toContain(words);
  });
});

describe("the note beside an item", () => {
  const besides = async (...items: string[]): Promise<OpenPage> => await settled(...items);
  const beside = (page: OpenPage, name: string): string => {
    const { note: found } = lineAt(page, name);
    return found ? plainText(found) : "";
  };

  test("may speak of the item itself and of what follows from it: no loop", async () => {
    const page = await besides(
      given("a", "2 kN", { note: "{a} gives {b}" }),
      working("b", "3 * a", { note: "three times {a} is {b}" }),
    );
    expect([beside(page, "a"), beside(page, "b")]).toEqual([
      "2 kN gives 6.000 kN",
      "three times 2 kN is 6.000 kN",
    ]);
    await change(page, { a: "3 kN" });
    expect([beside(page, "a"), beside(page, "b")]).toEqual([
      "3 kN gives 9.000 kN",
      "three times 3 kN is 9.000 kN",
    ]);
  });

  test("its change is told under the name of the item, with the item's own", async () => {
    const page = await besides(given("a", "2 kN", { note: "gives {b}" }), working("b", "3 * a"));
    const told: (readonly string[])[] = [];
    page.subscribe((names) => told.push(names));
    await change(page, { a: "3 kN" });
    expect(told.map((names) => names.toSorted())).toEqual([["a", "b"]]);
    expect(lineAt(page, "a").uses).toEqual([]);
    expect(lineAt(page, "b").usedBy).toEqual(["a"]);
  });

  test("a note without values is there as well", async () => {
    const page = await besides(given("a", "2 kN", { note: "read *twice*" }));
    expect(beside(page, "a")).toBe("read twice");
  });
});

test("a value never brings markup into a note", async () => {
  const page = await settled(given("mark", "**bold** [x](#y) {mark}", { as: "text" }), note("says {mark}"));
  expect(noteOf(page).blocks).toEqual([
    {
      type: "paragraph",
      inlines: [
        { type: "text", text: "says " },
        { type: "bound", formula: "mark" },
      ],
    },
  ]);
  expect(said(page)).toBe("says **bold** [x](#y) {mark}");
});

test("the file keeps its braces", async () => {
  const text = pageText(given("a", "2 kN"), note("{a}"));
  const page = open(text);
  await page.settle();
  expect(page.text()).toBe(text);
  await change(page, { a: "3 kN" });
  expect(page.text()).toContain('note: "{a}"');
});
