// One sample for each picture and each turn it can take, from the demo files.
import type { PictureInputs } from "../../../src/engine/line.ts";
import {
  boreList,
  chosen,
  circle,
  done,
  foundFit,
  gaps,
  holesFile,
  list,
  mm,
  nuts,
  oneHole,
  order,
  passes,
  positions,
  record,
  si,
  text,
} from "./demo-lists.ts";

export interface Sample {
  readonly name: string;
  readonly picture: string;
  readonly inputs: PictureInputs;
}

const found = foundFit();
const gapInputs = gaps();
const gapLists = {
  stations: gapInputs.stations,
  planes: gapInputs.planes,
  tiltLimit: gapInputs.tiltLimit,
  twistLimit: mm(0.1),
  engagedLength: mm(30),
};
const adapters = list(["9", "12"].map((position) => ({ position: text(position) })));
const tightening = { positions, order, passes, adapters };
/** Stretch over 1.53 um/kN: 142.4 kN on the mean of the six. */
const trialRows = record.rows.flatMap(({ pass, position, stretch }) =>
  pass?.kind === "text" && pass.text === "trial" && position && stretch && "si" in stretch
    ? [{ position, newton: stretch.si / 1.53e-9 }]
    : [],
);
const trial = {
  trial: list(trialRows.map(({ position, newton }) => ({ position, preload: si("force", newton) }))),
  mean: si("force", trialRows.reduce((sum, { newton }) => sum + newton, 0) / trialRows.length),
  spread: si("ratio", 0.191),
  scatter: si("ratio", 0.2),
};
const degrees = (value: number) => si("angle", (value * Math.PI) / 180);
const torque = (value: number) => si("torque", value);

/** Twelve holes on a circle, with the fits of the demo's twelve fitted holes. */
const onCircle = (() => {
  const places = circle(12, 0.3);
  const renumbered = {
    ...found.pairs,
    rows: found.pairs.rows.map((row, i) => ({ ...row, position: text(String(i + 1)) })),
  };
  return {
    positions: places,
    pairs: renumbered,
    tightestAllowed: found.tightestAllowed,
    loosestAllowed: found.loosestAllowed,
  };
})();

const circleOrder = list(
  [1, 7, 4, 10, 2, 8, 5, 11, 3, 9, 6, 12].map((position) => ({ position: text(String(position)) })),
);
const circlePasses = list(
  circleOrder.rows.map((row) => ({ ...row, pass: text("1"), net: torque(120), set: torque(120) })),
);

export const samples: readonly Sample[] = [
  { name: "fit-map as found", picture: "fit-map", inputs: found },
  { name: "fit-map on a circle", picture: "fit-map", inputs: onCircle },
  { name: "gap-map stuck corner", picture: "gap-map", inputs: { ...gapLists, step: si("count", 3) } },
  { name: "gap-map last step", picture: "gap-map", inputs: gapLists },
  {
    name: "dowel-limit",
    picture: "dowel-limit",
    inputs: { clearance: mm(0.012), engagedLength: mm(30), planes: gapInputs.planes },
  },
  { name: "tightening-map third pass", picture: "tightening-map", inputs: { ...tightening, done: done(46) } },
  {
    name: "tightening-map passed over",
    picture: "tightening-map",
    inputs: { ...tightening, done: done(39) },
  },
  { name: "tightening-map all written", picture: "tightening-map", inputs: { ...tightening, done: done() } },
  {
    name: "tightening-map on a circle",
    picture: "tightening-map",
    inputs: {
      positions: circle(12, 0.2),
      order: circleOrder,
      passes: circlePasses,
      done: list(["1", "7", "4"].map((position) => ({ position: text(position), pass: text("1") }))),
    },
  },
  {
    name: "angle-by-nut third pass",
    picture: "angle-by-nut",
    inputs: {
      record,
      pass: text("pass 3"),
      band: degrees(4),
      target: torque(500),
      torqueBand: si("ratio", 0.05),
    },
  },
  {
    name: "torque-against-angle third pass",
    picture: "torque-against-angle",
    inputs: {
      record,
      pass: text("pass 3"),
      band: degrees(4),
      target: torque(500),
      torqueBand: si("ratio", 0.05),
    },
  },
  { name: "trial-spread", picture: "trial-spread", inputs: trial },
  {
    name: "fits-against-limits as found",
    picture: "fits-against-limits",
    inputs: {
      pairs: found.pairs,
      tightestAllowed: found.tightestAllowed,
      loosestAllowed: found.loosestAllowed,
    },
  },
  {
    name: "hole-section oval",
    picture: "hole-section",
    inputs: { readings: oneHole("8"), nominal: mm(25), splitAfter: text("up_split") },
  },
  {
    name: "hole-section half read",
    picture: "hole-section",
    inputs: {
      readings: list([
        ...boreList(holesFile.filter((hole) => hole["hole_no"] === "1")).rows,
        ...oneHole("13", ["lo_split across", "lo_outer along", "lo_outer across"]).rows,
      ]),
      position: text("13"),
      nominal: mm(25),
      splitAfter: text("up_split"),
    },
  },
  { name: "assignment after rework", picture: "assignment", inputs: chosen() },
  { name: "run-on-bars", picture: "run-on-bars", inputs: { nuts, least: torque(8), most: torque(60) } },
];
