// The flange in the order of tightening: what is done, what comes next and what the wrench is set to.
import type { UnitChoice } from "../../methods/solution.ts";
import { isProblem, type Problem } from "../../problem.ts";
import { roundDecimal, withUnit } from "../../units/format.ts";
import { inUnit } from "../../units/in-unit.ts";
import { unit } from "../../units/unit.ts";
import { setText } from "../figure.ts";
import type { Drawing, PictureInputs } from "./drawing.ts";
import { yUpOf } from "./place.ts";
import { drawTightening } from "./tightening-drawing.ts";
import { type PassProgress, type Progress, readProgress } from "./tightening-progress.ts";
import { listed } from "./words.ts";

export function tighteningMap(inputs: PictureInputs, unitOf: UnitChoice): Drawing | Problem {
  const progress = readProgress(inputs);
  if (isProblem(progress)) return progress;
  const yUp = yUpOf("tightening-map", inputs);
  if (isProblem(yUp)) return yUp;
  const torque = (si: number | undefined) =>
    si === undefined ? "" : setText(si, "torque", unitOf("torque"), 5);
  const { now, order, settingAt } = progress;
  return {
    draw: (width) => drawTightening(progress, width, { own: torque, other: otherScale(unitOf) }, yUp),
    sentence: [nextWords(progress, torque), ...gaps(progress)].join(" "),
    table: {
      title: "tightening as a table",
      head: ["turn", "position", "kind", `pass ${now.pass}`, "net", "set", "lever"],
      rows: order.map((position, i) => {
        const { net, set, adapter } = settingAt(position);
        const kind = progress.places.find((place) => place.position === position)?.kind ?? "";
        const state = stateAt(progress, position);
        return [String(i + 1), position, kind, state, torque(net), torque(set), adapter ? "adapter" : ""];
      }),
    },
  };
}

/** A wrench has a second scale: lbf.ft beside N.m, N.m beside anything else. */
function otherScale(unitOf: UnitChoice): (si: number | undefined) => string {
  const other = unit(unitOf("torque").text === "N.m" ? "lbf.ft" : "N.m", "torque");
  if (isProblem(other)) throw new Error("the scales of a wrench are not in the unit list");
  return (si) =>
    si === undefined ? "" : withUnit(roundDecimal(inUnit(si, other), { decimals: 0 }), other, true);
}

export const stateAt = ({ now, next }: Progress, position: string): string => {
  if (now.done.has(position)) return "done";
  if (position === next) return "next";
  return now.passedOver.includes(position) ? "passed over" : "to do";
};

function nextWords(
  { now, next, order, settingAt }: Progress,
  torque: (si: number | undefined) => string,
): string {
  const count = `Pass ${now.pass}: ${now.done.size} of ${order.length} done`;
  if (next === undefined) return `${count}.`;
  const { set, adapter } = settingAt(next);
  const setting = set === undefined ? "no set torque" : `set ${torque(set)}`;
  return `${count}; next is position ${next}, ${setting}${adapter ? " with the adapter" : ""}.`;
}

const gaps = ({ passes, now }: Progress): readonly string[] =>
  passes
    .filter(({ passedOver }) => passedOver.length > 0)
    .map((pass: PassProgress) =>
      pass === now
        ? `Passed over in this pass: ${listed(pass.passedOver)}.`
        : `Missing in pass ${pass.pass}: ${listed(pass.passedOver)}.`,
    );
