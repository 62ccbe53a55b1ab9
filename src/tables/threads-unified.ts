// Unified inch threads, coarse (UNC) and fine (UNF), #0 to 1-1/2 in. The constant-pitch series
// (8-UN, 12-UN and so on), UNEF and UNS have no rows here and are not made up.
// Long because the rows are here.

import type { Problem } from "../problem.ts";
import type { Source } from "../source.ts";
import { nearestTo, notInTable, once, readRows, type TableInfo } from "./table.ts";

export interface UnifiedLimits {
  readonly majorMax_in?: number;
  readonly majorMin_in?: number;
  readonly pitchMax_in: number;
  readonly pitchMin_in: number;
  readonly minorMax_in?: number;
  readonly minorMin_in?: number;
}

export interface UnifiedThread {
  /** "3/8-24 UNF", "#10-32 UNF". */
  readonly designation: string;
  readonly series: "UNC" | "UNF";
  readonly size: string;
  readonly diameter_in: number;
  readonly threadsPerInch: number;
  readonly pitchDiameter_in: number;
  /** Reference minor diameter of the UNR root (B1.1-2003 on): what newer tables print. */
  readonly minorDiameterUnr_in: number;
  /** Minor diameter of the older rounded UN root, d - 17/12 H: 0.006 in less at 6 threads per inch. */
  readonly minorDiameterUn_in: number;
  readonly minorDiameterInternal_in: number;
  /** From the formula with the rounded pitch diameter. */
  readonly stressArea_in2: number;
  /** As printed in the copies seen. */
  readonly stressAreaPrinted_in2: number;
  readonly allowance2A_in: number;
  /** Generated from the formulas of B1.1; take them as ±0.0001 in. */
  readonly limits: Readonly<Record<"2A" | "3A" | "2B" | "3B", UnifiedLimits>>;
}

const unifiedThreadSources = {
  coarse: {
    body: "Industrial Press",
    title: "Machinery's Handbook, basic dimensions of UNC threads",
    edition: "31st (2020)",
    at: "p. 1978, Table 4a",
    known: "read",
  },
  fine: {
    body: "ASME",
    title: "B1.1, UNF basic dimensions and stress areas",
    edition: "reprint",
    known: "second-hand",
  },
  stressArea: {
    body: "ASME",
    title: "B1.1, stress area π(d2/2 - 0.16238/n)²",
    known: "memory",
  },
  olderRoot: {
    body: "ASME",
    title: "B1.1-1982 and FED-STD-H28/2A, rounded root d - 17/12 H",
    known: "memory",
  },
  limits: {
    body: "ASME",
    title: "B1.1, limits generated from its tolerance formulas",
    at: "engagement = diameter",
    known: "memory",
  },
  limits2B: {
    body: "ASME",
    title: "B1.1, UNC class 2B limits",
    edition: "dimension sheet of 2016, reprint: all 23 sizes compared",
    known: "second-hand",
  },
} as const satisfies Record<string, Source>;

const limitUnits = Object.fromEntries(["2A", "3A", "2B", "3B"].map((name) => [`limits ${name}`, "in"]));

export const unifiedThreadTable: TableInfo = {
  title: "Unified inch threads UNC and UNF, #0 to 1-1/2 in",
  units: {
    designation: "",
    series: "",
    size: "",
    diameter: "in",
    threadsPerInch: "1/in",
    pitchDiameter: "in",
    minorDiameterUnr: "in",
    minorDiameterUn: "in",
    minorDiameterInternal: "in",
    stressArea: "in2",
    stressAreaPrinted: "in2",
    allowance2A: "in",
    ...limitUnits,
  },
  sources: Object.values(unifiedThreadSources),
  checked:
    "misprints met in copies: UNC 2B sheet #3 pitch 0.0855 for 0.0885, 1/2 minor 0.470 for 0.417, 9/16 pitch 0.5125 for 0.5152, 1-1/2 pitch 1.4075 for 1.4022; UNF reprint external minor of 3/4-16 0.6763 for 0.6755 and of 1-12 0.9001 for 0.9008",
};

