// How a spread is typed with a value: ±, limits, digits in brackets, or a stated uncertainty.
// Only the parts are found here; scan.ts reads each as a value.

/** The pieces of a line with a spread, each still text. */
export type SpreadParts =
  | { readonly form: "plusMinus"; readonly value: string; readonly half: string; readonly note: boolean }
  | { readonly form: "deviations"; readonly value: string; readonly upper: string; readonly lower: string }
  | { readonly form: "limits"; readonly lower: string; readonly upper: string; readonly ascending?: true }
  | { readonly form: "stated"; readonly value: string; readonly half: string; readonly k: string };

const sign = /±|\+\/-|\+-/;
const endsWithoutUnit = (part: string): boolean => unitAfter(part) === "";

/** Undefined where the line has no spread; "odd" where the sign does not stand between two values. */
export function spreadParts(line: string): SpreadParts | "odd" | undefined {
  return stated(line) ?? plusMinus(line) ?? deviations(line) ?? limits(line);
}

function stated(line: string): SpreadParts | undefined {
  // "12.0005 mm, U = 0.0008 mm, k = 2" and "100.021 g, u = 0.35 mg"
  const match = /^([^=]+?), ?(u|U) ?= ?([^,=]+)(?:, ?k ?= ?(\d+(?:\.\d+)?))?$/.exec(line);
  if (!match) return undefined;
  const [, value = "", letter, half = "", k] = match;
  if (letter === "U" && k === undefined) return undefined;
  return { form: "stated", value, half, k: k ?? "1" };
}

function plusMinus(line: string): SpreadParts | "odd" | undefined {
  const bracket = /^\(([^()]+)\) ?(.+)$/.exec(line);
  const inner = bracket?.[1] ?? line;
  const parts = inner.split(sign).map((part) => part.trim());
  if (parts.length < 2) return undefined;
  const [left = "", right = ""] = parts;
  if (parts.length > 2 || left === "" || right === "") return "odd";
  if (bracket?.[2])
    return { form: "plusMinus", value: `${left} ${bracket[2]}`, half: `${right} ${bracket[2]}`, note: false };
  const [bareLeft, bareRight] = [endsWithoutUnit(left), endsWithoutUnit(right)];
  if (right.endsWith("%") || bareLeft === bareRight)
    return { form: "plusMinus", value: left, half: right, note: false };
  return bareLeft
    ? { form: "plusMinus", value: `${left} ${unitAfter(right)}`, half: right, note: true }
    : { form: "plusMinus", value: left, half: `${right} ${unitAfter(left)}`, note: true };
}

/** "mm" of "0.1 mm": what follows the last digit that no letter stands before. */
const unitAfter = (part: string): string =>
  /^[+-]?[\d.,/ \u2009-]*(?:[eE][+-]?\d+)?(?:\(\d+\))?(.*)$/s.exec(part)?.[1]?.trim() ?? "";

function deviations(line: string): SpreadParts | undefined {
  // 12 +0.018/0 mm, 12 -0.006/-0.017 mm, 12 0/-0.018 mm, 12 mm +0.018/-0.005 mm, 12 +0.018 -0.005 mm
  const match = /^(.*?[^ +-]) +([+-]?[\d.,]+)(?: ?\/ ?| +(?=-))([+-]?[\d.,]+)(?: ?([^\d ].*))?$/s.exec(line);
  if (!match) return undefined;
  const [, value = "", first = "", second = "", after = ""] = match;
  const signed = (text: string): boolean => /^[+-]/.test(text);
  const nought = (text: string): boolean => /^0?[.,]?0*$/.test(text);
  if (
    !(signed(first) || nought(first)) ||
    !(signed(second) || nought(second)) ||
    !(signed(first) || signed(second))
  )
    return undefined;
  const unit = after === "" ? unitAfter(value) : after;
  const base = unitAfter(value) === "" ? `${value} ${unit}` : value;
  return { form: "deviations", value: base, upper: `${first} ${unit}`, lower: `${second} ${unit}` };
}

function limits(line: string): SpreadParts | undefined {
  // 12.0000/12.0010 mm: two decimals are no fraction. 12.0000 mm to 12.0010 mm.
  const slash = /^([+-]?\d+[.,]\d+) ?\/ ?([+-]?\d+[.,]\d+) ?([^\d ].*)$/s.exec(line);
  if (slash) return { form: "limits", lower: `${slash[1]} ${slash[3]}`, upper: `${slash[2]} ${slash[3]}` };
  return range(line) ?? to(line);
}

/** 210-260 kPa and 210 - 260 kPa; without a unit only 0.12-0.16, since 5 - 3 is arithmetic. */
function range(line: string): SpreadParts | undefined {
  const match = /^(\d[\d.,]*)( ?)-\2(\d[\d.,]*)(?: ?([^\d ./+-].*))?$/s.exec(line);
  const [, lower = "", blank, upper = "", unit] = match ?? [];
  if (
    !match ||
    (unit === undefined &&
      (blank !== "" || !line.slice(line.indexOf("."), line.lastIndexOf(".")).includes("-")))
  )
    return undefined;
  const after = unit === undefined ? "" : ` ${unit}`;
  return { form: "limits", lower: lower + after, upper: upper + after, ascending: true };
}

function to(line: string): SpreadParts | undefined {
  const [lower = "", upper, more] = line.split(/ to | ?\.\.\.? ?/);
  if (upper === undefined || more !== undefined || lower === "" || upper === "") return undefined;
  return {
    form: "limits",
    lower: endsWithoutUnit(lower) ? `${lower} ${unitAfter(upper)}`.trim() : lower,
    upper,
  };
}
