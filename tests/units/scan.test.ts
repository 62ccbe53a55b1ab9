import { describe, expect, test } from "vitest";
import { sentence } from "../../src/problem.ts";
import type { Kind } from "../../src/units/kind.ts";
import { scan } from "../../src/units/scan.ts";

type Row = readonly [text: string, kind: Kind | undefined, readAs: string];

const readings = (outcome: string, rows: readonly Row[]): void => {
  test.each(rows)(`"%s" as %s is ${outcome}: %s`, (text, kind, readAs) => {
    const found = scan(text, kind);
    expect(found.problem && outcome !== "warn" ? sentence(found.problem) : found.outcome).toBe(outcome);
    expect(found.readAs).toBe(readAs);
    expect(found.quantity?.text).toBe(text);
  });
};

describe("one torque unit, however the trade writes it", () => {
  readings(
    "note",
    [
      "140 in-lb",
      "140 in.-lb",
      "140 in. lb",
      "140 in lb",
      "140 in-lbs",
      "140 in lbs",
      "140 inlb",
      "140 inlbs",
      "140 lb-in",
      "140 lb in",
      "140 lb.in",
      "140 lb·in",
      "140 lb⋅in",
      "140 lb*in",
      "140 inch pounds",
      "140 inch-pounds",
      "140 IN-LB",
      "140 IN-LBS",
      "140 In-Lb",
      "140 LBF-IN",
      "140in-lb",
      "140 pound-inches",
    ].map((text): Row => [text, undefined, "torque, 140 lbf.in"]),
  );
  readings(
    "accept",
    [
      "140 lbf.in",
      "140 lbf-in",
      "140 lbf in",
      "140 lbf*in",
      "140 lbf·in",
      "140 in-lbf",
      "140 in.lbf",
      "140 lbfin",
      "140 pound-force inch",
    ].map((text): Row => [text, undefined, "torque, 140 lbf.in"]),
  );
  readings(
    "note",
    ["18 ft-lb", "18 ft lbs", "18 ft.-lb", "18 foot-pounds", "18 FT-LBS", "18 ftlb", "18 lb ft"].map(
      (text): Row => [text, "torque", "torque, 18 lbf.ft"],
    ),
  );
  readings(
    "accept",
    ["30 N.m", "30 N m", "30 N·m", "30 N-m", "30 Nm", "30 N*m", "30 newton metres", "30 Newton-meters"].map(
      (text): Row => [text, "torque", "torque, 30 N.m"],
    ),
  );
});

describe("a mass written for a force", () => {
  readings("warn", [
    ["6 kg-m", "torque", "torque, 6 kgf.m"],
    ["6 kgm", "torque", "torque, 6 kgf.m"],
    ["6 m-kg", "torque", "torque, 6 kgf.m"],
    ["60 kg cm", "torque", "torque, 60 kgf.cm"],
    ["7.2 mkp", "torque", "torque, 7.2 kp.m"],
    ["35 kg/cm2", "pressure", "pressure, 35 kgf/cm2"],
    ["35 kg/cm²", "stress", "stress, 35 kgf/cm2"],
    ["100 lb/in2", undefined, "stress, 100 lbf/in2"],
  ]);
  readings("note", [
    ["100 lb/in2", "pressure", "pressure, 100 lbf/in2"],
    ["50 lb", "force", "force, 50 lbf"],
    ["8 oz-in", "torque", "torque, 8 ozf.in"],
    ["300 lb/in", "stiffness", "stiffness, 300 lbf/in"],
  ]);
  readings("accept", [
    ["300 lb/in", undefined, "linear density, 300 lb/in"],
    ["100 lb/in2", "surface mass", "surface mass, 100 lb/in2"],
    ["5 lb.in2", undefined, "moment of inertia, 5 lb.in2"],
    ["7.2 kp.m", undefined, "torque, 7.2 kp.m"],
    ["50 lb", undefined, "mass, 50 lb"],
  ]);
  test.each([
    ["6 kg-m", undefined, ["6 kgf.m"]],
    ["6 kg-m", "energy", ["6 kgf.m"]],
    ["35 kg/cm2", undefined, ["35 kgf/cm2"]],
    ["50 kg", "force", ["50 kgf"]],
    ["10 t", "force", ["10 tf"]],
    ["2 t.m", "torque", ["2 tf.m"]],
    ["5 kg", "force", ["5 kgf"]],
  ] as const)('"%s" as %s is refused and offers %j', (text, kind, suggestions) => {
    const found = scan(text, kind);
    expect(found.outcome).toBe("refuse");
    expect(found.problem?.suggestions).toEqual(suggestions);
  });
});

