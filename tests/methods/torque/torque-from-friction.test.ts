import * as fc from "fast-check";
import { describe, expect, test } from "vitest";
import { torqueFromFriction } from "../../../src/methods/torque/torque-from-friction.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, between, expectClose, expectPrinted, of, si, testLimits } from "../helpers.ts";

const good = goodFor("torque-from-friction");
const lbfInch = 4.4482216152605 * 0.0254;

describe("hand calculation", () => {
  test("the square power screw of Shigley 8th ed. solutions, Prob. 8-4, takes 10.23 and 6 N.m", () => {
    // F = 6 kN, dm = 22.5, l = 5, f = 0.08, fc = 0.05, dc = 40 mm; a square thread has half angle 0.
    // TR = (F dm/2)(l + π f dm)/(π dm − f l) = 10.232552696 N.m; Tc = F fc dc/2 = 6 N.m.
    const screw = torqueFromFriction.solve({
      preload: "6 kN",
      pitch: "5 mm",
      pitchDiameter: "22.5 mm",
      threadFriction: "0.08",
      bearingFriction: "0.05",
      bearingMeanDiameter: "40 mm",
      threadHalfAngle: "0 deg",
    });
    expectClose(si(screw, "threadTorque"), 10.232552696028726, 1e-13);
    expectClose(si(screw, "bearingTorque"), 6);
    expectPrinted(si(screw, "torque"), "16.23");
  });

  test("the Acme screw of Prob. 8-6 takes 377.6 and 375 lbf.in", () => {
    // F = 2500 lbf, dm = 2.75, l = 0.5 in, f = 0.05, α = 14.5°, fc = 0.06, dc = 5 in.
    // TR = (F dm/2)(l + π f dm sec α)/(π dm − f l sec α) = 377.602046386 lbf.in; Tc = 375 lbf.in.
    const screw = torqueFromFriction.solve({
      preload: "2500 lbf",
      pitch: "0.5 in",
      pitchDiameter: "2.75 in",
      threadFriction: 0.05,
      bearingFriction: 0.06,
      bearingMeanDiameter: "5 in",
      threadHalfAngle: "14.5 deg",
    });
    expectClose(si(screw, "threadTorque"), 377.602046385767 * lbfInch, 1e-12);
    expectPrinted(si(screw, "threadTorque"), "377.6", lbfInch);
    expectPrinted(si(screw, "torque"), "753", lbfInch);
  });

  test("without friction the whole torque is preload times pitch over 2π", () => {
    // Work of one turn: 2π T = F p.
    for (const form of ["exact", "short"]) {
      const free = torqueFromFriction.solveNamed({ ...good, threadFriction: 0, bearingFriction: 0, form });
      expectClose(si(free, "torque"), (148e3 * 3e-3) / (2 * Math.PI), 1e-13);
      expect(Math.abs(si(free, "threadFrictionTorque"))).toBeLessThan(1e-12);
    }
  });
});

const screw = fc.record({
  preload: between(1e3, 5e5),
  pitch: between(0.0005, 0.006),
  pitchDiameter: between(0.006, 0.06),
  threadFriction: between(0.04, 0.4),
  bearingFriction: between(0.04, 0.4),
  bearingMeanDiameter: between(0.01, 0.1),
});
type Screw = typeof screw extends fc.Arbitrary<infer S> ? S : never;

const solve = (s: Screw, form: string) =>
  torqueFromFriction.solve({
    preload: of("force", s.preload),
    pitch: of("length", s.pitch),
    pitchDiameter: of("length", s.pitchDiameter),
    threadFriction: of("ratio", s.threadFriction),
    bearingFriction: of("ratio", s.bearingFriction),
    bearingMeanDiameter: of("length", s.bearingMeanDiameter),
    form,
  });

describe("laws", () => {
  test("pitch, thread friction and bearing parts add up to the torque in both forms", () => {
    fc.assert(
      fc.property(screw, fc.constantFrom("exact", "short"), (s, form) => {
        const found = solve(s, form);
        expectClose(
          si(found, "pitchTorque") + si(found, "threadFrictionTorque") + si(found, "bearingTorque"),
          si(found, "torque"),
        );
        expectClose(si(found, "pitchTorque") + si(found, "threadFrictionTorque"), si(found, "threadTorque"));
      }),
    );
  });

  test("the exact form is the source's own fraction, written with the lead and π", () => {
    fc.assert(
      fc.property(screw, (s) => {
        const { preload: F, pitch: l, pitchDiameter: dm, threadFriction: f } = s;
        const sec = 1 / Math.cos(Math.PI / 6);
        const raise = (((F * dm) / 2) * (l + Math.PI * f * dm * sec)) / (Math.PI * dm - f * l * sec);
        expectClose(si(solve(s, "exact"), "threadTorque"), raise);
      }),
    );
  });

  test("the short form is below the exact one and meets it at small lead angles", () => {
    fc.assert(
      fc.property(screw, (s) => {
        const apart = (pitch: number) => {
          const [long, short] = ["exact", "short"].map((form) => si(solve({ ...s, pitch }, form), "torque"));
          return ((long ?? Number.NaN) - (short ?? Number.NaN)) / (long ?? Number.NaN);
        };
        expect(apart(s.pitch)).toBeGreaterThan(0);
        expect(apart(s.pitch / 1000)).toBeLessThan(apart(s.pitch) / 100);
      }),
    );
  });

  test("the nut factor that follows turns the preload back into the torque", () => {
    const found = torqueFromFriction.solveNamed(good);
    expectClose(si(found, "nutFactor") * 148e3 * 0.024, si(found, "torque"));
  });

  test("without a diameter there is no nut factor and the rest stands", () => {
    const { diameter: _, ...rest } = good;
    expect(answer(torqueFromFriction.solveNamed(rest)).outputs["nutFactor"]).toBeUndefined();
    expectClose(
      si(torqueFromFriction.solveNamed(rest), "torque"),
      si(torqueFromFriction.solveNamed(good), "torque"),
    );
  });

  test("more friction in thread or face, a flatter thread angle or a larger face takes more torque", () => {
    const torque = (change: Record<string, string>) =>
      si(torqueFromFriction.solveNamed({ ...good, ...change }), "torque");
    expect(torque({ threadFriction: "0.13" })).toBeGreaterThan(torque({}));
    expect(torque({ bearingFriction: "0.15" })).toBeGreaterThan(torque({}));
    expect(torque({ bearingMeanDiameter: "31 mm" })).toBeGreaterThan(torque({}));
    expect(torque({ threadHalfAngle: "35 deg" })).toBeGreaterThan(torque({}));
  });

  test("the note says which form ran", () => {
    expect(answer(torqueFromFriction.solveNamed(good)).notes).toContain("form: exact");
    expect(answer(torqueFromFriction.solveNamed({ ...good, form: "short" })).notes).toContain("form: short");
  });
});

describe("limits", () => {
  testLimits(torqueFromFriction, good, {
    "bearingMeanDiameter >= 0": { bearingMeanDiameter: "-1 mm" },
    'threadHalfAngle >= "0 deg"': { threadHalfAngle: "-120 deg" },
    'threadHalfAngle < "90 deg"': { threadHalfAngle: "90 deg" },
    "preload > 0": { preload: "0 kN" },
    "leadTangent * threadGrip < 1": { threadFriction: "0.95", pitch: "50 mm", pitchDiameter: "5 mm" },
  });
});
