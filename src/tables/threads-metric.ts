// ISO metric threads: the sizes and pitches that may be asked for, with stress area as printed
// and the tolerances of grade 6. A size and pitch that the table does not hold are not invented.
// Long because the rows are here.

import type { Problem } from "../problem.ts";
import type { Source } from "../source.ts";
import { nearestTo, notInTable, once, readRows, type TableInfo } from "./table.ts";

export interface MetricThread {
  /** "M24" for the coarse pitch, "M24x2" for a fine one. */
  readonly designation: string;
  readonly series: "coarse" | "fine";
  readonly diameter_mm: number;
  readonly pitch_mm: number;
  /** Basic sizes as printed, three decimals. */
  readonly pitchDiameter_mm: number;
  readonly minorDiameterExternal_mm: number;
  readonly minorDiameterInternal_mm: number;
  /** Nominal stress area as printed, three figures; the load tables are built on it. */
  readonly stressArea_mm2: number;
  /** Position g of the external thread, upper deviation (negative). */
  readonly deviationG_um: number;
  readonly crestTolerance6_um: number;
  readonly pitchTolerance6_um: number;
  readonly internalPitchTolerance6_um: number;
  readonly internalMinorTolerance6_um: number;
  readonly majorMax6g_mm: number;
  readonly majorMin6g_mm: number;
  readonly pitchMax6g_mm: number;
  readonly pitchMin6g_mm: number;
  readonly pitchMin6H_mm: number;
  readonly pitchMax6H_mm: number;
  readonly minorMin6H_mm: number;
  readonly minorMax6H_mm: number;
}

export const metricThreadSources = {
  sizes: {
    body: "ISO",
    title: "ISO 261 and ISO 262, sizes and pitches",
    known: "memory",
  },
  basic: {
    body: "ISO",
    title: "ISO 724, basic dimensions",
    at: "d2 = d - 0.75 H, D1 = d - 1.25 H, H = 0.8660254 P",
    known: "second-hand",
  },
  root: {
    body: "DIN",
    title: "DIN 13-1, external root",
    at: "d3 = d - 17/12 H",
    known: "second-hand",
  },
  stressArea: {
    body: "ISO",
    title: "EN ISO 898-1, stress areas of the load tables",
    edition: "coarse M3 to M39",
    known: "second-hand",
  },
  stressAreaFine: {
    body: "ISO",
    title: "ISO 898-1, formula (π/4)((d2 + d3)/2)², to three figures",
    known: "memory",
  },
  tolerances: {
    body: "ISO",
    title: "ISO 965-1, tolerances of grade 6 and position g",
    edition: "1998, from an open dataset of the DIN 13 tables (MIT licence)",
    known: "second-hand",
  },
  limits6g: {
    body: "ISO",
    title: "ISO 965-2, limits of size 6g",
    at: "18 sizes M1.6 to M12x1.25 compared",
    known: "second-hand",
  },
  limits6H: {
    body: "ISO",
    title: "ISO 965-1, limits 6H from the tolerances",
    at: "not compared with a second source above M10",
    known: "derived",
  },
} as const satisfies Record<string, Source>;

export const metricThreadTable: TableInfo = {
  title: "ISO metric threads M1.6 to M64",
  units: {
    designation: "",
    series: "",
    diameter: "mm",
    pitch: "mm",
    pitchDiameter: "mm",
    minorDiameterExternal: "mm",
    minorDiameterInternal: "mm",
    stressArea: "mm2",
    deviationG: "um",
    crestTolerance6: "um",
    pitchTolerance6: "um",
    internalPitchTolerance6: "um",
    internalMinorTolerance6: "um",
    majorMax6g: "mm",
    majorMin6g: "mm",
    pitchMax6g: "mm",
    pitchMin6g: "mm",
    pitchMin6H: "mm",
    pitchMax6H: "mm",
    minorMin6H: "mm",
    minorMax6H: "mm",
  },
  sources: Object.values(metricThreadSources),
  checked:
    "one reprint of the fine threads prints areas of another pitch or size for M8x0.75, M10x0.75, M12x1, M14x1.25, M16x1 and all M18, M20 and M22 rows; the formula values are kept here",
};

