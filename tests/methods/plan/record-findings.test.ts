import { describe, expect, test } from "vitest";
import { solve } from "../../../src/methods/index.ts";
import { recordFindings } from "../../../src/methods/plan/record-findings.ts";
import { readAdapter } from "../../../src/methods/plan/record-rows.ts";
import { likeliest, unitSlips } from "../../../src/methods/plan/slip-causes.ts";
import { isProblem } from "../../../src/problem.ts";
import { cells } from "../cells.ts";
import { recordPlan, recordRows } from "../demo.ts";
import { goodFor } from "../good-inputs.ts";
import { answer, deepFreeze, expectPrinted, refusal, si, testLimits } from "../helpers.ts";
import { plantedRecord } from "./planted-records.ts";

const id = "record-findings";
const good = goodFor(id);

describe("limits", () => {
  testLimits(recordFindings, good, {
    "torqueTolerance > 0": { torqueTolerance: "0 %" },
    "torqueTolerance < 0.25": { torqueTolerance: "5" },
    "angleTolerance > 0": { angleTolerance: "0 deg" },
    "slipTolerance > 0": { slipTolerance: "0 %" },
    "slipTolerance < 0.1": { slipTolerance: "20 %" },
    'smallest(rows.runOn) >= "0 N.m"': {
      rows: [{ pass: "pass 1", position: "5", runOn: "-1 N.m", read: "526 N.m" }],
    },
  });
});

describe("demo record (invented)", () => {
  const result = solve(id, { plan: recordPlan(), rows: recordRows(), wrenchLength: "650 mm" });
  const findings = cells(result, "findings");
  const at = (pass: string, position: string) =>
    findings.find((row) => row["pass"] === pass && row["position"] === position);

  test("finds the four planted anomalies and nothing else", () => {
    expect(
      findings.map((row) => `${String(row["pass"])} ${String(row["position"])} ${String(row["what"])}`),
    ).toEqual(["pass 2 14 missing row", "pass 3 4 angle", "pass 3 7 torque", "pass 3 12 torque"]);
    expect(si(result, "found")).toBe(4);
  });

  test("the rows that count: 79 of 80, each with the net torque at its nut", () => {
    const counted = cells(result, "counted");
    const net = (position: string) =>
      Number(counted.find((row) => row["pass"] === "pass 3" && row["position"] === position)?.["torque"]);
    expect(counted).toHaveLength(79); // three passes and the check of twenty, one row never written
    expectPrinted(net("5"), "500.0"); // 526 - 26
    expectPrinted(net("7"), "361.0"); // 392 - 31
    expectPrinted(net("9"), "500.5"); // 493 x 710/650 - 38
    expectPrinted(net("12"), "602.5"); // 580 x 710/650 - 31
  });

  test("position 7: ratio 0.738, the lbf.ft scale, 361 N.m net", () => {
    const row = at("pass 3", "7");
    expectPrinted(Number(row?.["ratio"]), "0.738");
    expectPrinted(Number(row?.["net"]), "361");
    expect(row?.["likelyCause"]).toBe("was the scale in lbf.ft, and written as N.m?");
  });

  test("position 12: ratio 1.193, the adapter sum turned round, 603 N.m net", () => {
    const row = at("pass 3", "12");
    expectPrinted(Number(row?.["ratio"]), "1.193");
    expectPrinted(Number(row?.["net"]), "603");
    expect(row?.["likelyCause"]).toBe("was the adapter sum turned round?");
  });

  test("position 4: 6 degrees against 13, into friction", () => {
    const row = at("pass 3", "4");
    expectPrinted(Number(row?.["ratio"]), "0.46");
    expect(row?.["likelyCause"]).toContain("friction");
  });

  test("the trial rows are not judged, and that is said", () => {
    expect(answer(result).notes).toContain("6 rows of passes outside the plan, not judged");
  });

  test("lines that redo the four rows clear them; nothing is overwritten", () => {
    const again = (
      pass: string,
      position: string,
      net: string,
      run: string,
      read: string,
      adapter = "none",
    ) => ({
      pass,
      position,
      net,
      runOn: run,
      adapter,
      set: read,
      read,
      unit: "N.m",
      angle: pass === "pass 3" ? "13 deg" : "",
    });
    const rows = [
      ...recordRows(),
      again("pass 2", "14", "300 N.m", "29 N.m", "329 N.m"),
      again("pass 3", "4", "500 N.m", "31 N.m", "531 N.m"),
      again("pass 3", "7", "500 N.m", "31 N.m", "531 N.m"),
      again("pass 3", "12", "500 N.m", "31 N.m", "486 N.m", "60 mm in line"),
    ];
    const redone = answer(solve(id, { plan: recordPlan(), rows, wrenchLength: "650 mm" }));
    expect(cells(redone, "findings")).toEqual([]);
    expect(redone.notes).toContain("3 rows replaced by a later row of the same pass and position");
  });
});

/** How many planted slips are found, and named, in records made from seeds. */
function tallied(seeds: number, noise: number) {
  const tally = { planted: 0, hits: 0, named: 0, falseAlarms: 0, rows: 0 };
  for (let seed = 1; seed <= seeds; seed++) {
    const { planted, ...inputs } = plantedRecord(seed, 3, noise);
    const findings = cells(solve(id, inputs), "findings");
    const at = (row: { readonly pass?: unknown; readonly position?: unknown }) =>
      `${String(row.pass)} ${String(row.position)}`;
    tally.planted += planted.length;
    tally.rows += inputs.rows.length;
    for (const slip of planted) {
      const hit = findings.find((row) => at(row) === at(slip) && row["what"] === slip.what);
      if (hit) tally.hits += 1;
      if (hit && String(hit["likelyCause"]).includes(slip.cause)) tally.named += 1;
    }
    tally.falseAlarms += findings.filter((row) => !planted.some((slip) => at(slip) === at(row))).length;
  }
  console.log(
    `noise ${noise}: planted ${tally.planted} in ${tally.rows} rows, found ${tally.hits}, cause named ${tally.named}, false alarms ${tally.falseAlarms}`,
  );
  return tally;
}

