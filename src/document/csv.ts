// A table of readings as text. Delimiter and decimal mark are decided together, on the whole text; where two
// readings fit, the person is asked. Fields stay as typed; a blank is missing, never zero.
import { isProblem, type Problem, problem } from "../problem.ts";
import { type CsvFields, type CsvRow, csvFields } from "./csv-fields.ts";
import { chooseDecimal } from "./decimal-mark.ts";
import type { DecimalMark, Delimiter } from "./item.ts";

export interface Heading {
  /** As typed: "diameter/mm", "d [mm]", "position". */
  readonly text: string;
  readonly name: string;
  readonly unit?: string;
}

export interface CsvTable {
  readonly delimiter: Delimiter;
  readonly decimal: DecimalMark;
  /** How lines end, to write the table back as it came. */
  readonly newline: "\n" | "\r\n";
  readonly headings: readonly Heading[];
  readonly rows: readonly CsvRow[];
  /** Lines left out because nothing stood on them. */
  readonly blankLines: readonly number[];
}

export interface CsvReading {
  readonly table?: CsvTable;
  readonly problems: readonly Problem[];
}

/** Answers to what the text alone leaves open. */
export interface CsvAnswers {
  readonly delimiter?: Delimiter | undefined;
  readonly decimal?: DecimalMark | undefined;
  /** Which columns hold numbers, so that a comma in a remark decides nothing; all where not said. */
  readonly isNumeric?: ((heading: Heading) => boolean) | undefined;
  /** A file from elsewhere; rows of a page are written by this program, with a point unless it is said. */
  readonly isFile?: boolean | undefined;
}

export const delimiters: Readonly<Record<Delimiter, string>> = { comma: ",", semicolon: ";", tab: "\t" };

const delimiterNames: readonly Delimiter[] = ["comma", "semicolon", "tab"];

export function readCsv(text: string, answers: CsvAnswers = {}): CsvReading {
  const chosen = chooseDelimiter(text, answers);
  if (isProblem(chosen)) return { problems: [chosen] };
  const { delimiter, read } = chosen;
  const head = read.rows.find((row) => !isBlank(row));
  if (!head)
    return {
      problems: [
        problem({
          code: "csv-empty",
          what: "table",
          got: "no line",
          must: "start with a line of headings",
          hint: "for example position,diameter/mm",
        }),
      ],
    };
  const long = tooLong(head, read.rows);
  if (long.length > 0) return { problems: long };
  const after = read.rows.filter((row) => row.line > head.line);
  const rows = after.filter((row) => !isBlank(row) || head.fields.length === 1);
  const headings = head.fields.map(heading);
  const isPointOpen = answers.isFile === true && delimiter === "semicolon" && headings.length > 1;
  const decimal = answers.decimal ?? chooseDecimal(rows, numericColumns(headings, answers), isPointOpen);
  const problems = [
    ...read.problems,
    ...countProblems(head, rows, delimiter),
    ...headingProblems(head),
    ...(isProblem(decimal) ? [decimal] : []),
  ];
  if (problems.length > 0 || isProblem(decimal)) return { problems };
  const blankLines = head.fields.length === 1 ? [] : after.filter(isBlank).map((row) => row.line);
  const newline = text.includes("\r\n") ? "\r\n" : "\n";
  return { table: { delimiter, decimal, newline, headings, rows, blankLines }, problems };
}

const isBlank = (row: CsvRow): boolean =>
  row.fields.length === 1 && row.fields[0]?.trim() === "" && !row.quoted[0];

interface Choice {
  readonly delimiter: Delimiter;
  readonly read: CsvFields;
}

