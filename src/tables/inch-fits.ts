// ANSI/ASME B4.1 fits by class and size, in thousandths of an inch: RC running and sliding, LC, LT and LN
// locational, FN force. Sizes over 0 up to 3.15 in; the hole's lower limit is the basic size throughout.
// Long because the rows are here.
import type { Problem } from "../problem.ts";
import type { Source } from "../source.ts";
import { notInTable, once, plainKey, readRows, sourceNamed, type TableInfo } from "./table.ts";

export interface InchFit {
  /** "LN 2". */
  readonly fitClass: string;
  /** Size range: over, up to and including. */
  readonly over_in: number;
  readonly upto_in: number;
  /** Upper deviation of the hole; the lower one is 0. */
  readonly holeUpper_thou: number;
  readonly shaftUpper_thou: number;
  readonly shaftLower_thou: number;
  readonly source: Source;
}

const handbook31 = (at: string): Source => ({
  body: "ASME",
  title: "B4.1-1967 (2009), as printed in Machinery's Handbook",
  edition: "31st (2020)",
  at,
  known: "second-hand",
});

const inchFitSources: Readonly<Record<string, Source>> = {
  rcA: handbook31("p. 646, Table 8a"),
  rcB: handbook31("p. 647, Table 8b"),
  lt: handbook31("p. 654, Table 10"),
  ln: handbook31("p. 660, Table 12"),
  fn: {
    body: "ASME",
    title: "B4.1-1967 (R1999), as printed in Machinery's Handbook",
    edition: "27th (2004)",
    at: "p. 663, Table 11",
    known: "second-hand",
  },
  lcR: {
    body: "ASME",
    title: "B4.1-1967 (R1987), clearance locational fits",
    edition: "reprint with slips in its clearance column, limits consistent",
    known: "second-hand",
  },
  lcM: { body: "ASME", title: "B4.1-1967, clearance locational fits", known: "memory" },
};

export const inchFitTable: TableInfo = {
  title: "Inch fits RC, LC, LT, LN and FN, sizes up to 3.15 in",
  units: { class: "", over: "in", to: "in", hole: "thou", shaftUpper: "thou", shaftLower: "thou" },
  sources: Object.values(inchFitSources),
  checked:
    "hole tolerances are the standard grades that the RC rows print; LC 1 to LC 5 are from memory and follow the same grades; the shaft of RC 9 over 0.12 up to 0.24 in is printed -6.0 where its grade would give -6.3",
};

