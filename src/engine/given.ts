// A given or a reading of one value: typed text → quantity or text, with how it was understood.
import type { GivenItem, SpreadText } from "../document/item.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { type Kind, kindsOf } from "../units/kind.ts";
import { oneValue, type Quantity } from "../units/quantity.ts";
import { type Scan, scan } from "../units/scan.ts";
import type { CellValue } from "./cell.ts";

export function givenValue(item: GivenItem, text: string): CellValue | Problem {
  if (item.as === "text" || item.choices) return textValue(item, text);
  if (text.trim() === "")
    return problem({
      code: "missing",
      what: item.says ?? item.name,
      got: "nothing",
      must: "be given",
      hint: item.as ? `a ${item.as} with its unit` : "a number with its unit",
    });
  const expected = item.as ?? kindAtFirst(item.value);
  const read = scan(text, expected);
  if (read.outcome === "designation") return { type: "text", text: text.trim() };
  const typed = read.quantity;
  if (!typed)
    return (
      read.problem ??
      problem({
        code: "not-read",
        what: item.says ?? item.name,
        got: text,
        must: "be a number with its unit",
      })
    );
  const halfWidth = item.spread ? spreadHalfWidth(item.spread, typed) : typedHalfWidth(read, typed);
  if (isProblem(halfWidth)) return halfWidth;
  const kind = expected ?? typed.kind;
  return {
    type: "quantity",
    kind,
    dimension: typed.unit.dimension,
    si: typed.si,
    typed,
    readAs: read.readAs,
    confirm: read.outcome === "warn" ? read.problem : undefined,
    halfWidth,
    named: {
      typed: { dimension: typed.unit.dimension, kind },
      value: typed.si,
      leaf: {
        symbol: item.name,
        kind: kind ?? kindsOf(typed.unit.dimension)[0] ?? "ratio",
        si: typed.si,
        unit: typed.unit,
      },
    },
  };
}

/**
 * A field keeps the kind it was written with: a bare number typed over a torque is asked about,
 * while a field that held a plain number is a ratio.
 */
function kindAtFirst(written: string): Kind | undefined {
  if (/^\s*[-+−]?(\d+\.?\d*|\.\d+)(e[-+]?\d+)?\s*$/i.test(written)) return "ratio";
  return scan(written).quantity?.kind;
}

/** The kind the file has to state so that this text, read again, means the same. */
export function kindToState(item: GivenItem, text: string): Kind | undefined {
  if (item.as !== undefined || item.choices) return undefined;
  const expected = kindAtFirst(item.value);
  const kept = scan(text, expected);
  const alone = scan(text, kindAtFirst(text));
  const same =
    kept.outcome === alone.outcome &&
    kept.quantity?.si === alone.quantity?.si &&
    kept.quantity?.kind === alone.quantity?.kind;
  return same ? undefined : expected;
}

function textValue(item: GivenItem, text: string): CellValue | Problem {
  const choices = item.choices;
  if (choices && !choices.includes(text.trim()))
    return problem({
      code: "not-a-choice",
      what: item.says ?? item.name,
      got: text,
      must: `be one of ${choices.join(", ")}`,
      suggestions: [...choices],
    });
  return text.trim() === ""
    ? problem({ code: "missing", what: item.says ?? item.name, got: "nothing", must: "be given" })
    : { type: "text", text: text.trim() };
}

/** Half-width of a stated spread in SI; a percentage is taken of the value. */
function spreadHalfWidth(spread: SpreadText, of: Quantity): number | undefined | Problem {
  if (spread.form === "plusMinus") {
    const width = oneValue(spread.plusMinus, spread.plusMinus.includes("%") ? "ratio" : of.kind);
    if (isProblem(width)) return width;
    const share = spread.plusMinus.includes("%");
    return share ? Math.abs(of.si) * width.si : Math.abs(width.si);
  }
  if (spread.form === "resolution") {
    const step = oneValue(spread.resolution, of.kind);
    return isProblem(step) ? step : step.si / 2;
  }
  const lower = oneValue(spread.lower, of.kind);
  const upper = oneValue(spread.upper, of.kind);
  if (isProblem(lower)) return lower;
  return isProblem(upper) ? upper : (upper.si - lower.si) / 2;
}

function typedHalfWidth(read: Scan, of: Quantity): number | undefined {
  const spread = read.spread;
  if (!spread) return undefined;
  if (spread.form === "plusMinus") return Math.abs(spread.halfWidth.si);
  if (spread.form === "standard") return spread.u.si;
  return Math.max(spread.upper.si - of.si, of.si - spread.lower.si);
}
