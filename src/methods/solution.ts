// What a method answers: values, the working behind them, warnings and sources.
import { scaleOf } from "../formula/scale.ts";
import { type Shown, show, symbolOf } from "../formula/show.ts";
import type { Tree } from "../formula/tree.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import type { Source } from "../source.ts";
import { baseUnit } from "../units/base-unit.ts";
import { dimensionless } from "../units/dimension.ts";
import { formatIn, roundDecimal, withUnit } from "../units/format.ts";
import { inUnit } from "../units/in-unit.ts";
import { type Kind, kinds } from "../units/kind.ts";
import { type Unit, unit } from "../units/unit.ts";
import type { OutputValue } from "./field.ts";
import { foldColumns } from "./fold-columns.ts";
import type { Leaf } from "./leaf.ts";

/** Which unit a kind is shown in; a page can set its own. */
export type UnitChoice = (kind: Kind) => Unit;

const shownUnits = new Map<Kind, Unit>();

export const usualUnit: UnitChoice = (kind) => {
  const known = shownUnits.get(kind);
  if (known) return known;
  const found = unit(kinds[kind].usual[0] ?? kinds[kind].si, kind);
  if (isProblem(found)) throw new Error(`${kind}: its usual unit is not in the unit list`);
  shownUnits.set(kind, found);
  return found;
};

/** One step of a working: the equation in symbols, with numbers put in, and its result in SI. */
export interface WorkedStep {
  readonly name: string;
  readonly symbol: string;
  readonly says: string | undefined;
  readonly tree: Tree;
  /** Undefined where no kind has this dimension; `unit` is then the SI base unit. */
  readonly kind: Kind | "yes/no" | undefined;
  readonly unit?: Unit | undefined;
  readonly si: number;
  readonly yes?: boolean;
  readonly source: Source | undefined;
  /** Size of the numbers it was added up from, SI: what is rounding and no difference at a limit. */
  readonly scale: () => number;
  /** Equation in symbols, without its left side. */
  readonly symbols: () => Shown;
  /** The same with numbers and units put in. */
  readonly numbers: (unitOf?: UnitChoice) => Shown;
  /** "142.9 kN", or yes and no. */
  readonly result: (unitOf?: UnitChoice) => string;
}

/** What a method answers: outputs in SI, the working, what was said beside them, and the sources. */
export interface Solution {
  readonly method: string;
  readonly outputs: Readonly<Record<string, OutputValue>>;
  readonly working: readonly WorkedStep[];
  /** Everything said beside the answer, advice and what spoils it. */
  readonly warnings: readonly Problem[];
  /** Outputs whose number does not hold, each with the reasons: nothing is proven by them. */
  readonly spoilt: Readonly<Record<string, readonly Problem[]>>;
  /** Which variant ran, which row was read, what was assumed. */
  readonly notes: readonly string[];
  readonly sources: readonly Source[];
}

/** A number that was typed or set is shown with the digits it has, one that was computed with four. */
export function formatShort(si: number, shown: Unit, label = false): string {
  const number = roundDecimal(inUnit(si, shown), { significant: 12 })
    .replace(/(\.\d*?)0+(?=e|$)/, "$1")
    .replace(/\.(?=e|$)/, "");
  const digits = number.replace(/e.*|[^\d]/g, "").replace(/^0+/, "");
  return digits.length <= 8 ? withUnit(number, shown, label) : formatIn(si, shown, { label });
}

/** A computed value as people read it: a whole count whole, everything else by the unit layer's rule. */
export function formatValue(si: number, kind: Kind | undefined, shown: Unit, label = false): string {
  const whole = kind === "count" && Math.abs(si - Math.round(si)) < 1e-9;
  return formatIn(si, shown, whole ? { decimals: 0, label } : { label });
}

/** The unit of a value that was computed: the page's choice for its kind, else SI base units. */
export const computedUnit = (
  { kind, dimension }: Pick<Leaf, "kind" | "dimension">,
  unitOf: UnitChoice = usualUnit,
): Unit => (kind === undefined ? baseUnit(dimension ?? dimensionless) : unitOf(kind));

const numberOf = (si: number, found: Leaf, unitOf: UnitChoice): Shown => {
  const text = found.unit
    ? formatShort(si, found.unit, true)
    : formatValue(si, found.kind, computedUnit(found, unitOf), true);
  const gap = text.indexOf(" ");
  return gap < 0
    ? { type: "number", text }
    : { type: "number", text: text.slice(0, gap), unit: text.slice(gap + 1) };
};

export function workedStep(
  step: Pick<WorkedStep, "name" | "symbol" | "says" | "tree" | "kind" | "si" | "source"> & {
    readonly yes?: boolean;
    /** The unit the result is asked for in. */
    readonly unit?: Unit | undefined;
  },
  leaf: (name: string) => Leaf | undefined,
): WorkedStep {
  const bare = (name: string): Shown => symbolOf(leaf(name)?.symbol ?? name);
  return {
    ...step,
    scale: () =>
      scaleOf(
        step.tree,
        (name) => leaf(name)?.si ?? problem({ code: "no-value", what: name }),
        (name) => leaf(name)?.scale?.(),
      ),
    symbols: () => show(step.tree, bare),
    numbers: (unitOf = usualUnit) => {
      const folded = foldColumns(step.tree, leaf);
      return show(folded.tree, (name) => {
        const found = folded.leaf(name);
        if (!found || typeof found.si !== "number") return bare(name);
        return numberOf(found.si, found, unitOf);
      });
    },
    result: (unitOf = usualUnit) =>
      step.kind === "yes/no"
        ? step.yes
          ? "yes"
          : "no"
        : formatValue(step.si, step.kind, step.unit ?? unitOf(step.kind ?? "ratio"), true),
  };
}
