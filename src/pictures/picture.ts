// A picture, declared like a method: its question, what it takes, the numbers it draws, its sentence and its table.
// Nothing here knows how it is drawn.
import { held } from "../document/held.ts";
import type { PictureInputs, Told } from "../engine/line.ts";
import type { KnownPicture } from "../engine/pictures.ts";
import type { OutputValue, SiValue } from "../methods/field.ts";
import type { AnyMethod } from "../methods/register.ts";
import type { UnitChoice } from "../methods/solution.ts";
import { isProblem, type Problem, problem, root, sentence } from "../problem.ts";
import { cite } from "../source.ts";
import { type Kind, kinds } from "../units/kind.ts";
import { pictureFault } from "./faults.ts";
import type { Field, Fields, Given, ListColumns } from "./fields.ts";
import { type Row, wordIn } from "./rows.ts";

export interface Declared<Of extends Fields = Fields> {
  readonly id: string;
  /** One sentence: the question this picture answers. */
  readonly question: string;
  readonly of: Of;
  /** At least one of these has to be there. */
  readonly anyOf?: readonly (keyof Of & string)[];
  /** An input that says nothing without another. */
  readonly needs?: Readonly<Partial<Record<keyof Of & string, keyof Of & string>>>;
  /** Any further list has these columns and is called by the name of its input. */
  readonly further?: ListColumns;
  readonly formerly?: readonly string[];
  /** How it is known: the methods worked out here. All else that is drawn stands on the page as it is. */
  readonly by?: readonly AnyMethod[];
  /** Whether the first of them gives the limits drawn, so that its source is told. */
  readonly limited?: true;
}

export type Further = Readonly<Record<string, readonly Row[]>>;

export interface Picture<Id extends string, Of extends Fields, M> extends Declared<Of> {
  readonly id: Id;
  /** The numbers to draw, SI, or why there are none. */
  readonly model: (given: Given<Of>, further: Further) => M | Problem;
  readonly says: (model: M, unitOf: UnitChoice) => string;
  readonly table: (model: M, unitOf: UnitChoice) => Told["table"];
}

export function picture<const Id extends string, const Of extends Fields, M>(
  declared: Picture<Id, Of, M>,
): Picture<Id, Of, M> & KnownPicture {
  const { id, of, by = [], limited } = declared;
  const source = limited && by[0] ? Object.values(by[0].sources).slice(0, 1).map(cite).join("") : undefined;
  return {
    ...declared,
    choicesOf: (input) => {
      const field: Field | undefined = of[input];
      return field?.is === "word" ? field.choices : [];
    },
    faultOf: (inputs) => pictureFault(declared, inputs),
    tell: (inputs, unitOf) => {
      const given = taken(id, of, inputs);
      if (isProblem(given)) return given;
      const model = declared.model(...given);
      if (isProblem(model)) return refused(id, model);
      const said = declared.says(model, unitOf);
      return { picture: id, sentence: said, table: declared.table(model, unitOf), source, model };
    },
  };
}

/** What a model refuses is said in the name of its picture. */
export const cannotDraw = (code: string, got: string, must: string, hint?: string): Problem =>
  problem({ code, what: "picture", got, must, hint });

const refused = (id: string, found: Problem): Problem =>
  found.what === "picture" ? found.with({ what: `picture ${id}` }) : found;

/** The values of the inputs as they are declared, and of further lists; the entry has no fault. */
function taken<Of extends Fields>(
  id: string,
  of: Of,
  inputs: PictureInputs,
): readonly [Given<Of>, Further] | Problem {
  const lists = Object.entries(of).filter(([, field]) => field.is === "list" && !field.orNumber);
  const given: Record<string, unknown> = Object.fromEntries(lists.map(([name]) => [name, []]));
  const further: Record<string, readonly Row[]> = {};
  for (const [name, input] of Object.entries(inputs)) {
    if (isProblem(input)) return noAnswer(id, name, input);
    if ("si" in input && !Number.isFinite(input.si))
      return noAnswer(id, name, problem({ code: "not-finite", what: name, got: "no finite number" }));
    if (Object.hasOwn(of, name)) given[name] = drawnValue(of[name], input);
    else if (input.kind === "list") further[name] = input.rows;
  }
  return [held<Given<Of>>(given), further];
}

function drawnValue(field: Field | undefined, input: OutputValue): unknown {
  if (input.kind === "list") return input.rows;
  return field?.is !== "word" && "si" in input ? input.si : wordIn({ word: input }, "word");
}

const noAnswer = (picture: string, name: string, cause: Problem): Problem =>
  problem({
    code: "no-answer-upstream",
    what: `picture ${picture}`,
    got: `no answer for ${name}`,
    why: sentence(root(cause)),
    cause: root(cause),
  });

type Numbers<Name extends string> = Readonly<Record<Name, number>>;

/** Outputs of a method for SI numbers, each of the kind that its input declares. */
export function worked<Name extends string>(
  method: AnyMethod,
  inputs: Readonly<Record<string, number | undefined>>,
  ...outputs: readonly Name[]
): Numbers<Name> | Problem {
  const given = Object.entries(inputs).flatMap(([name, si]) => {
    const kind = method.inputs[name]?.kind;
    if (si === undefined || kind === undefined || kind === "text" || kind === "list") return [];
    return [[name, siValue(kind, si)] as const];
  });
  const solved = method.solveNamed(Object.fromEntries(given));
  if (isProblem(solved)) return solved;
  const numbers = outputs.map((name) => {
    const output = solved.outputs[name];
    return [name, output && "si" in output ? output.si : Number.NaN] as const;
  });
  return held<Numbers<Name>>(Object.fromEntries(numbers));
}

export const siValue = (kind: Kind, si: number): SiValue => ({ si, kind, dimension: kinds[kind].dimension });