/** The delimiter that stands in the headings and gives every row as many fields as there are headings. */
function chooseDelimiter(text: string, { delimiter }: CsvAnswers): Choice | Problem {
  const choices = delimiterNames.map((name) => ({
    delimiter: name,
    read: csvFields(text, delimiters[name]),
  }));
  const asked = choices.find((choice) => choice.delimiter === delimiter);
  if (asked) return asked;
  const parting = choices.filter(
    ({ read }) => (read.rows.find((row) => !isBlank(row))?.fields.length ?? 0) > 1,
  );
  const even = parting.filter(({ read }) => isEven(read));
  if (even.length > 1) {
    const found = even.map((choice) => choice.delimiter);
    return problem({
      code: "csv-delimiter",
      what: "table",
      got: `headings that ${found.join(" and ")} both part`,
      must: "have one delimiter",
      hint: `say which: delimiter: ${found[0]}`,
      suggestions: found,
    });
  }
  // No heading is parted: one column. A semicolon keeps the decimal commas of its rows together.
  const single = choices.find((choice) => choice.delimiter === "semicolon");
  const chosen = even[0] ?? parting[0] ?? single;
  return chosen ?? problem({ code: "csv-empty", what: "table", got: "nothing" });
}

const isEven = ({ rows }: CsvFields): boolean => {
  const filled = rows.filter((row) => !isBlank(row));
  return filled.every((row) => row.fields.length === filled[0]?.fields.length);
};

function numericColumns(headings: readonly Heading[], { isNumeric }: CsvAnswers): readonly number[] {
  return headings.flatMap((one, i) => (isNumeric === undefined || isNumeric(one) ? [i] : []));
}

function countProblems(head: CsvRow, rows: readonly CsvRow[], delimiter: Delimiter): readonly Problem[] {
  return rows
    .filter((row) => row.fields.length !== head.fields.length)
    .map((row) =>
      problem({
        code: "csv-fields",
        what: `line ${row.line}`,
        got: `${row.fields.length} fields`,
        must: `have ${head.fields.length}, as the headings`,
        hint:
          delimiter === "comma" && row.fields.length > head.fields.length
            ? 'put a field that holds a comma in quotes: "25,011"'
            : "leave a missing reading blank, but keep its delimiters",
      }),
    );
}

/** A heading is a name with a unit, and a field a reading or a remark: longer ones are no table. */
const longest = { heading: 300, field: 2000 } as const;

function tooLong(head: CsvRow, rows: readonly CsvRow[]): readonly Problem[] {
  return rows.flatMap((row) => {
    const what = row === head ? "heading" : "field";
    const at = row.fields.findIndex((field) => field.length > longest[what]);
    if (at < 0) return [];
    return [
      problem({
        code: "csv-too-long",
        what: `line ${row.line}`,
        got: `a ${what} of ${row.fields[at]?.length} characters, the ${at + 1}. on the line`,
        must: `have at most ${longest[what]} in each ${what}`,
        hint: "look for a quote that is never closed, or for another delimiter",
      }),
    ];
  });
}

function headingProblems(head: CsvRow): readonly Problem[] {
  const names = head.fields.map((field) => heading(field).name);
  const first = new Map<string, number>();
  for (const [i, name] of names.entries()) if (!first.has(name)) first.set(name, i);
  return names.flatMap((name, i) => {
    if (name !== "" && first.get(name) === i) return [];
    const got = name === "" ? `nothing in heading ${i + 1}` : `${name} twice`;
    return [
      problem({
        code: "csv-heading",
        what: `line ${head.line}`,
        got,
        must: "name each column once",
        hint: "for example position,diameter/mm",
      }),
    ];
  });
}

const closing: Readonly<Record<string, string>> = { "[": "]", "(": ")" };

/** "/mm", "[mm]", "(mm)" and "/(N.m)" → the unit; nothing where a bracket is left open. */
function unitBehind(text: string): string {
  const inside = text.slice(1).trim();
  const close = closing[text.charAt(0)];
  if (close !== undefined && inside.indexOf(close) !== inside.length - 1) return "";
  const unit = close === undefined ? inside : inside.slice(0, -1).trim();
  return unit.startsWith("(") && unit.endsWith(")") ? unit.slice(1, -1) : unit;
}

/** "diameter/mm", "d [mm]" or "d (mm)" → name and unit. */
export function heading(text: string): Heading {
  const whole = text.trim();
  const mark = whole.search(/[/[(]/);
  const unit = mark < 0 ? "" : unitBehind(whole.slice(mark));
  return unit === "" ? { text, name: whole } : { text, name: whole.slice(0, mark).trim(), unit };
}
