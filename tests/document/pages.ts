// Pages used by several tests of this folder. All values are invented.

import type { Item, Page } from "../../src/document/item.ts";
import { readPage } from "../../src/document/read.ts";
import { type Problem, sentence } from "../../src/problem.ts";

export const examplePage = `# torque card of the last overhaul
splitline: 1                          # format version
title: Circulation pump 2, split line
machine: Heat station A, circulation pump 2      # invented
show: { torque: N.m, force: kN, length: mm, stress: MPa }
page:
  - note: |
      Old card against *window*.

      Second paragraph.
  - given: netTorque
    says: Net torque at the nut
    value: 520 lbf.ft                 # kept as typed
    source: old torque card, lubricant not stated

  # from the trial
  - given: nutFactor
    says: Nut factor, six-bolt trial
    value: 0.14050
    spread: { plusMinus: 20 %, meaning: limits, applies: preload }   # see the trial
    source: trial of this page
  - working: bolt
    by: metric-thread
    of: { designation: M24x3 }
  - working: tension
    by: preload-from-torque
    of: { torque: netTorque, nutFactor: nutFactor, diameter: bolt.majorDiameter }
  - working: shareOfProof             # a formula of the author's own
    is: tension.preload / "211.5 kN"
  - check: proofShare
    says: Preload stays below the owner's share of proof
    that: shareOfProof
    atMost: 0.90
    source: owner
  - reading: holes
    columns: { position: tag, depth: tag, direction: tag, diameter: length }
    uncertainty: { diameter: 3 um, k: 2 }
    rows: |
      position,depth,direction,diameter/mm
      1,u1,along,25.011
      1,u1,across,
  - picture: joint-diagram
    of: { preload: tension.preload }
  - caution: C2
  - sign-off: { prepared: fitter A, checked: { who: fitter B, date: "2026-11-25" } }
`;

export const header = "splitline: 1\ntitle: t\npage:\n";

/** A page of one item, written as the lines of its fields. */
export const pageOf = (...fields: readonly string[]): string => `${header}  - ${fields.join("\n    ")}\n`;

export function readGood(text: string): Page {
  const { page, problems } = readPage(text, "page.yaml");
  if (!page) throw new Error(problems.map(sentence).join("\n"));
  return page;
}

export const problemsOf = (text: string): readonly Problem[] => readPage(text, "page.yaml").problems;

export const sentencesOf = (text: string): readonly string[] => problemsOf(text).map(sentence);

/** Place and code of each problem, e.g. "4:5 unknown-key". */
export const marksOf = (text: string): readonly string[] =>
  problemsOf(text).map((p) => `${p.where?.replace("page.yaml:", "")} ${p.code}`);

export function onlyItem(text: string): Item {
  const [item] = readGood(text).items;
  if (!item) throw new Error("no item");
  return item;
}
