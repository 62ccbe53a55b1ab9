// The rows of the pump pages are those of the files in demo-data, cell by cell.
import { expect, test } from "vitest";
import { type CsvRow, csvRows, openNotebook, typedRows } from "./helpers.ts";

const holes = csvRows("holes.csv");
const bolts = csvRows("bolts.csv");
const record = csvRows("torque-record.csv");
const fitted = (row: CsvRow) => row("kind").startsWith("fitted");
const stage = (name: string) => (row: CsvRow) => row("stage") === name;
const foundHoles = holes.filter(stage("found")).filter(fitted);
const newer = new Map(holes.filter(stage("after rework")).map((row) => [row("hole_no"), row]));
const holesNow = foundHoles.map((row) => newer.get(row("hole_no")) ?? row);
const measured = bolts.filter(fitted);
const foundBolts = bolts.filter(stage("found"));

const joined = (...cells: readonly string[]) => cells.join(" | ");

/** The page's words for a depth, and the file's. */
const depths = [
  ["upper half, outer end", "up_outer"],
  ["upper half, at the split", "up_split"],
  ["lower half, at the split", "lo_split"],
  ["lower half, outer end", "lo_outer"],
] as const;
const sizesOf = (rows: readonly CsvRow[], more: (row: CsvRow) => readonly string[] = () => []) =>
  rows.flatMap((row) =>
    depths.flatMap(([depth, column]) =>
      ["along", "across"].map((way) =>
        joined(row("hole_no"), ...more(row), depth, way, row(`${column}_${way}_mm`)),
      ),
    ),
  );
const shanksOf = (rows: readonly CsvRow[]) =>
  rows.flatMap((row) =>
    ["head", "mid", "tip"].flatMap((place) =>
      ["a", "b"].map((way) => joined(row("bolt_no"), place, way, row(`${place}_${way}_mm`))),
    ),
  );

test("opening: tray, ties, six gaps of nine steps, load cell", async () => {
  const page = await openNotebook("pump-2-opening");
  expect(typedRows(page, "tray", ["position"])).toEqual(foundBolts.map((row) => row("bolt_no")));
  expect(typedRows(page, "ties", ["group", "what", "onDrawing", "firstCount", "secondCount"])).toEqual(
    csvRows("ties.csv").map((row) =>
      joined(row("group"), row("what"), row("on_drawing"), row("first_count"), row("second_count")),
    ),
  );
  const places = [
    ["drive end left", "-0.5", "-0.3", "de_left_mm"],
    ["drive end right", "-0.5", "0.3", "de_right_mm"],
    ["middle left", "0", "-0.3", "mid_left_mm"],
    ["middle right", "0", "0.3", "mid_right_mm"],
    ["far end left", "0.5", "-0.3", "nde_left_mm"],
    ["far end right", "0.5", "0.3", "nde_right_mm"],
  ] as const;
  const steps = csvRows("gaps.csv");
  expect(typedRows(page, "gaps", ["step", "station", "x", "y", "gap"])).toEqual(
    steps.flatMap((row) =>
      places.map(([station, x, y, column]) => joined(row("step"), station, x, y, row(column))),
    ),
  );
  expect(typedRows(page, "loads", ["step", "loadCell", "remark"])).toEqual(
    steps.map((row) => joined(row("step"), row("load_cell_kN"), row("note"))),
  );
});

test("as found: 96 hole readings, 72 shank readings, temperatures, pin, twenty bolts", async () => {
  const page = await openNotebook("pump-2-as-found");
  expect(typedRows(page, "holes", ["position", "depth", "direction", "diameter"])).toEqual(
    sizesOf(foundHoles),
  );
  expect(typedRows(page, "shanks", ["bolt", "place", "direction", "diameter"])).toEqual(
    shanksOf(foundBolts.filter(fitted)),
  );
  expect(typedRows(page, "holeTemperatures", ["position", "casing", "ring", "pin", "remark"])).toEqual(
    foundHoles.map((row) =>
      joined(row("hole_no"), row("casing_temp_C"), row("ring_temp_C"), row("through_pin_25000"), row("note")),
    ),
  );
  expect(typedRows(page, "boltTemperatures", ["bolt", "part", "micrometer"])).toEqual(
    foundBolts.filter(fitted).map((row) => joined(row("bolt_no"), row("bolt_temp_C"), row("mic_temp_C"))),
  );
  const columns = ["position", "mark", "freeLength", "runOn", "protrusion", "threadGauge", "remark"];
  expect(typedRows(page, "bolts", columns)).toEqual(
    foundBolts.map((row) =>
      joined(
        ...[
          "bolt_no",
          "head_mark",
          "free_length_mm",
          "nut_run_on_Nm",
          "protrusion_mm",
          "thread_gauge",
          "note",
        ].map(row),
      ),
    ),
  );
  expect(typedRows(page, "pairs", ["position", "bolt"])).toEqual(
    foundHoles.map((row) => joined(row("hole_no"), row("hole_no"))),
  );
});

