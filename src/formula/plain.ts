// A display tree on one line: T / (K · d), √(σ² + 3 · τ²). Also read aloud, so no tricks of layout.
import { raised } from "../units/raised.ts";
import type { Shown } from "./show.ts";

export function plain(shown: Shown): string {
  switch (shown.type) {
    case "row":
      return plainRow(shown.parts);
    case "fraction":
      return `${above(shown.top)} / ${below(shown.bottom)}`;
    case "power":
      return `${plain(shown.base)}${exponent(shown.exponent)}`;
    case "root":
      return `√${isSingle(shown.of) ? plain(shown.of) : `(${plain(shown.of)})`}`;
    case "symbol":
      return shown.sub === undefined ? shown.text : `${shown.text}_${shown.sub}`;
    case "number":
      return shown.unit === undefined ? shown.text : `${shown.text} ${shown.unit}`;
    case "operator":
      return shown.text;
    case "fence":
      return `(${plain(shown.of)})`;
    case "function":
      return `${shown.name}(${shown.args.map(plain).join(", ")})`;
    default:
      return `{ ${shown.rows.map(({ value, when }) => `${plain(value)} ${condition(when)}`).join("; ")} }`;
  }
}

function condition(when: Shown): string {
  return when.type === "symbol" && when.text === "otherwise" ? when.text : `if ${plain(when)}`;
}

/** A minus sign at the start, or after another operator, belongs to what follows and takes no gap. */
function plainRow(parts: readonly Shown[]): string {
  const isSign = (i: number): boolean =>
    parts[i]?.type === "operator" && (i === 0 || parts[i - 1]?.type === "operator");
  return parts.map((shown, i) => `${i === 0 || isSign(i - 1) ? "" : " "}${plain(shown)}`).join("");
}

/** One symbol or one number without a unit. */
const isSingle = (shown: Shown): boolean =>
  shown.type === "symbol" ||
  (shown.type === "number" && shown.unit === undefined && !/^[-−]|[×·/^]/.test(shown.text));

/** Above the line a product needs no brackets; a sum or a second fraction does. */
function above(top: Shown): string {
  const bracket =
    top.type === "fraction" || (top.type === "row" && top.parts.some((shown, i) => i > 0 && isSum(shown)));
  return bracket ? `(${plain(top)})` : plain(top);
}

const isSum = (shown: Shown): boolean => shown.type === "operator" && shown.text !== "·";

function below(bottom: Shown): string {
  const bracket =
    bottom.type === "fraction" || bottom.type === "row" || (bottom.type === "number" && !isSingle(bottom));
  return bracket ? `(${plain(bottom)})` : plain(bottom);
}

/** Small whole exponents are raised digits; others are written with ^. */
function exponent(shown: Shown): string {
  const text = plain(shown);
  if (/^[-−]?\d{1,3}$/.test(text)) return raised(text);
  return isSingle(shown) ? `^${text}` : `^(${text})`;
}
