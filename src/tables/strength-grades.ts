// Minimum strengths of bolts and proof stress of nuts, by standard, grade and size, as printed.
// A size outside the ranges of a grade has no strength here. Long because the rows are here.
import type { Problem } from "../problem.ts";
import type { Source } from "../source.ts";
import { given, notInTable, once, plainKey, readRows, sourceNamed, type TableInfo } from "./table.ts";

export type ThreadSize = { readonly value: number; readonly unit: "mm" | "in" };

export interface StrengthGrade {
  readonly standard: string;
  readonly grade: string;
  readonly product: "bolt" | "nut";
  /** Range of thread sizes: over (or from, where `fromIncluded`) and up to and including. */
  readonly over?: number;
  readonly fromIncluded: boolean;
  readonly upto?: number;
  readonly sizeUnit: "mm" | "in";
  /** Stress under proof load. Absent where the standard or the copy gives none. */
  readonly proof?: number;
  /** ReL, Rp0.2 or Rpf, as the standard defines. */
  readonly yield?: number;
  readonly tensile?: number;
  readonly stressUnit: "MPa" | "ksi";
  readonly source: Source;
  readonly note?: string;
}

const sources = {
  iso898a: {
    body: "ISO",
    title: "ISO 898-1, mechanical properties",
    edition: "2009 and another, two reprints",
    known: "second-hand",
  },
  iso898b: {
    body: "ISO",
    title: "ISO 898-1, mechanical properties",
    edition: "reprint",
    known: "second-hand",
  },
  iso898c: {
    body: "ISO",
    title: "ISO 898-1, mechanical properties",
    edition: "2009, reprint",
    known: "second-hand",
  },
  iso898m: {
    body: "ISO",
    title: "ISO 898-1",
    at: "Table 3; proof consistent with a reprinted M10 proof load",
    known: "memory",
  },
  textbook: {
    body: "Shigley & Mischke",
    title: "Mechanical Engineering Design",
    edition: "5th (1989)",
    at: "p. 341",
    known: "read",
  },
  chart: {
    body: "ASTM, SAE, ISO",
    title: "Grade marking chart",
    edition: "two copies",
    known: "second-hand",
  },
  iso3506: {
    body: "ISO",
    title: "ISO 3506-1, mechanical properties",
    edition: "2009 with the diameter limits of 1997, reprint",
    known: "second-hand",
  },
  iso3506m: {
    body: "ISO",
    title: "ISO 3506-1",
    edition: "2009",
    at: "Table 3",
    known: "memory",
  },
  iso8982: {
    body: "DIN",
    title: "DIN EN 20898-2 (ISO 898-2:1992), proof loads of nuts, coarse thread",
    at: "stress = proof load / stress area",
    known: "second-hand",
  },
  din267: {
    body: "DIN",
    title: "DIN 267-4 (withdrawn)",
    edition: "two reprints",
    at: "older 0.8 d nuts",
    known: "second-hand",
  },
  astmNut: {
    body: "ASTM",
    title: "A194 and A563, proof stress of nuts",
    known: "memory",
  },
  j995: {
    body: "SAE",
    title: "J995, proof stress of nuts",
    at: "UNC; fine threads differ",
    known: "memory",
  },
} as const satisfies Record<string, Source>;

export const strengthGradeTable: TableInfo = {
  title: "Minimum strengths of bolts and proof stress of nuts",
  units: {
    standard: "",
    grade: "",
    product: "",
    over: "per row",
    upto: "per row",
    proof: "per row",
    yield: "per row",
    tensile: "per row",
  },
  sources: Object.values(sources),
  checked:
    "ISO 898-1 proof and tensile rows reproduce the EN ISO 898-1 load tables M3 to M39, nut rows the DIN EN 20898-2 proof loads M5 to M39, SAE J429 grades 2, 5, 8 a load sheet for 1/4 to 3/8; one reprint swaps the proof stress of 8.8 below and above M16",
};