const text = `
designation,series,d,P,d2,d3,D1,As,es,Td,Td2,TD2,TD1,dMax,dMin,d2Max,d2Min,D2Min,D2Max,D1Min,D1Max
M1.6,coarse,1.6,0.35,1.373,1.171,1.221,1.27,-19,85,63,85,100,1.581,1.496,1.354,1.291,1.373,1.458,1.221,1.321
M1.8,coarse,1.8,0.35,1.573,1.371,1.421,1.7,-19,85,63,85,100,1.781,1.696,1.554,1.491,1.573,1.658,1.421,1.521
M2,coarse,2,0.4,1.740,1.509,1.567,2.07,-19,95,67,90,112,1.981,1.886,1.721,1.654,1.740,1.830,1.567,1.679
M2.2,coarse,2.2,0.45,1.908,1.648,1.713,2.48,-20,100,71,95,125,2.180,2.080,1.888,1.817,1.908,2.003,1.713,1.838
M2.5,coarse,2.5,0.45,2.208,1.948,2.013,3.39,-20,100,71,95,125,2.480,2.380,2.188,2.117,2.208,2.303,2.013,2.138
M3,coarse,3,0.5,2.675,2.387,2.459,5.03,-20,106,75,100,140,2.980,2.874,2.655,2.580,2.675,2.775,2.459,2.599
M3.5,coarse,3.5,0.6,3.110,2.764,2.850,6.78,-21,125,85,112,160,3.479,3.354,3.089,3.004,3.110,3.222,2.850,3.010
M4,coarse,4,0.7,3.545,3.141,3.242,8.78,-22,140,90,118,180,3.978,3.838,3.523,3.433,3.545,3.663,3.242,3.422
M4.5,coarse,4.5,0.75,4.013,3.580,3.688,11.3,-22,140,90,118,190,4.478,4.338,3.991,3.901,4.013,4.131,3.688,3.878
M5,coarse,5,0.8,4.480,4.019,4.134,14.2,-24,150,95,125,200,4.976,4.826,4.456,4.361,4.480,4.605,4.134,4.334
M6,coarse,6,1,5.350,4.773,4.917,20.1,-26,180,112,150,236,5.974,5.794,5.324,5.212,5.350,5.500,4.917,5.153
M7,coarse,7,1,6.350,5.773,5.917,28.9,-26,180,112,150,236,6.974,6.794,6.324,6.212,6.350,6.500,5.917,6.153
M8,coarse,8,1.25,7.188,6.466,6.647,36.6,-28,212,118,160,265,7.972,7.760,7.160,7.042,7.188,7.348,6.647,6.912
M9,coarse,9,1.25,8.188,7.466,7.647,48.1,-28,212,118,160,265,8.972,8.760,8.160,8.042,8.188,8.348,7.647,7.912
M10,coarse,10,1.5,9.026,8.160,8.376,58,-32,236,132,180,300,9.968,9.732,8.994,8.862,9.026,9.206,8.376,8.676
M11,coarse,11,1.5,10.026,9.160,9.376,72.3,-32,236,132,180,300,10.968,10.732,9.994,9.862,10.026,10.206,9.376,9.676
M12,coarse,12,1.75,10.863,9.853,10.106,84.3,-34,265,150,200,335,11.966,11.701,10.829,10.679,10.863,11.063,10.106,10.441
M14,coarse,14,2,12.701,11.546,11.835,115,-38,280,160,212,375,13.962,13.682,12.663,12.503,12.701,12.913,11.835,12.210
M16,coarse,16,2,14.701,13.546,13.835,157,-38,280,160,212,375,15.962,15.682,14.663,14.503,14.701,14.913,13.835,14.210
M18,coarse,18,2.5,16.376,14.933,15.294,192,-42,335,170,224,450,17.958,17.623,16.334,16.164,16.376,16.600,15.294,15.744
M20,coarse,20,2.5,18.376,16.933,17.294,245,-42,335,170,224,450,19.958,19.623,18.334,18.164,18.376,18.600,17.294,17.744
M22,coarse,22,2.5,20.376,18.933,19.294,303,-42,335,170,224,450,21.958,21.623,20.334,20.164,20.376,20.600,19.294,19.744
M24,coarse,24,3,22.051,20.319,20.752,353,-48,375,200,265,500,23.952,23.577,22.003,21.803,22.051,22.316,20.752,21.252
M27,coarse,27,3,25.051,23.319,23.752,459,-48,375,200,265,500,26.952,26.577,25.003,24.803,25.051,25.316,23.752,24.252
M30,coarse,30,3.5,27.727,25.706,26.211,561,-53,425,212,280,560,29.947,29.522,27.674,27.462,27.727,28.007,26.211,26.771
M33,coarse,33,3.5,30.727,28.706,29.211,694,-53,425,212,280,560,32.947,32.522,30.674,30.462,30.727,31.007,29.211,29.771
M36,coarse,36,4,33.402,31.093,31.670,817,-60,475,224,300,600,35.940,35.465,33.342,33.118,33.402,33.702,31.670,32.270
M39,coarse,39,4,36.402,34.093,34.670,976,-60,475,224,300,600,38.940,38.465,36.342,36.118,36.402,36.702,34.670,35.270
M42,coarse,42,4.5,39.077,36.479,37.129,1120,-63,500,236,315,670,41.937,41.437,39.014,38.778,39.077,39.392,37.129,37.799
M45,coarse,45,4.5,42.077,39.479,40.129,1310,-63,500,236,315,670,44.937,44.437,42.014,41.778,42.077,42.392,40.129,40.799
M48,coarse,48,5,44.752,41.866,42.587,1470,-71,530,250,335,710,47.929,47.399,44.681,44.431,44.752,45.087,42.587,43.297
M52,coarse,52,5,48.752,45.866,46.587,1760,-71,530,250,335,710,51.929,51.399,48.681,48.431,48.752,49.087,46.587,47.297
M56,coarse,56,5.5,52.428,49.252,50.046,2030,-75,560,265,355,750,55.925,55.365,52.353,52.088,52.428,52.783,50.046,50.796
M60,coarse,60,5.5,56.428,53.252,54.046,2360,-75,560,265,355,750,59.925,59.365,56.353,56.088,56.428,56.783,54.046,54.796
M64,coarse,64,6,60.103,56.639,57.505,2680,-80,600,280,375,800,63.920,63.320,60.023,59.743,60.103,60.478,57.505,58.305
M8x1,fine,8,1,7.350,6.773,6.917,39.2,-26,180,112,150,236,7.974,7.794,7.324,7.212,7.350,7.500,6.917,7.153
M8x0.75,fine,8,0.75,7.513,7.080,7.188,41.8,-22,140,100,132,190,7.978,7.838,7.491,7.391,7.513,7.645,7.188,7.378
M10x1.25,fine,10,1.25,9.188,8.466,8.647,61.2,-28,212,118,160,265,9.972,9.760,9.160,9.042,9.188,9.348,8.647,8.912
M10x1,fine,10,1,9.350,8.773,8.917,64.5,-26,180,112,150,236,9.974,9.794,9.324,9.212,9.350,9.500,8.917,9.153
M10x0.75,fine,10,0.75,9.513,9.080,9.188,67.9,-22,140,100,132,190,9.978,9.838,9.491,9.391,9.513,9.645,9.188,9.378
M12x1.5,fine,12,1.5,11.026,10.160,10.376,88.1,-32,236,140,190,300,11.968,11.732,10.994,10.854,11.026,11.216,10.376,10.676
M12x1.25,fine,12,1.25,11.188,10.466,10.647,92.1,-28,212,132,180,265,11.972,11.760,11.160,11.028,11.188,11.368,10.647,10.912
M12x1,fine,12,1,11.350,10.773,10.917,96.1,-26,180,118,160,236,11.974,11.794,11.324,11.206,11.350,11.510,10.917,11.153
M14x1.5,fine,14,1.5,13.026,12.160,12.376,125,-32,236,140,190,300,13.968,13.732,12.994,12.854,13.026,13.216,12.376,12.676
M14x1.25,fine,14,1.25,13.188,12.466,12.647,129,-28,212,132,180,265,13.972,13.760,13.160,13.028,13.188,13.368,12.647,12.912
M16x1.5,fine,16,1.5,15.026,14.160,14.376,167,-32,236,140,190,300,15.968,15.732,14.994,14.854,15.026,15.216,14.376,14.676
M16x1,fine,16,1,15.350,14.773,14.917,178,-26,180,118,160,236,15.974,15.794,15.324,15.206,15.350,15.510,14.917,15.153
M18x2,fine,18,2,16.701,15.546,15.835,204,-38,280,160,212,375,17.962,17.682,16.663,16.503,16.701,16.913,15.835,16.210
M18x1.5,fine,18,1.5,17.026,16.160,16.376,216,-32,236,140,190,300,17.968,17.732,16.994,16.854,17.026,17.216,16.376,16.676
M18x1,fine,18,1,17.350,16.773,16.917,229,-26,180,118,160,236,17.974,17.794,17.324,17.206,17.350,17.510,16.917,17.153
M20x2,fine,20,2,18.701,17.546,17.835,258,-38,280,160,212,375,19.962,19.682,18.663,18.503,18.701,18.913,17.835,18.210
M20x1.5,fine,20,1.5,19.026,18.160,18.376,272,-32,236,140,190,300,19.968,19.732,18.994,18.854,19.026,19.216,18.376,18.676
M20x1,fine,20,1,19.350,18.773,18.917,285,-26,180,118,160,236,19.974,19.794,19.324,19.206,19.350,19.510,18.917,19.153
M22x2,fine,22,2,20.701,19.546,19.835,318,-38,280,160,212,375,21.962,21.682,20.663,20.503,20.701,20.913,19.835,20.210
M22x1.5,fine,22,1.5,21.026,20.160,20.376,333,-32,236,140,190,300,21.968,21.732,20.994,20.854,21.026,21.216,20.376,20.676
M22x1,fine,22,1,21.350,20.773,20.917,348,-26,180,118,160,236,21.974,21.794,21.324,21.206,21.350,21.510,20.917,21.153
M24x2,fine,24,2,22.701,21.546,21.835,384,-38,280,170,224,375,23.962,23.682,22.663,22.493,22.701,22.925,21.835,22.210
M24x1.5,fine,24,1.5,23.026,22.160,22.376,401,-32,236,150,200,300,23.968,23.732,22.994,22.844,23.026,23.226,22.376,22.676
M24x1,fine,24,1,23.350,22.773,22.917,418,-26,180,125,170,236,23.974,23.794,23.324,23.199,23.350,23.520,22.917,23.153
M27x2,fine,27,2,25.701,24.546,24.835,496,-38,280,170,224,375,26.962,26.682,25.663,25.493,25.701,25.925,24.835,25.210
M27x1.5,fine,27,1.5,26.026,25.160,25.376,514,-32,236,150,200,300,26.968,26.732,25.994,25.844,26.026,26.226,25.376,25.676
M30x3,fine,30,3,28.051,26.319,26.752,580,-48,375,200,265,500,29.952,29.577,28.003,27.803,28.051,28.316,26.752,27.252
M30x2,fine,30,2,28.701,27.546,27.835,621,-38,280,170,224,375,29.962,29.682,28.663,28.493,28.701,28.925,27.835,28.210
M30x1.5,fine,30,1.5,29.026,28.160,28.376,642,-32,236,150,200,300,29.968,29.732,28.994,28.844,29.026,29.226,28.376,28.676
M33x2,fine,33,2,31.701,30.546,30.835,761,-38,280,170,224,375,32.962,32.682,31.663,31.493,31.701,31.925,30.835,31.210
M33x1.5,fine,33,1.5,32.026,31.160,31.376,784,-32,236,150,200,300,32.968,32.732,31.994,31.844,32.026,32.226,31.376,31.676
M36x3,fine,36,3,34.051,32.319,32.752,865,-48,375,200,265,500,35.952,35.577,34.003,33.803,34.051,34.316,32.752,33.252
M36x2,fine,36,2,34.701,33.546,33.835,915,-38,280,170,224,375,35.962,35.682,34.663,34.493,34.701,34.925,33.835,34.210
M36x1.5,fine,36,1.5,35.026,34.160,34.376,940,-32,236,150,200,300,35.968,35.732,34.994,34.844,35.026,35.226,34.376,34.676
M39x3,fine,39,3,37.051,35.319,35.752,1030,-48,375,200,265,500,38.952,38.577,37.003,36.803,37.051,37.316,35.752,36.252
M39x2,fine,39,2,37.701,36.546,36.835,1080,-38,280,170,224,375,38.962,38.682,37.663,37.493,37.701,37.925,36.835,37.210
M39x1.5,fine,39,1.5,38.026,37.160,37.376,1110,-32,236,150,200,300,38.968,38.732,37.994,37.844,38.026,38.226,37.376,37.676
M42x3,fine,42,3,40.051,38.319,38.752,1210,-48,375,200,265,500,41.952,41.577,40.003,39.803,40.051,40.316,38.752,39.252
M42x2,fine,42,2,40.701,39.546,39.835,1260,-38,280,170,224,375,41.962,41.682,40.663,40.493,40.701,40.925,39.835,40.210
M42x1.5,fine,42,1.5,41.026,40.160,40.376,1290,-32,236,150,200,300,41.968,41.732,40.994,40.844,41.026,41.226,40.376,40.676
M45x3,fine,45,3,43.051,41.319,41.752,1400,-48,375,200,265,500,44.952,44.577,43.003,42.803,43.051,43.316,41.752,42.252
M45x2,fine,45,2,43.701,42.546,42.835,1460,-38,280,170,224,375,44.962,44.682,43.663,43.493,43.701,43.925,42.835,43.210
M48x3,fine,48,3,46.051,44.319,44.752,1600,-48,375,212,280,500,47.952,47.577,46.003,45.791,46.051,46.331,44.752,45.252
M48x2,fine,48,2,46.701,45.546,45.835,1670,-38,280,180,236,375,47.962,47.682,46.663,46.483,46.701,46.937,45.835,46.210
M52x4,fine,52,4,49.402,47.093,47.670,1830,-60,475,236,315,600,51.940,51.465,49.342,49.106,49.402,49.717,47.670,48.270
M52x3,fine,52,3,50.051,48.319,48.752,1900,-48,375,212,280,500,51.952,51.577,50.003,49.791,50.051,50.331,48.752,49.252
M52x2,fine,52,2,50.701,49.546,49.835,1970,-38,280,180,236,375,51.962,51.682,50.663,50.483,50.701,50.937,49.835,50.210
M56x4,fine,56,4,53.402,51.093,51.670,2140,-60,475,236,315,600,55.940,55.465,53.342,53.106,53.402,53.717,51.670,52.270
M56x3,fine,56,3,54.051,52.319,52.752,2220,-48,375,212,280,500,55.952,55.577,54.003,53.791,54.051,54.331,52.752,53.252
M60x4,fine,60,4,57.402,55.093,55.670,2480,-60,475,236,315,600,59.940,59.465,57.342,57.106,57.402,57.717,55.670,56.270
M64x4,fine,64,4,61.402,59.093,59.670,2850,-60,475,236,315,600,63.940,63.465,61.342,61.106,61.402,61.717,59.670,60.270
`;

