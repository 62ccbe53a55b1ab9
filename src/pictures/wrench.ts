// A torque wrench with its adapter, and the number to set.

import type { UnitChoice } from "../methods/solution.ts";
import { wrenchSetting } from "../methods/torque/wrench-setting.ts";
import { isProblem, type Problem } from "../problem.ts";
import { setText } from "../report/figure-text.ts";
import { type Given, maybe, number } from "./fields.ts";
import { picture, worked } from "./picture.ts";

const of = {
  wrenchLength: number("length"),
  adapterLength: number("length"),
  adapterAngle: maybe("angle"),
  setting: maybe("torque"),
  targetTorque: maybe("torque"),
};

export interface Lever {
  readonly length: number;
  readonly adapter: number;
  /** Radians; 0 continues the line of the wrench. */
  readonly angle: number;
  readonly setting: number;
  readonly target: number | undefined;
}

export const wrench = picture({
  id: "wrench",
  question: "What is the wrench set to, with its adapter, for the torque at the fastener?",
  of,
  anyOf: ["setting", "targetTorque"],
  by: [wrenchSetting],
  model,
  says: (lever, unitOf) => {
    const { torque, length, degrees } = wordsOf(lever, unitOf);
    const wanted = lever.target === undefined ? "" : ` to give ${torque(lever.target)} at the fastener`;
    return `Set ${torque(lever.setting)}${wanted}, with the hand ${length(lever.length)} from the square and an adapter of ${length(lever.adapter)} at ${degrees}.`;
  },
  table: (lever, unitOf) => {
    const { torque, length, degrees } = wordsOf(lever, unitOf);
    return {
      title: "wrench as a table",
      head: ["what", "value"],
      rows: [
        ["number to set", torque(lever.setting)],
        ...(lever.target === undefined ? [] : [["torque at the fastener", torque(lever.target)]]),
        ["square to the middle of the hand", length(lever.length)],
        ["square to the fastener", length(lever.adapter)],
        ["angle of the adapter", degrees],
      ],
    };
  },
});

function model({ targetTorque, wrenchLength, adapterLength, ...given }: Given<typeof of>): Lever | Problem {
  const angle = given.adapterAngle ?? 0;
  const found =
    given.setting === undefined
      ? worked(wrenchSetting, { targetTorque, wrenchLength, adapterLength, adapterAngle: angle }, "setting")
      : { setting: given.setting };
  if (isProblem(found)) return found;
  return {
    length: wrenchLength,
    adapter: adapterLength,
    angle,
    setting: found.setting,
    target: targetTorque,
  };
}

const wordsOf = ({ angle }: Lever, unitOf: UnitChoice) => ({
  torque: (si: number) => setText(si, "torque", unitOf("torque")),
  length: (si: number) => setText(si, "length", unitOf("length")),
  degrees: setText(angle, "angle", unitOf("angle")),
});
