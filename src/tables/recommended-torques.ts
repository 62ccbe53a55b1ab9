// Torques as three documents print them, by thread and column. They are read, never worked out again:
// the nut factor that such a table implies changes from size to size.
// Long because the rows are here.
import { type Problem, problem } from "../problem.ts";
import type { Source } from "../source.ts";
import { given, notInTable, once, plainKey, readRows, splitLine, type TableInfo } from "./table.ts";

export interface RecommendedTorque {
  readonly standard: string;
  /** Thread as the table names it: "3/8-24", or a bare size where the table gives one. */
  readonly thread: string;
  /** What else names the same row, with its pitch: "1-8" for the 1 in row. */
  readonly pitch?: string;
  readonly column: string;
  /** Absent where the column prints only an upper limit. */
  readonly minimum?: number;
  readonly maximum: number;
  readonly unit: "lbf.in" | "lbf.ft";
  /** Condition the table holds for. */
  readonly condition: string;
  readonly note?: string;
  /** Why the printed figure is not given as an answer. */
  readonly refused?: string;
  readonly source: Source;
}

const ac: Source = {
  body: "FAA",
  title: "AC 43.13-1B",
  edition: "9/8/98",
  at: "Table 7-1, para. 7-40",
  known: "read",
};
const pcc: Source = { body: "ASME", title: "PCC-1-2013", at: "Table 1, U.S. customary units", known: "read" };
const navedtra: Source = {
  body: "US Navy",
  title: "NAVEDTRA 14119, Machinist's Mate",
  at: "Table 16-4, p. 16-21, copy with scrambled columns",
  known: "read",
};

export const recommendedTorqueTable: TableInfo = {
  title: "Printed torque tables",
  units: { "AC 43.13-1B": "lbf.in", "ASME PCC-1-2013": "lbf.ft", "NAVEDTRA 14119": "lbf.ft" },
  sources: [ac, pcc, navedtra],
  checked:
    "a second copy of AC 43.13-1B prints other shear-nut figures for 5/8-18 (660) and 3/8-16 (110); NAVEDTRA 14119 prints 567 lbf.ft for 1-3/8 at 25 ksi, which is kept but not answered",
};

const acText = `
thread,tension nut,shear nut,max tension nut,max shear nut
8-36,12-15,7-9,20,12
10-32,20-25,12-15,40,25
1/4-28,50-70,30-40,100,60
5/16-24,100-140,60-85,225,140
3/8-24,160-190,95-110,390,240
7/16-20,450-500,270-300,840,500
1/2-20,480-690,290-410,1100,660
9/16-18,800-1000,480-600,1600,960
5/8-18,1100-1300,600-780,2400,1400
3/4-16,2300-2500,1300-1500,5000,3000
7/8-14,2500-3000,1500-1800,7000,4200
1-14,3700-5500,2200-3300,10000,6000
1-1/8-12,5000-7000,3000-4200,15000,9000
1-1/4-12,9000-11000,5400-6600,25000,15000
8-32,12-15,7-9,20,12
10-24,20-25,12-15,35,21
1/4-20,40-50,25-30,75,45
5/16-18,80-90,48-55,160,100
3/8-16,160-185,95-100,275,170
7/16-14,235-255,140-155,475,280
1/2-13,400-480,240-290,880,520
9/16-12,500-700,300-420,1100,650
5/8-11,700-900,420-540,1500,900
3/4-10,1150-1600,700-950,2500,1500
7/8-9,2200-3000,1300-1800,4600,2700
`;

const pccText = `
thread,pitch,noncoated,coated
1/2,13,60,45
5/8,11,120,90
3/4,10,210,160
7/8,9,350,250
1,8,500,400
1-1/8,8,750,550
1-1/4,8,1050,800
1-3/8,8,1400,1050
1-1/2,8,1800,1400
1-5/8,8,2350,1800
1-3/4,8,2950,2300
1-7/8,8,3650,2800
2,8,4500,3400
2-1/4,8,6500,4900
2-1/2,8,9000,6800
2-3/4,8,12000,9100
3,8,15700,11900
3-1/4,8,20100,15300
3-1/2,8,25300,19100
3-3/4,8,31200,23600
4,8,38000,28800
`;

const navedtraText = `
thread,pitch,30 ksi,25 ksi
1/2,13,30,25
5/8,11,60,50
3/4,10,100,83
7/8,9,160,133
1,8,245,205
1-1/8,7,355,295
1-1/4,7,500,416
1-3/8,6,645,567
1-1/2,6,800,667
`;

const notes: Readonly<Record<string, string>> = {
  "5/8-18 shear nut": "one other copy prints 660 for the lower figure; the circular has 600",
  "3/8-16 shear nut": "one other copy prints 110 for the upper figure; the circular has 100",
  "1-14 shear nut": "starred in the circular as estimated",
  "1-1/8-12 shear nut": "starred in the circular as estimated",
  "1-1/4-12 shear nut": "starred in the circular as estimated",
};