describe("records made from seeds, with slips planted in them", () => {
  test("readings within 0.4 % of the setting: every slip is found and named, and nothing else", () => {
    const tally = tallied(100, 0.004);
    expect(tally).toMatchObject({ hits: tally.planted, named: tally.planted, falseAlarms: 0 });
    expect(tally.planted).toBeGreaterThan(250);
  });

  test("readings within 1.5 %, more than the 1 % that names a slip: still all found, no false alarm, most named", () => {
    const tally = tallied(60, 0.015);
    expect(tally).toMatchObject({ hits: tally.planted, falseAlarms: 0 });
    expect(tally.named).toBeGreaterThan(0.7 * tally.planted);
  });
});

describe("slips by ratio", () => {
  test.each([
    [0.738, "lbf.ft, and written as N.m"],
    [1.356, "number for N.m set on the lbf.ft scale"],
    [12, "lbf.ft and lbf.in mixed up"],
    [1 / 12, "lbf.in and lbf.ft mixed up"],
    [9.81, "set on the kgf.m scale"],
    [0.102, "kgf.m, and written as N.m"],
    [8.85, "lbf.in, and written as N.m"],
    [0.113, "set on the lbf.in scale"],
  ])("%s: %s", (ratio, cause) => expect(likeliest(ratio, unitSlips("N.m"), 0.01)).toContain(cause));

  test("a ratio that is no slip names none", () => {
    for (const ratio of [0.5, 0.9, 1.1, 2, 3])
      expect(likeliest(ratio, unitSlips("N.m"), 0.01)).toBeUndefined();
  });
});

describe("adapters as written", () => {
  test.each([
    ["60 mm in line", 0.06, 0],
    ["60 mm", 0.06, 0],
    ["2.5 in at 45 deg", 0.0635, Math.PI / 4],
    ["none", 0, 0],
    ["", 0, 0],
  ])("%s", (words, length, angle) => {
    const read = readAdapter(words);
    if (isProblem(read)) throw new Error(words);
    expect(read.length).toBeCloseTo(length, 12);
    expect(read.angle).toBeCloseTo(angle, 12);
  });

  test("words that are no adapter are refused with an example", () => {
    const read = readAdapter("the long one");
    expect(isProblem(read) && read.hint).toContain("60 mm in line");
  });
});

describe("edges", () => {
  const plan = [{ pass: "pass 1", position: "5", net: "500 N.m" }];
  const row = { pass: "pass 1", position: "5", runOn: "26 N.m", read: "526 N.m" };
  const findings = (rows: readonly Record<string, string>[], more = {}) =>
    cells(solve(id, { plan, rows, ...more }), "findings");

  test("a row within the tolerance says nothing; just beyond it does", () => {
    expect(findings([{ ...row, read: "551 N.m" }])).toEqual([]); // 525 net, 5 % over
    expect(findings([{ ...row, read: "551.1 N.m" }])).toHaveLength(1);
    expect(findings([{ ...row, read: "551.1 N.m" }], { torqueTolerance: "6 %" })).toEqual([]);
  });

  test("a row begun without a reading, and a wrong setting with a right reading", () => {
    expect(findings([{ ...row, read: "" }])[0]?.["what"]).toBe("missing reading");
    expect(findings([{ ...row, set: "720 N.m" }])[0]).toMatchObject({ what: "set torque" });
  });

  test("blank rows are passed over and counted; a row without a position is refused", () => {
    const solution = answer(solve(id, { plan, rows: [row, {}, { pass: "", position: "" }] }));
    expect(solution.notes).toContain("2 rows blank");
    expect(refusal(solve(id, { plan, rows: [{ pass: "pass 1", read: "526 N.m" }] })).got).toBe("no position");
  });

  test("a position that the plan does not hold, and a target other than planned", () => {
    expect(findings([row, { ...row, position: "50", net: "500 N.m" }])[0]?.["what"]).toBe("not in the plan");
    expect(findings([{ ...row, net: "450 N.m" }])[0]).toMatchObject({ what: "net torque", ratio: 0.9 });
  });

  test("two angles have no median worth judging by; three have", () => {
    const three = ["13 deg", "13 deg", "6 deg"].map((angle, i) => ({ ...row, position: String(i), angle }));
    const planned = three.map(({ pass, position }) => ({ pass, position, net: "500 N.m" }));
    expect(cells(solve(id, { plan: planned, rows: three }), "findings")).toHaveLength(1);
    expect(cells(solve(id, { plan: planned.slice(1), rows: three.slice(1) }), "findings")).toEqual([]);
  });

  test("an adapter without the length of the wrench, a plan with a row twice: refused", () => {
    expect(refusal(solve(id, { plan, rows: [{ ...row, adapter: "60 mm" }] })).must).toContain("wrenchLength");
    expect(refusal(solve(id, { plan: [...plan, ...plan], rows: [row] })).code).toBe("given-twice");
  });

  test("readings in another unit are compared as torques", () => {
    expect(findings([{ ...row, read: "387.96 lbf.ft", unit: "lbf.ft" }])).toEqual([]);
  });

  test("inputs are not changed", () => {
    answer(solve(id, deepFreeze({ plan: recordPlan(), rows: recordRows(), wrenchLength: "650 mm" })));
  });
});