const text = `
class,over,to,hole,shaftUpper,shaftLower,source
RC 1,0,0.12,0.2,-0.1,-0.25,rcA
RC 1,0.12,0.24,0.2,-0.15,-0.3,rcA
RC 1,0.24,0.4,0.25,-0.2,-0.35,rcA
RC 1,0.4,0.71,0.3,-0.25,-0.45,rcA
RC 1,0.71,1.19,0.4,-0.3,-0.55,rcA
RC 1,1.19,1.97,0.4,-0.4,-0.7,rcA
RC 1,1.97,3.15,0.5,-0.4,-0.7,rcA
RC 2,0,0.12,0.25,-0.1,-0.3,rcA
RC 2,0.12,0.24,0.3,-0.15,-0.35,rcA
RC 2,0.24,0.4,0.4,-0.2,-0.45,rcA
RC 2,0.4,0.71,0.4,-0.25,-0.55,rcA
RC 2,0.71,1.19,0.5,-0.3,-0.7,rcA
RC 2,1.19,1.97,0.6,-0.4,-0.8,rcA
RC 2,1.97,3.15,0.7,-0.4,-0.9,rcA
RC 3,0,0.12,0.4,-0.3,-0.55,rcA
RC 3,0.12,0.24,0.5,-0.4,-0.7,rcA
RC 3,0.24,0.4,0.6,-0.5,-0.9,rcA
RC 3,0.4,0.71,0.7,-0.6,-1.0,rcA
RC 3,0.71,1.19,0.8,-0.8,-1.3,rcA
RC 3,1.19,1.97,1.0,-1.0,-1.6,rcA
RC 3,1.97,3.15,1.2,-1.2,-1.9,rcA
RC 4,0,0.12,0.6,-0.3,-0.7,rcA
RC 4,0.12,0.24,0.7,-0.4,-0.9,rcA
RC 4,0.24,0.4,0.9,-0.5,-1.1,rcA
RC 4,0.4,0.71,1.0,-0.6,-1.3,rcA
RC 4,0.71,1.19,1.2,-0.8,-1.6,rcA
RC 4,1.19,1.97,1.6,-1.0,-2.0,rcA
RC 4,1.97,3.15,1.8,-1.2,-2.4,rcA
RC 5,0,0.12,0.6,-0.6,-1.0,rcB
RC 5,0.12,0.24,0.7,-0.8,-1.3,rcB
RC 5,0.24,0.4,0.9,-1.0,-1.6,rcB
RC 5,0.4,0.71,1.0,-1.2,-1.9,rcB
RC 5,0.71,1.19,1.2,-1.6,-2.4,rcB
RC 5,1.19,1.97,1.6,-2.0,-3.0,rcB
RC 5,1.97,3.15,1.8,-2.5,-3.7,rcB
RC 6,0,0.12,1.0,-0.6,-1.2,rcB
RC 6,0.12,0.24,1.2,-0.8,-1.5,rcB
RC 6,0.24,0.4,1.4,-1.0,-1.9,rcB
RC 6,0.4,0.71,1.6,-1.2,-2.2,rcB
RC 6,0.71,1.19,2.0,-1.6,-2.8,rcB
RC 6,1.19,1.97,2.5,-2.0,-3.6,rcB
RC 6,1.97,3.15,3.0,-2.5,-4.3,rcB
RC 7,0,0.12,1.0,-1.0,-1.6,rcB
RC 7,0.12,0.24,1.2,-1.2,-1.9,rcB
RC 7,0.24,0.4,1.4,-1.6,-2.5,rcB
RC 7,0.4,0.71,1.6,-2.0,-3.0,rcB
RC 7,0.71,1.19,2.0,-2.5,-3.7,rcB
RC 7,1.19,1.97,2.5,-3.0,-4.6,rcB
RC 7,1.97,3.15,3.0,-4.0,-5.8,rcB
RC 8,0,0.12,1.6,-2.5,-3.5,rcB
RC 8,0.12,0.24,1.8,-2.8,-4.0,rcB
RC 8,0.24,0.4,2.2,-3.0,-4.4,rcB
RC 8,0.4,0.71,2.8,-3.5,-5.1,rcB
RC 8,0.71,1.19,3.5,-4.5,-6.5,rcB
RC 8,1.19,1.97,4.0,-5.0,-7.5,rcB
RC 8,1.97,3.15,4.5,-6.0,-9.0,rcB
RC 9,0,0.12,2.5,-4.0,-5.6,rcB
RC 9,0.12,0.24,3.0,-4.5,-6.0,rcB
RC 9,0.24,0.4,3.5,-5.0,-7.2,rcB
RC 9,0.4,0.71,4.0,-6.0,-8.8,rcB
RC 9,0.71,1.19,5.0,-7.0,-10.5,rcB
RC 9,1.19,1.97,6.0,-8.0,-12.0,rcB
RC 9,1.97,3.15,7.0,-9.0,-13.5,rcB
LC 1,0,0.12,0.25,0,-0.2,lcM
LC 1,0.12,0.24,0.3,0,-0.2,lcM
LC 1,0.24,0.4,0.4,0,-0.25,lcM
LC 1,0.4,0.71,0.4,0,-0.3,lcM
LC 1,0.71,1.19,0.5,0,-0.4,lcM
LC 1,1.19,1.97,0.6,0,-0.4,lcM
LC 1,1.97,3.15,0.7,0,-0.5,lcM
LC 2,0,0.12,0.4,0,-0.25,lcM
LC 2,0.12,0.24,0.5,0,-0.3,lcM
LC 2,0.24,0.4,0.6,0,-0.4,lcM
LC 2,0.4,0.71,0.7,0,-0.4,lcM
LC 2,0.71,1.19,0.8,0,-0.5,lcM
LC 2,1.19,1.97,1.0,0,-0.6,lcM
LC 2,1.97,3.15,1.2,0,-0.7,lcM
LC 3,0,0.12,0.6,0,-0.4,lcM
LC 3,0.12,0.24,0.7,0,-0.5,lcM
LC 3,0.24,0.4,0.9,0,-0.6,lcM
LC 3,0.4,0.71,1.0,0,-0.7,lcM
LC 3,0.71,1.19,1.2,0,-0.8,lcM
LC 3,1.19,1.97,1.6,0,-1.0,lcM
LC 3,1.97,3.15,1.8,0,-1.2,lcM
LC 4,0,0.12,1.6,0,-1.0,lcM
LC 4,0.12,0.24,1.8,0,-1.2,lcM
LC 4,0.24,0.4,2.2,0,-1.4,lcM
LC 4,0.4,0.71,2.8,0,-1.6,lcM
LC 4,0.71,1.19,3.5,0,-2.0,lcM
LC 4,1.19,1.97,4.0,0,-2.5,lcM
LC 4,1.97,3.15,4.5,0,-3.0,lcM
LC 5,0,0.12,0.4,-0.1,-0.35,lcM
LC 5,0.12,0.24,0.5,-0.15,-0.45,lcM
LC 5,0.24,0.4,0.6,-0.2,-0.6,lcM
LC 5,0.4,0.71,0.7,-0.25,-0.65,lcM
LC 5,0.71,1.19,0.8,-0.3,-0.8,lcM
LC 5,1.19,1.97,1.0,-0.4,-1.0,lcM
LC 5,1.97,3.15,1.2,-0.4,-1.1,lcM
LC 6,0,0.12,1.0,-0.3,-0.9,lcR
LC 6,0.12,0.24,1.2,-0.4,-1.1,lcR
LC 6,0.24,0.4,1.4,-0.5,-1.4,lcR
LC 6,0.4,0.71,1.6,-0.6,-1.6,lcR
LC 6,0.71,1.19,2.0,-0.8,-2.0,lcR
LC 6,1.19,1.97,2.5,-1.0,-2.6,lcR
LC 6,1.97,3.15,3.0,-1.2,-3.0,lcM
LC 7,0,0.12,1.6,-0.6,-1.6,lcR
LC 7,0.12,0.24,1.8,-0.8,-2.0,lcR
LC 7,0.24,0.4,2.2,-1.0,-2.4,lcR
LC 7,0.4,0.71,2.8,-1.2,-2.8,lcR
LC 7,0.71,1.19,3.5,-1.6,-3.6,lcR
LC 7,1.19,1.97,4.0,-2.0,-4.5,lcR
LC 7,1.97,3.15,4.5,-2.5,-5.5,lcM
LC 8,0,0.12,1.6,-1.0,-2.0,lcR
LC 8,0.12,0.24,1.8,-1.2,-2.4,lcR
LC 8,0.24,0.4,2.2,-1.6,-3.0,lcR
LC 8,0.4,0.71,2.8,-2.0,-3.6,lcR
LC 8,0.71,1.19,3.5,-2.5,-4.5,lcR
LC 8,1.19,1.97,4.0,-3.0,-5.5,lcM
LC 8,1.97,3.15,4.5,-4.0,-7.0,lcM
LC 9,0,0.12,2.5,-2.5,-4.1,lcR
LC 9,0.12,0.24,3.0,-2.8,-4.6,lcR
LC 9,0.24,0.4,3.5,-3.0,-5.2,lcR
LC 9,0.4,0.71,4.0,-3.5,-6.3,lcR
LC 9,0.71,1.19,5.0,-4.5,-8.0,lcR
LC 9,1.19,1.97,6.0,-5.0,-9.0,lcM
LC 9,1.97,3.15,7.0,-6.0,-10.5,lcM
LC 10,0,0.12,4,-4,-8,lcR
LC 10,0.12,0.24,5,-4.5,-9.5,lcR
LC 10,0.24,0.4,6,-5,-11,lcR
LC 10,0.4,0.71,7,-6,-13,lcR
LC 10,0.71,1.19,8,-7,-15,lcR
LC 10,1.19,1.97,10,-8,-18,lcM
LC 10,1.97,3.15,12,-10,-22,lcM
LC 11,0,0.12,6,-5,-11,lcR
LC 11,0.12,0.24,7,-6,-13,lcR
LC 11,0.24,0.4,9,-7,-16,lcR
LC 11,0.4,0.71,10,-8,-18,lcR
LC 11,0.71,1.19,12,-10,-22,lcR
LC 11,1.19,1.97,16,-12,-28,lcM
LC 11,1.97,3.15,18,-14,-32,lcM
LT 1,0,0.12,0.4,0.12,-0.12,lt
LT 1,0.12,0.24,0.5,0.15,-0.15,lt
LT 1,0.24,0.4,0.6,0.2,-0.2,lt
LT 1,0.4,0.71,0.7,0.2,-0.2,lt
LT 1,0.71,1.19,0.8,0.25,-0.25,lt
LT 1,1.19,1.97,1.0,0.3,-0.3,lt
LT 1,1.97,3.15,1.2,0.3,-0.3,lt
LT 2,0,0.12,0.6,0.2,-0.2,lt
LT 2,0.12,0.24,0.7,0.25,-0.25,lt
LT 2,0.24,0.4,0.9,0.3,-0.3,lt
LT 2,0.4,0.71,1.0,0.35,-0.35,lt
LT 2,0.71,1.19,1.2,0.4,-0.4,lt
LT 2,1.19,1.97,1.6,0.5,-0.5,lt
LT 2,1.97,3.15,1.8,0.6,-0.6,lt
LT 3,0.24,0.4,0.6,0.5,0.1,lt
LT 3,0.4,0.71,0.7,0.5,0.1,lt
LT 3,0.71,1.19,0.8,0.6,0.1,lt
LT 3,1.19,1.97,1.0,0.7,0.1,lt
LT 3,1.97,3.15,1.2,0.8,0.1,lt
LT 4,0.24,0.4,0.9,0.7,0.1,lt
LT 4,0.4,0.71,1.0,0.8,0.1,lt
LT 4,0.71,1.19,1.2,0.9,0.1,lt
LT 4,1.19,1.97,1.6,1.1,0.1,lt
LT 4,1.97,3.15,1.8,1.3,0.1,lt
LT 5,0,0.12,0.4,0.5,0.25,lt
LT 5,0.12,0.24,0.5,0.6,0.3,lt
LT 5,0.24,0.4,0.6,0.8,0.4,lt
LT 5,0.4,0.71,0.7,0.9,0.5,lt
LT 5,0.71,1.19,0.8,1.1,0.6,lt
LT 5,1.19,1.97,1.0,1.3,0.7,lt
LT 5,1.97,3.15,1.2,1.5,0.8,lt
LT 6,0,0.12,0.4,0.65,0.25,lt
LT 6,0.12,0.24,0.5,0.8,0.3,lt
LT 6,0.24,0.4,0.6,1.0,0.4,lt
LT 6,0.4,0.71,0.7,1.2,0.5,lt
LT 6,0.71,1.19,0.8,1.4,0.6,lt
LT 6,1.19,1.97,1.0,1.7,0.7,lt
LT 6,1.97,3.15,1.2,2.0,0.8,lt
LN 1,0,0.12,0.25,0.45,0.25,ln
LN 1,0.12,0.24,0.3,0.5,0.3,ln
LN 1,0.24,0.4,0.4,0.65,0.4,ln
LN 1,0.4,0.71,0.4,0.8,0.4,ln
LN 1,0.71,1.19,0.5,1.0,0.5,ln
LN 1,1.19,1.97,0.6,1.1,0.6,ln
LN 1,1.97,3.15,0.7,1.3,0.8,ln
LN 2,0,0.12,0.4,0.65,0.4,ln
LN 2,0.12,0.24,0.5,0.8,0.5,ln
LN 2,0.24,0.4,0.6,1.0,0.6,ln
LN 2,0.4,0.71,0.7,1.1,0.7,ln
LN 2,0.71,1.19,0.8,1.3,0.8,ln
LN 2,1.19,1.97,1.0,1.6,1.0,ln
LN 2,1.97,3.15,1.2,2.1,1.4,ln
LN 3,0,0.12,0.4,0.75,0.5,ln
LN 3,0.12,0.24,0.5,0.9,0.6,ln
LN 3,0.24,0.4,0.6,1.2,0.8,ln
LN 3,0.4,0.71,0.7,1.4,1.0,ln
LN 3,0.71,1.19,0.8,1.7,1.2,ln
LN 3,1.19,1.97,1.0,2.0,1.4,ln
LN 3,1.97,3.15,1.2,2.3,1.6,ln
FN 1,0,0.12,0.25,0.5,0.3,fn
FN 1,0.12,0.24,0.3,0.6,0.4,fn
FN 1,0.24,0.4,0.4,0.75,0.5,fn
FN 1,0.4,0.56,0.4,0.8,0.5,fn
FN 1,0.56,0.71,0.4,0.9,0.6,fn
FN 1,0.71,0.95,0.5,1.1,0.7,fn
FN 1,0.95,1.19,0.5,1.2,0.8,fn
FN 1,1.19,1.58,0.6,1.3,0.9,fn
FN 1,1.58,1.97,0.6,1.4,1.0,fn
FN 1,1.97,2.56,0.7,1.8,1.3,fn
FN 1,2.56,3.15,0.7,1.9,1.4,fn
FN 2,0,0.12,0.4,0.85,0.6,fn
FN 2,0.12,0.24,0.5,1.0,0.7,fn
FN 2,0.24,0.4,0.6,1.4,1.0,fn
FN 2,0.4,0.56,0.7,1.6,1.2,fn
FN 2,0.56,0.71,0.7,1.6,1.2,fn
FN 2,0.71,0.95,0.8,1.9,1.4,fn
FN 2,0.95,1.19,0.8,1.9,1.4,fn
FN 2,1.19,1.58,1.0,2.4,1.8,fn
FN 2,1.58,1.97,1.0,2.4,1.8,fn
FN 2,1.97,2.56,1.2,2.7,2.0,fn
FN 2,2.56,3.15,1.2,2.9,2.2,fn
FN 3,0.95,1.19,0.8,2.1,1.6,fn
FN 3,1.19,1.58,1.0,2.6,2.0,fn
FN 3,1.58,1.97,1.0,2.8,2.2,fn
FN 3,1.97,2.56,1.2,3.2,2.5,fn
FN 3,2.56,3.15,1.2,3.7,3.0,fn
FN 4,0,0.12,0.4,0.95,0.7,fn
FN 4,0.12,0.24,0.5,1.2,0.9,fn
FN 4,0.24,0.4,0.6,1.6,1.2,fn
FN 4,0.4,0.56,0.7,1.8,1.4,fn
FN 4,0.56,0.71,0.7,1.8,1.4,fn
FN 4,0.71,0.95,0.8,2.1,1.6,fn
FN 4,0.95,1.19,0.8,2.3,1.8,fn
FN 4,1.19,1.58,1.0,3.1,2.5,fn
FN 4,1.58,1.97,1.0,3.4,2.8,fn
FN 4,1.97,2.56,1.2,4.2,3.5,fn
FN 4,2.56,3.15,1.2,4.7,4.0,fn
FN 5,0,0.12,0.6,1.3,0.9,fn
FN 5,0.12,0.24,0.7,1.7,1.2,fn
FN 5,0.24,0.4,0.9,2.0,1.4,fn
FN 5,0.4,0.56,1.0,2.3,1.6,fn
FN 5,0.56,0.71,1.0,2.5,1.8,fn
FN 5,0.71,0.95,1.2,3.0,2.2,fn
FN 5,0.95,1.19,1.2,3.3,2.5,fn
FN 5,1.19,1.58,1.6,4.0,3.0,fn
FN 5,1.58,1.97,1.6,5.0,4.0,fn
FN 5,1.97,2.56,1.8,6.2,5.0,fn
FN 5,2.56,3.15,1.8,7.2,6.0,fn
`;

