// What is known about a value travels to the word that people sign.
import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import type { OpenPage } from "../../src/engine/opened.ts";
import { solve } from "../../src/methods/index.ts";
import { isProblem, root, sentence } from "../../src/problem.ts";
import { halfWidth } from "../../src/standing.ts";
import {
  change,
  check,
  checkAt,
  given,
  lineAt,
  method,
  open,
  problemAt,
  settled,
  stateAt,
  working,
} from "./helpers.ts";

const table = (
  name: string,
  columns: Record<string, string>,
  more: string,
  rows: readonly string[],
): string =>
  `  - reading: ${name}\n    columns: ${JSON.stringify(columns)}\n${more}    rows: |\n${rows.map((row) => `      ${row}`).join("\n")}`;

describe("a dimension without a name of its own is carried", () => {
  const beam = [
    given("modulus", "205 GPa"),
    given("inertia", "10 cm4"),
    given("load", "1 kN"),
    given("span", "400 mm"),
    working("rigidity", "modulus * inertia"),
    working("deflection", "load * span^3 / (48 * rigidity)"),
  ];

  test("through a working: a deflection is a length, and a bare 1 is no limit of it", async () => {
    const page = await settled(...beam, check("c", "deflection", { atMost: "1" }));
    const { value } = lineAt(page, "deflection");
    expect(value).toMatchObject({ kind: "length" });
    expect(stateAt(page, "c")).toBe("no answer");
    const right = await settled(...beam, check("c", "deflection", { atMost: "1 mm" }));
    expect(checkAt(right, "c").why).toContain("0.065 mm against at most 1 mm");
  });

  test("and shown in SI base units where no kind has a name for it", async () => {
    const page = await settled(...beam);
    const { value } = lineAt(page, "rigidity");
    if (isProblem(value) || value.type !== "formula") throw new Error("no formula");
    expect([value.kind, value.unit?.text, value.step.result()]).toEqual([
      undefined,
      "kg.m3/s2",
      "20500 kg·m³/s²",
    ]);
  });

  test("a root of a length takes no 1, and a power of it is not compared with 1", async () => {
    const page = await settled(given("a", "4 mm"), working("h", "a^0.5"), working("k", "h + 1"));
    expect(sentence(problemAt(page, "k"))).toContain("of one kind");
    const power = await settled(given("a", "4 mm"), working("p", "a^28"), check("c", "p", { atMost: "1" }));
    expect(stateAt(power, "c")).toBe("no answer");
  });

  test("a number that vanishes or has no end is no answer", async () => {
    const page = await settled(
      given("a", "0.004"),
      given("b", "4000"),
      check("small", "a^999999999", { atMost: "1" }),
      check("large", "b^999999999", { atLeast: "1" }),
      check("product", "1e-200 * a * 1e-200", { atMost: "1" }),
    );
    expect(["small", "large", "product"].map((name) => stateAt(page, name))).toEqual(
      Array.from({ length: 3 }, () => "no answer"),
    );
    expect(root(problemAt(page, "small")).code).toBe("underflow");
  });
});

describe("a warning that a number does not hold reaches every check on it", () => {
  const open3 = [
    method("f", "proof-factors", {
      preload: "10 kN",
      externalLoad: "65 kN",
      loadFactor: "0.3",
      stressArea: "157 mm2",
      proofStress: "600 MPa",
    }),
  ];

  test("an open joint proves no factor on proof, and fails the one on opening", async () => {
    const page = await settled(
      ...open3,
      check("yields", "f.yieldingFactor", { atLeast: "2" }),
      working("half", "f.yieldingFactor / 2"),
      check("onward", "half", { atLeast: "1" }),
      check("opens", "f.separationFactor", { atLeast: "1" }),
    );
    expect(stateAt(page, "yields")).toBe("unproven");
    expect(checkAt(page, "yields").why).toContain("the joint is open");
    expect(stateAt(page, "onward")).toBe("unproven");
    expect(stateAt(page, "opens")).toBe("fails");
  });
});

