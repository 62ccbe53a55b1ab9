// A given or a reading of one value: typed text → quantity or text, with how it was understood.
import type { GivenItem, SpreadText } from "../document/item.ts";
import { coverage, statedDoubt } from "../methods/stated-doubt.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { type Contribution, halfWidth, own } from "../standing.ts";
import { type Kind, kindsOf } from "../units/kind.ts";
import { halfWidthOf, oneValue, type Quantity } from "../units/quantity.ts";
import { scan } from "../units/scan.ts";
import type { LineValue, SourceState } from "./line.ts";

interface Since {
  /** The source as it was typed since; the file's own holds for the file's value only. */
  readonly source?: string | undefined;
  /** The text that a person has confirmed as meant. */
  readonly confirmed?: string | undefined;
}

export function givenValue(item: GivenItem, text: string, since: Since = {}): LineValue | Problem {
  const { source } = since;
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
  const doubt = doubtOf(item, typed, text);
  if (isProblem(doubt)) return doubt;
  const sourceState = sourceStateOf(item, text, source);
  const kind = expected ?? typed.kind;
  const confirm = read.outcome === "warn" && since.confirmed !== text ? read.problem : undefined;
  return {
    type: "quantity",
    kind,
    dimension: typed.unit.dimension,
    si: typed.si,
    typed,
    readAs: read.readAs,
    confirm,
    halfWidth: doubt.length === 0 ? undefined : halfWidth(doubt),
    sourceState,
    named: {
      typed: { dimension: typed.unit.dimension, kind },
      value: typed.si,
      leaf: {
        symbol: item.name,
        kind: kind ?? kindsOf(typed.unit.dimension)[0],
        dimension: typed.unit.dimension,
        si: typed.si,
        unit: typed.unit,
      },
      standing: {
        doubt,
        reservations: confirm ? [confirm.with({ what: `${item.says ?? item.name}: ${confirm.what}` })] : [],
        memory: fromMemory(source ?? item.source)
          ? [`${item.says ?? item.name}: ${source ?? item.source ?? ""}`]
          : [],
        unsourced: sourceState === "stated" ? [] : [item.says ?? item.name],
      },
    },
  };
}

/** What the file says of the source once the value has been changed and nobody has stated a new one. */
export const sourceLeft = ({ source = "", value }: GivenItem): string =>
  /^not stated\b/i.test(source) ? source : `not stated for this value; for ${value}: ${source}`;

/** Whether a source text says that it was recalled and not seen. */
export const fromMemory = (source: string | undefined): boolean => /\bfrom memory\b/i.test(source ?? "");

/** A changed value leaves its source behind until one is stated for the new value. */
export function sourceStateOf(item: GivenItem, text: string, source: string | undefined): SourceState {
  const stated = (words: string | undefined): boolean =>
    words !== undefined && words.trim() !== "" && !/^not stated\b/i.test(words.trim());
  if (stated(source)) return "stated";
  if (!stated(item.source)) return "not stated";
  return sameTyped(item, text) ? "stated" : "changed";
}

/** The same value with the same ±, however it is spelled. */
function sameTyped(item: GivenItem, text: string): boolean {
  if (text.trim() === item.value.trim()) return true;
  if (item.as === "text" || item.choices) return false;
  const expected = item.as ?? kindAtFirst(item.value);
  const [now, filed] = [scan(text, expected).quantity, scan(item.value, expected).quantity];
  if (!now || !filed || now.si !== filed.si) return false;
  return halfWidthOf(now)?.halfWidth === halfWidthOf(filed)?.halfWidth;
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

/** Whether the text itself says how far the value may lie from it. */
export const hasSpread = (item: GivenItem, text: string): boolean =>
  scan(text, item.as === "text" ? undefined : (item.as ?? kindAtFirst(item.value))).spread !== undefined;

function textValue(item: GivenItem, text: string): LineValue | Problem {
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

/** A spread typed with the value stands for that value; else the one stated beside it, in the file. */
function doubtOf(item: GivenItem, typed: Quantity, text: string): readonly Contribution[] | Problem {
  if (typed.spread && item.spread && text.trim() === item.value.trim())
    return problem({
      code: "spread-twice",
      what: item.says ?? item.name,
      got: "a ± with the value and a spread beside it",
      must: "state the spread once",
    });
  if (typed.spread || !item.spread) return statedDoubt(item.name, typed, item.says);
  const found = spreadHalfWidth(item.spread, typed);
  if (isProblem(found)) return found;
  const { half, meaning } = found;
  if (half === 0) return [];
  const { applies } = item.spread;
  const share = typed.si === 0 ? 0 : Math.abs(half / typed.si);
  return [
    {
      root: item.name,
      group: item.name,
      says: item.says ?? item.name,
      meaning,
      ...own(half),
      ...(applies === undefined ? {} : { applies: { output: applies, share } }),
    },
  ];
}

interface Half {
  readonly half: number;
  readonly meaning: Contribution["meaning"];
}

/** Half-width of a spread stated beside the value, SI; a percentage is taken of the value. */
function spreadHalfWidth(spread: SpreadText, of: Quantity): Half | Problem {
  const limits = (half: number): Half => ({ meaning: "limits", half });
  if (spread.form === "plusMinus") {
    const share = spread.plusMinus.includes("%");
    const width = oneValue(spread.plusMinus, share ? "ratio" : widthKind(of.kind));
    if (isProblem(width)) return width;
    const half = share ? Math.abs(of.si) * width.si : width.si;
    if (!(half >= 0))
      return problem({
        code: "negative-spread",
        what: "spread",
        got: spread.plusMinus,
        must: "be at least 0",
        why: "it is a half-width",
      });
    if (spread.meaning === "limits") return limits(half);
    const k = spread.meaning === "expanded" ? Number(spread.k) : 1;
    return k > 0
      ? { meaning: "expanded", half: (half * coverage) / k }
      : problem({ code: "coverage-factor", what: "coverage factor k", must: "be a number above 0" });
  }
  if (spread.form === "resolution") {
    const step = oneValue(spread.resolution, widthKind(of.kind));
    return isProblem(step) ? step : limits(Math.abs(step.si) / 2);
  }
  const lower = oneValue(spread.lower, of.kind);
  const upper = oneValue(spread.upper, of.kind);
  if (isProblem(lower)) return lower;
  if (isProblem(upper)) return upper;
  if (!(lower.si <= of.si && of.si <= upper.si))
    return problem({
      code: "outside-its-limits",
      what: "spread",
      got: `${spread.lower} to ${spread.upper} for ${of.text}`,
      must: "hold the value between its limits, the lower one first",
    });
  return limits(Math.max(upper.si - of.si, of.si - lower.si));
}

/** A width of a temperature is a difference. */
const widthKind = (kind: Kind | undefined): Kind | undefined =>
  kind === "temperature" ? "temperature difference" : kind;
