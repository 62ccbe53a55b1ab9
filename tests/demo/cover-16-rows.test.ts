// The rows of the cover pages are those of the files in demo-data, cell by cell.
import { expect, test } from "vitest";
import { type CsvRow, csvRows, openNotebook, typedRows } from "./helpers.ts";

const holes = csvRows("cover-16-holes.csv");
const bolts = csvRows("cover-16-bolts.csv");
const gaps = csvRows("cover-16-gaps.csv");
const record = csvRows("cover-16-record.csv");
const fitted = (row: CsvRow) => row("kind").startsWith("fitted");
const joined = (...cells: readonly string[]) => cells.join(" | ");

/** Place on a circle, clockwise from north, y down the plan. */
const onCircle = (radius: number, turn: number) =>
  [radius * Math.sin(turn), -radius * Math.cos(turn)].map((at) => at.toFixed(3).replace("-0.000", "0.000"));

test("as found: positions, gaps, load cell, readings, bolts", async () => {
  const page = await openNotebook("cover-16-as-found");
  expect(typedRows(page, "positions", ["position", "x", "y", "kind"])).toEqual(
    holes.map((row, i) =>
      joined(row("hole_no"), ...onCircle(11, (i * Math.PI) / 8), row("kind").split(" ")[0] ?? ""),
    ),
  );
  const stations = ["north", "north east", "south east", "south", "south west", "north west"];
  expect(typedRows(page, "gaps", ["step", "station", "x", "y", "gap"])).toEqual(
    gaps.flatMap((row) =>
      stations.map((station, i) =>
        joined(
          row("step"),
          station,
          ...onCircle(13, (i * Math.PI) / 3),
          row(`${station.replace(" ", "_")}_in`),
        ),
      ),
    ),
  );
  expect(typedRows(page, "loads", ["step", "loadCell", "remark"])).toEqual(
    gaps.map((row) => joined(row("step"), row("load_cell_lbf"), row("note"))),
  );
  expect(typedRows(page, "holes", ["position", "depth", "direction", "diameter"])).toEqual(
    holes
      .filter(fitted)
      .flatMap((row) =>
        ["top", "split", "bottom"].flatMap((depth) =>
          ["radial", "round"].map((way) => joined(row("hole_no"), depth, way, row(`${depth}_${way}_in`))),
        ),
      ),
  );
  expect(typedRows(page, "holeTemperatures", ["position", "cover", "ring", "remark"])).toEqual(
    holes
      .filter(fitted)
      .map((row) => joined(...["hole_no", "casing_temp_F", "ring_temp_F", "note"].map(row))),
  );
  expect(typedRows(page, "shanks", ["bolt", "place", "direction", "diameter"])).toEqual(
    bolts
      .filter(fitted)
      .flatMap((row) =>
        ["head", "tip"].flatMap((place) =>
          ["a", "b"].map((way) => joined(row("bolt_no"), place, way, row(`${place}_${way}_in`))),
        ),
      ),
  );
  expect(typedRows(page, "boltTemperatures", ["bolt", "part", "micrometer"])).toEqual(
    bolts.filter(fitted).map((row) => joined(...["bolt_no", "bolt_temp_F", "mic_temp_F"].map(row))),
  );
  const columns = ["bolt_no", "head_mark", "free_length_in", "nut_run_on_lbf_ft", "protrusion_in", "note"];
  expect(
    typedRows(page, "bolts", ["position", "mark", "freeLength", "runOn", "protrusion", "remark"]),
  ).toEqual(bolts.map((row) => joined(...columns.map(row))));
});

test("tightening: 63 rows as first written, run-on of each position", async () => {
  const page = await openNotebook("cover-16-tightening");
  const columns = {
    pass: "pass",
    position: "position",
    net: "net_target_lbf_ft",
    runOn: "run_on_lbf_ft",
    adapter: "adapter",
    set: "wrench_set",
    read: "wrench_read",
    unit: "read_unit",
    angle: "angle_deg",
    by: "by",
    when: "when",
  };
  expect(typedRows(page, "record", Object.keys(columns))).toEqual(
    record.map((row) => joined(...Object.values(columns).map(row))),
  );
  const runOns = new Set(record.map((row) => joined(row("position"), row("run_on_lbf_ft"))));
  expect(new Set(typedRows(page, "nuts", ["position", "runOn"]))).toEqual(runOns);
});

test("every row says that it is invented", () => {
  for (const rows of [holes, bolts, gaps, record])
    for (const row of rows) expect(row("data_origin")).toBe("invented");
});
