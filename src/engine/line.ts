// What a page shows at one item. No DOM, no clock, no file.
import type { Item } from "../document/item.ts";
import type { Block } from "../document/markdown.ts";
import type { Typed } from "../formula/check-dimensions.ts";
import type { Value } from "../formula/value.ts";
import type { OutputValue } from "../methods/field.ts";
import type { Leaf } from "../methods/leaf.ts";
import type { Solution, WorkedStep } from "../methods/solution.ts";
import type { Problem } from "../problem.ts";
import type { Contribution, Standing } from "../standing.ts";
import type { Dimension } from "../units/dimension.ts";
import type { Kind } from "../units/kind.ts";
import type { Quantity } from "../units/quantity.ts";
import type { Unit } from "../units/unit.ts";
import type { State } from "../verdict.ts";

/** A value as formulas see it; made once, since many lines may use it. */
export interface Named {
  readonly typed: Typed;
  readonly value: Value;
  readonly leaf: Leaf | undefined;
  /** What is known about it; the doubt of a column stands row by row in `rows`. */
  readonly standing: Standing;
  readonly rows?: readonly (readonly Contribution[])[] | undefined;
}

/** Where a given comes from: stated, not stated, or stated for a value that has been changed since. */
export type SourceState = "stated" | "not stated" | "changed";

export interface QuantityValue {
  readonly type: "quantity";
  readonly kind: Kind | undefined;
  readonly dimension: Dimension;
  readonly si: number;
  readonly typed: Quantity;
  /** "torque, 705.0 N.m": how the typed text was understood. */
  readonly readAs: string | undefined;
  /** A reading that nobody has confirmed yet, such as kg taken as force; until then nothing is proven by it. */
  readonly confirm: Problem | undefined;
  /** Half-width of the stated spread in SI, where one is given. */
  readonly halfWidth: number | undefined;
  readonly sourceState: SourceState;
  readonly named: Named;
}

export interface FormulaValue {
  readonly type: "formula";
  /** Undefined where no kind has this dimension: `unit` is then the SI base unit. */
  readonly kind: Kind | "yes/no" | undefined;
  readonly dimension: Dimension;
  readonly si: number;
  /** The unit the page asks for at this working. */
  readonly unit: Unit | undefined;
  readonly step: WorkedStep;
  readonly named: Named;
}

export interface CheckValue {
  readonly type: "check";
  readonly state: State;
  /** The state the numbers give; differs from `state` only when waived. */
  readonly judged: State;
  readonly kind: Kind | undefined;
  /** The unit value and limits are shown in. */
  readonly unit: Unit | undefined;
  /** NaN where the check has no number to show, as for a yes or no. */
  readonly si: number;
  readonly yes: boolean | undefined;
  readonly limits: { readonly atLeast?: number | undefined; readonly atMost?: number | undefined };
  /** Half-width that judged: the larger of what the check declares and what its inputs bring with them. */
  readonly uncertainty: number;
  /** What the inputs bring with them, and the causes, the largest first. */
  readonly carried: { readonly halfWidth: number; readonly from: readonly string[] };
  /** Why the number may not hold; with any of these nothing is proven. */
  readonly reservations: readonly Problem[];
  /** Sources behind it from memory, and givens without one. */
  readonly memory: readonly string[];
  readonly unsourced: readonly string[];
  /** Value against limit. */
  readonly reason: string;
  /** The same with the reservations. */
  readonly why: string;
  /** The method's own warning, where that is why a yes or no fails. */
  readonly because?: Problem | undefined;
  readonly waived: { readonly by: string; readonly why: string } | undefined;
  readonly step: WorkedStep;
}

export interface TableColumn {
  readonly name: string;
  readonly kind: Kind | "tag" | "text";
  readonly unit: string | undefined;
  /** SI numbers; undefined where the reading is missing. Texts for tags. */
  readonly values: readonly (number | string | undefined)[];
  readonly typed: readonly string[];
  /** Expanded uncertainty of each reading, SI, brought to k = 2. */
  readonly uncertainty?: number | undefined;
  /** A blank here is no missing reading. */
  readonly optional: boolean;
}