const text = `
series,size,d,n,d2,d3Un,d3Unr,D1,At,AtPrinted,allowance,2AMajorMax,2AMajorMin,2APitchMax,2APitchMin,3AMajorMax,3AMajorMin,3APitchMax,3APitchMin,2BPitchMin,2BPitchMax,2BMinorMin,2BMinorMax,3BPitchMin,3BPitchMax,3BMinorMin,3BMinorMax
UNC,#1,0.0730,64,0.0629,0.0538,0.0544,0.0561,0.00263,0.00263,0.0006,0.0724,0.0686,0.0623,0.0603,0.0730,0.0692,0.0629,0.0614,0.0629,0.0655,0.0561,0.0623,0.0629,0.0648,0.0561,0.0623
UNC,#2,0.0860,56,0.0744,0.0641,0.0648,0.0667,0.00370,0.0037,0.0006,0.0854,0.0813,0.0738,0.0717,0.0860,0.0819,0.0744,0.0728,0.0744,0.0772,0.0667,0.0737,0.0744,0.0765,0.0667,0.0737
UNC,#3,0.0990,48,0.0855,0.0734,0.0741,0.0764,0.00487,0.00487,0.0007,0.0983,0.0938,0.0848,0.0825,0.0990,0.0945,0.0855,0.0838,0.0855,0.0885,0.0764,0.0845,0.0855,0.0877,0.0764,0.0845
UNC,#4,0.1120,40,0.0958,0.0813,0.0822,0.0849,0.00604,0.00604,0.0008,0.1112,0.1061,0.0950,0.0925,0.1120,0.1069,0.0958,0.0939,0.0958,0.0991,0.0849,0.0939,0.0958,0.0982,0.0849,0.0939
UNC,#5,0.1250,40,0.1088,0.0943,0.0952,0.0979,0.00796,0.00796,0.0008,0.1242,0.1191,0.1080,0.1054,0.1250,0.1199,0.1088,0.1069,0.1088,0.1121,0.0979,0.1062,0.1088,0.1113,0.0979,0.1062
UNC,#6,0.1380,32,0.1177,0.0997,0.1008,0.1042,0.00908,0.00909,0.0008,0.1372,0.1312,0.1169,0.1141,0.1380,0.1320,0.1177,0.1156,0.1177,0.1214,0.104,0.114,0.1177,0.1204,0.1040,0.1140
UNC,#8,0.1640,32,0.1437,0.1257,0.1268,0.1302,0.01401,0.014,0.0009,0.1631,0.1571,0.1428,0.1399,0.1640,0.1580,0.1437,0.1415,0.1437,0.1475,0.130,0.139,0.1437,0.1465,0.1300,0.1389
UNC,#10,0.1900,24,0.1629,0.1389,0.1404,0.1449,0.01752,0.0175,0.0010,0.1890,0.1818,0.1619,0.1586,0.1900,0.1828,0.1629,0.1604,0.1629,0.1672,0.145,0.156,0.1629,0.1661,0.1450,0.1555
UNC,#12,0.2160,24,0.1889,0.1649,0.1664,0.1709,0.02415,0.0242,0.0010,0.2150,0.2078,0.1879,0.1845,0.2160,0.2088,0.1889,0.1863,0.1889,0.1933,0.171,0.181,0.1889,0.1922,0.1710,0.1807
UNC,1/4,0.2500,20,0.2175,0.1887,0.1905,0.1959,0.03181,0.0318,0.0011,0.2489,0.2408,0.2164,0.2127,0.2500,0.2419,0.2175,0.2147,0.2175,0.2224,0.196,0.207,0.2175,0.2211,0.1960,0.2067
UNC,5/16,0.3125,18,0.2764,0.2443,0.2464,0.2524,0.05242,0.0524,0.0012,0.3113,0.3026,0.2752,0.2712,0.3125,0.3038,0.2764,0.2734,0.2764,0.2817,0.252,0.265,0.2764,0.2803,0.2520,0.2630
UNC,3/8,0.3750,16,0.3344,0.2983,0.3005,0.3073,0.07749,0.0775,0.0013,0.3737,0.3643,0.3331,0.3287,0.3750,0.3656,0.3344,0.3311,0.3344,0.3401,0.307,0.321,0.3344,0.3387,0.3070,0.3182
UNC,7/16,0.4375,14,0.3911,0.3499,0.3525,0.3602,0.10631,0.1063,0.0014,0.4361,0.4258,0.3897,0.3850,0.4375,0.4272,0.3911,0.3876,0.3911,0.3972,0.360,0.376,0.3911,0.3957,0.3600,0.3717
UNC,1/2,0.5000,13,0.4500,0.4056,0.4084,0.4167,0.14187,0.1419,0.0015,0.4985,0.4876,0.4485,0.4435,0.5000,0.4891,0.4500,0.4463,0.4500,0.4565,0.417,0.434,0.4500,0.4548,0.4170,0.4284
UNC,9/16,0.5625,12,0.5084,0.4603,0.4633,0.4723,0.18196,0.182,0.0016,0.5609,0.5495,0.5068,0.5016,0.5625,0.5511,0.5084,0.5045,0.5084,0.5152,0.472,0.490,0.5084,0.5135,0.4720,0.4843
UNC,5/8,0.6250,11,0.5660,0.5135,0.5168,0.5266,0.22604,0.226,0.0017,0.6233,0.6112,0.5643,0.5588,0.6250,0.6129,0.5660,0.5619,0.5660,0.5732,0.527,0.546,0.5660,0.5714,0.5270,0.5391
UNC,3/4,0.7500,10,0.6850,0.6273,0.6309,0.6417,0.33441,0.334,0.0018,0.7482,0.7353,0.6832,0.6773,0.7500,0.7371,0.6850,0.6806,0.6850,0.6927,0.642,0.663,0.6850,0.6907,0.6420,0.6545
UNC,7/8,0.8750,9,0.8028,0.7387,0.7427,0.7547,0.46170,0.462,0.0019,0.8731,0.8592,0.8009,0.7946,0.8750,0.8611,0.8028,0.7981,0.8028,0.8110,0.755,0.778,0.8028,0.8089,0.7550,0.7681
UNC,1,1.0000,8,0.9188,0.8466,0.8512,0.8647,0.60573,0.606,0.0020,0.9980,0.9830,0.9168,0.9100,1.0000,0.9850,0.9188,0.9137,0.9188,0.9276,0.865,0.890,0.9188,0.9254,0.8650,0.8797
UNC,1-1/8,1.1250,7,1.0322,0.9497,0.9549,0.9704,0.76326,0.763,0.0022,1.1228,1.1064,1.0300,1.0227,1.1250,1.1086,1.0322,1.0268,1.0322,1.0416,0.970,0.998,1.0322,1.0393,0.9700,0.9875
UNC,1-1/4,1.2500,7,1.1572,1.0747,1.0799,1.0954,0.96909,0.969,0.0022,1.2478,1.2314,1.1550,1.1476,1.2500,1.2336,1.1572,1.1517,1.1572,1.1668,1.095,1.123,1.1572,1.1644,1.0950,1.1125
UNC,1-3/8,1.3750,6,1.2667,1.1705,1.1766,1.1946,1.15480,1.155,0.0024,1.3726,1.3544,1.2643,1.2563,1.3750,1.3568,1.2667,1.2607,1.2667,1.2771,1.195,1.225,1.2667,1.2745,1.1950,1.2146
UNC,1-1/2,1.5000,6,1.3917,1.2955,1.3016,1.3196,1.40516,1.405,0.0024,1.4976,1.4794,1.3893,1.3812,1.5000,1.4818,1.3917,1.3856,1.3917,1.4022,1.320,1.350,1.3917,1.3996,1.3200,1.3396
UNF,#0,0.0600,80,0.0519,0.0447,0.0451,0.0465,0.00180,0.0018,0.0005,0.0595,0.0563,0.0514,0.0496,0.0600,0.0568,0.0519,0.0506,0.0519,0.0542,0.0465,0.0514,0.0519,0.0536,0.0465,0.0514
UNF,#1,0.0730,72,0.0640,0.0560,0.0565,0.0580,0.00278,0.00278,0.0006,0.0724,0.0689,0.0634,0.0615,0.0730,0.0695,0.0640,0.0626,0.0640,0.0665,0.0580,0.0635,0.0640,0.0659,0.0580,0.0635
UNF,#2,0.0860,64,0.0759,0.0668,0.0674,0.0691,0.00394,0.00394,0.0006,0.0854,0.0816,0.0753,0.0733,0.0860,0.0822,0.0759,0.0744,0.0759,0.0786,0.0691,0.0753,0.0759,0.0779,0.0691,0.0753
UNF,#3,0.0990,56,0.0874,0.0771,0.0778,0.0797,0.00523,0.00523,0.0007,0.0983,0.0942,0.0867,0.0845,0.0990,0.0949,0.0874,0.0858,0.0874,0.0902,0.0797,0.0865,0.0874,0.0895,0.0797,0.0865
UNF,#4,0.1120,48,0.0985,0.0864,0.0871,0.0894,0.00661,0.00661,0.0007,0.1113,0.1068,0.0978,0.0954,0.1120,0.1075,0.0985,0.0967,0.0985,0.1016,0.0894,0.0968,0.0985,0.1008,0.0894,0.0968
UNF,#5,0.1250,44,0.1102,0.0971,0.0979,0.1004,0.00830,0.0083,0.0007,0.1243,0.1195,0.1095,0.1070,0.1250,0.1202,0.1102,0.1083,0.1102,0.1134,0.1004,0.1079,0.1102,0.1126,0.1004,0.1079
UNF,#6,0.1380,40,0.1218,0.1073,0.1082,0.1109,0.01015,0.01015,0.0008,0.1372,0.1321,0.1210,0.1184,0.1380,0.1329,0.1218,0.1198,0.1218,0.1252,0.111,0.119,0.1218,0.1243,0.1110,0.1186
UNF,#8,0.1640,36,0.1460,0.1299,0.1309,0.1339,0.01474,0.01474,0.0008,0.1632,0.1577,0.1452,0.1424,0.1640,0.1585,0.1460,0.1439,0.1460,0.1496,0.134,0.142,0.1460,0.1487,0.1340,0.1416
UNF,#10,0.1900,32,0.1697,0.1517,0.1528,0.1562,0.01999,0.02,0.0009,0.1891,0.1831,0.1688,0.1658,0.1900,0.1840,0.1697,0.1674,0.1697,0.1736,0.156,0.164,0.1697,0.1726,0.1560,0.1641
UNF,#12,0.2160,28,0.1928,0.1722,0.1734,0.1773,0.02579,0.0258,0.0010,0.2150,0.2085,0.1918,0.1886,0.2160,0.2095,0.1928,0.1904,0.1928,0.1970,0.177,0.186,0.1928,0.1959,0.1770,0.1857
UNF,1/4,0.2500,28,0.2268,0.2062,0.2074,0.2113,0.03637,0.0364,0.0010,0.2490,0.2425,0.2258,0.2225,0.2500,0.2435,0.2268,0.2243,0.2268,0.2311,0.211,0.220,0.2268,0.2300,0.2110,0.2190
UNF,5/16,0.3125,24,0.2854,0.2614,0.2629,0.2674,0.05805,0.058,0.0011,0.3114,0.3042,0.2843,0.2806,0.3125,0.3053,0.2854,0.2827,0.2854,0.2902,0.267,0.277,0.2854,0.2890,0.2670,0.2754
UNF,3/8,0.3750,24,0.3479,0.3239,0.3254,0.3299,0.08781,0.0878,0.0011,0.3739,0.3667,0.3468,0.3430,0.3750,0.3678,0.3479,0.3450,0.3479,0.3528,0.330,0.340,0.3479,0.3516,0.3300,0.3372
UNF,7/16,0.4375,20,0.4050,0.3762,0.3780,0.3834,0.11870,0.1187,0.0013,0.4362,0.4281,0.4037,0.3995,0.4375,0.4294,0.4050,0.4019,0.4050,0.4104,0.383,0.395,0.4050,0.4091,0.3830,0.3916
UNF,1/2,0.5000,20,0.4675,0.4387,0.4405,0.4459,0.15994,0.1599,0.0013,0.4987,0.4906,0.4662,0.4619,0.5000,0.4919,0.4675,0.4643,0.4675,0.4731,0.446,0.457,0.4675,0.4717,0.4460,0.4537
UNF,9/16,0.5625,18,0.5264,0.4943,0.4964,0.5024,0.20297,0.203,0.0014,0.5611,0.5524,0.5250,0.5205,0.5625,0.5538,0.5264,0.5230,0.5264,0.5323,0.502,0.515,0.5264,0.5308,0.5020,0.5106
UNF,5/8,0.6250,18,0.5889,0.5568,0.5589,0.5649,0.25594,0.256,0.0014,0.6236,0.6149,0.5875,0.5828,0.6250,0.6163,0.5889,0.5854,0.5889,0.5949,0.565,0.578,0.5889,0.5934,0.5650,0.5730
UNF,3/4,0.7500,16,0.7094,0.6733,0.6755,0.6823,0.37296,0.373,0.0015,0.7485,0.7391,0.7079,0.7029,0.7500,0.7406,0.7094,0.7056,0.7094,0.7159,0.682,0.696,0.7094,0.7143,0.6820,0.6908
UNF,7/8,0.8750,14,0.8286,0.7874,0.7900,0.7977,0.50947,0.509,0.0016,0.8734,0.8631,0.8270,0.8216,0.8750,0.8647,0.8286,0.8245,0.8286,0.8356,0.798,0.814,0.8286,0.8339,0.7980,0.8068
UNF,1,1.0000,12,0.9459,0.8978,0.9008,0.9098,0.66308,0.663,0.0018,0.9982,0.9868,0.9441,0.9382,1.0000,0.9886,0.9459,0.9415,0.9459,0.9535,0.910,0.928,0.9459,0.9516,0.9100,0.9198
UNF,1-1/8,1.1250,12,1.0709,1.0228,1.0258,1.0348,0.85577,0.856,0.0018,1.1232,1.1118,1.0691,1.0631,1.1250,1.1136,1.0709,1.0664,1.0709,1.0787,1.035,1.053,1.0709,1.0768,1.0350,1.0448
UNF,1-1/4,1.2500,12,1.1959,1.1478,1.1508,1.1598,1.07299,1.073,0.0018,1.2482,1.2368,1.1941,1.1879,1.2500,1.2386,1.1959,1.1913,1.1959,1.2039,1.160,1.178,1.1959,1.2019,1.1600,1.1698
UNF,1-3/8,1.3750,12,1.3209,1.2728,1.2758,1.2848,1.31477,1.315,0.0019,1.3731,1.3617,1.3190,1.3127,1.3750,1.3636,1.3209,1.3162,1.3209,1.3291,1.285,1.303,1.3209,1.3270,1.2850,1.2948
UNF,1-1/2,1.5000,12,1.4459,1.3978,1.4008,1.4098,1.58108,1.581,0.0019,1.4981,1.4867,1.4440,1.4376,1.5000,1.4886,1.4459,1.4411,1.4459,1.4542,1.410,1.428,1.4459,1.4522,1.4100,1.4198
`;

