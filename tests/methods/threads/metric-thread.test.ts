import { describe, expect, test } from "vitest";
import { metricThread } from "../../../src/methods/threads/metric-thread.ts";
import { answer, expectClose, expectPrinted, refusal, si } from "../helpers.ts";

const mm = 1e-3;
const mm2 = 1e-6;

describe("hand calculation", () => {
  test("M24x3 has the diameters and the stress area worked by hand", () => {
    // ISO 68-1: H = √3/2 P, d2 = d − 3/4 H, D1 = d − 5/4 H; root of ISO 898-1: d3 = d − 17/12 H.
    // P = 3 mm: d2 = 24 − 9√3/8, D1 = 24 − 15√3/8, d3 = 24 − 17√3/8.
    // As = π/4 ((d2 + d3)/2)² = π/4 (24 − 13√3/8)² = 352.503905384893 mm² (30 digits, separately).
    const thread = metricThread.solve({ designation: "M24x3" });
    const root3 = Math.sqrt(3);
    expectClose(si(thread, "pitchDiameter"), (24 - (9 * root3) / 8) * mm, 1e-14);
    expectClose(si(thread, "minorDiameterInternal"), (24 - (15 * root3) / 8) * mm, 1e-14);
    expectClose(si(thread, "minorDiameterExternal"), (24 - (17 * root3) / 8) * mm, 1e-14);
    expectClose(si(thread, "stressArea"), 352.5039053848926 * mm2, 1e-14);
    expectClose(si(thread, "shankArea"), 144 * Math.PI * mm2, 1e-14);
  });

  test("M20x2.5 agrees with the short constants 0.649519, 1.226869 and 0.938194 of the profile", () => {
    const thread = metricThread.solve({ designation: "M20" });
    expectPrinted(si(thread, "pitchDiameter"), "18.376", mm);
    expectPrinted(si(thread, "minorDiameterExternal"), "16.933", mm);
    expectClose(si(thread, "stressArea"), (Math.PI / 4) * (20 - 0.938194 * 2.5) ** 2 * mm2, 1e-6);
  });
});

describe("laws", () => {
  test("M24 means its coarse pitch, so M24 and M24x3 are the same thread", () => {
    const named = answer(metricThread.solve({ designation: "M24" }));
    expect(named.outputs).toEqual(answer(metricThread.solve({ designation: "M24x3" })).outputs);
  });

  test.each(["M3", "M5", "M10x1.25", "M24", "M36", "M64"])(
    "%s: root < basic minor < pitch < major, and the stress diameter lies between root and pitch",
    (designation) => {
      const thread = metricThread.solve({ designation });
      const order = ["minorDiameterExternal", "minorDiameterInternal", "pitchDiameter", "majorDiameter"];
      const sizes = order.map((name) => si(thread, name));
      expect(sizes).toEqual(sizes.toSorted((a, b) => a - b));
      expectClose(
        2 * si(thread, "stressDiameter"),
        si(thread, "pitchDiameter") + si(thread, "minorDiameterExternal"),
      );
      expect(si(thread, "stressArea")).toBeLessThan(si(thread, "shankArea"));
    },
  );

  test("a finer pitch on the same diameter leaves more stress area", () => {
    const area = (designation: string) => si(metricThread.solve({ designation }), "stressArea");
    expect(area("M24x2")).toBeGreaterThan(area("M24x3"));
    expect(area("M10x1")).toBeGreaterThan(area("M10x1.25"));
  });
});

describe("refusals", () => {
  test("a size that no table holds is refused and names neighbours", () => {
    const said = refusal(metricThread.solve({ designation: "M23" }));
    expect(said.where).toBe("metric-thread");
    expect(said.suggestions.length).toBeGreaterThan(0);
  });

  test.each(["3/8-24 UNF", "24", "M", "x3", "M24x", "M24x-3", "M0", "M1e9"])(
    "%s is not read as a metric thread",
    (designation) => {
      expect(refusal(metricThread.solve({ designation })).code).toBeTruthy();
    },
  );
});
