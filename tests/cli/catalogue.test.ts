// Every method of the catalogue answers splitline solve with a good example.
import { describe, expect, it } from "vitest";
import { allIds, families } from "../../src/methods/families.ts";
import { methods } from "../../src/methods/index.ts";
import { goodFor } from "../methods/good-inputs.ts";
import { acceptedBy } from "../methods/helpers.ts";
import { splitline } from "./built.ts";
import { solved, words } from "./in-process.ts";

/** The good inputs without those that the chosen form refuses by name. */
function takenBy(id: string) {
  const method = methods.get(id);
  return (method && acceptedBy(method, goodFor(id))) ?? goodFor(id);
}

describe("every method answers solve", () => {
  it.each(allIds)("%s, as text and as data", (id) => {
    const { exit, out = "", err } = solved(id, takenBy(id));
    expect({ exit, err }).toEqual({ exit: 0, err: undefined });
    expect(out.startsWith(`${id}: `)).toBe(true);
    expect(out).not.toMatch(/undefined|NaN|Infinity|\[object/);
    const data: unknown = JSON.parse(solved(id, takenBy(id), "--json").out ?? "");
    expect(data).toMatchObject({ method: id, outputs: expect.any(Object), sources: expect.any(Array) });
  });

  it("the built command line says the same, one method of each family", async () => {
    for (const [id = ""] of Object.values(families)) {
      const { exit, out } = await splitline("solve", id, ...words(takenBy(id)));
      expect([id, exit, out]).toEqual([id, 0, solved(id, takenBy(id)).out]);
    }
  });
});