describe("case carries meaning", () => {
  test.each([
    ["30 nm", "torque", "30 N.m"],
    ["30 nm", undefined, "30 N.m"],
    ["30 NM", "torque", "30 N.m"],
    ["30 nM", undefined, "30 N.m"],
    ["5 mpa", undefined, "5 MPa"],
    ["5 KN", undefined, "5 kN"],
    ["5 tons", undefined, "5 short ton"],
    ["5 tons", "force", "5 tf"],
  ] as const)('"%s" as %s is refused and offers "%s"', (text, kind, suggestion) => {
    const found = scan(text, kind);
    expect(found.outcome).toBe("refuse");
    expect(found.problem?.suggestions).toContain(suggestion);
  });
  test("mN and MN are a thousand million apart", () => {
    const [milli, mega] = [scan("1 mN").quantity?.si, scan("1 MN").quantity?.si];
    expect([milli, mega]).toEqual([0.001, 1e6]);
  });
  readings("note", [
    ["1200 PSI", undefined, "pressure, 1200 psi"],
    ["2 INCH", undefined, "length, 2 in"],
  ]);
  readings("accept", [["30 nm", "length", "length, 30 nm"]]);
});

describe("shop lengths", () => {
  readings("accept", [
    ["12 thou", "length", "length, 12 thou"],
    ["3/8 in", "length", "length, 0.375 in"],
    ["-1/4 in", "length", "length, -0.25 in"],
    ['5/8"', "length", "length, 0.625 in"],
    ["3 ft 6 in", "length", "length, 3.5 ft"],
    ["-5' 6\"", "length", "length, -5.5 ft"],
    ["0.020 in.", "length", "length, 0.02 in"],
    ["5 microns", "length", "length, 5 um"],
    ["−5 µm", "length", "length, -5 um"],
    ["−5 μm", "length", "length, -5 um"],
  ]);
  readings("note", [
    ["2 mil", "length", "length, 0.002 in"],
    ["1-1/4 in", "length", "length, 1.25 in"],
    ["1 1/4 in", "length", "length, 1.25 in"],
    ["1¼ in", "length", "length, 1.25 in"],
    ["-1 1/4 in", "length", "length, -1.25 in"],
    ["5'-6 1/2\"", "length", "length, 66.5 in"],
  ]);
  readings("warn", [
    ["2 tenths", "length", "length, 0.0002 in"],
    ["5 tenths", undefined, "length, 0.0005 in"],
  ]);
  readings("note", [["2 mil", "angle", "angle, 2 angular mil"]]);
});

