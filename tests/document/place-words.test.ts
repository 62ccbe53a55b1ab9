// What a row is called in sentences.
import { expect, test } from "vitest";
import { groupWords, placeWords } from "../../src/document/place-words.ts";
import { readPage } from "../../src/document/read.ts";

function reading(name: string, columns: string, key: string) {
  const { page } = readPage(
    `splitline: 1\ntitle: t\npage:\n  - reading: ${name}\n    columns: { ${columns}, gap: length }\n    key: [${key}]\n    rows: ""\n`,
    "page.yaml",
  );
  const item = page?.items[0];
  if (item?.kind !== "reading") throw new Error("the page was not read");
  return item;
}

test("what a row is of is named by the reading", () => {
  const holes = reading("holes", "position: tag, direction: tag", "position, direction");
  expect(
    placeWords(holes, [
      ["position", "7"],
      ["direction", "along"],
    ]),
  ).toBe("hole 7, along");
});

test("a step is called what its own column is called", () => {
  const gaps = reading("gaps", "step: tag, station: tag", "step, station");
  expect(groupWords(gaps, [["step", "3"]])).toBe("step 3");
  expect(
    placeWords(gaps, [
      ["step", "3"],
      ["station", "2"],
    ]),
  ).toBe("step 3, station 2");
});
