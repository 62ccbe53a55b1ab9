// For every page of the notebooks the page itself and `splitline check --json` say the same: the page's own functions
// are asked here as the views ask them, the command as a person runs it.
import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { describe, expect, test } from "vitest";
import { checkCommand } from "../../src/cli/commands/check.ts";
import type { CheckValue } from "../../src/engine/line.ts";
import { openPage } from "../../src/engine/open-page.ts";
import { isProblem } from "../../src/problem.ts";
import { caveats } from "../../src/report/caveats.ts";
import { exceptions } from "../../src/report/exceptions.ts";
import { labelOf } from "../../src/report/labels.ts";
import { reservationWords } from "../../src/report/reservations.ts";
import { itemsOf, rowNames } from "../../src/report/row-names.ts";
import { isCheck, stateOf } from "../../src/report/states.ts";

const folder = fileURLToPath(new URL("../../notebooks/", import.meta.url));
const files = readdirSync(folder).filter((name) => name.endsWith(".yaml"));

interface Said {
  readonly checks: readonly {
    readonly name: string;
    readonly says: string;
    readonly state: string;
    readonly why: string;
    readonly mayNotHold: readonly string[];
    readonly rows?: readonly { readonly says: string; readonly state: string; readonly why: string }[];
  }[];
  readonly exceptions: unknown;
  readonly notCovered: readonly string[];
  readonly sourceNotStated: readonly string[];
  readonly fromMemory: readonly string[];
}

async function asData(file: string): Promise<Said> {
  const { out = "" } = await checkCommand([file, "--json"], Number.POSITIVE_INFINITY);
  return JSON.parse(out).pages[0];
}

async function onPage(file: string) {
  const live = openPage(readFileSync(file, "utf8"), file);
  if (!("lines" in live)) throw new Error("the page did not open");
  await live.settle();
  const lines = live.lines();
  live.dispose();
  return lines;
}

describe.each(files)("%s", (name) => {
  const file = join(folder, name);

  test("names, states and words of checks, exceptions and caveats", async () => {
    const [said, lines] = await Promise.all([asData(file), onPage(file)]);
    const itemOf = itemsOf(lines);
    const checks = lines.filter(isCheck).map((line) => {
      const { item, value } = line;
      const start = { name: line.name, says: labelOf(item), state: stateOf(line) };
      if (isProblem(value) || value.type !== "checks")
        return { ...start, ...(!isProblem(value) && value.type === "check" && wordsOf(value)) };
      const nameOf = rowNames(item, value, itemOf);
      const rows = value.rows.map((row) => ({
        says: nameOf(row),
        state: stateOf(row),
        ...(!isProblem(row.value) && wordsOf(row.value)),
      }));
      return { ...start, ...wordsOf(value), rows };
    });
    expect(said.checks).toMatchObject(checks);
    expect(said.exceptions).toEqual(exceptions(lines));
    const { notCovered, unsourced, memory } = caveats(lines);
    expect(said).toMatchObject({ notCovered, sourceNotStated: unsourced, fromMemory: memory });
  }, 60_000);
});

const wordsOf = (value: Pick<CheckValue, "reason" | "reservations">) => ({
  why: value.reason,
  mayNotHold: reservationWords(value),
});
