// What to look at first is told whatever a check is made of.
import { expect, test } from "vitest";
import { exceptions } from "../../src/report/exceptions.ts";
import { openNotebook } from "../demo/helpers.ts";

test("a list that is empty and may not hold is told, with the reason", async () => {
  const live = await openNotebook("cover-16-tightening");
  const told = () => exceptions(live.lines()).filter(({ name }) => name === "checkPassAddsUp");
  expect(live.line("checkPassAddsUp")?.value).toMatchObject({ state: "proven", rows: [] });
  expect(told()).toEqual([]);
  live.change("wrenchLength", "24,5 in"); // its comma is asked about until somebody confirms it
  await live.settle();
  const { value } = live.line("checkPassAddsUp") ?? {};
  expect(value).toMatchObject({ state: "unproven", rows: [] });
  expect(told()).toMatchObject([
    { mark: "unproven", words: expect.stringMatching(/^Nothing found\. May not hold: /) },
  ]);
  live.dispose();
}, 60_000);
