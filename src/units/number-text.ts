// Typed numbers: decimals, fractions, mixed fractions, digit groups, a decimal comma that is asked about,
// and the digits in brackets of a standard uncertainty. Never Number() or parseFloat() on typed text.
import { type Problem, problem } from "../problem.ts";
import { add, fromDecimal, multiply, negate, power, type Rational, rational } from "./rational.ts";

export interface NumberText {
  readonly value: Rational;
  /** Index after the number. */
  readonly end: number;
  /** As plain decimal or fraction text, for suggestions. */
  readonly plain: string;
  readonly note: boolean;
  /** The question for a decimal comma. */
  readonly ask?: string;
  /** From "12.0005(5)": 0.0005. */
  readonly standard?: Rational;
  /** Typed with a decimal point, so that it is no half of a fraction. */
  readonly decimal: boolean;
  /** The sign as typed, which the value of -0 cannot keep: -0°30' is half a degree below zero. */
  readonly negative: boolean;
  /** What one step of the last typed digit is worth: 0.001 for 25.012; a fraction has none. */
  readonly step?: Rational;
}

const thin = "\u2009";
const digitsHere = /\d+/y;
const exponentHere = /[eE]([+-]?\d{1,4})(?![A-Za-z0-9.])|[ \u2009]?[×x*·][ \u2009]?10\^([+-]?\d{1,4})(?!\d)/y;
const bracketHere = /\((\d{1,9})\)/y;
const fractionHere = /\/(\d+)(?![\d.])/y;
const mixedHere = /(?: |\u2009|-)(\d+)\/(\d+)(?![\d.])/y;
const dashedHere = /(?: +- *| *- +)(\d+)\/(\d+)(?![\d.])/y;

function match(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}

const failed = (fields: {
  code: string;
  got: string;
  must: string;
  why?: string;
  suggestions?: readonly string[];
}): Problem => problem({ what: "number", ...fields });

/** A number at `from`, or undefined where none begins. */
export function readNumber(text: string, from: number): NumberText | Problem | undefined {
  const sign = text[from] === "-" || text[from] === "+" ? (text[from] as string) : "";
  const at = from + sign.length;
  const whole = readWhole(text, at);
  if (whole.digits === "" && !(text[at] === "." && /\d/.test(text[at + 1] ?? ""))) return undefined;
  const minus = sign === "-" ? "-" : "";
  if (text[whole.end] === ",") return readComma(text, minus, whole);
  const apostrophe = apostropheGroups(text, minus, whole);
  if (apostrophe) return apostrophe;
  if (text[whole.end] === "." && /\d/.test(text[whole.end + 1] ?? ""))
    return readDecimals(text, minus, whole, false);
  return readFraction(text, minus, whole) ?? finish(text, { minus, ...whole, decimals: "" });
}

interface Run {
  readonly digits: string;
  readonly end: number;
  /** Groups parted by an ordinary space, which is shown back. */
  readonly note: boolean;
}

/** Digits in groups of three after 1 to 3 leading digits: "12 345". */
function readWhole(text: string, at: number): Run {
  let digits = match(digitsHere, text, at)?.[0] ?? "";
  let end = at + digits.length;
  let note = false;
  if (digits === "" || digits.length > 3) return { digits, end, note };
  for (;;) {
    const space = text[end];
    if (space !== " " && space !== thin) break;
    const group = match(digitsHere, text, end + 1)?.[0] ?? "";
    if (group.length !== 3 || text[end + 4] === "/") break;
    digits += group;
    end += 4;
    note ||= space === " ";
  }
  return { digits, end, note };
}

