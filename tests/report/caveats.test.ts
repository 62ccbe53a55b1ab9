// What a page rests on and leaves out: sources from memory, row by row as well, and as they were stated last.
import { expect, test } from "vitest";
import { caveats } from "../../src/report/caveats.ts";
import { openNotebook } from "../demo/helpers.ts";
import { given, settled } from "../engine/helpers.ts";

test("a method that is asked row by row rests on its sources from memory too", async () => {
  const live = await openNotebook("cover-16-as-found");
  expect(live.line("pair")?.value).toMatchObject({ type: "rows" });
  expect(caveats(live.lines()).memory).toContain("pair");
  live.dispose();
}, 60_000);

test("a given rests on the source that was stated last", async () => {
  const live = await settled(
    given("a", "5 mm", { source: "a handbook, from memory" }),
    given("b", "5 mm", { source: "drawing, invented" }),
  );
  expect(caveats(live.lines()).memory).toEqual(["a"]);
  live.restate("a", "drawing 7, invented");
  live.restate("b", "a card, from memory");
  await live.settle();
  expect(caveats(live.lines()).memory).toEqual(["b"]);
  live.dispose();
});