describe("numbers", () => {
  readings("accept", [
    ["12\u2009345 N", undefined, "force, 12345 N"],
    ["1\u202f234\u00a0567.000\u20095 N", undefined, "force, 1234567.0005 N"],
    [".5 mm", undefined, "length, 0.5 mm"],
    ["1.17×10⁻⁵ /K", undefined, "expansion, 1.17e-5 1/K"],
    ["1.17 x 10^-5 1/K", undefined, "expansion, 1.17e-5 1/K"],
    ["+5 mm", undefined, "length, 5 mm"],
  ]);
  readings("note", [["12 345 N", undefined, "force, 12345 N"]]);
  readings("warn", [
    ["12,5 mm", undefined, "length, 12.5 mm"],
    ["0,125 mm", undefined, "length, 0.125 mm"],
    ["12,0005 mm", undefined, "length, 12.0005 mm"],
  ]);
  test.each([
    ["1,234 N", ["1.234 N", "1234 N"]],
    ["-1,234 N", ["-1.234 N", "-1234 N"]],
    ["1,234.5 N", ["1234.5 N"]],
    ["1,234,567 N", ["1234567 N"]],
    ["1 - 1/4 in", ["1-1/4 in", "3/4 in"]],
  ])('"%s" is refused and offers %j, each of which is accepted', (text, suggestions) => {
    const found = scan(text);
    expect(found.outcome).toBe("refuse");
    expect(found.problem?.suggestions).toEqual(suggestions);
    for (const suggestion of suggestions) expect(["accept", "note"]).toContain(scan(suggestion).outcome);
  });
  test.each([
    "",
    "  ",
    "mm",
    "Infinity mm",
    "NaN mm",
    "0x10 mm",
    "1e400 mm",
    "1e-400 mm",
    "1e300 GPa",
    "1.2.3 mm",
    "1.234,5 N",
    "7/0 in",
    "1 5/4 in",
    "5 mm 3 mm",
    "5 mm - 3 mm",
    "3 ft - 6 in",
    "--5 mm",
    "5 m m/m.m",
    "5 N--m",
    "5 (N.m",
    "5 N.m)",
    "5 mm^23",
    "5 N/",
    "5 €",
    "5 kg*",
    "12 degC1",
    "5 mm0",
    "5 *m",
    "5 -/K",
    "5 lbmin",
    "1'234 N",
    "12 mm,",
    "5 mm # note",
    "12;5 mm",
    "5 in^",
    "__proto__",
    "5 __proto__",
    "5 constructor",
    "1 toString",
    "9".repeat(150),
  ])("%j is refused with a sentence", (text) => {
    const found = scan(text);
    expect(found.outcome).toBe("refuse");
    expect(found.problem && sentence(found.problem)).toMatch(/must/);
  });
});

describe("a bare number", () => {
  test("is refused in a field with a unit, with what it would mean in each", () => {
    const found = scan("12.0005", "length");
    expect(found.outcome).toBe("refuse");
    expect(found.problem?.suggestions).toEqual(["12.0005 mm", "12.0005 in", "12.0005 um", "12.0005 thou"]);
    expect(found.problem?.why).toContain("12.0005 in = 304.813 mm");
  });
  test("without any field is asked about as a torque first", () => {
    expect(scan("140").problem?.why).toContain("140 lbf.ft = 189.8 N.m");
  });
  readings("accept", [
    ["0.14", "ratio", "ratio, 0.14"],
    ["20", "count", "count, 20"],
    ["20 %", "ratio", "ratio, 20 %"],
    ["20%", undefined, "ratio, 20 %"],
    ["0.5 mm/m", "ratio", "ratio, 0.5 mm/m"],
    ["3 um/mm", undefined, "ratio, 3 um/mm"],
  ]);
});

describe("temperatures", () => {
  test("20 degC is 293.15 K as a reading and 20 K as a difference", () => {
    expect(scan("20 degC", "temperature").quantity?.si).toBe(293.15);
    expect(scan("20 degC", "temperature difference").quantity?.si).toBe(20);
    expect(scan("20 °C").quantity?.kind).toBe("temperature");
  });
  readings("accept", [
    ["68 deg F", "temperature", "temperature, 68 degF"],
    ["68 °F", undefined, "temperature, 68 degF"],
    ["20℃", undefined, "temperature, 20 degC"],
    ["50 degF difference", undefined, "temperature difference, 50 delta_degF"],
    ["6.5e-6 /°F", undefined, "expansion, 6.5e-6 1/degF"],
    ["11.5 ppm/K", "expansion", "expansion, 11.5 ppm/K"],
    ["11.5e-6 K^-1", "expansion", "expansion, 1.15e-5 1/K"],
    ["11.5 um/(m.K)", "expansion", "expansion, 11.5 um/(m.K)"],
    ["11.5 µm/m/°C", "expansion", "expansion, 11.5 um/(m.degC)"],
  ]);
  test("a degree in a quotient is a difference: 6.5e-6 /degF is 11.7e-6 /K", () =>
    expect(scan("6.5e-6 /degF").quantity?.si).toBe(1.17e-5));
  test("readings are not added, and none lies below absolute zero", () => {
    expect(scan("20 degC + 5 degC").outcome).toBe("refuse");
    expect(scan("20 degC + 5 degC", "temperature difference").quantity?.si).toBe(25);
    expect(scan("-300 degC").outcome).toBe("refuse");
    expect(scan("-300 degC", "temperature difference").outcome).toBe("accept");
    expect(scan("-273.15 degC").quantity?.si).toBe(0);
  });
});

