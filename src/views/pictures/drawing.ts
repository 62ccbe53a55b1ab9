// What every picture gives: a drawing for a width, one sentence and a table that say the same.
import type { PictureInput } from "../../engine/line.ts";
import type { UnitChoice } from "../../methods/solution.ts";
import type { Problem } from "../../problem.ts";

export interface Drawing {
  readonly draw: (width: number) => SVGSVGElement;
  readonly sentence: string;
  /** Where the limits drawn come from. */
  readonly source?: string;
  readonly table: {
    readonly title: string;
    readonly head: readonly string[];
    readonly rows: readonly (readonly string[])[];
  };
}

export type PictureInputs = Readonly<Record<string, PictureInput>>;
export type Picture = (inputs: PictureInputs, unitOf: UnitChoice) => Drawing | Problem;
