// What stands in a working for a name: how it is called, its number and its unit.
import { type Dimension, dimensionless } from "../units/dimension.ts";
import { type Kind, kinds } from "../units/kind.ts";
import type { Unit } from "../units/unit.ts";

/** A quantity as it enters a working: how it is called, and its number with the unit to show. */
export interface Leaf {
  readonly symbol: string;
  /** Undefined where no kind has this dimension: then it is shown in SI base units. */
  readonly kind: Kind | undefined;
  readonly dimension?: Dimension | undefined;
  readonly si: number | readonly number[];
  /** The unit it was typed in; computed values follow the page's choice. */
  readonly unit?: Unit | undefined;
  /** Size of the numbers it was added up from, where that is not its own. */
  readonly scale?: (() => number) | undefined;
}

export const dimensionOf = ({ kind, dimension }: Pick<Leaf, "kind" | "dimension">): Dimension =>
  kind === undefined ? (dimension ?? dimensionless) : kinds[kind].dimension;