describe("a stated doubt is used by every check on it", () => {
  test.each([
    ["typed with the value", given("a", "10 mm ± 1 mm"), "10.5 mm"],
    [
      "stated beside it",
      given("a", "10 mm", { spread: { plusMinus: "1 mm", meaning: "limits" } }),
      "10.5 mm",
    ],
    ["as limits", given("a", "10 mm", { spread: { lower: "9 mm", upper: "10.6 mm" } }), "10.5 mm"],
    [
      "as k standard uncertainties",
      given("a", "10 mm", { spread: { plusMinus: "0.9 mm", meaning: "expanded", k: 3 } }),
      "10.5 mm",
    ],
    ["a torque of 180 against 188.8", given("a", "180 N.m ± 10 N.m"), "188.8 N.m"],
  ])("%s", async (_, item, limit) => {
    const page = await settled(item, check("c", "a", { atMost: limit }));
    expect(stateAt(page, "c")).toBe("unproven");
    expect(checkAt(page, "c").why).toContain("too close to the limit to call; its ± comes from a");
  });

  test("a reading with the uncertainty of its gauge", async () => {
    const rows = ["place,size/mm", "1,25.014"];
    const holes = table(
      "holes",
      { place: "tag", size: "length" },
      "    uncertainty: { size: 3 um, k: 2 }\n",
      rows,
    );
    const page = await settled(holes, check("c", "largest(holes.size)", { atMost: "25.015 mm" }));
    expect(stateAt(page, "c")).toBe("unproven");
    const wide = await settled(holes, check("c", "largest(holes.size)", { atMost: "25.0171 mm" }));
    expect(stateAt(wide, "c")).toBe("proven");
  });

  test("of more readings than are followed one by one: a difference is not proven, and says why", async () => {
    const many = (count: number) =>
      table("holes", { place: "tag", size: "length" }, "    uncertainty: { size: 0.1 um, k: 2 }\n", [
        "place,size/mm",
        ...Array.from({ length: count }, (_, i) => `${i + 1},${(25 + (i % 3) / 1000).toFixed(3)}`),
      ]);
    const range = check("c", "largest(holes.size) - smallest(holes.size)", { atMost: "10 um" });
    expect(stateAt(await settled(many(300), range), "c")).toBe("proven");
    const page = await settled(many(500), range);
    expect(stateAt(page, "c")).toBe("unproven");
    expect(checkAt(page, "c").why).toContain("must be 400 or fewer to be counted one by one");
    const single =
      "  - check: each\n    each: holes\n    key: place\n    that: holes.size\n    atMost: 25.0021 mm";
    const { value } = lineAt(await settled(many(500), single), "each");
    if (isProblem(value) || value.type !== "checks") throw new Error("no checks");
    expect(new Set(value.rows.map((row) => (isProblem(row.value) ? "" : row.value.state)))).toEqual(
      new Set(["proven"]),
    );
  });

  test("through a method: 148.8 kN from 500 ± 20 N·m is too close to 150 kN", async () => {
    const items = (torque: string) => [
      given("torque", torque),
      method("t", "preload-from-torque", { torque: "torque", nutFactor: "0.14", diameter: "24 mm" }),
      check("c", "t", { atMost: "150 kN" }),
    ];
    expect(stateAt(await settled(...items("500 N.m")), "c")).toBe("proven");
    const page = await settled(...items("500 N.m ± 20 N.m"));
    expect(stateAt(page, "c")).toBe("unproven");
    expect(checkAt(page, "c").carried.halfWidth / 20 / (148809.5 / 500)).toBeCloseTo(1, 6);
    const typedInPlace = await settled(
      method("t", "preload-from-torque", {
        torque: "500 N.m ± 20 N.m",
        nutFactor: "0.14",
        diameter: "24 mm",
      }),
      check("c", "t", { atMost: "150 kN" }),
    );
    expect(stateAt(typedInPlace, "c")).toBe("unproven");
  });

  test("a spread that applies to an output is that share of it, in a method and in a formula alike", async () => {
    const spread = { spread: { plusMinus: "20 %", meaning: "limits", applies: "preload" } };
    const byFormula = await settled(
      given("nutFactor", "0.2", spread),
      given("torque", "480 N.m"),
      working("preload", 'torque / (nutFactor * "24 mm")'),
      check("c", "preload", { atMost: "121 kN" }),
    );
    const byMethod = await settled(
      given("nutFactor", "0.2", spread),
      method("t", "preload-from-torque", { torque: "480 N.m", nutFactor: "nutFactor", diameter: "24 mm" }),
      check("c", "t", { atMost: "121 kN" }),
    );
    for (const page of [byFormula, byMethod]) {
      expect(checkAt(page, "c").carried.halfWidth).toBeCloseTo(20_000, 6); // N, 20 % of 100 kN
      expect(stateAt(page, "c")).toBe("proven");
    }
  });

  test("a comma that is still asked about proves nothing until somebody says what is meant", async () => {
    const page = await settled(
      given("torque", "180,5 N.m"),
      method("t", "preload-from-torque", { torque: "torque", nutFactor: "0.2", diameter: "24 mm" }),
      check("c", "t", { atMost: "150 kN" }),
    );
    expect(stateAt(page, "c")).toBe("unproven");
    expect(checkAt(page, "c").why).toContain("180.5");
    page.confirm("torque", "180,5 N.m");
    await page.settle();
    expect(stateAt(page, "c")).toBe("proven");
    page.change("torque", "181,5 N.m");
    await page.settle();
    expect(stateAt(page, "c")).toBe("unproven");
  });

  test("solve says the doubt of its answer", () => {
    const answer = solve("preload-from-torque", {
      torque: "500 N.m ± 20 N.m",
      nutFactor: 0.14,
      diameter: "24 mm",
    });
    if (isProblem(answer)) throw new Error(sentence(answer));
    const output = answer.outputs["preload"];
    expect(output && "si" in output && halfWidth(output.doubt ?? [])).toBeCloseTo(5952.38, 1);
  });

  test("what a value and its limit share falls out; what they do not share is added at its worst", async () => {
    const page = await settled(
      given("a", "10 mm ± 1 mm"),
      given("b", "2 mm ± 0.1 mm"),
      working("more", "a + b"),
      check("same", "a", { atMost: "more" }),
      check("apart", "a + b", { atMost: "13.05 mm" }),
      check("clear", "a + b", { atMost: "13.2 mm" }),
    );
    expect(["same", "apart", "clear"].map((name) => stateAt(page, name))).toEqual([
      "proven",
      "unproven",
      "proven",
    ]);
  });

  test("a comparison inside a formula turns within the doubt of its sides", async () => {
    const page = await settled(
      given("a", "10 mm ± 1 mm"),
      check("near", 'a <= "10.5 mm"'),
      check("far", 'a <= "11.5 mm"'),
    );
    expect(["near", "far"].map((name) => stateAt(page, name))).toEqual(["unproven", "proven"]);
  });

  test("a declared uncertainty and what the inputs bring never hide each other", async () => {
    const item = given("a", "10 mm ± 1 mm");
    const small = await settled(item, check("c", "a", { atMost: "10.5 mm", uncertainty: "0.1 mm" }));
    expect(stateAt(small, "c")).toBe("unproven");
    const large = await settled(item, check("c", "a", { atMost: "11.5 mm", uncertainty: "2 mm" }));
    expect(stateAt(large, "c")).toBe("unproven");
  });

  test("a ± typed over a value stands for it, and the file says so once", async () => {
    const text = [
      given("k", "0.14", { spread: { plusMinus: "25 %", meaning: "limits" }, source: "tin" }),
      check("c", "k", { atMost: "0.16" }),
    ];
    const page = await settled(...text);
    expect(stateAt(page, "c")).toBe("unproven");
    await change(page, { k: "0.14 ± 0.014" });
    expect(stateAt(page, "c")).toBe("proven");
    const again = open(page.text());
    await again.settle();
    expect(stateAt(again, "c")).toBe("proven");
    expect(page.text()).not.toContain("25 %");
  });
});

