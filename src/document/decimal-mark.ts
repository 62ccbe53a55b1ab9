// Which mark parts the decimals of a table: a point or a comma. Where the text leaves it open, the person is
// asked; a number that uses the other mark is refused.
import { type Problem, problem } from "../problem.ts";
import type { CsvRow } from "./csv-fields.ts";
import type { DecimalMark } from "./item.ts";

/** Longer than any number with its unit. */
const longest = 200;
const commaShape = /^[-+\u2212]?\d+,\d+(?:[eE][-+]?\d+)?\s*[^\s\d]?\S{0,15}$/;
const pointShape = /^[-+\u2212]?\d*\.\d+/;
const hasComma = (field: string): boolean => field.length <= longest && commaShape.test(field.trim());
const hasPoint = (field: string): boolean => pointShape.test(field.trimStart());
/** 1,234 may be one and a bit or more than a thousand; 0,234 and 12,34 can only be decimals. */
const mayBeGroups = {
  comma: /^\s*[-+\u2212]?[1-9]\d{0,2},\d{3}(?!\d)/,
  point: /^\s*[-+\u2212]?[1-9]\d{0,2}(?:\.\d{3})+(?!\d)/,
};

/**
 * Between semicolons a point is asked about as a comma is: such files come from where the comma marks
 * decimals and the point parts thousands.
 */
export function chooseDecimal(
  rows: readonly CsvRow[],
  columns: readonly number[],
  isPointOpen: boolean,
): DecimalMark | Problem {
  const fields = rows.flatMap((row) => columns.map((i) => ({ field: row.fields[i] ?? "", line: row.line })));
  const comma = fields.find(({ field }) => hasComma(field));
  const point = fields.find(({ field }) => hasPoint(field));
  if (comma && point) return twoMarks(comma, point);
  const mark = comma ? "comma" : "point";
  const first = comma ?? point;
  if (!first || (mark === "point" && !isPointOpen)) return mark;
  const marked = fields.filter(({ field }) => (comma ? hasComma : hasPoint)(field));
  return marked.some(({ field }) => !mayBeGroups[mark].test(field)) ? mark : unclear(first, mark);
}

interface Field {
  readonly field: string;
  readonly line: number;
}

const twoMarks = (comma: Field, point: Field): Problem =>
  problem({
    code: "csv-decimal",
    what: "table",
    got: `${comma.field.trim()} on line ${comma.line} and ${point.field.trim()} on line ${point.line}`,
    must: "have one decimal mark",
    hint: "write all numbers with a point, or say which: decimal: comma",
    suggestions: ["point", "comma"],
  });

const unclear = ({ field, line }: Field, mark: DecimalMark): Problem =>
  problem({
    code: "csv-decimal",
    what: "table",
    got: `${field.trim()} on line ${line}`,
    must: `be clear about the ${mark}`,
    why: "it may mark decimals or thousands",
    hint:
      mark === "comma"
        ? "write the numbers with a point, or say: decimal: comma"
        : "write thousands without a mark, or say: decimal: point",
    suggestions: [mark],
  });

const bare = /^[-+\u2212]?[\d.,\u2009\u202F\u00A0]+(?:[eE][-+]?\d+)?$/;
/** A number without a unit. */
export const isBare = (text: string): boolean => bare.test(text);

/** The number with a point for its decimal mark; in a bare number the other mark can only be a slip. */
export function pointed(text: string, decimal: DecimalMark): string | Problem {
  if (isBare(text) && text.includes(decimal === "comma" ? "." : ","))
    return problem({
      code: "csv-decimal",
      what: "number",
      got: text,
      must: `mark its decimals with a ${decimal}, as the rest of the table`,
      hint: "write thousands without a mark",
    });
  return decimal === "comma" ? text.replace(/(\d),(\d)/, "$1.$2") : text;
}
