import { describe, expect, test } from "vitest";
import { readPage } from "../../src/document/read.ts";
import {
  examplePage,
  header,
  marksOf,
  onlyItem,
  pageOf,
  problemsOf,
  readGood,
  sentencesOf,
} from "./pages.ts";

describe("a page that reads", () => {
  test("every kind of item comes out in the order of the file, with its line", () => {
    const { items } = readGood(examplePage);
    expect(items.map((item) => `${item.index} ${item.kind} ${item.place.line}:${item.place.column}`)).toEqual(
      [
        "0 note 7:5",
        "1 given 11:5",
        "2 given 17:5",
        "3 working 22:5",
        "4 working 25:5",
        "5 working 28:5",
        "6 check 30:5",
        "7 reading 35:5",
        "8 picture 42:5",
        "9 caution 44:5",
        "10 sign-off 45:5",
      ],
    );
  });

  test("title, machine, show and seed are read", () => {
    const page = readGood(
      `splitline: 1\ntitle: t\nmachine: m\nsubject: s\nrevision: B\npreparedFor: owner\nseed: 20261125\nshow: { torque: N.m }\npage: []\n`,
    );
    expect(page).toEqual({
      file: "page.yaml",
      title: "t",
      machine: "m",
      subject: "s",
      revision: "B",
      preparedFor: "owner",
      seed: 20261125,
      show: { torque: "N.m" },
      items: [],
    });
  });

  test("a quantity with a unit is kept as typed", () => {
    expect(onlyItem(pageOf("given: a", "value: 12.0000 mm"))).toMatchObject({
      kind: "given",
      name: "a",
      value: "12.0000 mm",
    });
  });

  test.each(["12.0000", "0.14050", "20", "-3", "+5", "0", "-0.50"])(
    "a plain number %s keeps every digit as typed",
    (typed) => {
      expect(onlyItem(pageOf("given: a", `value: ${typed}`))).toMatchObject({ value: typed });
    },
  );

  test("plain numbers inside limits, spreads and inputs are kept as typed too", () => {
    expect(onlyItem(pageOf("check: c", "that: a", "between: [0.90, 1.10]"))).toMatchObject({
      between: ["0.90", "1.10"],
    });
    expect(onlyItem(pageOf("given: a", "value: 1 mm", "spread: { lower: 0.10, upper: 0.20 }"))).toMatchObject(
      { spread: { form: "limits", lower: "0.10", upper: "0.20" } },
    );
    expect(
      onlyItem(
        pageOf(
          "working: w",
          "by: pass-torques",
          "of: { finalTorque: t, fractions: [0.30, 0.60], rows: [{ x: 1.0 }], at: { x: 2.0 } }",
        ),
      ),
    ).toMatchObject({
      of: { finalTorque: "t", fractions: ["0.30", "0.60"], rows: [{ x: "1.0" }], at: { x: "2.0" } },
    });
  });

  test("a formula item has its formula, a method item its method", () => {
    const { items } = readGood(examplePage);
    expect(items[3]).toMatchObject({ by: "metric-thread", of: { designation: "M24x3" } });
    expect(items[5]).toMatchObject({ formula: 'tension.preload / "211.5 kN"' });
    expect(items[5]).not.toHaveProperty("by");
  });

  test("a note may stand on any item, and a note item has text", () => {
    expect(onlyItem(pageOf("given: a", "value: 1 mm", "note: read twice"))).toMatchObject({
      kind: "given",
      note: "read twice",
    });
    expect(onlyItem(pageOf("note: hello"))).toMatchObject({ kind: "note", text: "hello" });
  });

  test("an empty value is read: the field waits to be filled in", () => {
    expect(onlyItem(pageOf("given: a", 'value: ""'))).toMatchObject({ value: "" });
  });

  test("a spread without a word about its meaning is limits", () => {
    expect(onlyItem(pageOf("given: a", "value: 1 mm", "spread: { plusMinus: 3 um }"))).toMatchObject({
      spread: { form: "plusMinus", plusMinus: "3 um", meaning: "limits" },
    });
  });

  test("every form of spread is read", () => {
    const spread = (text: string) => onlyItem(pageOf("given: a", "value: 1 mm", `spread: ${text}`));
    expect(spread("{ plusMinus: 3 um, meaning: expanded, k: 2 }")).toMatchObject({
      spread: { form: "plusMinus", meaning: "expanded", k: "2" },
    });
    expect(
      spread("{ plusMinus: 3 um, meaning: standard, distribution: t, degreesOfFreedom: 8 }"),
    ).toMatchObject({ spread: { distribution: "t", degreesOfFreedom: "8" } });
    expect(spread("{ resolution: 0.001 mm }")).toMatchObject({
      spread: { form: "resolution", resolution: "0.001 mm" },
    });
  });

  test("uncertainties of a reading share one coverage factor", () => {
    expect(readGood(examplePage).items[7]).toMatchObject({
      uncertainty: { k: "2", of: { diameter: "3 um" } },
    });
  });

  test("rows know the line of the file they start on", () => {
    expect(readGood(examplePage).items[7]).toMatchObject({ rowsLine: 39 });
  });

  test("a sign-off gives names, and the record where there is one", () => {
    expect(readGood(examplePage).items[10]).toMatchObject({
      prepared: "fitter A",
      checked: "fitter B",
      records: { checked: { who: "fitter B", date: "2026-11-25" } },
    });
  });

  test("CRLF and a byte order mark change nothing but the bytes", () => {
    expect(readGood(`\uFEFF${examplePage.replaceAll("\n", "\r\n")}`)).toEqual(readGood(examplePage));
  });
});

