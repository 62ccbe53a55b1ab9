// The declaration of a method: question, inputs, formula texts, limits, sources.
// The texts are the only spelling of an equation: dimension check, value, shown working,
// spread and derivatives are all read from them.
import type { Problem } from "../problem.ts";
import type { Source } from "../source.ts";
import type { Kind } from "../units/kind.ts";
import type { InputField, InputsOf, InputValue, OutputField } from "./field.ts";
import type { Insides } from "./inside.ts";
import { run } from "./run.ts";
import type { Solution } from "./solution.ts";

export type Steps = Readonly<Record<string, string>>;

export interface Limit {
  /** A comparison in the formula language; a limit whose names are absent is passed over. */
  readonly that: string;
  /** What happens outside: "no stress is defined". */
  readonly else: string;
  readonly hint?: string;
  readonly source?: Source;
  /**
   * Outside it the answer is still shown, with a warning. advice: the number holds, no verdict changes.
   * spoils: the number does not hold, so that a check on it proves nothing.
   */
  readonly warn?: "advice" | "spoils";
  /** A name for programs, where what happens outside is more than a limit that was passed. */
  readonly code?: string;
  /** The outputs that do not hold; where none is named, all of them. */
  readonly spoils?: readonly string[];
}

/** What a procedure hands on under one name. */
export interface GivenField {
  readonly kind: Kind | "text" | "yes/no";
  readonly symbol?: string;
  readonly says?: string;
}

/** The part of a method that is not a closed formula: a look-up, a search, a fit, an ordering. */
export interface Procedure {
  /** In words, beside the source: "row of the thread table named by the designation". */
  readonly says: string;
  readonly source: Source;
  /** What it hands on to the steps beside the outputs that no step works out: those stand in `outputs` alone. */
  readonly gives?: Readonly<Record<string, GivenField>>;
  /** Rows it hands on, as columns, beside the columns of outputs. */
  readonly givesRows?: Readonly<Record<string, Readonly<Record<string, GivenField>>>>;
  /**
   * The inputs it reads, where it does not read all of them: for every variant alike, variant by
   * variant, or by what is given. What neither it nor a step reads is refused when it is given.
   */
  readonly reads?:
    | readonly string[]
    | Readonly<Record<string, readonly string[]>>
    | ((inputs: Insides) => readonly string[]);
  readonly run: (inputs: Insides) => Insides | Problem;
  /** Where the row found comes from, where that differs from row to row. */
  readonly sourcesOf?: (inputs: Insides) => readonly Source[];
  /** Sources and remarks that depend on the row found. */
  readonly remarks?: (inputs: Insides) => readonly string[];
}

export interface Declaration {
  readonly id: string;
  /** One sentence: the question this method answers. */
  readonly question: string;
  readonly inputs: Readonly<Record<string, InputField>>;
  readonly procedure?: Procedure;
  /** Formulas worked out for each row of a list; a value given in the row wins over its formula. */
  readonly each?: Readonly<Record<string, Steps>>;
  readonly steps?: Steps;
  /** Step sets chosen by a text input; they run before `steps`. */
  readonly variants?: {
    readonly by: string;
    readonly sets: Readonly<Record<string, Steps>>;
    readonly sources?: Readonly<Record<string, Source>>;
  };
  readonly outputs: Readonly<Record<string, OutputField>>;
  /** Symbol, kind and words of steps that are not outputs. */
  readonly between?: Readonly<
    Record<string, { readonly kind?: Kind; readonly symbol?: string; readonly says?: string }>
  >;
  readonly limits: readonly Limit[];
  /** One source for each step name; "*" stands for every step not named. */
  readonly sources: Readonly<Record<string, Source>>;
  /** Remarks a practitioner would make, always shown. */
  readonly notes?: readonly string[];
  /** Its texts and truths already count a stated uncertainty, so that doubt carried in overturns none of them. */
  readonly countsDoubt?: boolean;
  /** It looks for missing rows itself and answers with them, so that a missing row leaves its answer whole. */
  readonly countsMissing?: boolean;
  /** Standing cautions that go with this work, C1 to C8. */
  readonly cautions?: readonly string[];
}

export interface Method<D extends Declaration = Declaration> extends Declaration {
  readonly inputs: D["inputs"];
  readonly outputs: D["outputs"];
  readonly solve: (inputs: InputsOf<D["inputs"]>) => Solution | Problem;
  /** The same for callers that know the names only at run time. */
  readonly solveNamed: (inputs: Readonly<Record<string, InputValue | undefined>>) => Solution | Problem;
}

/** With what the procedure gives to the outputs, read off the outputs: every one that no step works out. */
function withGiven<const D extends Declaration>(d: D): D {
  if (!d.procedure) return d;
  const gives: Record<string, GivenField> = {};
  const givesRows: Record<string, Record<string, GivenField>> = {};
  const worked = new Set([d.steps ?? {}, ...Object.values(d.variants?.sets ?? {})].flatMap(Object.keys));
  for (const [name, output] of Object.entries(d.outputs)) {
    if (worked.has(name)) continue;
    if (output.kind !== "list") gives[name] = output;
    else if (d.inputs[name] === undefined)
      givesRows[name] = Object.fromEntries(
        Object.entries(output.of).filter(([column]) => d.each?.[name]?.[column] === undefined),
      );
  }
  for (const [list, columns] of Object.entries(d.procedure.givesRows ?? {}))
    givesRows[list] = { ...givesRows[list], ...columns };
  return { ...d, procedure: { ...d.procedure, gives: { ...gives, ...d.procedure.gives }, givesRows } };
}

/** Declares a method. Formula texts are parsed and checked at first use, so that start-up stays short. */
export function method<const D extends Declaration>(stated: D): Method<D> {
  const declaration = withGiven(stated);
  if (Object.keys(declaration.sources).length === 0)
    throw new Error(`${declaration.id}: a method needs a source`);
  if (Object.keys(declaration.outputs).length === 0)
    throw new Error(`${declaration.id}: a method needs an output`);
  const solveNamed = (inputs: Readonly<Record<string, InputValue | undefined>>) => run(declaration, inputs);
  return {
    ...declaration,
    solveNamed,
    solve: (inputs) => solveNamed(inputs),
  };
}

export type { Inside, Insides } from "./inside.ts";
