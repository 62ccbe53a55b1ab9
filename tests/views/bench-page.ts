// A page with empty tables for the twelve fitted holes and bolts of the demo, and what there is to be read.
import { readFile } from "node:fs/promises";
import { fileURLToPath } from "node:url";

const demo = (name: string): Promise<string> =>
  readFile(fileURLToPath(new URL(`../../demo-data/${name}`, import.meta.url)), "utf8");

export interface Wanted {
  readonly place: string;
  readonly value: string;
}

/** Rows of a demo table as found, fitted parts only; no field of these columns holds a comma. */
async function fitted(name: string, key: string): Promise<readonly Readonly<Record<string, string>>[]> {
  const [head = "", ...lines] = (await demo(name)).trim().split("\n");
  const names = head.split(",");
  return lines
    .map((line) => Object.fromEntries(line.split(",").map((field, i) => [names[i] ?? "", field])))
    .filter((row) => row["stage"] === "found" && row["kind"] === "fitted 25" && row[key] !== "");
}

export async function holesToRead(): Promise<readonly Wanted[]> {
  const rows = await fitted("holes.csv", "hole_no");
  return rows.flatMap((row) =>
    ["up_outer", "up_split", "lo_split", "lo_outer"].flatMap((depth) =>
      ["along", "across"].map((direction) => ({
        place: `hole ${row["hole_no"]}, ${depth.replace("_", " ")}, ${direction}`,
        value: row[`${depth}_${direction}_mm`] ?? "",
      })),
    ),
  );
}

export async function shanksToRead(): Promise<readonly Wanted[]> {
  const rows = await fitted("bolts.csv", "bolt_no");
  return rows.flatMap((row) =>
    ["head", "mid", "tip"].flatMap((place) =>
      ["a", "b"].map((direction) => ({
        place: `shank ${row["bolt_no"]}, ${place}, direction ${direction}`,
        value: row[`${place}_${direction}_mm`] ?? "",
      })),
    ),
  );
}

const positions = "[1, 3, 5, 6, 8, 10, 11, 13, 15, 16, 18, 20]";

export const emptyPage = `splitline: 1
title: To be read
page:
  - given: nominal
    says: Nominal size
    value: 25 mm
  - reading: holes
    says: Bores as read
    columns: { position: tag, depth: tag, direction: tag, diameter: length, state: tag, reason: text }
    key: [position, depth, direction]
    expect: { position: ${positions}, depth: [up outer, up split, lo split, lo outer], direction: [along, across] }
    odd: { diameter: 30 um }
    uncertainty: { diameter: 3 um, k: 2 }
    rows: |
      position,depth,direction,diameter/mm,state,reason
  - reading: shanks
    says: Shanks as read
    columns: { bolt: tag, place: tag, direction: tag, diameter: length, state: tag, reason: text }
    key: [bolt, place, direction]
    expect: { bolt: ${positions}, place: [head, mid, tip], direction: [a, b] }
    odd: { diameter: 30 um }
    uncertainty: { diameter: 2 um, k: 2 }
    rows: |
      bolt,place,direction,diameter/mm,state,reason
  - working: hole
    says: Form of each hole
    each: holes
    key: position
    by: hole-form
    of: { readings: { each: holes, depth: depth, direction: direction, value: holes.diameter } }
`;