/** Every row, in the order of the table: coarse pitches by size, then fine ones. */
export const metricThreads = once(() =>
  readRows(
    text,
    (cell): MetricThread => ({
      designation: cell.text("designation"),
      series: cell.text("series") === "coarse" ? "coarse" : "fine",
      diameter_mm: cell.number("d"),
      pitch_mm: cell.number("P"),
      pitchDiameter_mm: cell.number("d2"),
      minorDiameterExternal_mm: cell.number("d3"),
      minorDiameterInternal_mm: cell.number("D1"),
      stressArea_mm2: cell.number("As"),
      deviationG_um: cell.number("es"),
      crestTolerance6_um: cell.number("Td"),
      pitchTolerance6_um: cell.number("Td2"),
      internalPitchTolerance6_um: cell.number("TD2"),
      internalMinorTolerance6_um: cell.number("TD1"),
      majorMax6g_mm: cell.number("dMax"),
      majorMin6g_mm: cell.number("dMin"),
      pitchMax6g_mm: cell.number("d2Max"),
      pitchMin6g_mm: cell.number("d2Min"),
      pitchMin6H_mm: cell.number("D2Min"),
      pitchMax6H_mm: cell.number("D2Max"),
      minorMin6H_mm: cell.number("D1Min"),
      minorMax6H_mm: cell.number("D1Max"),
    }),
  ),
);