describe("a difference on its limit is inside, whatever the last bit says", () => {
  test.each([
    ["25.0153 mm", "25.0003 mm"],
    ["25.0250 mm", "25.0100 mm"],
    ["25.0300 mm", "25.0150 mm"],
  ])("%s - %s against 15 um", async (hole, shank) => {
    const page = await settled(
      given("hole", hole),
      given("shank", shank),
      working("gap", "hole - shank"),
      check("direct", "hole - shank", { atMost: "15 um" }),
      check("named", "gap", { between: ["15 um", "15 um"] }),
      check("truth", 'gap <= "15 um"'),
      check("over", "gap", { atMost: "14.9999 um" }),
    );
    expect(["direct", "named", "truth", "over"].map((name) => stateAt(page, name))).toEqual([
      "proven",
      "proven",
      "proven",
      "fails",
    ]);
  });
});

describe("a place judged on fewer readings than the plan expects", () => {
  const item = (rows: readonly string[]) =>
    table(
      "holes",
      { position: "tag", place: "tag", size: "length" },
      "    key: [position, place]\n    expect: { position: [1, 2], place: [a, b] }\n",
      ["position,place,size/mm,state,reason,by", ...rows],
    );
  const checks = [
    `  - check: each\n    each: holes\n    key: position\n    that: largest(holes.size) - smallest(holes.size)\n    atMost: 10 um`,
    check("all", "largest(holes.size)", { atMost: "25.1 mm" }),
  ];
  const rowStates = (page: OpenPage): string[] => {
    const { value } = lineAt(page, "each");
    if (isProblem(value) || value.type !== "checks") throw new Error("no checks");
    return value.rows.map((row) => (isProblem(row.value) ? "no answer" : row.value.state));
  };

  test("is proven with all of them, unproven where one is set aside, and says who and why", async () => {
    const full = await settled(
      item(["1,a,25.001,,,", "1,b,25.002,,,", "2,a,25.001,,,", "2,b,25.003,,,"]),
      ...checks,
    );
    expect([...rowStates(full), stateAt(full, "all")]).toEqual(["proven", "proven", "proven"]);
    const rows = [
      "1,a,25.001,,,",
      "1,b,25.002,,,",
      "2,a,25.001,,,",
      "2,b,25.030,set aside,gauge slipped,fitter B",
      "2,b,,,,",
    ];
    const aside = await settled(item(rows.slice(0, 4)), ...checks);
    expect([...rowStates(aside), stateAt(aside, "all")]).toEqual(["proven", "unproven", "unproven"]);
    expect(checkAt(aside, "all").why).toContain("2, b: gauge slipped, fitter B");
  });

  test("is proven again once the place was read again", async () => {
    const page = await settled(
      item([
        "1,a,25.001,,,",
        "1,b,25.002,,,",
        "2,a,25.001,,,",
        "2,b,25.030,set aside,gauge slipped,fitter B",
        "2,b,25.003,,,",
      ]),
      ...checks,
    );
    expect([...rowStates(page), stateAt(page, "all")]).toEqual(["proven", "proven", "proven"]);
  });

  test("is unproven while a reading is blank or has no row", async () => {
    const blank = await settled(
      item(["1,a,25.001,,,", "1,b,25.002,,,", "2,a,25.001,,,", "2,b,,,,"]),
      ...checks,
    );
    expect([...rowStates(blank), stateAt(blank, "all")]).toEqual(["proven", "unproven", "unproven"]);
    const missing = await settled(item(["1,a,25.001,,,", "1,b,25.002,,,", "2,a,25.001,,,"]), ...checks);
    expect([...rowStates(missing), stateAt(missing, "all")]).toEqual(["proven", "unproven", "unproven"]);
    expect(checkAt(missing, "all").why).toContain("not measured yet");
  });

  test("four split readings of hole 13 set aside leave taper and fit of that hole unproven", async () => {
    const text = readFileSync("notebooks/pump-2-as-found.yaml", "utf8");
    const before = open(text);
    await before.settle();
    const count = (page: OpenPage) =>
      page
        .lines()
        .flatMap(({ value }) => (isProblem(value) || value.type !== "checks" ? [] : value.rows))
        .filter(({ value }) => !isProblem(value) && value.state === "proven").length;
    const rows = lineAt(before, "holes");
    if (rows.item.kind !== "reading") throw new Error("no reading");
    const head = rows.item.rows.split("\n");
    const changed = head
      .map((line, i) => {
        if (i === 0) return `${line},state,reason,by`;
        if (line.trim() === "") return line;
        return line.startsWith("13,") && line.includes("split")
          ? `${line},set aside,gauge slipped,fitter B`
          : `${line},,,`;
      })
      .join("\n");
    const after = open(text);
    await after.settle();
    after.enter("holes", changed);
    await after.settle();
    const taper = lineAt(after, "taper").value;
    if (isProblem(taper) || taper.type !== "checks") throw new Error("no taper");
    const hole13 = taper.rows.find(({ key }) => key === "13")?.value;
    expect(hole13 && !isProblem(hole13) && hole13.state).toBe("unproven");
    expect(count(after)).toBeLessThanOrEqual(count(before));
  });
});