export const inchFits = once(() =>
  readRows(
    text,
    (cell): InchFit => ({
      fitClass: cell.text("class"),
      over_in: cell.number("over"),
      upto_in: cell.number("to"),
      holeUpper_thou: cell.number("hole"),
      shaftUpper_thou: cell.number("shaftUpper"),
      shaftLower_thou: cell.number("shaftLower"),
      source: sourceNamed(inchFitSources, cell.text("source")),
    }),
  ),
);

export const inchFitClasses = once(() => [...new Set(inchFits().map((row) => row.fitClass))]);

const families = {
  RC: "running and sliding",
  LC: "locational clearance",
  LT: "locational transition",
  LN: "locational interference",
  FN: "force",
} as const;

// A size that arrives as 1.190 000 000 1 in from a conversion belongs to the range up to 1.19.
const tidy = (size_in: number): number => Math.round(size_in * 1e7) / 1e7;

/** inchFit(1, "LN 2"); "LN2" and "ln-2" are the same class. */
export function inchFit(size_in: number, fitClass: string): InchFit | Problem {
  const key = plainKey(fitClass).replace(/-/g, "");
  const ofClass = inchFits().filter((row) => plainKey(row.fitClass) === key);
  if (ofClass.length === 0) return unknownClass(fitClass, key);
  const size = tidy(size_in);
  const found = ofClass.find((row) => size > row.over_in && size <= row.upto_in);
  if (found) return found;
  const [first] = ofClass;
  return notInTable({
    code: "size-outside-table",
    what: `nominal size for ${first?.fitClass}`,
    got: `${size} in`,
    choices: ofClass.map((row) => `over ${row.over_in} up to ${row.upto_in} in`),
    why: "only these ranges are carried",
  });
}

function unknownClass(fitClass: string, key: string): Problem {
  const family = key.slice(0, 2).toUpperCase();
  const ofFamily = inchFitClasses().filter((name) => name.startsWith(`${family} `));
  return notInTable({
    code: "unknown-fit",
    what: "inch fit",
    got: fitClass.trim() || "nothing",
    choices: ofFamily.length > 0 ? ofFamily : inchFitClasses(),
    why: Object.entries(families)
      .map(([letters, words]) => `${letters} is ${words}`)
      .join(", "),
  });
}