const text = `
standard,grade,product,over,from,upto,sizeUnit,proof,yield,tensile,stressUnit,source,note
ISO 898-1,4.6,bolt,,,39,mm,225,240,400,MPa,iso898a,yield is ReL
ISO 898-1,4.8,bolt,,,39,mm,310,340,420,MPa,iso898b,yield is Rpf (2013 edition)
ISO 898-1,5.6,bolt,,,39,mm,280,300,500,MPa,iso898m,
ISO 898-1,5.8,bolt,,,39,mm,380,420,520,MPa,iso898b,
ISO 898-1,6.8,bolt,,,39,mm,440,480,600,MPa,iso898m,
ISO 898-1,8.8,bolt,,,16,mm,580,640,800,MPa,iso898c,"one reprint gives 660 proof for this row: disagrees with ISO 898-1 and with its proof loads (33700 N M10, 21200 N M8)"
ISO 898-1,8.8,bolt,16,,39,mm,600,660,830,MPa,iso898c,one reprint gives 580 proof for this row: the two rows look swapped/mistyped
ISO 898-1,9.8,bolt,,,16,mm,650,720,900,MPa,iso898b,
ISO 898-1,10.9,bolt,,,39,mm,830,940,1040,MPa,iso898a,
ISO 898-1,12.9,bolt,,,39,mm,970,1100,1220,MPa,iso898a,
SAE J429,1,bolt,0.25,yes,1.5,in,33,36,60,ksi,textbook,
SAE J429,2,bolt,0.25,yes,0.75,in,55,57,74,ksi,textbook,
SAE J429,2,bolt,0.75,,1.5,in,33,36,60,ksi,textbook,
SAE J429,4,bolt,0.25,yes,1.5,in,65,100,115,ksi,textbook,grade 4 applies to studs only
SAE J429,5,bolt,0.25,yes,1,in,85,92,120,ksi,textbook,
SAE J429,5,bolt,1,,1.5,in,74,81,105,ksi,textbook,
SAE J429,5.2,bolt,0.25,yes,1,in,85,92,120,ksi,textbook,
SAE J429,7,bolt,0.25,yes,1.5,in,105,115,133,ksi,textbook,
SAE J429,8,bolt,0.25,yes,1.5,in,120,130,150,ksi,textbook,
SAE J429,8.2,bolt,0.25,yes,1,in,120,130,150,ksi,textbook,
ASTM,A307 A,bolt,0.25,yes,1.5,in,33,36,60,ksi,textbook,A307 specifies tensile 60 ksi only; the proof and yield are the textbook row
ASTM,A325 type 1,bolt,0.5,yes,1,in,85,92,120,ksi,textbook,A325/A490 are now grades of ASTM F3125; since F3125-15 A325 is 120 ksi for all sizes 1/2..1-1/2 (memory)
ASTM,A325 type 1,bolt,1,,1.5,in,74,81,105,ksi,textbook,A325/A490 are now grades of ASTM F3125; since F3125-15 A325 is 120 ksi for all sizes 1/2..1-1/2 (memory)
ASTM,A449,bolt,0.25,yes,1,in,85,92,120,ksi,textbook,
ASTM,A449,bolt,1,,1.5,in,74,81,105,ksi,textbook,
ASTM,A449,bolt,1.5,,3,in,55,58,90,ksi,textbook,
ASTM,A354 BD,bolt,0.25,yes,2.5,in,120,130,150,ksi,textbook,Shigley row covers 1/4..4 in; ASTM A354 itself drops to 105/115/140 over 2-1/2 in (memory)
ASTM,A490 type 1,bolt,0.5,yes,1.5,in,120,130,150,ksi,textbook,
ASTM A193,B7,bolt,,,2.5,in,,105,125,ksi,chart,A193 gives no proof stress; yield at 0.2% offset
ASTM A193,B7,bolt,2.5,,4,in,,95,115,ksi,chart,A193 gives no proof stress; yield at 0.2% offset
ASTM A193,B7,bolt,4,,7,in,,75,100,ksi,chart,A193 gives no proof stress; yield at 0.2% offset
ASTM A193,B8 class 1,bolt,,,,in,,30,75,ksi,chart,
ASTM A193,B16,bolt,,,2.5,in,,105,125,ksi,chart,larger sizes not carried: the copies seen are ambiguous
ASTM A193,B8 class 2,bolt,0.25,yes,0.75,in,,100,125,ksi,chart,strain hardened
ASTM A193,B8 class 2,bolt,0.75,,1,in,,80,115,ksi,chart,strain hardened
ASTM A193,B8 class 2,bolt,1,,1.25,in,,65,105,ksi,chart,strain hardened
ASTM A193,B8 class 2,bolt,1.25,,1.5,in,,50,100,ksi,chart,strain hardened
ISO 3506-1,A1/A2/A4-50,bolt,,,39,mm,,210,500,MPa,iso3506,
ISO 3506-1,A1/A2/A4-70,bolt,,,20,mm,,450,700,MPa,iso3506,
ISO 3506-1,A1/A2/A4-80,bolt,,,20,mm,,600,800,MPa,iso3506,
ISO 3506-1,C1-50,bolt,,,,mm,,250,500,MPa,iso3506,
ISO 3506-1,C1-70,bolt,,,,mm,,410,700,MPa,iso3506,
ISO 3506-1,C3-80,bolt,,,,mm,,640,800,MPa,iso3506,
ISO 3506-1,C4-50,bolt,,,,mm,,250,500,MPa,iso3506,
ISO 3506-1,C4-70,bolt,,,,mm,,410,700,MPa,iso3506,
ISO 3506-1,F1-45,bolt,,,24,mm,,250,450,MPa,iso3506,
ISO 3506-1,F1-60,bolt,,,24,mm,,410,600,MPa,iso3506,
ISO 3506-1,C1-110,bolt,,,,mm,,820,1100,MPa,iso3506m,hardened and tempered 275 C minimum
ISO 898-2,4,nut,16,,39,mm,510,,,MPa,iso8982,
ISO 898-2,5,nut,0,,4,mm,520,,,MPa,iso8982,
ISO 898-2,5,nut,4,,7,mm,580,,,MPa,iso8982,
ISO 898-2,5,nut,7,,10,mm,590,,,MPa,iso8982,
ISO 898-2,5,nut,10,,16,mm,610,,,MPa,iso8982,
ISO 898-2,5,nut,16,,39,mm,630,,,MPa,iso8982,
ISO 898-2,6,nut,0,,4,mm,600,,,MPa,iso8982,
ISO 898-2,6,nut,4,,7,mm,670,,,MPa,iso8982,
ISO 898-2,6,nut,7,,10,mm,680,,,MPa,iso8982,
ISO 898-2,6,nut,10,,16,mm,700,,,MPa,iso8982,
ISO 898-2,6,nut,16,,39,mm,720,,,MPa,iso8982,
ISO 898-2,8,nut,0,,4,mm,800,,,MPa,iso8982,
ISO 898-2,8,nut,4,,7,mm,855,,,MPa,iso8982,
ISO 898-2,8,nut,7,,10,mm,870,,,MPa,iso8982,
ISO 898-2,8,nut,10,,16,mm,880,,,MPa,iso8982,
ISO 898-2,8,nut,16,,39,mm,920,,,MPa,iso8982,
ISO 898-2,10,nut,0,,4,mm,1040,,,MPa,iso8982,
ISO 898-2,10,nut,4,,7,mm,1040,,,MPa,iso8982,
ISO 898-2,10,nut,7,,10,mm,1040,,,MPa,iso8982,
ISO 898-2,10,nut,10,,16,mm,1050,,,MPa,iso8982,
ISO 898-2,10,nut,16,,39,mm,1060,,,MPa,iso8982,
ISO 898-2,12 style 1,nut,0,,4,mm,1140,,,MPa,iso8982,not made style 1 above M16
ISO 898-2,12 style 1,nut,4,,7,mm,1140,,,MPa,iso8982,not made style 1 above M16
ISO 898-2,12 style 1,nut,7,,10,mm,1140,,,MPa,iso8982,not made style 1 above M16
ISO 898-2,12 style 1,nut,10,,16,mm,1170,,,MPa,iso8982,not made style 1 above M16
ISO 898-2,12 style 2,nut,0,,4,mm,1150,,,MPa,iso8982,
ISO 898-2,12 style 2,nut,4,,7,mm,1150,,,MPa,iso8982,
ISO 898-2,12 style 2,nut,7,,10,mm,1160,,,MPa,iso8982,
ISO 898-2,12 style 2,nut,10,,16,mm,1190,,,MPa,iso8982,
ISO 898-2,12 style 2,nut,16,,39,mm,1200,,,MPa,iso8982,
ISO 898-2,8 style 2,nut,16,,39,mm,890,,,MPa,iso8982,
DIN 267-4,8,nut,,,,mm,800,,,MPa,din267,older 0.8d nuts: proof stress = class x 100
DIN 267-4,10,nut,,,,mm,1000,,,MPa,din267,older 0.8d nuts: proof stress = class x 100
DIN 267-4,12,nut,,,,mm,1200,,,MPa,din267,older 0.8d nuts: proof stress = class x 100
ASTM,A194 2H heavy hex,nut,,,,in,175,,,ksi,astmNut,
ASTM,A563 DH heavy hex,nut,,,,in,175,,,ksi,astmNut,plain finish
ASTM,A563 C heavy hex,nut,,,,in,144,,,ksi,astmNut,
ASTM,A563 A hex,nut,,,,in,90,,,ksi,astmNut,
SAE J995,2,nut,0.25,yes,1.5,in,90,,,ksi,j995,
SAE J995,5,nut,0.25,yes,1,in,120,,,ksi,j995,
SAE J995,5,nut,1,,1.5,in,105,,,ksi,j995,
SAE J995,8,nut,0.25,yes,1.5,in,150,,,ksi,j995,
`;