const written = /^m(\d+(?:\.\d+)?)(?:[x*](\d+(?:\.\d+)?))?$/;

/** "M24" (its coarse pitch), "M24x3", "m24 x 2", "M24×2". */
export function metricThread(designation: string): MetricThread | Problem {
  const parts = written.exec(designation.toLowerCase().replace(/[×✕]/g, "x").replace(/\s+/g, ""));
  if (!parts) return notAMetricDesignation(designation);
  const size = Number(parts[1]);
  const ofSize = metricThreads().filter((row) => row.diameter_mm === size);
  const found =
    parts[2] === undefined
      ? ofSize.find((row) => row.series === "coarse")
      : ofSize.find((row) => row.pitch_mm === Number(parts[2]));
  if (found) return found;
  if (ofSize.length > 0) {
    return notInTable({
      code: "unknown-pitch",
      what: `pitch of M${size}`,
      got: designation.trim(),
      choices: ofSize.map((row) => row.designation),
      why: "only pitches in the table are known",
    });
  }
  const coarse = metricThreads().filter((row) => row.series === "coarse");
  return notInTable({
    code: "unknown-size",
    what: "thread size",
    got: designation.trim(),
    choices: nearestTo(coarse, size, (row) => row.diameter_mm).map((row) => row.designation),
    why: "the table runs from M1.6 to M64",
  });
}

function notAMetricDesignation(designation: string): Problem {
  const head = /^\s*m\s*\d+(?:[.,]\d+)?(?:\s*[x×*]\s*\d+(?:[.,]\d+)?)?/i.exec(designation)?.[0];
  const plain = head?.trim().replace(/,/g, ".");
  return notInTable({
    code: "unknown-designation",
    what: "metric thread designation",
    got: designation.trim() === "" ? "nothing" : designation.trim(),
    choices: plain === undefined || plain === designation.trim() ? ["M24", "M24x2"] : [plain],
    why:
      plain === undefined
        ? "a metric thread is written M, size, and x pitch when it is fine"
        : "only size and pitch belong here; a tolerance class has its own field",
  });
}
