// What a picture takes under `of`, as data: the entry on a page is checked by it, the model gets its values by it.
// Columns of a list are those it must have in every row and those it may have; a column not named is left alone.
import type { Kind } from "../units/kind.ts";
import type { Row } from "./rows.ts";

/** "text" for a column that only names something; any plain value serves. */
export type Columns = Readonly<Record<string, Kind | "text">>;

export interface ListColumns {
  readonly must: Columns;
  readonly may: Columns;
}

interface NumberInput {
  readonly is: "number";
  readonly kind: Kind;
  readonly optional: boolean;
}

/** A single word, such as a step or a pass. */
interface WordInput {
  readonly is: "word";
  readonly optional: boolean;
  readonly choices: readonly string[];
}

interface ListInput extends ListColumns {
  readonly is: "list";
  readonly optional: boolean;
  /** One number of this kind may stand for all rows. */
  readonly orNumber?: Kind;
}

export type Field = NumberInput | WordInput | ListInput;
export type Fields = Readonly<Record<string, Field>>;

/** The values of declared inputs: SI numbers, words, rows; no rows where a list that is only a list is not given. */
export type Given<Of> = { readonly [N in keyof Of]: GivenField<Of[N]> };

type GivenField<F> = F extends { is: "list" }
  ? readonly Row[] | (F extends { orNumber: Kind } ? number | undefined : never)
  : F extends { is: "word" }
    ? string | undefined
    : F extends { optional: false }
      ? number
      : number | undefined;

export const number = <K extends Kind>(kind: K) => ({ is: "number", kind, optional: false }) as const;
export const maybe = <K extends Kind>(kind: K) => ({ is: "number", kind, optional: true }) as const;
export const word = (...choices: readonly string[]) => ({ is: "word", optional: true, choices }) as const;
export const list = (must: Columns, may: Columns = {}) =>
  ({ is: "list", optional: false, must, may }) as const;
export const maybeList = (must: Columns, may: Columns = {}) =>
  ({ is: "list", optional: true, must, may }) as const;