export const strengthGrades = once(() =>
  readRows(text, (cell): StrengthGrade => {
    const [over, upto] = [cell.optional("over"), cell.optional("upto")];
    return {
      standard: cell.text("standard"),
      grade: cell.text("grade"),
      product: cell.text("product") === "nut" ? "nut" : "bolt",
      ...given({
        over,
        upto,
        proof: cell.optional("proof"),
        yield: cell.optional("yield"),
        tensile: cell.optional("tensile"),
      }),
      fromIncluded: cell.text("from") === "yes",
      sizeUnit: cell.text("sizeUnit") === "mm" ? "mm" : "in",
      stressUnit: cell.text("stressUnit") === "MPa" ? "MPa" : "ksi",
      source: sourceNamed(sources, cell.text("source")),
      ...given({ note: cell.text("note") }),
    };
  }),
);

export const boltStrength = (standard: string, grade: string, size: ThreadSize): StrengthGrade | Problem =>
  lookUp("bolt", standard, grade, size);

export const nutStrength = (standard: string, grade: string, size: ThreadSize): StrengthGrade | Problem =>
  lookUp("nut", standard, grade, size);

/** Standards and grades that can be asked for, in the order of the table. */
export function strengthChoices(product: "bolt" | "nut"): readonly {
  readonly standard: string;
  readonly grades: readonly string[];
}[] {
  const rows = strengthGrades().filter((row) => row.product === product);
  const standards = [...new Set(rows.map((row) => row.standard))];
  return standards.map((standard) => ({
    standard,
    grades: [...new Set(rows.filter((row) => row.standard === standard).flatMap(gradeNames))],
  }));
}