/** A reading that is kept and not used. */
export interface SetAside {
  readonly row: number;
  /** "13 · lo split · along" */
  readonly place: string;
  readonly why: string;
  /** Who set it aside; empty where the table does not say. */
  readonly by: string;
  /** Another reading of the same place counts instead. */
  readonly readAgain: boolean;
}

/** missing: wanted and not there, never zero. odd: asked about, never dropped. */
export type ReadingState = "missing" | "entered" | "odd" | "corrected" | "set aside";

export interface TableValue {
  readonly type: "table";
  readonly says: string | undefined;
  readonly columns: readonly TableColumn[];
  readonly rows: number;
  /** Readings that are wanted or begun and not there. */
  readonly missing: number;
  /** One for each row, in order. */
  readonly states: readonly ReadingState[];
  /** For each odd row the columns that make it odd. */
  readonly oddIn: ReadonlyMap<number, readonly string[]>;
  readonly key: readonly string[];
  readonly setAside: readonly SetAside[];
  /** Expected readings that have no row: their key columns. */
  readonly wanted: readonly Readonly<Record<string, string>>[];
}

export interface SolutionValue {
  readonly type: "solution";
  readonly solution: Solution;
  /** What its inputs hand on, and its own sources from memory. */
  readonly standing: Standing;
}

export interface RowOf<T> {
  readonly key: string;
  /** What the row of the table says besides its key, where the whole group says the same. */
  readonly tags: Readonly<Record<string, string>>;
  readonly value: T | Problem;
}

/** One answer for each key of a table. */
export interface RowsValue {
  readonly type: "rows";
  readonly key: string;
  readonly method: string | undefined;
  readonly rows: readonly RowOf<SolutionValue | FormulaValue>[];
}

/** One check for each key; `state` is the worst of them. */
export interface ChecksValue {
  readonly type: "checks";
  readonly key: string;
  readonly state: State;
  readonly reason: string;
  readonly why: string;
  /** Why the list itself may not hold, where a check asks whether it is empty. */
  readonly reservations: readonly Problem[];
  readonly rows: readonly RowOf<CheckValue>[];
}

export interface PictureValue {
  readonly type: "picture";
  readonly picture: string;
  readonly inputs: PictureInputs;
  /** What the picture says, or which input has no answer. */
  readonly told: Told | Problem;
  /** Why what is drawn may not hold. */
  readonly reservations: readonly Problem[];
}

/** The same in words, as a table and as numbers to draw. */
export interface Told {
  readonly picture: string;
  readonly sentence: string;
  readonly table: {
    readonly title: string;
    readonly head: readonly string[];
    readonly rows: readonly (readonly string[])[];
  };
  /** Where the limits drawn come from. */
  readonly source: string | undefined;
  /** Only the drawing of this picture knows its shape. */
  readonly model: unknown;
}

export type PictureInputs = Readonly<Record<string, PictureInput>>;

/** A number with its kind, a text, a truth, or why there is none. */
export type PictureInput = OutputValue | Problem;

/** What stands in place of a {formula}: "no answer" where there is none, with the reason. */
export interface BoundText {
  readonly text: string;
  readonly problem: Problem | undefined;
}

/** A note as parsed, and the words for each formula in it. */
export interface ProseValue {
  readonly type: "prose";
  readonly blocks: readonly Block[];
  readonly bound: Readonly<Record<string, BoundText>>;
}

/** What one item of a page came to; `type` tells which, numbers are in SI. */
export type LineValue =
  | QuantityValue
  | FormulaValue
  | CheckValue
  | TableValue
  | PictureValue
  | { readonly type: "text"; readonly text: string }
  | SolutionValue
  | RowsValue
  | ChecksValue
  | ProseValue;

/** What a page shows at one item: its value, or why there is none, and the lines it reads and is read by. */
export interface Line {
  readonly name: string;
  readonly item: Item;
  readonly value: LineValue | Problem;
  /** The note that stands beside the item. */
  readonly note: ProseValue | undefined;
  /** Name of the line where the trouble began, when there is no answer. */
  readonly guilty: string | undefined;
  readonly uses: readonly string[];
  readonly usedBy: readonly string[];
  /** The wave in which the value last changed. */
  readonly version: number;
}