/** 1'500 N groups its digits by an apostrophe; 5'6" are feet and inches, and 5'120" is answered as those. */
function apostropheGroups(text: string, minus: string, { digits, end }: Run): Problem | undefined {
  const [, list, point = ""] = /^((?:'\d{3})+)(\.\d+)?(?![\d'"])/.exec(text.slice(end)) ?? [];
  if (list === undefined || digits.length > 3) return undefined;
  return failed({
    code: "number-apostrophe",
    got: `"${minus}${digits}${list}${point}"`,
    must: "be written without an apostrophe",
    why: "an apostrophe stands for feet or minutes of arc",
    suggestions: [`${minus}${digits}${list.replaceAll("'", "")}${point}`],
  });
}

function readDecimals(text: string, minus: string, whole: Run, comma: boolean): NumberText | Problem {
  let decimals = match(digitsHere, text, whole.end + 1)?.[0] ?? "";
  let end = whole.end + 1 + decimals.length;
  let note = whole.note;
  let complete = decimals.length === 3;
  while (complete && (text[end] === " " || text[end] === thin)) {
    const group = match(digitsHere, text, end + 1)?.[0] ?? "";
    const after = text[end + 1 + group.length] ?? "";
    if (group === "" || group.length > 3 || after === "/" || after === "." || after === ",") break;
    note ||= text[end] === " ";
    decimals += group;
    end += 1 + group.length;
    complete = group.length === 3;
  }
  if (text[end] === "," || (text[end] === "." && /\d/.test(text[end + 1] ?? ""))) {
    const got = text.slice(whole.end - whole.digits.length, end + 4);
    return failed({ code: "number-two-marks", got: `"${got}"`, must: "have one decimal mark and no other" });
  }
  const number = finish(text, { minus, digits: whole.digits, decimals, end, note });
  if (!comma || !("value" in number)) return number;
  return { ...number, ask: `the comma is read as a decimal mark, ${number.plain}; is that meant?` };
}

/** 12,5 is asked about; 1,234 can be two numbers; 1,234.5 and 1,234,567 are refused with the plain form. */
function readComma(text: string, minus: string, whole: Run): NumberText | Problem {
  const [, list = "", point = ""] = /^((?:,\d+)+)(\.\d+)?/.exec(text.slice(whole.end)) ?? [];
  if (list === "") return finish(text, { minus, ...whole, decimals: "" });
  const groups = list.slice(1).split(",");
  const typed = minus + whole.digits + list + point;
  const joined = minus + whole.digits + groups.join("") + point;
  if (groups.length > 1 || point !== "") {
    const must = "be written without thousands commas";
    return failed({ code: "number-thousands-comma", got: `"${typed}"`, must, suggestions: [joined] });
  }
  const [group = ""] = groups;
  if (group.length === 3 && whole.digits !== "0" && whole.digits.length <= 3)
    return failed({
      code: "number-comma-ambiguous",
      got: `"${typed}"`,
      must: "have a decimal point or no comma",
      why: "the comma can be a decimal mark or part thousands",
      suggestions: [`${minus}${whole.digits}.${group}`, joined],
    });
  return readDecimals(text, minus, whole, true);
}

function readFraction(text: string, minus: string, whole: Run): NumberText | Problem | undefined {
  const dashed = match(dashedHere, text, whole.end);
  if (dashed) {
    const [part, top = "", bottom = ""] = dashed;
    const apart = mixedValue(whole.digits, `-${top}`, bottom);
    return failed({
      code: "number-mixed-or-difference",
      got: `"${minus}${whole.digits}${part}"`,
      must: "be a mixed number without spaces around the hyphen, or one value",
      why: "it can be a mixed number or a subtraction",
      suggestions: [
        `${minus}${whole.digits}-${top}/${bottom}`,
        ...(apart && minus === "" ? [`${apart.n}/${apart.d}`] : []),
      ],
    });
  }
  const mixed = whole.note ? null : match(mixedHere, text, whole.end);
  const fraction = mixed ?? match(fractionHere, text, whole.end);
  if (!fraction) return undefined;
  const [top, bottom] = mixed ? [mixed[1] ?? "", mixed[2] ?? ""] : [whole.digits, fraction[1] ?? ""];
  const size = mixedValue(mixed ? whole.digits : "0", top, bottom);
  const plain = `${minus}${mixed ? `${whole.digits}-` : ""}${top}/${bottom}`;
  if (!size) return failed({ code: "number-zero-divisor", got: `"${plain}"`, must: "not divide by zero" });
  if (mixed && BigInt(top) >= BigInt(bottom))
    return failed({
      code: "number-mixed-too-large",
      got: `"${plain}"`,
      must: "have a fraction below 1 after the whole number",
    });
  const value = minus === "-" ? negate(size) : size;
  return {
    value,
    end: whole.end + fraction[0].length,
    plain,
    note: mixed !== null,
    decimal: false,
    negative: minus === "-",
  };
}

function mixedValue(whole: string, top: string, bottom: string): Rational | undefined {
  const fraction = BigInt(bottom) === 0n ? undefined : rational(BigInt(top), BigInt(bottom));
  return fraction && add(rational(BigInt(whole)), fraction);
}

interface Parts extends Run {
  readonly minus: string;
  readonly decimals: string;
}

/** Bracketed digits, then the exponent. */
function finish(text: string, { minus, digits, decimals, end, note }: Parts): NumberText | Problem {
  const bracket = match(bracketHere, text, end);
  const afterBracket = end + (bracket?.[0].length ?? 0);
  const exponent = match(exponentHere, text, afterBracket);
  const shift = exponent?.[1] ?? exponent?.[2] ?? "0";
  const mantissa = `${minus}${digits === "" ? "0" : digits}${decimals === "" ? "" : `.${decimals}`}`;
  const plain = shift === "0" ? mantissa : `${mantissa}e${shift}`;
  const value = fromDecimal(plain);
  if (!value || outOfRange(value))
    return failed({ code: "number-out-of-range", got: plain, must: "lie between 1e-300 and 1e300" });
  const last = multiply(
    power(rational(10), -decimals.length),
    power(rational(10), Number.parseInt(shift, 10)),
  );
  const standard = bracket?.[1] === undefined ? undefined : multiply(rational(BigInt(bracket[1])), last);
  return {
    value,
    end: afterBracket + (exponent?.[0].length ?? 0),
    plain,
    note,
    decimal: decimals !== "",
    negative: minus === "-",
    step: last,
    ...(standard ? { standard } : {}),
  };
}

const largest = 10n ** 300n;

function outOfRange({ n, d }: Rational): boolean {
  const size = n < 0n ? -n : n;
  return size !== 0n && (size > largest * d || size * largest < d);
}