describe("a page that does not read", () => {
  test.each([
    [
      "nothing",
      "",
      "page.yaml:1:1 · page file: got nothing, must hold a page; for example: splitline: 1, then title: and page:",
    ],
    [
      "only a comment",
      "# to do\n",
      "page.yaml:1:1 · page file: got nothing, must hold a page; for example: splitline: 1, then title: and page:",
    ],
    [
      "a text",
      "bolts holes gaps\n",
      "page.yaml:1:1 · page file: got a text, must be a mapping of keys to values; for example: splitline: 1, then title: and page:",
    ],
    [
      "a list",
      "- a\n- b\n",
      "page.yaml:1:1 · page file: got a list, must be a mapping of keys to values; for example: splitline: 1, then title: and page:",
    ],
    [
      "an empty mapping",
      "{}\n",
      "page.yaml:1:1 · page file: got an empty mapping, must be a mapping of keys to values; for example: splitline: 1, then title: and page:",
    ],
    [
      "another version",
      "splitline: 2\ntitle: t\npage: []\n",
      "page.yaml:1:12 · splitline: got 2, must be 1, the version of the page format read here; write splitline: 1",
    ],
    [
      "no title",
      "splitline: 1\npage: []\n",
      "page.yaml:1:1 · title of the page: got nothing, must be given; for example title: Circulation pump 2, split line",
    ],
    [
      "no version",
      "title: t\npage: []\n",
      "page.yaml:1:1 · splitline of the page: got nothing, must be given; for example splitline: 1",
    ],
    [
      "no items",
      "splitline: 1\ntitle: t\n",
      "page.yaml:1:1 · page of the page: got nothing, must be given; for example page: followed by a list of items, each with its own dash",
    ],
  ])("%s is answered with one sentence", (_, text, said) => {
    expect(sentencesOf(text)).toEqual([said]);
  });

  test("all problems come at once, in the order of the file, each at its line and column", () => {
    const text = `splitline: 1
titel: x
seed: 1.5
page:
  - givn: a
    value: 3
  - given: NutFactor
    vale: 3
  - given: sqrt
    value: 1 mm
  - given: b
    value:
    says: 12
    as: troque
    spread: 20 %
  - given: b
    value: true
  - working: w
  - working: w2
    by: x
    of: { a: true }
    is: 3
  - check: c
    that: x
  - caution: C9
  - given: z
    check: y
  - just text
`;
    expect(marksOf(text)).toEqual([
      "1:1 missing-key",
      "2:1 unknown-key",
      "3:7 wrong-value",
      "5:5 no-kind",
      "7:5 missing-key",
      "7:12 bad-name",
      "8:5 unknown-key",
      "9:12 reserved-name",
      "12:5 missing-key",
      "13:11 wrong-value",
      "14:9 wrong-value",
      "15:13 wrong-value",
      "16:12 duplicate-name",
      "17:12 wrong-value",
      "18:5 no-way",
      "22:9 two-ways",
      "25:14 wrong-value",
      "27:12 two-kinds",
      "28:5 not-an-item",
    ]);
  });

  test("an unknown key is answered with the nearest key", () => {
    const [found] = problemsOf(pageOf("given: a", "vale: 3 mm", "value: 3 mm"));
    expect(found).toMatchObject({
      code: "unknown-key",
      got: "vale",
      hint: "did you mean value?",
      suggestions: ["value"],
    });
  });

  test("an item whose kind is misspelt is answered with the nearest kind", () => {
    expect(problemsOf(pageOf("readng: a", "rows: x"))[0]).toMatchObject({
      code: "no-kind",
      suggestions: ["reading"],
    });
  });

  test("a kind of quantity that is misspelt is answered with the nearest kind", () => {
    expect(problemsOf(pageOf("given: a", "value: 3 N.m", "as: troque"))[0]).toMatchObject({
      suggestions: ["torque"],
    });
  });

  test("a number where a text belongs is answered with the text in quotes", () => {
    expect(sentencesOf(pageOf("given: a", "value: 3 mm", "says: 2026"))).toEqual([
      'page.yaml:6:11 · says of given a: got 2026, must be a text; put it in quotes: says: "2026"',
    ]);
  });

  test("a name given twice names the place of the first", () => {
    const text = `${header}  - given: a\n    value: 1 mm\n  - given: a\n    value: 2 mm\n`;
    expect(sentencesOf(text)).toEqual([
      "page.yaml:6:12 · name: got a, must be given once; page.yaml:4:12 already has it; write another name, for example a2",
    ]);
  });

  test("a name that is not camelCase is answered with one that is", () => {
    expect(problemsOf(pageOf("given: net torque", "value: 1 mm"))[0]).toMatchObject({
      code: "bad-name",
      suggestions: ["netTorque"],
    });
    expect(problemsOf(pageOf("given: Nut_Factor", "value: 1 mm"))[0]).toMatchObject({
      suggestions: ["nutFactor"],
    });
  });

  test.each(["pi", "sqrt", "mean", "log10", "mod", "in", "true"])(
    "the name %s belongs to the formula language",
    (name) => {
      expect(problemsOf(pageOf(`given: "${name}"`, "value: 1 mm"))[0]?.code).toBe("reserved-name");
    },
  );

  test("an expanded uncertainty without its coverage factor is refused", () => {
    expect(
      sentencesOf(pageOf("given: a", "value: 1 mm", "spread: { plusMinus: 3 um, meaning: expanded }")),
    ).toEqual(["page.yaml:6:13 · spread k of given a: got nothing, must be given; for example k: 2"]);
    expect(
      problemsOf(pageOf("reading: r", "columns: { d: length }", "uncertainty: { d: 3 um }", 'rows: ""'))[0],
    ).toMatchObject({ code: "missing-key", what: "uncertainty k of reading r" });
  });

  test("a spread holds one form only", () => {
    expect(
      problemsOf(pageOf("given: a", "value: 1 mm", "spread: { plusMinus: 3 um, upper: 2 mm }"))[0],
    ).toMatchObject({ code: "unknown-key", got: "upper" });
  });

  test("a value outside its choices is answered with the choices", () => {
    expect(problemsOf(pageOf("given: a", "value: 6x", "choices: [6g, 6H]"))[0]).toMatchObject({
      code: "not-a-choice",
      suggestions: ["6g", "6H"],
    });
  });

  test("a check may stand without a limit: it may ask a yes or no", () => {
    expect(onlyItem(pageOf("check: c", "that: window.open"))).toMatchObject({
      kind: "check",
      that: "window.open",
    });
  });

  test("between stands alone", () => {
    expect(problemsOf(pageOf("check: c", "that: a", "between: [1, 2]", "atMost: 3"))[0]?.code).toBe(
      "two-limits",
    );
    expect(problemsOf(pageOf("check: c", "that: a", "between: [1]"))[0]?.code).toBe("wrong-value");
  });

  test("an uncertainty is given for a column there is", () => {
    expect(
      problemsOf(
        pageOf("reading: r", "columns: { d: length }", "uncertainty: { e: 3 um, k: 2 }", 'rows: ""'),
      )[0],
    ).toMatchObject({ code: "unknown-column", got: "e", must: "be a column: d" });
  });

  test("a unit to show in has to be a unit of its kind", () => {
    expect(problemsOf("splitline: 1\ntitle: t\nshow: { torque: mm }\npage: []\n")[0]?.where).toBe(
      "page.yaml:3:17",
    );
  });

  test("a waiver says who and why", () => {
    expect(
      problemsOf(pageOf("check: c", "that: a", "atMost: 1", "waived: { by: joint engineer }"))[0],
    ).toMatchObject({ code: "missing-key", what: "waived why of check c" });
  });

  test("reading a page of 1000 items leaves no problem and changes no text", () => {
    const items = Array.from({ length: 1000 }, (_, i) => `  - given: a${i}\n    value: ${i}.50 mm\n`).join(
      "",
    );
    const { page } = readPage(`${header}${items}`, "page.yaml");
    expect(page?.items.length).toBe(1000);
    expect(page?.items[999]).toMatchObject({ value: "999.50 mm" });
  });
});
