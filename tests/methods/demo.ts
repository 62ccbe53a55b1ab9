// The invented demo data as inputs of the methods. Sizes are brought to 20 degC by size-at-reference.
import { readFileSync } from "node:fs";
import { csvParse, type DSVRowString } from "d3";
import { depthForms, type Reading } from "../../src/methods/fits/hole-form.ts";
import { solve } from "../../src/methods/index.ts";
import { of, si } from "./helpers.ts";

const table = (name: string): readonly DSVRowString[] =>
  csvParse(readFileSync(new URL(`../../demo-data/${name}.csv`, import.meta.url), "utf8"));

const sizeAt20 = (
  row: DSVRowString,
  column: string,
  part: string,
  gauge: string,
  expansion: string,
): number =>
  si(
    solve("size-at-reference", {
      reading: `${row[column]} mm`,
      partTemperature: `${row[part]} degC`,
      gaugeTemperature: `${row[gauge]} degC`,
      partExpansion: expansion,
      gaugeExpansion: "11.5e-6 1/K",
      nominal: "25 mm",
    }),
    "size",
  );

export const depths = ["up_outer", "up_split", "lo_split", "lo_outer"] as const;
export const directions = ["along", "across"] as const;

export function holeReadings(no: string, stage = "found"): readonly Reading[] {
  const row = table("holes").find((each) => each["hole_no"] === no && each["stage"] === stage);
  if (!row) throw new Error(`no hole ${no} ${stage}`);
  return depths.flatMap((depth) =>
    directions.map((direction) => ({
      depth,
      direction,
      value: sizeAt20(row, `${depth}_${direction}_mm`, "casing_temp_C", "ring_temp_C", "11e-6 1/K"),
    })),
  );
}

export function boltReadings(no: string): readonly Reading[] {
  const row = table("bolts").find((each) => each["bolt_no"] === no);
  if (!row) throw new Error(`no bolt ${no}`);
  return ["head", "mid", "tip"].flatMap((depth) =>
    ["a", "b"].map((direction) => ({
      depth,
      direction,
      value: sizeAt20(row, `${depth}_${direction}_mm`, "bolt_temp_C", "mic_temp_C", "11.5e-6 1/K"),
    })),
  );
}

/** As rows of a list input. */
export const readingRows = (readings: readonly Reading[]) =>
  readings.map(({ depth, direction, value }) => ({ depth, direction, value: of("length", value) }));

const values = (readings: readonly Reading[]) => readings.map((reading) => reading.value);

export const holeRow = (no: string, stage = "found") => {
  const readings = holeReadings(no, stage);
  return {
    tag: no,
    smallest: of("length", Math.min(...values(readings))),
    largestDepthMean: of("length", Math.max(...depthForms(readings).map((depth) => depth.mean))),
  };
};

export const boltRow = (no: string) => {
  const sizes = values(boltReadings(no));
  return {
    tag: no,
    largest: of("length", Math.max(...sizes)),
    mean: of("length", sizes.reduce((sum, size) => sum + size, 0) / sizes.length),
  };
};

export const fitted = ["1", "3", "5", "6", "8", "10", "11", "13", "15", "16", "18", "20"];

export const pairLimits = {
  tightestAllowed: "-10 um",
  loosestAllowed: "15 um",
  holeUncertainty: "3 um",
  shankUncertainty: "2 um",
};

/** The gap stations of one jacking step. */
export function stations(step: number) {
  const row = table("gaps").find((each) => each["step"] === String(step));
  if (!row) throw new Error(`no step ${step}`);
  const ends = { de: "-0.5 m", mid: "0 m", nde: "0.5 m" };
  return Object.entries(ends).flatMap(([end, x]) => [
    { x, y: "-0.3 m", gap: `${row[`${end}_left_mm`]} mm` },
    { x, y: "0.3 m", gap: `${row[`${end}_right_mm`]} mm` },
  ]);
}

export const order = [5, 15, 6, 16, 4, 14, 7, 17, 3, 13, 8, 18, 2, 12, 9, 19, 1, 11, 10, 20].map(String);

/** Every row of the torque record, trial rows too, as inputs of record-findings. */
export const recordRows = () =>
  table("torque-record").map((row) => ({
    pass: row["pass"] ?? "",
    position: row["position"] ?? "",
    net: `${row["net_target_Nm"]} N.m`,
    runOn: `${row["run_on_Nm"]} N.m`,
    adapter: row["adapter"] ?? "",
    set: `${row["wrench_set"]} N.m`,
    read: row["wrench_read"] === "" ? "" : `${row["wrench_read"]} ${row["read_unit"]}`,
    unit: row["read_unit"] ?? "",
    angle: row["angle_deg"] === "" ? "" : `${row["angle_deg"]} deg`,
  }));

const targets = { "pass 1": "150 N.m", "pass 2": "300 N.m", "pass 3": "500 N.m", check: "500 N.m" };

export const recordPlan = () =>
  Object.entries(targets).flatMap(([pass, net]) => order.map((position) => ({ pass, position, net })));
