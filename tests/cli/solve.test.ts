// splitline solve: name=value words to outputs, working, notes and sources.
import { describe, expect, it } from "vitest";
import { json, splitline } from "./built.ts";

const asked = ["solve", "preload-from-torque", "torque=520 lbf.ft", "nutFactor=0.1405", "diameter=24 mm"];

describe("solve", () => {
  it("shows outputs, the working in symbols, numbers and result, notes and sources", async () => {
    const { exit, out, err } = await splitline(...asked);
    expect({ exit, err }).toEqual({ exit: 0, err: "" });
    expect(out).toContain("  preload  F  209.1 kN  preload\n");
    expect(out).toContain("    F = T / (K · d)\n      = 520 lbf·ft / (0.1405 · 24 mm)\n      = 209.1 kN\n");
    for (const part of ["working", "notes", "sources"]) expect(out).toMatch(new RegExp(`^${part}$`, "m"));
  });

  it("the choice of bolts is proved in words; the figures of the proof stand in --json alone", async () => {
    const choice = [
      "solve",
      "select-bolts",
      'holes=[{"tag":"1","smallest":"25.010 mm","largestDepthMean":"25.012 mm"}]',
      'bolts=[{"tag":"1","largest":"25.007 mm","mean":"25.006 mm"}]',
      "tightestAllowed=-10 um",
      "loosestAllowed=15 um",
      "holeUncertainty=3 um",
      "shankUncertainty=2 um",
    ];
    const { out } = await splitline(...choice);
    expect(out).toContain("no better choice exists (proved)");
    expect(out).not.toMatch(/potential|figures of the proof|cost/);
    expect((await splitline(...choice, "--json")).out).toContain('"potentials"');
  });

  it("a value may go on over unquoted words", async () => {
    const words = ["torque=520", "lbf.ft", "nutFactor=0.1405", "diameter=24", "mm"];
    expect(await splitline("solve", "preload-from-torque", ...words)).toEqual(await splitline(...asked));
  });

  it.each([
    ["torque=50 kg.m", "write 50 kgf.m", "be written 50 kgf.m"],
    ["torque=500,5 N.m", "write 500.5 N.m", "be written 500.5 N.m"],
    ["nutFactor=0,14", "write 0.14", "be written 0.14"],
    ["diameter=5 tenths", "write 0.0005 in", "be written 0.0005 in"],
    ["torque=300 Nm +30 Nm", "choose", "300 N.m ± 30 N.m"],
  ])("%s is asked with the text to type, exit code 2: %s", async (word, _what, says) => {
    const [name = ""] = word.split("=");
    const words = [...asked.filter((one) => !one.startsWith(`${name}=`)), word];
    const { exit, out, err } = await splitline(...words);
    expect({ exit, out }).toEqual({ exit: 2, out: "" });
    expect(err).toContain(says);
  });

  it("--show takes a kind or an output", async () => {
    expect((await splitline(...asked, "--show", "force=lbf")).out).toContain("47000 lbf");
    expect((await splitline(...asked, "--show", "preload=lbf")).out).toContain("47000 lbf");
  });

  it("--show of an output leaves values of other kinds in its working in their own unit", async () => {
    const given = Object.entries({
      separationLoad: "84.5 kN",
      separationFactor: "1.2",
      tripLoad: "65 kN",
      tripFactor: "1.1",
      tripThermalChange: "-23.8 kN",
      scatter: "20 %",
      relaxation: "10 %",
      proofLoad: "211.5 kN",
      assemblyShare: "0.9",
      warmUpChange: "24.4 kN",
      nutFactor: "0.1405",
      diameter: "24 mm",
    }).map(([name, value]) => `${name}=${value}`);
    const { out } = await splitline("solve", "preload-window", ...given, "--show", "floorTorque=lbf.ft");
    expect(out).toMatch(/= 0\.1405 · 24 mm · 140\.8 kN\n +=? 350\.3 lbf·ft/);
  });

  it("lengths keep the figures a fit is read from", async () => {
    const { out } = await splitline("solve", "fit-limits-iso", "size=25 mm", "hole=H7", "shaft=k6");
    expect(out).toMatch(/holeMax +D_max +25\.021 +mm/);
    expect(out).toMatch(/clearanceMin +c_min +-0\.015 +mm/);
  });

  it("a list is given as JSON text, and rows come out under their own heads", async () => {
    const layers = JSON.stringify([
      { thickness: "20 mm", modulus: "207 GPa" },
      { thickness: "15 mm", modulus: "100 GPa" },
    ]);
    const words = [
      "solve",
      "clamped-stiffness-cone",
      `layers=${layers}`,
      "faceDiameter=30 mm",
      "holeDiameter=20 mm",
    ];
    const { exit, out } = await splitline(...words);
    expect(exit).toBe(0);
    expect(out).toMatch(/stiffness +thickness +smallDiameter\n +1 /);
    expect(out).toContain("frusta 3 · ");
    const { data } = await json(...words);
    expect(data).toMatchObject({
      outputs: {
        frusta: {
          unit: "",
          value: [
            { stiffness: { unit: "kN/mm", value: expect.any(Number), text: expect.any(String) } },
            {},
            {},
          ],
        },
      },
    });
  });

  it("--json has method, outputs, working and warnings", async () => {
    const { exit, data } = await json(...asked);
    expect(exit).toBe(0);
    expect(data).toMatchObject({
      method: "preload-from-torque",
      outputs: {
        preload: {
          value: expect.closeTo(209.0822, 4),
          unit: "kN",
          si: expect.closeTo(209082.2, 1),
          text: "209.1 kN",
        },
      },
      working: [{ name: "preload", symbol: "F", symbols: "T / (K · d)", result: "209.1 kN" }],
      warnings: [],
    });
  });

  it("a warning limit lets the answer stand and is said", async () => {
    const words = ["solve", "preload-from-torque", "torque=520 lbf.ft", "nutFactor=0.04", "diameter=24 mm"];
    const { exit, out } = await splitline(...words);
    expect(exit).toBe(0);
    expect(out).toMatch(/^warnings$/m);
    expect((await json(...words)).data).toMatchObject({
      warnings: [{ code: "unusual", text: expect.any(String) }],
    });
  });

  it.each([
    [["preload-from-torqe"], "did you mean preload-from-torque"],
    [[], "splitline methods"],
    [["preload-from-torque", "torque=520"], "without a unit"],
    [["preload-from-torque", "torque=520 lbf.ft", "nutFactor=0.14"], "be given as diameter"],
    [["preload-from-torque", "torqe=520 lbf.ft"], "torque"],
    [["preload-from-torque", "520 lbf.ft"], "name=value"],
    [["preload-from-torque", "torque=5 kN", "nutFactor=0.14", "diameter=24 mm"], "torque"],
    [["preload-from-torque", "torque=1 N.m", "torque=2 N.m"], "be given once"],
    [["preload-from-torque", "torque=520 lbf.ft", "nutFactor=14", "diameter=24 mm"], "below 1"],
    [[...asked.slice(1), "--show", "force"], "name=unit"],
    [[...asked.slice(1), "--show", "froce=lbf"], "force"],
    [[...asked.slice(1), "--show", "force=mm"], "force"],
    [["clamped-stiffness-cone", "layers=[1", "faceDiameter=30 mm", "holeDiameter=20 mm"], "JSON"],
    [["clamped-stiffness-cone", "layers=5", "faceDiameter=30 mm", "holeDiameter=20 mm"], "thickness"],
    [["clamped-stiffness-cone", "layers=[null]", "faceDiameter=30 mm", "holeDiameter=20 mm"], "layers"],
    [
      [
        "clamped-stiffness-cone",
        'layers=[{"thickness":{"si":1},"modulus":"1 GPa"}]',
        "faceDiameter=30 mm",
        "holeDiameter=20 mm",
      ],
      "thickness",
    ],
  ])("%j is refused and says %s", async (words, says) => {
    const { exit, out, err } = await splitline("solve", ...words);
    expect({ exit, out }).toEqual({ exit: 2, out: "" });
    expect(err).toContain(says);
    expect(err.trim().split("\n")).toHaveLength(1);
  });

  it("--json gives a refusal as data", async () => {
    const { exit, data } = await json("solve", "preload-from-torque", "torque=520");
    expect(exit).toBe(2);
    expect(data).toMatchObject({
      problem: { code: expect.any(String), suggestions: expect.arrayContaining(["520 N.m"]) },
    });
  });
});
