// What a picture is asked that it cannot take: an unknown picture or input, one that is missing or of
// another kind, a list without its columns. Asked by the engine, so that every face refuses alike.
import type { OutputValue, ScalarOutput } from "../methods/field.ts";
import { nearest } from "../nearest.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { kindsAgree } from "../units/kind.ts";
import type { PictureInput } from "./line.ts";
import {
  formerNames,
  type ListColumns,
  type ListInput,
  type PictureColumns,
  type PictureDeclaration,
  type PictureField,
  pictureDeclared,
  pictureNames,
} from "./picture-inputs.ts";

type Inputs = Readonly<Record<string, PictureInput>>;
type Row = Readonly<Record<string, ScalarOutput>>;

/** An input without an answer is no fault of the picture; whoever draws it says which one. */
export function pictureFault(name: string, inputs: Inputs): Problem | undefined {
  const declared = pictureDeclared(name);
  if (!declared) return unknownPicture(name);
  for (const [input, value] of Object.entries(inputs)) {
    const fault = declared.of[input]
      ? inputFault(name, declared.of[input], input, value)
      : furtherFault(name, declared, input, value);
    if (fault) return fault;
  }
  return missingFault(name, declared, Object.keys(inputs));
}

const didYouMean = (near: readonly string[]) =>
  near.length > 0 ? { hint: `did you mean ${near.join(" or ")}?`, suggestions: near } : {};

export function unknownPicture(name: string): Problem {
  const now = Object.hasOwn(formerNames, name) ? formerNames[name] : undefined;
  return problem({
    code: "unknown-picture",
    what: "picture",
    got: name,
    must: `be one of ${pictureNames.join(", ")}`,
    ...(now === undefined
      ? didYouMean(nearest(name, pictureNames, 1))
      : { hint: `it is called ${now} now`, suggestions: [now] }),
  });
}

/** A list that is no check and has a name like a declared one is that one misspelt. */
function furtherFault(
  name: string,
  { of, further }: PictureDeclaration,
  input: string,
  value: PictureInput,
): Problem | undefined {
  if (further && isProblem(value)) return undefined;
  const known = Object.keys(of);
  const near = nearest(input, known, 1);
  if (further && !isProblem(value) && value.kind === "list") {
    const odd = oddRow(value.rows, further);
    if (!odd || near.length === 0) return odd && rowFault(name, input, odd);
  }
  const more = further
    ? `, and any list with ${Object.keys(further.must).join(" and ")} in every row, such as a check by position`
    : "";
  return problem({
    code: "unknown-input",
    what: `picture ${name}`,
    got: `an input ${input}`,
    must: `be given only ${known.join(", ")}${more}`,
    ...didYouMean(near),
  });
}

const rowFault = (name: string, input: string, { where, got, must }: Odd): Problem =>
  problem({ code: "odd-row", what: `picture ${name}`, where: `${input} ${where}`, got, must });

function missingFault(
  name: string,
  { of, anyOf, needs = {} }: PictureDeclaration,
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

const kindWord = (field: PictureField): string => {
  if (field.is === "number") return withArticle(field.kind);
  if (field.is === "word") return "a word";
  return field.orNumber === undefined ? "a list" : `${withArticle(field.orNumber)} or a list`;
};

const withArticle = (kind: string): string => `${/^[aeiou]/.test(kind) ? "an" : "a"} ${kind}`;

const missing = (name: string, input: string, field: PictureField, beside?: string): Problem =>
  problem({
    code: "missing-input",
    what: `picture ${name}`,
    got: beside === undefined ? `no ${input}` : `${beside} and no ${input}`,
    must: `have ${kindWord(field)} for ${input}`,
    hint: `add ${input} under of`,
  });

/** Kind of one input, and the columns of a list. */
export function inputFault(
  name: string,
  field: PictureField,
  input: string,
  value: PictureInput,
): Problem | undefined {
  if (isProblem(value)) return undefined;
  if (field.is === "list" && value.kind === "list") {
    const odd = oddRow(value.rows, field);
    return (
      odd && problem({ code: "odd-row", what: `picture ${name}`, ...odd, where: `${input} ${odd.where}` })
    );
  }
  if (isOfKind(field, value))
    return field.is === "word" ? choiceFault(name, field.choices, input, value) : undefined;
  return problem({
    code: "wrong-kind",
    what: `picture ${name}`,
    got: `${input} as ${value.kind}`,
    must: `be ${kindWord(field)}`,
  });
}

function isOfKind(field: PictureField, value: OutputValue): boolean {
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

type Odd = { readonly where: string; readonly got: string; readonly must: string };

function oddRow(rows: readonly Row[], { must, may }: ListColumns | ListInput): Odd | undefined {
  for (const [i, row] of rows.entries()) {
    const odd = oddCell(row, must, true) ?? oddCell(row, may, false);
    if (odd) return { where: `row ${i + 1}`, ...odd };
  }
  return undefined;
}

function oddCell(
  row: Row,
  columns: PictureColumns,
  needed: boolean,
): { readonly got: string; readonly must: string } | undefined {
  for (const [column, kind] of Object.entries(columns)) {
    const cell = column === "position" ? (row["position"] ?? row["hole"]) : row[column];
    if (cell === undefined) {
      if (needed) return { got: `no ${column}`, must: `have ${withArticle(kind)} for ${column}` };
      continue;
    }
    if (kind !== "text" && (!("si" in cell) || !kindsAgree(cell.kind, kind)))
      return { got: `${column} as ${cell.kind}`, must: `be ${withArticle(kind)}` };
  }
  return undefined;
}
