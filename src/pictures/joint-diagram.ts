// The bolt's line up, the clamped parts' line down, and what an outside load leaves between the faces.

import { serviceBoltLoad } from "../methods/margins/service-bolt-load.ts";
import type { UnitChoice } from "../methods/solution.ts";
import { loadShare } from "../methods/stiffness/load-share.ts";
import { isProblem, type Problem } from "../problem.ts";
import { figureText, setText } from "../report/figure-text.ts";
import { type Given, maybe, number } from "./fields.ts";
import { picture, worked } from "./picture.ts";

const of = {
  preload: number("force"),
  externalLoad: number("force"),
  loadFactor: maybe("ratio"),
  boltStiffness: maybe("stiffness"),
  clampedStiffness: maybe("stiffness"),
  minimum: maybe("force"),
  maximum: maybe("force"),
  proofLoad: maybe("force"),
};

export interface Joint {
  readonly preload: number;
  readonly share: number;
  readonly externalLoad: number;
  readonly boltLoad: number;
  readonly clampLoad: number;
  readonly minimum: number | undefined;
  readonly clampAtMinimum: number | undefined;
  readonly maximum: number | undefined;
  readonly proofLoad: number | undefined;
}

export const jointDiagram = picture({
  id: "joint-diagram",
  question: "What does an outside load put on the bolt, and what does it leave between the faces?",
  of,
  anyOf: ["boltStiffness", "loadFactor"],
  needs: { boltStiffness: "clampedStiffness", clampedStiffness: "boltStiffness" },
  by: [serviceBoltLoad, loadShare],
  model,
  says,
  table: (joint, unitOf) => ({
    title: "joint diagram as a table",
    head: ["what", "value"],
    rows: rowsOf(joint, unitOf),
  }),
});

function model(given: Given<typeof of>): Joint | Problem {
  const { boltStiffness, clampedStiffness, preload, externalLoad, minimum, maximum, proofLoad } = given;
  const shared =
    given.loadFactor === undefined
      ? worked(loadShare, { boltStiffness, clampedStiffness }, "loadFactor")
      : { loadFactor: given.loadFactor };
  if (isProblem(shared)) return shared;
  const { loadFactor } = shared;
  const loaded = worked(serviceBoltLoad, { preload, externalLoad, loadFactor }, "boltLoad", "clampLoad");
  if (isProblem(loaded)) return loaded;
  const atMinimum =
    minimum === undefined
      ? undefined
      : worked(serviceBoltLoad, { preload: minimum, externalLoad, loadFactor }, "clampLoad");
  if (isProblem(atMinimum)) return atMinimum;
  const clampAtMinimum = atMinimum?.clampLoad;
  return { preload, share: loadFactor, externalLoad, ...loaded, minimum, clampAtMinimum, maximum, proofLoad };
}

function says(joint: Joint, unitOf: UnitChoice): string {
  const force = (si: number) => setText(si, "force", unitOf("force"));
  const left = joint.clampLoad > 0 ? `${force(joint.clampLoad)} of clamp are left` : "no clamp is left";
  return `At a preload of ${force(joint.preload)} an outside load of ${force(joint.externalLoad)} brings the bolt to ${force(joint.boltLoad)}; ${left}.`;
}

function rowsOf(joint: Joint, unitOf: UnitChoice): readonly (readonly string[])[] {
  const row = (what: string, si: number | undefined) =>
    si === undefined ? [] : [[what, setText(si, "force", unitOf("force"))]];
  return [
    ...row("preload", joint.preload),
    ...row("outside load", joint.externalLoad),
    ["load factor", figureText(joint.share, "ratio", unitOf("ratio"))],
    ...row("load in the bolt", joint.boltLoad),
    ...row("clamp left", joint.clampLoad),
    ...row("least preload", joint.minimum),
    ...row("clamp left at least preload", joint.clampAtMinimum),
    ...row("largest preload", joint.maximum),
    ...row("proof load", joint.proofLoad),
  ];
}
