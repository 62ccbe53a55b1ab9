// A torque record as rows that can be judged: joined to the plan, with what the wrench should have read.
import { isProblem, type Problem, problem } from "../../problem.ts";
import { oneValue } from "../../units/quantity.ts";
import { evaluateSteps } from "../evaluate-steps.ts";
import { cellNumber, cellText, numberOf, type Row, rowsOf } from "../inside.ts";
import type { Insides } from "../method.ts";
import { leverRatio, netFromRead, setFromNet } from "./lever-ratio.ts";

/** Torques in N.m, angles in rad. */
export interface Planned {
  readonly pass: string;
  readonly position: string;
  readonly net: number | undefined;
}

export interface Recorded extends Planned {
  readonly net: number;
  /** Net torque written in the row, where it is. */
  readonly written: number | undefined;
  readonly runOn: number;
  /** Setting over torque at the nut. */
  readonly lever: number;
  /** What the wrench should have been set to. */
  readonly due: number;
  readonly set: number | undefined;
  readonly read: number | undefined;
  readonly unit: string | undefined;
  readonly angle: number | undefined;
}

export const keyOf = (row: { readonly pass: string; readonly position: string }): string =>
  `${row.pass} · ${row.position}`;

export const plannedRows = (inputs: Insides): readonly Planned[] =>
  rowsOf(inputs, "plan").map((row) => ({
    pass: cellText(row, "pass") ?? "",
    position: cellText(row, "position") ?? "",
    net: cellNumber(row, "net"),
  }));

const longestAdapter = 200;

const notAnAdapter = (got: string): Problem =>
  problem({
    code: "not-an-adapter",
    what: "adapter",
    got,
    must: "be a length, in line or at an angle, or none",
    hint: "for example 60 mm in line, or 60 mm at 45 deg",
  });

/** "60 mm in line", "60 mm at 45 deg", "none": length in m and angle in rad. */
export function readAdapter(
  text: string | undefined,
): { readonly length: number; readonly angle: number } | Problem {
  const words = text?.trim() ?? "";
  if (words.length > longestAdapter) return notAnAdapter(words);
  if (words === "" || /^(none|no|-|0)$/i.test(words)) return { length: 0, angle: 0 };
  const [, size = "", turned] = /^([\d.,]+\s*[^\s\d]+?)(?:\s+in line|\s+at\s+(.+))?$/i.exec(words) ?? [];
  const length = oneValue(size, "length");
  const angle = turned === undefined ? undefined : oneValue(turned, "angle");
  if (isProblem(length) || isProblem(angle)) return notAnAdapter(words);
  return { length: length.si, angle: angle?.si ?? 0 };
}

const levers = { leverRatio };
const dues = { due: setFromNet };
export const applied = { applied: netFromRead };

/** Setting over torque at the nut, 1 without an adapter. */
function leverOf(row: Row, inputs: Insides): number | Problem {
  const adapter = readAdapter(cellText(row, "adapter"));
  if (isProblem(adapter)) return adapter;
  if (adapter.length === 0) return 1;
  if (numberOf(inputs, "wrenchLength") === undefined)
    return problem({
      code: "missing-input",
      what: "length of the wrench to the hand",
      got: "nothing",
      must: "be given as wrenchLength",
      why: "an adapter is worked out from it",
    });
  const found = evaluateSteps(levers, {
    ...inputs,
    adapterLength: adapter.length,
    adapterAngle: adapter.angle,
  });
  return isProblem(found) ? found : (found["leverRatio"] ?? Number.NaN);
}

function recordedRow(row: Row, planned: Planned | undefined, inputs: Insides): Recorded | Problem {
  const [pass, position] = [cellText(row, "pass") ?? "", cellText(row, "position") ?? ""];
  const written = cellNumber(row, "net");
  const net = planned?.net ?? written;
  if (net === undefined || net <= 0)
    return problem({
      code: "missing-input",
      what: "net torque",
      got: net === undefined ? "nothing" : "none above 0",
      must: "be given as net in the plan or in the row",
    });
  const lever = leverOf(row, inputs);
  if (isProblem(lever)) return lever;
  const runOn = cellNumber(row, "runOn") ?? 0;
  const found = evaluateSteps(dues, { net, runOn, leverRatio: lever });
  if (isProblem(found)) return found;
  return {
    pass,
    position,
    net,
    written,
    runOn,
    lever,
    due: found["due"] ?? Number.NaN,
    set: cellNumber(row, "set"),
    read: cellNumber(row, "read"),
    unit: cellText(row, "unit"),
    angle: cellNumber(row, "angle"),
  };
}

export interface TorqueRecord {
  readonly rows: readonly Recorded[];
  /** Rows that a later row of the same pass and position replaces. */
  readonly replaced: number;
  /** Rows of passes that the plan does not hold, such as a trial. */
  readonly otherPasses: number;
  readonly blank: number;
}

/** A later row of the same pass and position counts in place of the earlier one, which stays written. */
export function recordedRows(inputs: Insides, plan: readonly Planned[]): TorqueRecord | Problem {
  const planned = new Map(plan.map((row) => [keyOf(row), row]));
  const passes = new Set(plan.map((row) => row.pass));
  const rows = new Map<string, Recorded>();
  let [replaced, otherPasses, blank] = [0, 0, 0];
  for (const [index, row] of rowsOf(inputs, "rows").entries()) {
    const [pass, position] = [cellText(row, "pass") ?? "", cellText(row, "position") ?? ""];
    if (Object.keys(row).length === 0) blank += 1;
    else if (pass === "" || position === "")
      return problem({
        code: "missing-input",
        what: `rows ${index + 1}`,
        got: pass === "" ? "no pass" : "no position",
        must: "name pass and position",
      });
    else if (passes.has(pass)) {
      const key = keyOf({ pass, position });
      const read = recordedRow(row, planned.get(key), inputs);
      if (isProblem(read)) return read.with({ what: `rows ${index + 1} · ${read.what}` });
      if (rows.has(key)) replaced += 1;
      rows.set(key, read);
    } else otherPasses += 1;
  }
  return { rows: [...rows.values()], replaced, otherPasses, blank };
}
