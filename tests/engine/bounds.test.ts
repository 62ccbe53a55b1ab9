// Pages that go through many rows, or wait for themselves: the work and the words grow with the page.

import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import type { ReadingItem } from "../../src/document/item.ts";
import { lackingReadings } from "../../src/engine/lacking-readings.ts";
import type { Line, TableValue } from "../../src/engine/line.ts";
import { readingValue } from "../../src/engine/reading.ts";
import { type RowContext, resolve } from "../../src/engine/scope.ts";
import { unboundNumbers } from "../../src/engine/unbound-numbers.ts";
import { loops } from "../../src/engine/uses.ts";
import { nearest } from "../../src/nearest.ts";
import { isProblem, sentence } from "../../src/problem.ts";
import { setAsidesOf } from "../../src/report/set-asides.ts";
import { steps } from "../steps.ts";
import { settled } from "./helpers.ts";

const upTo = (n: number): readonly number[] => Array.from({ length: n }, (_, i) => i);

/** A table whose places are counted as they are looked at. */
function countedTable(n: number): { table: TableValue; looks: () => number } {
  let looks = 0;
  const watched = <T>(list: readonly T[]): readonly T[] =>
    new Proxy(list, {
      get: (target, key, self): unknown => {
        if (typeof key === "string" && /^\d+$/.test(key)) looks += 1;
        return Reflect.get(target, key, self);
      },
    });
  const keys = upTo(n).map(String);
  const column = { unit: "mm", optional: false };
  const table: TableValue = {
    type: "table",
    says: undefined,
    columns: [
      { ...column, name: "p", kind: "tag", values: keys, typed: watched(keys) },
      {
        ...column,
        name: "d",
        kind: "length",
        values: watched(keys.map((_, i) => (i % 7 === 0 ? undefined : i))),
        typed: watched(keys),
      },
    ],
    rows: n,
    missing: 0,
    states: watched(keys.map((_, i) => (i % 7 === 0 ? "missing" : i % 11 === 0 ? "set aside" : "entered"))),
    oddIn: new Map(),
    key: ["p"],
    setAside: watched(
      upTo(n)
        .filter((i) => i % 7 !== 0 && i % 11 === 0)
        .map((row) => ({ row, place: `${row}`, why: "slipped", by: "", readAgain: false })),
    ),
    wanted: watched(upTo(n).map((i) => ({ p: `w${i}` }))),
  };
  return { table, looks: () => looks };
}

function looksForEachRow(n: number): number {
  const { table, looks } = countedTable(n);
  for (const value of upTo(n).map(String)) {
    const row: RowContext = { key: "p", value, tags: { p: value }, table: "t" };
    resolve({ get: () => table, keys: () => ["t"], row }, "t.d");
    lackingReadings(table, "t", row, "d");
  }
  return looks();
}

describe("one answer for each row", () => {
  test("looks at each place of the table a few times, however many rows there are", () => {
    expect(looksForEachRow(2000) / looksForEachRow(500)).toBeLessThan(4.5);
  });

  test("says the same of each row as when the whole table is gone through", () => {
    const { table } = countedTable(50);
    const at = (value: string) =>
      lackingReadings(table, "t", { key: "p", value, tags: { p: value }, table: "t" }, "d").map(sentence);
    expect(at("1")).toEqual([]);
    expect(at("7")).toEqual(["7 of t not measured yet: judged on fewer readings than the plan expects"]);
    expect(at("11")).toEqual([
      "p 11 with 1 reading set aside: judged on fewer readings than the plan expects: 11: slipped",
    ]);
    expect(at("w3")).toEqual(["w3 of t not measured yet: judged on fewer readings than the plan expects"]);
  });
});

describe("a loop", () => {
  const said = (n: number): string =>
    [...loops(new Map(upTo(n).map((i) => [`w${i}`, [`w${(i + 1) % n}`]]))).values()].map(sentence).join("\n");

  test("of many lines is told at each of them in a few words", () => {
    expect(said(2000).length / said(500).length).toBeLessThan(4.5);
    expect(said(2000)).toContain("w0 → w1 → w2 → w3 → w4 → w5 → … → w1999 → w0, 2000 in all");
  });

  test("of a few lines is named in full", () => {
    expect(said(3)).toContain("a loop: w0 → w1 → w2 → w0, must");
    expect(said(3)).not.toContain("in all");
  });
});

describe("nearest", () => {
  /** The plain distance, every step of it. */
  function steps(a: string, b: string): number {
    let row = upTo(b.length + 1);
    for (const i of upTo(a.length)) {
      const next = [i + 1];
      for (const j of upTo(b.length))
        next.push(
          Math.min((row[j] ?? 0) + (a[i] === b[j] ? 0 : 1), (row[j + 1] ?? 0) + 1, (next[j] ?? 0) + 1),
        );
      row = next;
    }
    return row.at(-1) ?? 0;
  }
  const word = fc.stringMatching(/^[a-c]{0,9}$/);

  test("gives the names within the distance, the nearest first", () => {
    fc.assert(
      fc.property(word, fc.array(word, { maxLength: 8 }), (typed, names) => {
        const near = names
          .map((name) => ({ name, far: steps(typed, name) }))
          .filter(({ name, far }) => far <= Math.max(2, name.length / 3) || name.includes(typed))
          .sort((a, b) => a.far - b.far);
        expect(nearest(typed, names)).toEqual(near.slice(0, 3).map(({ name }) => name));
      }),
    );
  });

  test("a word longer than a page is near to nothing", () => {
    expect(nearest("a".repeat(2_000_000), ["torque", "a"])).toEqual([]);
    expect(isProblem(nearest("torqe", ["torque"]))).toBe(false);
  });
});

test("readings set aside are told in as many steps as there are", () => {
  const line = (n: number): Line => {
    const rows = upTo(n).map((i) => `${i % 3},${i},1,slip,set aside`);
    const item: ReadingItem = {
      kind: "reading",
      name: "r",
      columns: { p: "tag", q: "tag", d: "length", reason: "text", state: "text" },
      key: ["p", "q"],
      rows: `p,q,d/mm,reason,state\n${rows.join("\n")}\n`,
      place: { line: 1, column: 1 },
      index: 0,
    };
    const value = readingValue(item, item.rows, "p.yaml");
    return { name: "r", item, value, note: undefined, guilty: undefined, uses: [], usedBy: [], version: 1 };
  };
  const told = (n: number) => setAsidesOf(line(n));
  expect(steps(() => told(1200)) / steps(() => told(300))).toBeLessThan(4.5);
  expect(told(300)[4]?.now).toBe("p 1 is judged on 0 of 100 readings");
});

test("many typed numbers beside many values are not compared, and the page says so", async () => {
  const page = await settled(
    ...upTo(400).map((i) => `  - given: g${i}\n    value: ${i}.5 mm`),
    ...upTo(20).map(
      (k) =>
        `  - note: ${upTo(1500)
          .map((i) => `${i}.${k} mm`)
          .join(" ")}`,
    ),
  );
  const found = unboundNumbers(page.lines(), page.unitOf).map((one) => sentence(one.found));
  expect(found).toEqual([
    "numbers typed into notes: got 30000 of them beside 400 values of the page, must come to at most 10000000 pairs to be compared; whether one of them is a value of the page is not looked at",
  ]);
});