function lookUp(
  product: "bolt" | "nut",
  standard: string,
  grade: string,
  size: ThreadSize,
): StrengthGrade | Problem {
  const rows = strengthGrades().filter((row) => row.product === product);
  const ofGrade = rows.filter((row) =>
    gradeNames(row).some((name) => key(row.standard, name) === key(standard, grade)),
  );
  const [first] = ofGrade;
  if (!first) return unknownGrade(rows, product, standard, grade);
  if (first.sizeUnit !== size.unit) {
    const [has, needs] = size.unit === "mm" ? ["metric", "inch"] : ["inch", "metric"];
    return notInTable({
      code: "wrong-thread-system",
      what: `${product} grade ${first.standard} ${grade.trim()}`,
      got: `a ${has} thread`,
      choices: [],
      why: `its rows are for ${needs} threads`,
      hint: `name ${needs === "inch" ? "an" : "a"} ${needs} thread or a grade for ${has} ones`,
    });
  }
  const found = ofGrade.find((row) => holds(row, size.value));
  if (found) return found;
  return notInTable({
    code: "size-outside-grade",
    what: `thread size for ${first.standard} ${grade.trim()}`,
    got: `${size.value} ${size.unit}`,
    choices: ofGrade.map(rangeWords),
    why: first.note ?? "the standard gives no strength outside its sizes",
  });
}