const slip =
  "567 lbf.ft is printed, but every other row has 25/30 of its 30 ksi figure at 25 ksi, which would be about 537 here: taken for a slip in the print";

/** The rows of one table: a cell "12-15" is a range, a bare number of a "max" column an upper limit, any other a target. */
function rowsOf(
  text: string,
  shared: Pick<RecommendedTorque, "standard" | "unit" | "condition" | "source">,
): readonly RecommendedTorque[] {
  const columns = splitLine(text.trim().split("\n")[0] ?? "").filter(
    (name) => name !== "thread" && name !== "pitch",
  );
  const hasPitch = text.includes(",pitch,");
  return readRows(text, (cell) => {
    const thread = cell.text("thread");
    return columns.map((column): RecommendedTorque => {
      const [low = "", high = low] = cell.text(column).split("-");
      return {
        ...shared,
        thread,
        column,
        maximum: Number(high),
        ...given({
          minimum: column.startsWith("max") ? undefined : Number(low),
          pitch: hasPitch ? cell.text("pitch") : undefined,
          note: notes[`${thread} ${column}`],
          refused: shared.source === navedtra && high === "567" ? slip : undefined,
        }),
      };
    });
  }).flat();
}

export const recommendedTorques = once((): readonly RecommendedTorque[] => [
  ...rowsOf(acText, {
    standard: "AC 43.13-1B",
    unit: "lbf.in",
    condition: "oil-free cadmium-plated threads, bolts loaded mainly in shear",
    source: ac,
  }),
  ...rowsOf(pccText, {
    standard: "ASME PCC-1-2013",
    unit: "lbf.ft",
    condition: "target prestress of 50 ksi on the root area, UNC to 1 in and 8 threads per inch above",
    source: pcc,
  }),
  ...rowsOf(navedtraText, {
    standard: "NAVEDTRA 14119",
    unit: "lbf.ft",
    condition: "alloy-steel bolt-studs, UNC, well lubricated, at the bolt stress of the column",
    source: navedtra,
  }),
]);

export const recommendedTorqueStandards = ["AC 43.13-1B", "ASME PCC-1-2013", "NAVEDTRA 14119"] as const;

/** recommendedTorque("AC 43.13-1B", "3/8-24 UNF", "tension nut"). */
export function recommendedTorque(
  standard: string,
  designation: string,
  column: string,
): RecommendedTorque | Problem {
  const ofStandard = recommendedTorques().filter((row) => isStandard(row.standard, standard));
  const [first] = ofStandard;
  if (!first)
    return notInTable({
      code: "unknown-standard",
      what: "torque table",
      got: standard.trim() || "nothing",
      choices: recommendedTorqueStandards,
    });
  const wanted = columnKey(column);
  const ofColumn = ofStandard.filter((row) => columnKey(row.column) === wanted);
  if (ofColumn.length === 0)
    return notInTable({
      code: "unknown-column",
      what: `column of ${first.standard}`,
      got: column.trim() || "nothing",
      choices: [...new Set(ofStandard.map((row) => row.column))],
    });
  const found = ofColumn.find((row) => namesRow(row, threadKey(designation)));
  if (!found)
    return notInTable({
      code: "unknown-size",
      what: `thread in ${first.standard}`,
      got: designation.trim() || "nothing",
      choices: ofColumn.map((row) => row.thread),
      why: "a printed table is read as it stands; nothing is put between its rows",
    });
  if (found.refused === undefined) return found;
  return problem({
    code: "doubtful-print",
    what: `${found.standard}, ${found.thread} at ${found.column}`,
    got: `${found.maximum} ${found.unit} in print`,
    why: found.refused,
    hint: "take the torque from the drawing or from the 30 ksi column and the owner's own sum",
  });
}

const isStandard = (row: string, asked: string): boolean => {
  const key = plainKey(asked);
  return (
    plainKey(row) === key || (key.length >= 5 && plainKey(row).endsWith(key.replace(/^(?:faa|asme)/, "")))
  );
};

const columnKey = (column: string): string =>
  plainKey(column)
    .replace(/^maximum/, "max")
    .replace(/nuts$/, "nut")
    .replace(/^non-/, "non");

// "#10-32 UNF", "No. 10-32" and "10-32" are one row; so are "1 in" and "1", and "1 1/8" and "1-1/8".
const threadKey = (designation: string): string =>
  plainKey(designation.trim().replace(/^(\d+)\s+(?=\d+\/\d)/, "$1-"))
    .replace(/^(?:no\.?|#)/, "")
    .replace(/(?:in|")$/, "")
    .replace(/-?un[a-z]*$/, "");

const namesRow = (row: RecommendedTorque, key: string): boolean =>
  key === row.thread || (row.pitch !== undefined && key === `${row.thread}-${row.pitch}`);