/** Every row: UNC by size, then UNF by size. */
export const unifiedThreads = once(() =>
  readRows(text, (cell): UnifiedThread => {
    const external = (name: "2A" | "3A"): UnifiedLimits => ({
      majorMax_in: cell.number(`${name}MajorMax`),
      majorMin_in: cell.number(`${name}MajorMin`),
      pitchMax_in: cell.number(`${name}PitchMax`),
      pitchMin_in: cell.number(`${name}PitchMin`),
    });
    const internal = (name: "2B" | "3B"): UnifiedLimits => ({
      pitchMax_in: cell.number(`${name}PitchMax`),
      pitchMin_in: cell.number(`${name}PitchMin`),
      minorMax_in: cell.number(`${name}MinorMax`),
      minorMin_in: cell.number(`${name}MinorMin`),
    });
    return {
      designation: `${cell.text("size")}-${cell.text("n")} ${cell.text("series")}`,
      series: cell.text("series") === "UNC" ? "UNC" : "UNF",
      size: cell.text("size"),
      diameter_in: cell.number("d"),
      threadsPerInch: cell.number("n"),
      pitchDiameter_in: cell.number("d2"),
      minorDiameterUnr_in: cell.number("d3Unr"),
      minorDiameterUn_in: cell.number("d3Un"),
      minorDiameterInternal_in: cell.number("D1"),
      stressArea_in2: cell.number("At"),
      stressAreaPrinted_in2: cell.number("AtPrinted"),
      allowance2A_in: cell.number("allowance"),
      limits: {
        "2A": external("2A"),
        "3A": external("3A"),
        "2B": internal("2B"),
        "3B": internal("3B"),
      },
    };
  }),
);