describe("where a number comes from travels too", () => {
  test("a given without a source is named at the check that rests on it", async () => {
    const page = await settled(
      given("a", "10 mm", { says: "Length" }),
      given("b", "1", { source: "owner" }),
      check("c", "a * b", { atMost: "12 mm" }),
    );
    expect(checkAt(page, "c").unsourced).toEqual(["Length"]);
  });

  test("a changed value leaves the source of the old one behind, here and in the file", async () => {
    const page = await settled(
      given("k", "0.18", { source: "Shigley Table 8-15" }),
      check("c", "k", { atMost: "0.2" }),
    );
    expect(checkAt(page, "c").unsourced).toEqual([]);
    await change(page, { k: "0.14" });
    expect(checkAt(page, "c").unsourced).toEqual(["k"]);
    expect(page.text()).toContain("not stated for this value; for 0.18: Shigley Table 8-15");
    const again = open(page.text());
    await again.settle();
    expect(checkAt(again, "c").unsourced).toEqual(["k"]);
    page.restate("k", "tin label, the lead");
    await page.settle();
    expect(checkAt(page, "c").unsourced).toEqual([]);
    expect(page.text()).toContain('source: "tin label, the lead"');
    await change(page, { k: "0.18" });
    page.restate("k", "");
    expect(page.text()).not.toContain("not stated");
  });

  test("a source from memory is named at the check", async () => {
    const page = await settled(
      given("a", "10 mm", { source: "ISO 9999, from memory" }),
      check("c", "a", { atMost: "12 mm" }),
    );
    expect(checkAt(page, "c").memory).toEqual(["a: ISO 9999, from memory"]);
  });
});
