import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { embeddingLoss } from "../../../src/methods/preload/embedding-loss.ts";
import { goodFor } from "../good-inputs.ts";
import { between, expectClose, of, si, testLimits } from "../helpers.ts";

const good = goodFor("embedding-loss");
const loss = (embedding: number, kb: number, km: number) =>
  si(
    embeddingLoss.solve({
      embedding: of("length", embedding),
      boltStiffness: of("stiffness", kb),
      clampedStiffness: of("stiffness", km),
    }),
    "loss",
  );

describe("hand calculation", () => {
  test("10 µm on 1000 and 4000 kN/mm in series loses 8 kN", () => {
    // Series: 1000 · 4000/5000 = 800 kN/mm; 0.010 mm · 800 kN/mm = 8 kN.
    const found = embeddingLoss.solve({
      embedding: "10 um",
      boltStiffness: "1000 kN/mm",
      clampedStiffness: "4000 kN/mm",
    });
    expectClose(si(found, "loss"), 8000);
  });
});

const k = between(1e7, 1e10);

describe("laws", () => {
  test("bolt and clamped parts may change places", () => {
    fc.assert(
      fc.property(between(0, 1e-4), k, k, (f, kb, km) => expectClose(loss(f, kb, km), loss(f, km, kb))),
    );
  });

  test("is the embedding over the sum of the two compliances", () => {
    fc.assert(
      fc.property(between(1e-7, 1e-4), k, k, (f, kb, km) =>
        expectClose(loss(f, kb, km), f / (1 / kb + 1 / km)),
      ),
    );
  });

  test("a softer bolt loses less", () => {
    fc.assert(
      fc.property(between(1e-7, 1e-4), k, k, (f, kb, km) => {
        expect(loss(f, kb / 2, km)).toBeLessThan(loss(f, kb, km));
      }),
    );
  });
});

describe("edges", () => {
  test("no embedding, no loss", () => {
    expect(loss(0, 1e9, 4e9)).toBe(0);
  });
});

describe("limits", () => {
  testLimits(embeddingLoss, good, {
    "embedding >= 0": { embedding: "-1 um" },
    "boltStiffness > 0": { boltStiffness: "0 kN/mm" },
    "clampedStiffness > 0": { clampedStiffness: "-1 kN/mm" },
  });
});