// size, then threads per inch and series, of which one may be left out: "1-1/4-7", "3/8 UNF".
const written = /^(#?\d+(?:-\d+\/\d+|\/\d+)?|\d*\.\d+)(?:-(\d+))?(UN[A-Z]*|\d+-?UN)?$/;

/** "3/8-24 UNF", "3/8-24", "3/8 UNF", "1/2-13", "#10-32", "10-32", "1-1/4-7", ".375-24". */
export function unifiedThread(designation: string): UnifiedThread | Problem {
  const parts = written.exec(normal(designation));
  if (!parts) return notAUnifiedDesignation(designation);
  const [, size = "", pitch, series] = parts;
  const ofSize = unifiedThreads().filter((row) => isSize(row, size));
  if (ofSize.length === 0) return unknownSize(designation, size);
  const ofPitch = pitch === undefined ? ofSize : ofSize.filter((row) => row.threadsPerInch === Number(pitch));
  const found = series === undefined ? ofPitch : ofPitch.filter((row) => row.series === series);
  const [only, second] = found;
  if (only && !second && (pitch !== undefined || series !== undefined)) return only;
  return notInTable({
    code: "unknown-pitch",
    what: `thread of size ${size}`,
    got: designation.trim(),
    choices: (ofPitch.length > 0 ? ofPitch : ofSize).map((row) => row.designation),
    why:
      series === undefined || series === "UNC" || series === "UNF"
        ? "only UNC and UNF rows are known"
        : `the table has no ${series} rows, only UNC and UNF`,
  });
}

// "1 1/4 - 7 unc" and "1-1/4-7UNC" are one text; "No. 10" is "#10".
function normal(designation: string): string {
  return designation
    .trim()
    .toUpperCase()
    .replace(/^(?:NO\.?|NUMBER)\s*(?=\d)/, "#")
    .replace(/^(\d+)\s+(\d+\/\d+)/, "$1-$2")
    .replace(/\s+/g, "");
}

// A bare small number is either a number size or whole inches: the pitch tells them apart.
function isSize(row: UnifiedThread, size: string): boolean {
  if (size.includes(".")) return row.diameter_in === Number(size);
  return row.size === size || row.size === `#${size}`;
}

function unknownSize(designation: string, size: string): Problem {
  const wanted = inches(size);
  const near = nearestTo(unifiedThreads(), wanted, (row) => row.diameter_in, 4);
  return notInTable({
    code: "unknown-size",
    what: "thread size",
    got: designation.trim(),
    choices: near.map((row) => row.designation),
    why: "the table runs from #0 to 1-1/2 in",
  });
}

// Number sizes are 0.060 in + 0.013 in per number (ASME B1.1); used only to find neighbours.
function inches(size: string): number {
  if (size.startsWith("#")) return 0.06 + 0.013 * Number(size.slice(1));
  const [whole, fraction = "0/1"] = size.includes("-")
    ? size.split("-")
    : size.includes("/")
      ? ["0", size]
      : [size];
  const [top = "0", bottom = "1"] = fraction.split("/");
  return Number(whole) + Number(top) / Number(bottom);
}

function notAUnifiedDesignation(designation: string): Problem {
  const head = /^(#?\d+(?:-\d+\/\d+|\/\d+)?|\d*\.\d+)-(\d+)(UNC|UNF)?/.exec(normal(designation));
  const plain = head && `${head[1]}-${head[2]}${head[3] ? ` ${head[3]}` : ""}`;
  return notInTable({
    code: "unknown-designation",
    what: "unified thread designation",
    got: designation.trim() === "" ? "nothing" : designation.trim(),
    choices: plain ? [plain] : ["3/8-24 UNF", "1/2-13", "#10-32"],
    why: plain
      ? "only size, threads per inch and series belong here; a tolerance class has its own field"
      : "a unified thread is written size, dash, threads per inch",
  });
}