describe("angles", () => {
  readings("accept", [
    ["90 deg", undefined, "angle, 90 deg"],
    ["90°", "angle", "angle, 90 deg"],
    ["1 deg 30 min", undefined, "angle, 1.5 deg"],
    ["30'", "angle", "angle, 30 arcmin"],
    ["0.5 rad", "angle", "angle, 0.5 rad"],
    ["2 turns", "angle", "angle, 2 rev"],
  ]);
  test("30' is feet where no angle is expected", () => expect(scan("30'").readAs).toBe("length, 30 ft"));
  test("1/min says neither revolutions nor radians", () => {
    expect(scan("5 1/min", "rotation speed").problem?.suggestions).toEqual(["5 rpm", "5 rad/s"]);
    expect(scan("60 r/min", "rotation speed").quantity?.si).toBe(2 * Math.PI);
  });
});

describe("sums", () => {
  readings("note", [
    ["18 ft-lb + 6 in-lb", "torque", "torque, 18.5 lbf.ft"],
    ["2 mm + 3 thou", undefined, "length, 2.0762 mm"],
  ]);
  readings("accept", [["2 lb 3 oz", "mass", "mass, 2.1875 lb"]]);
  test("unlike quantities are not added", () => {
    expect(scan("5 mm + 2 N").problem?.why).toBe("mm and N are not of one kind");
    expect(scan("5 mm + 2").outcome).toBe("refuse");
    expect(scan("345 s + 0.1 deg").outcome).toBe("refuse");
  });
});

describe("another kind than the field expects", () => {
  test("both are named", () => {
    const found = scan("2 MPa", "torque");
    expect(found.problem && sentence(found.problem)).toContain("got 2 MPa, a stress, must be a torque");
  });
  test("a torque is not given in joules", () => {
    expect(scan("5 J", "torque").problem?.why).toContain("not given in joules");
    expect(scan("5 J", "torque").problem?.suggestions).toEqual(["5 N.m"]);
  });
  test.each([
    ["5 mm", "area"],
    ["5 rad", "ratio"],
    ["5 %", "angle"],
    ["5 N", "mass"],
    ["5 delta_degC", "temperature"],
    ["5 N.m/m", "force"],
    ["5 m/s2", "specific force"],
    ["5 N.m", "torsional stiffness"],
    ["5 lbm-in", "torque"],
  ] as const)('"%s" is no %s', (text, kind) => {
    expect(scan(text, kind).problem?.code).toBe("wrong-kind");
  });
  test("stress and pressure stand for each other", () => {
    expect(scan("3 bar", "stress").outcome).toBe("accept");
    expect(scan("3 ksi", "pressure").outcome).toBe("accept");
  });
});

describe("labels", () => {
  readings("warn", [
    ["100 psig", undefined, "gauge pressure, 100 psi"],
    ["100 psia", "pressure", "absolute pressure, 100 psi"],
    ["6 bar(g)", "pressure", "gauge pressure, 6 bar"],
  ]);
});

test.each([
  "M24x3",
  "M24",
  "M12x1.75",
  "M12x1.75-6g",
  "M24×2",
  "3/8-24 UNF",
  "1/2-13",
  "1-1/4-12",
  "1-1/4-12 UNF-2A",
  "#10-32",
  "H7",
  "k6",
  "JS7",
  "H7/k6",
  "25 H7",
  "25 H7/g6",
  "LN 2",
  "RC4",
  "2A",
])("%s is a designation and no quantity", (text) => {
  expect(scan(text)).toEqual({ text, outcome: "designation" });
  expect(scan(text, "length").outcome).toBe("designation");
});

test.each(["5 m2", "25 mm2", "3 in4", "6 h", "1 g", "12 mm"])("%s is a quantity and no designation", (text) =>
  expect(scan(text).outcome).toBe("accept"),
);

