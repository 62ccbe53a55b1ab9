// The engine reaches into two private parts of the pinned runtime, so that no screen frame is waited for.
import { readFileSync } from "node:fs";
import { Runtime } from "@observablehq/runtime";
import { expect, test } from "vitest";

test("the runtime still has _computeSoon and _computeNow: a new version that drops them must not pass unseen", () => {
  const runtime = new Runtime();
  expect(typeof runtime._computeSoon).toBe("function");
  expect(typeof runtime._computeNow).toBe("function");
});

test("_computeSoon may be replaced and is what schedules a wave", async () => {
  const runtime = new Runtime();
  let asked = 0;
  runtime._computeSoon = () => {
    asked += 1;
    return Promise.resolve().then(() => runtime._computeNow());
  };
  const seen: unknown[] = [];
  const variable = runtime.module().variable({ fulfilled: (value: unknown) => seen.push(value) });
  variable.define("a", [], () => 5);
  for (let i = 0; i < 20; i++) await Promise.resolve();
  expect(asked).toBe(1);
  expect(seen).toEqual([5]);
});

test("the version is pinned exactly", () => {
  const file = readFileSync(new URL("../../package.json", import.meta.url), "utf8");
  expect(file).toMatch(/"@observablehq\/runtime": "\d+\.\d+\.\d+"/);
});
