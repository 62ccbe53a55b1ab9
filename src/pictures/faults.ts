// What a picture is asked that it cannot take: an unknown input, one that is missing or of another kind, a list
// without its columns. Asked by the engine, so that every face refuses alike.
import type { PictureInput, PictureInputs } from "../engine/line.ts";
import { didYouMean } from "../engine/pictures.ts";
import type { OutputValue } from "../methods/field.ts";
import { nearest } from "../nearest.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { kindsAgree, withArticle } from "../units/kind.ts";
import type { Columns, Field, ListColumns } from "./fields.ts";
import type { Declared } from "./picture.ts";
import type { Row } from "./rows.ts";

/** An input without an answer is no fault of the picture; whoever draws it says which one. */
export function pictureFault(declared: Declared, inputs: PictureInputs): Problem | undefined {
  for (const [input, value] of Object.entries(inputs)) {
    const field = Object.hasOwn(declared.of, input) ? declared.of[input] : undefined;
    const fault = field ? inputFault(declared.id, field, input, value) : furtherFault(declared, input, value);
    if (fault) return fault;
  }
  return missingFault(declared, Object.keys(inputs));
}

/** A list that is no check and has a name like a declared one is that one misspelt. */
function furtherFault(
  { id, of, further }: Declared,
  input: string,
  value: PictureInput,
): Problem | undefined {
  const known = Object.keys(of);
  const near = nearest(input, known, 1);
  if (further && isProblem(value) && (value.cause || near.length === 0)) return undefined;
  if (further && !isProblem(value) && value.kind === "list") {
    const odd = oddRow(value.rows, further);
    if (!odd || near.length === 0) return odd && rowFault(id, input, odd);
  }
  const more = further
    ? `, and any list with ${Object.keys(further.must).join(" and ")} in every row, such as a check by position`
    : "";
  return problem({
    code: "unknown-input",
    what: `picture ${id}`,
    got: `an input ${input}`,
    must: `be given only ${known.join(", ")}${more}`,
    hint: didYouMean(near),
    suggestions: near,
  });
}

const rowFault = (id: string, input: string, { code, row, got, must }: Odd): Problem =>
  problem({ code, what: `picture ${id}`, where: `${input} row ${row}`, got, must });

function missingFault(
  { id: name, of, anyOf, needs = {} }: Declared,
  given: readonly string[],
): Problem | undefined {
  for (const [input, field] of Object.entries(of)) {
    if (!field.optional && !given.includes(input)) return missing(name, input, field);
    const other = given.includes(input) ? needs[input] : undefined;
    const wanted = other === undefined ? undefined : of[other];
    if (other !== undefined && wanted && !given.includes(other)) return missing(name, other, wanted, input);
  }
  if (!anyOf || anyOf.some((input) => given.includes(input))) return undefined;
  return problem({
    code: "missing-input",
    what: `picture ${name}`,
    got: `neither ${anyOf.join(" nor ")}`,
    must: "have one of them",
    hint: `add ${anyOf.join(" or ")} under of`,
  });
}

const kindWord = (field: Field): string => {
  if (field.is === "number") return withArticle(field.kind);
  if (field.is === "word") return "a word";
  return field.orNumber === undefined ? "a list" : `${withArticle(field.orNumber)} or a list`;
};

const missing = (name: string, input: string, field: Field, beside?: string): Problem =>
  problem({
    code: "missing-input",
    what: `picture ${name}`,
    got: beside === undefined ? `no ${input}` : `${beside} and no ${input}`,
    must: `have ${kindWord(field)} for ${input}`,
    hint: `add ${input} under of`,
  });

/** Kind of one input, and the columns of a list. A value whose dimension has no name is of no kind that fits. */
function inputFault(id: string, field: Field, input: string, value: PictureInput): Problem | undefined {
  if (isProblem(value) && (value.code !== "no-kind" || field.is === "word")) return undefined;
  if (!isProblem(value)) {
    if (field.is === "list" && value.kind === "list") {
      const odd = oddRow(value.rows, field);
      return odd && rowFault(id, input, odd);
    }
    if (isOfKind(field, value))
      return field.is === "word" ? choiceFault(id, field.choices, input, value) : undefined;
  }
  return problem({
    code: "wrong-kind",
    what: `picture ${id}`,
    got: `${input} as ${isProblem(value) ? (value.got ?? "") : value.kind}`,
    must: `be ${kindWord(field)}`,
  });
}

function isOfKind(field: Field, value: OutputValue): boolean {
  if (field.is === "word") return value.kind !== "list";
  const kind = field.is === "number" ? field.kind : field.orNumber;
  return kind !== undefined && "si" in value && kindsAgree(value.kind, kind);
}

function choiceFault(
  name: string,
  choices: readonly string[],
  input: string,
  value: OutputValue,
): Problem | undefined {
  const word = value.kind === "text" ? value.text : undefined;
  if (choices.length === 0 || (word !== undefined && choices.includes(word))) return undefined;
  return problem({
    code: "odd-choice",
    what: `picture ${name}`,
    got: `${input} ${word ?? `as ${value.kind}`}`,
    must: `be ${choices.join(" or ")}`,
  });
}

interface Odd {
  readonly code: "wrong-kind" | "odd-row";
  /** From 1. */
  readonly row: number;
  readonly got: string;
  readonly must: string;
}

function oddRow(rows: readonly Row[], { must, may }: ListColumns): Odd | undefined {
  for (const [i, row] of rows.entries()) {
    const odd = oddCell(row, must, true) ?? oddCell(row, may, false);
    if (odd) return { row: i + 1, ...odd };
  }
  return undefined;
}

/** A cell that is not there may be a reading that is still to come; one of another kind is another column. */
function oddCell(row: Row, columns: Columns, needed: boolean): Omit<Odd, "row"> | undefined {
  for (const [column, kind] of Object.entries(columns)) {
    const cell = column === "position" ? (row["position"] ?? row["hole"]) : row[column];
    if (cell === undefined) {
      if (needed)
        return { code: "odd-row", got: `no ${column}`, must: `have ${withArticle(kind)} for ${column}` };
      continue;
    }
    if (kind !== "text" && (!("si" in cell) || !kindsAgree(cell.kind, kind)))
      return { code: "wrong-kind", got: `${column} as ${cell.kind}`, must: `be ${withArticle(kind)}` };
  }
  return undefined;
}
