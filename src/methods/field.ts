// What a method takes and gives, as data. Names are the catalogue's and are a public interface.
import type { Contribution } from "../standing.ts";
import type { Dimension } from "../units/dimension.ts";
import type { Kind } from "../units/kind.ts";
import type { Unit } from "../units/unit.ts";
import type { SortName } from "./sorts.ts";

export interface QuantityField {
  readonly kind: Kind;
  readonly symbol?: string;
  readonly says: string;
  /** Which sort of input it is, where its kind does not tell: judged as sorts.ts says. */
  readonly as?: SortName;
  readonly optional?: boolean;
  /** Quantity text used when nothing is given; the solution notes that it was assumed. */
  readonly default?: string;
  /** Why the default is more than a convenience: where it is taken, that stands as a warning. */
  readonly matters?: string;
}

export interface TextField {
  readonly kind: "text";
  readonly says: string;
  readonly optional?: boolean;
  readonly default?: string;
  /** As for a quantity. */
  readonly matters?: string;
  readonly choices?: readonly string[];
}

export interface ListField {
  readonly kind: "list";
  readonly says: string;
  readonly optional?: boolean;
  /** More than one row would be ignored, and is refused. */
  readonly one?: true;
  /** Columns that together name a row; a name given twice is refused. */
  readonly unique?: readonly string[];
  /** Fields of one row, e.g. thickness and modulus of a layer. */
  readonly of: Readonly<Record<string, QuantityField | TextField>>;
}

export type InputField = QuantityField | TextField | ListField;

export type OutputField =
  | { readonly kind: Kind; readonly symbol?: string; readonly says?: string; readonly optional?: boolean }
  | { readonly kind: "text"; readonly says?: string; readonly optional?: boolean }
  | { readonly kind: "yes/no"; readonly says?: string; readonly optional?: boolean }
  | {
      readonly kind: "list";
      readonly says?: string;
      readonly optional?: boolean;
      /** For the record (--json) alone: nobody at the bench reads it. */
      readonly recordOnly?: true;
      readonly of: Readonly<
        Record<
          string,
          { readonly kind: Kind | "text" | "yes/no"; readonly symbol?: string; readonly says?: string }
        >
      >;
    };

export const isRecordOnly = (output: OutputField | undefined): boolean =>
  output?.kind === "list" && output.recordOnly === true;

/** A value that has been read already: SI number, and the unit it was typed in where there was one. */
export interface SiValue {
  readonly si: number;
  readonly dimension: Dimension;
  readonly kind?: Kind | undefined;
  readonly unit?: Unit | undefined;
  /** What it may be off by, cause by cause. */
  readonly doubt?: readonly Contribution[] | undefined;
  /** Size of the numbers it was added up from, where that is not its own. */
  readonly scale?: (() => number) | undefined;
}

export const isSiValue = (value: unknown): value is SiValue =>
  typeof value === "object" && value !== null && "si" in value && "dimension" in value;

export type RowValue = Readonly<Record<string, string | number | SiValue>>;
/** One row of a list; a list with a single column takes plain values: ["150 kN", "142 kN"]. */
export type ListRow = RowValue | string | number | SiValue;
/** What an input takes: a text with its unit, a plain number where it is a ratio, a value read already (SI), or rows. */
export type InputValue = string | number | SiValue | readonly ListRow[];

export type ScalarOutput =
  | { readonly kind: Kind; readonly si: number; readonly doubt?: readonly Contribution[] | undefined }
  | { readonly kind: "text"; readonly text: string }
  | { readonly kind: "yes/no"; readonly yes: boolean };

/** An output: an SI number with its kind and doubt, a text, a yes or no, or rows of these. */
export type OutputValue =
  | ScalarOutput
  | { readonly kind: "list"; readonly rows: readonly Readonly<Record<string, ScalarOutput>>[] };

type ValueOf<F extends InputField> = F extends ListField
  ? readonly ListRow[]
  : F extends TextField
    ? string
    : string | number | SiValue;
type MayBeLeftOut<F> = F extends { optional: true } ? true : F extends { default: string } ? true : false;

/** Argument type of a method's solve, from its declared inputs. */
export type InputsOf<I extends Readonly<Record<string, InputField>>> = {
  readonly [N in keyof I as MayBeLeftOut<I[N]> extends true ? never : N]: ValueOf<I[N]>;
} & { readonly [N in keyof I as MayBeLeftOut<I[N]> extends true ? N : never]?: ValueOf<I[N]> | undefined };

/** The symbol that a declaration gives an input, an output, a column or what stands between. */
export const symbolIn = (field: object | undefined): string | undefined =>
  field !== undefined && "symbol" in field && typeof field.symbol === "string" ? field.symbol : undefined;

export const isQuantityField = (f: { readonly kind: string }): f is QuantityField =>
  f.kind !== "text" && f.kind !== "list" && f.kind !== "yes/no";