test("units of stiffness, compliance, stress, force and mass that fastener work uses are all listed", () => {
  const rows: readonly (readonly [string, Kind])[] = [
    ["kN/mm", "stiffness"],
    ["N/mm", "stiffness"],
    ["Mlbf/in", "stiffness"],
    ["lbf/in", "stiffness"],
    ["MN/m", "stiffness"],
    ["N/um", "stiffness"],
    ["um/kN", "compliance"],
    ["mm/N", "compliance"],
    ["in/lbf", "compliance"],
    ["MPa", "stress"],
    ["GPa", "stress"],
    ["ksi", "stress"],
    ["Mpsi", "stress"],
    ["kpsi", "stress"],
    ["psi", "stress"],
    ["N/mm2", "stress"],
    ["kgf/mm2", "stress"],
    ["bar", "pressure"],
    ["mbar", "pressure"],
    ["kgf/cm2", "pressure"],
    ["inHg", "pressure"],
    ["torr", "pressure"],
    ["atm", "pressure"],
    ["mmH2O", "pressure"],
    ["psf", "pressure"],
    ["N", "force"],
    ["kN", "force"],
    ["MN", "force"],
    ["daN", "force"],
    ["lbf", "force"],
    ["klbf", "force"],
    ["kip", "force"],
    ["ozf", "force"],
    ["kgf", "force"],
    ["tf", "force"],
    ["tonne-force", "force"],
    ["tonf", "force"],
    ["kp", "force"],
    ["poundal", "force"],
    ["dyn", "force"],
    ["kg", "mass"],
    ["g", "mass"],
    ["mg", "mass"],
    ["t", "mass"],
    ["lb", "mass"],
    ["lbm", "mass"],
    ["oz", "mass"],
    ["slug", "mass"],
    ["short ton", "mass"],
    ["long ton", "mass"],
    ["um/m/K", "expansion"],
    ["um/m/degC", "expansion"],
    ["ppm/degF", "expansion"],
    ["(uin/in)/degF", "expansion"],
    ["N.m/rad", "torsional stiffness"],
    ["lbf-ft/deg", "torsional stiffness"],
    ["mm^4", "second moment of area"],
    ["mm**2", "area"],
    ["sq in", "area"],
    ["cubic inches", "volume"],
    ["ft/min", "speed"],
    ["gn", "acceleration"],
  ];
  for (const [text, kind] of rows) {
    const found = scan(`1 ${text}`, kind);
    expect(found.quantity?.kind, `${text}: ${found.problem ? sentence(found.problem) : ""}`).toBe(kind);
  }
});

test("a suggestion of a warning is accepted and means the same", () => {
  for (const text of [
    "6 kg-m",
    "2 tenths",
    "12,5 mm",
    "100 psig",
    "12 +0,018/0 mm",
    "12,5 ± 0,1 mm",
    "7 mkp",
  ]) {
    const kind: Kind | undefined = /kg|mkp/.test(text) ? "torque" : undefined;
    const asked = scan(text, kind);
    const again = scan(asked.problem?.suggestions[0] ?? "", kind);
    expect(again.outcome, text).toBe("accept");
    expect(again.quantity?.exact, text).toEqual(asked.quantity?.exact);
    expect(again.spread?.form, text).toBe(asked.spread?.form);
  }
});

test("a suggestion of a refusal is accepted in the same field", () => {
  const rows: readonly (readonly [string, Kind | undefined])[] = [
    ["30 nm", "torque"],
    ["30 nm", undefined],
    ["30 NM", undefined],
    ["50 kg", "force"],
    ["10 t", "force"],
    ["5 tons", undefined],
    ["5 tons", "force"],
    ["5 mpa", "stress"],
    ["5 J", "torque"],
    ["1,234 N", "force"],
    ["1 - 1/4 in", "length"],
    ["140", undefined],
    ["140", "torque"],
    ["5 1/min", "rotation speed"],
  ];
  for (const [text, kind] of rows) {
    const suggestions = scan(text, kind).problem?.suggestions ?? [];
    expect(suggestions.length, text).toBeGreaterThan(0);
    for (const suggestion of suggestions)
      expect(["accept", "note"], `${text}: ${suggestion}`).toContain(scan(suggestion, kind).outcome);
  }
});

test("the text is kept as typed, blanks and signs included", () => {
  const text = " −5  µm ";
  expect(scan(text).text).toBe(text);
  expect(scan(text).quantity?.text).toBe(text);
});