function unknownGrade(
  rows: readonly StrengthGrade[],
  product: string,
  standard: string,
  grade: string,
): Problem {
  const named = rows.filter((row) => plainKey(bare(row.standard)) === plainKey(bare(standard)));
  const close = rows.filter((row) => key(row.standard, row.grade).startsWith(key(standard, grade)));
  const pool = close.length > 0 ? close : named;
  if (pool.length > 0) {
    const choices = [
      ...new Set(
        pool.flatMap((row) =>
          gradeNames(row).map((name) => (pool === named ? name : `${row.standard} ${name}`)),
        ),
      ),
    ];
    return notInTable({
      code: "unknown-grade",
      what: `${product} grade of ${standard.trim()}`,
      got: grade.trim() || "nothing",
      choices,
    });
  }
  const standards = [...new Set(rows.map((row) => row.standard))];
  return notInTable({
    code: "unknown-standard",
    what: `${product} standard`,
    got: standard.trim() || "nothing",
    choices: standards,
  });
}

// Ranges are half-open: over 16, up to and including 39.
function holds(row: StrengthGrade, size: number): boolean {
  const aboveLower = row.over === undefined || size > row.over || (row.fromIncluded && size === row.over);
  return aboveLower && (row.upto === undefined || size <= row.upto);
}

function rangeWords(row: StrengthGrade): string {
  const low =
    row.over === undefined || row.over === 0 ? "" : `${row.fromIncluded ? "from" : "over"} ${row.over} `;
  return `${low}${row.upto === undefined ? "and above" : `up to ${row.upto}`} ${row.sizeUnit}`;
}

// "A1/A2/A4-70" answers to A1-70, A2-70 and A4-70.
function gradeNames(row: StrengthGrade): readonly string[] {
  const parts = /^((?:[A-Z]\d\/)+[A-Z]\d)-(\d+)$/.exec(row.grade);
  return parts ? (parts[1] ?? "").split("/").map((steel) => `${steel}-${parts[2]}`) : [row.grade];
}

// National prefixes and the words "grade" and "class" do not change which table is meant.
const bare = (standard: string): string =>
  standard
    .trim()
    .replace(/^(?:(?:DIN|BS|NF|EN)\s+)*(?=(?:EN\s*)?ISO)/i, "")
    .replace(/^EN\s+(?=ISO)/i, "");

const key = (standard: string, grade: string): string =>
  plainKey(bare(standard) + grade.trim().replace(/^(?:grade|class|gr\.?)\s*/i, ""));