test("positions of every page are those of the holes, x along the machine, left and right of it", async () => {
  for (const id of ["pump-2-opening", "pump-2-as-found", "pump-2-after-rework", "pump-2-tightening"]) {
    const rows = typedRows(await openNotebook(id), "positions", ["position", "x", "y", "kind"]);
    expect(rows, id).toEqual(
      holes.filter(stage("found")).map((row) => {
        const x = (Number(row("x_mm")) / 1000).toFixed(3);
        return joined(
          row("hole_no"),
          x,
          row("side") === "left" ? "-0.133" : "0.133",
          row("kind").split(" ")[0] ?? "",
        );
      }),
    );
  }
});

test("after rework: 32 readings found, 96 as the holes are now with their stage, 90 of shanks found and new", async () => {
  const page = await openNotebook("pump-2-after-rework");
  const worked = foundHoles.filter((row) => newer.has(row("hole_no")));
  expect(typedRows(page, "holesBefore", ["position", "depth", "direction", "diameter"])).toEqual(
    sizesOf(worked),
  );
  expect(typedRows(page, "temperaturesBefore", ["position", "casing", "ring", "pin", "edge"])).toEqual(
    worked.map((row) =>
      joined(
        ...["hole_no", "casing_temp_C", "ring_temp_C", "through_pin_25000", "edge_distance_mm"].map(row),
      ),
    ),
  );
  expect(typedRows(page, "holesNow", ["position", "stage", "depth", "direction", "diameter"])).toEqual(
    sizesOf(holesNow, (row) => [row("stage")]),
  );
  expect(typedRows(page, "temperaturesNow", ["position", "stage", "casing", "ring", "pin"])).toEqual(
    holesNow.map((row) =>
      joined(...["hole_no", "stage", "casing_temp_C", "ring_temp_C", "through_pin_25000"].map(row)),
    ),
  );
  expect(typedRows(page, "shanks", ["bolt", "place", "direction", "diameter"])).toEqual(shanksOf(measured));
  expect(typedRows(page, "boltTemperatures", ["bolt", "stage", "part", "micrometer"])).toEqual(
    measured.map((row) => joined(...["bolt_no", "stage", "bolt_temp_C", "mic_temp_C"].map(row))),
  );
  const byTag = new Map(bolts.map((row) => [row("bolt_no"), row]));
  for (const row of typedRows(page, "fitted", ["bolt", "mark", "freeLength"])) {
    const [tag = "", mark, length] = row.split(" | ");
    expect([mark, length], tag).toEqual([byTag.get(tag)?.("head_mark"), byTag.get(tag)?.("free_length_mm")]);
  }
});

test("tightening: 79 rows as first written, trial, run-on of each position, correcting rows", async () => {
  const page = await openNotebook("pump-2-tightening");
  const columns = {
    pass: "pass",
    position: "position",
    net: "net_target_Nm",
    runOn: "run_on_Nm",
    adapter: "adapter",
    set: "wrench_set",
    read: "wrench_read",
    unit: "read_unit",
    angle: "angle_deg",
    wrench: "wrench",
    by: "by",
    when: "when",
    note: "note",
  };
  const written = record.filter((row) => row("pass") !== "trial");
  expect(typedRows(page, "record", Object.keys(columns))).toEqual(
    written.map((row) => joined(...Object.values(columns).map(row))),
  );
  expect(written.every((row) => row("stretch_mm") === "")).toBe(true);
  const trial = record
    .filter((row) => row("pass") === "trial")
    .map((row) => joined(row("position"), row("stretch_mm")));
  expect(typedRows(page, "trial", ["position", "stretch"])).toEqual(trial);
  expect(typedRows(await openNotebook("pump-2-old-card"), "trial", ["position", "stretch"])).toEqual(trial);
  const runOns = new Set(written.map((row) => joined(row("position"), row("run_on_Nm"))));
  expect(new Set(typedRows(page, "nuts", ["position", "runOn"]))).toEqual(runOns);

  const corrections = csvRows("torque-corrections.csv");
  const { note: _, ...kept } = columns;
  const reasoned = { ...kept, reason: "reason" };
  expect(typedRows(page, "redone", Object.keys(reasoned))).toEqual(
    corrections
      .filter((row) => row("pass") !== "recheck")
      .map((row) => joined(...Object.values(reasoned).map(row))),
  );
  const { angle: __, wrench: ___, ...recheck } = kept;
  const moved = { ...recheck, moved: "angle_deg" };
  expect(typedRows(page, "recheck", Object.keys(moved))).toEqual(
    corrections
      .filter((row) => row("pass") === "recheck")
      .map((row) => joined(...Object.values(moved).map(row))),
  );
});

test("next time: three fits", async () => {
  const page = await openNotebook("pump-2-next-time");
  expect(typedRows(page, "sizes", ["position", "bolt", "before", "after", "remark"])).toEqual(
    csvRows("next-time.csv").map((row) =>
      joined(...["hole", "bolt", "loosest_before_um", "loosest_after_um", "note"].map(row)),
    ),
  );
});

test("every row of every file says that it is invented", () => {
  for (const file of ["holes", "bolts", "gaps", "torque-record", "torque-corrections", "ties", "next-time"])
    for (const row of csvRows(`${file}.csv`)) expect(row("data_origin")).toBe("invented");
});
