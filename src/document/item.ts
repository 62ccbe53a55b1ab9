// What a page holds once it has been read: every text exactly as typed, nothing computed.
import type { Kind } from "../units/kind.ts";

/** Line and column of the file, both counted from 1. */
export interface Place {
  readonly line: number;
  readonly column: number;
}

/** One row of a list given to a method, e.g. a layer with thickness and modulus. */
export type RowText = Readonly<Record<string, string>>;
/** A name, a formula or a quantity text; or a list of them; or rows; or one record such as {x, y}. */
export type InputText = string | readonly string[] | readonly RowText[] | RowText;

type Distribution = "rectangular" | "triangular" | "trapezoid" | "normal" | "arcsine" | "t";

/** How far a value may lie from what is written. `meaning` is "limits" where the page does not say. */
export type SpreadText = {
  /** The output a scatter belongs to, e.g. the preload for a nut factor. */
  readonly applies?: string;
  readonly distribution?: Distribution;
  readonly degreesOfFreedom?: string;
} & (
  | { readonly form: "plusMinus"; readonly plusMinus: string; readonly meaning: "limits" | "standard" }
  | {
      readonly form: "plusMinus";
      readonly plusMinus: string;
      readonly meaning: "expanded";
      readonly k: string;
    }
  | { readonly form: "limits"; readonly lower: string; readonly upper: string }
  | { readonly form: "resolution"; readonly resolution: string }
);

interface Common {
  readonly says?: string;
  readonly source?: string;
  readonly note?: string;
  readonly stage?: string;
  readonly place: Place;
  /** Position in the page's list, from 0. */
  readonly index: number;
}

interface NoteItem extends Omit<Common, "note"> {
  readonly kind: "note";
  readonly text: string;
}

export interface GivenItem extends Common {
  readonly kind: "given";
  readonly name: string;
  readonly value: string;
  readonly as?: Kind | "text";
  readonly choices?: readonly string[];
  readonly spread?: SpreadText;
}

/** One answer for each value of `key` in the table `each`. */
export interface OverRows {
  readonly each?: string;
  readonly key?: string;
}

export interface MethodItem extends Common, OverRows {
  readonly kind: "working";
  readonly name: string;
  readonly by: string;
  readonly of: Readonly<Record<string, InputText>>;
}

export interface FormulaItem extends Common, OverRows {
  readonly kind: "working";
  readonly name: string;
  readonly formula: string;
  readonly unit?: string;
}

export interface CheckItem extends Common, OverRows {
  readonly kind: "check";
  readonly name: string;
  /** Empty where `none` stands. */
  readonly that: string;
  /** A list of which every row is a finding. */
  readonly none?: string;
  /** A text of the page, such as a head mark or the outcome of a pin test, and the texts that pass. */
  readonly reads?: string;
  readonly allowed?: readonly string[];
  readonly atLeast?: string;
  readonly atMost?: string;
  readonly between?: readonly [string, string];
  readonly uncertainty?: string;
  readonly waived?: { readonly by: string; readonly why: string };
}

export type ColumnKind = Kind | "tag" | "text";

export interface ReadingItem extends Common {
  readonly kind: "reading";
  readonly name: string;
  readonly columns: Readonly<Record<string, ColumnKind>>;
  /** Columns that together say which reading a row is. */
  readonly key?: readonly string[];
  /** Every combination of these is wanted; a reading that is not there is missing, never zero. */
  readonly expect?: Readonly<Record<string, readonly string[]>>;
  /** Columns that may stay blank: a blank there does not make the row missing. */
  readonly may?: readonly string[];
  /** Farther than this from the median of its group, a reading is asked about. */
  readonly odd?: Readonly<Record<string, string>>;
  /** Expanded uncertainty per column, all with the same coverage factor. */
  readonly uncertainty?: { readonly k: string; readonly of: Readonly<Record<string, string>> };
  readonly instrument?: string;
  readonly date?: string;
  readonly person?: string;
  readonly temperature?: string;
  /** Answers to what the rows alone leave open. */
  readonly delimiter?: Delimiter;
  readonly decimal?: DecimalMark;
  readonly rows: string;
  /** Line of the file that holds the first line of `rows`, when they stand there as a block. */
  readonly rowsLine?: number;
}

export type Delimiter = "comma" | "semicolon" | "tab";
export type DecimalMark = "point" | "comma";

export interface PictureItem extends Common {
  readonly kind: "picture";
  readonly picture: string;
  readonly of: Readonly<Record<string, string>>;
}

export type CautionCode = "C1" | "C2" | "C3" | "C4" | "C5" | "C6" | "C7" | "C8";

interface CautionItem extends Common {
  readonly kind: "caution";
  readonly code: CautionCode;
}

export type SignOffRole = "prepared" | "checked" | "signed";

/** Fingerprints only, never results. */
export interface SignOffRecord {
  readonly who: string;
  readonly role?: string;
  readonly date?: string;
  readonly content?: string;
  readonly result?: string;
  readonly versions?: string;
  readonly scope?: string;
  readonly remarks?: string;
  readonly key?: string;
  readonly signature?: string;
}

export interface SignOffItem extends Common {
  readonly kind: "sign-off";
  /** The person, where only a name is wanted. */
  readonly prepared?: string;
  readonly checked?: string;
  readonly signed?: string;
  readonly records: Readonly<Partial<Record<SignOffRole, SignOffRecord>>>;
}

export type WorkingItem = MethodItem | FormulaItem;

/** One item of a page, as read: its texts to the letter, nothing computed. */
export type Item =
  | NoteItem
  | GivenItem
  | WorkingItem
  | CheckItem
  | ReadingItem
  | PictureItem
  | CautionItem
  | SignOffItem;

/** A page as read from its file. */
export interface Page {
  readonly file: string;
  readonly title: string;
  readonly machine?: string;
  readonly subject?: string;
  readonly revision?: string;
  readonly preparedFor?: string;
  /** Start of the random numbers, so that a spread comes out the same again. */
  readonly seed?: number;
  /** Unit to show each kind of quantity in. */
  readonly show: Readonly<Partial<Record<Kind, string>>>;
  readonly items: readonly Item[];
}

export const isMethodItem = (item: Item): item is MethodItem => item.kind === "working" && "by" in item;
