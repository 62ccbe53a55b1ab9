// Decimal digits as text: rounding half to even and laying out, shared by exact and computed numbers.
// Rounding works on text because 1.655 is 1.65499… as a double, yet a person means 1.655
// (NIST SP 811 B.7.1, read: half to even, once, at output).

/** 0.d1d2d3… is not used: the value is d1.d2d3… × 10^exponent; `more` says that digits were cut off. */
export interface Digits {
  readonly negative: boolean;
  readonly digits: string;
  readonly exponent: number;
  readonly more?: boolean;
}

/** Keeps `keep` digits (0 or fewer may round up to one). */
export function roundDigits(value: Digits, keep: number): Digits {
  const { negative, digits, exponent, more = false } = value;
  if (keep < 0) return { negative, digits: "0", exponent: exponent - keep + 1 };
  if (digits.length <= keep) return { negative, digits: digits.padEnd(keep, "0"), exponent };
  const kept = digits.slice(0, keep);
  const next = digits.charCodeAt(keep) - 48;
  const tail = more || /[1-9]/.test(digits.slice(keep + 1));
  const odd = keep > 0 && digits.charCodeAt(keep - 1) % 2 === 1;
  const up = next > 5 || (next === 5 && (tail || odd));
  if (!up)
    return { negative, digits: kept === "" ? "0" : kept, exponent: kept === "" ? exponent + 1 : exponent };
  const raised = (BigInt(kept === "" ? "0" : kept) + 1n).toString().padStart(keep, "0");
  const grown = raised.length > keep;
  return {
    negative,
    digits: grown && keep > 0 ? raised.slice(0, keep) : raised,
    exponent: exponent + (grown ? 1 : 0),
  };
}

/** Plain digits from 1e-4 up to 1e9 (or always, for a fixed number of decimals), else "1.5e-7". */
export function layOut({ negative, digits, exponent }: Digits, alwaysPlain = false): string {
  const sign = negative && /[1-9]/.test(digits) ? "-" : "";
  if (!alwaysPlain && (exponent < -4 || exponent >= 9) && /[1-9]/.test(digits)) {
    const rest = digits.slice(1);
    return `${sign}${digits[0]}${rest === "" ? "" : `.${rest}`}e${exponent}`;
  }
  if (exponent < 0) return `${sign}0.${"0".repeat(-exponent - 1)}${digits}`;
  if (digits.length <= exponent + 1) return sign + digits.padEnd(exponent + 1, "0");
  return `${sign}${digits.slice(0, exponent + 1)}.${digits.slice(exponent + 1)}`;
}

/** Digits of a double as it is written at its shortest: what a person would call its decimal text. */
export function digitsOf(value: number): Digits {
  const [mantissa = "0", exponent = "0"] = Math.abs(value).toExponential().split("e");
  return { negative: value < 0, digits: mantissa.replace(".", ""), exponent: Number.parseInt(exponent, 10) };
}

/** Groups of three from the point outwards; four digits on one side stay together (SP 811, 10.5.3, from memory). */
export function inGroups(plain: string, space: string): string {
  const match = /^(-?)(\d+)(?:\.(\d+))?(e.*)?$/.exec(plain);
  if (!match) return plain;
  const [, sign = "", whole = "", decimals = "", tail = ""] = match;
  const left = whole.length > 4 ? whole.replace(/\B(?=(?:\d{3})+$)/g, space) : whole;
  const right = decimals.length > 4 ? decimals.replace(/(\d{3})(?=\d)/g, `$1${space}`) : decimals;
  return `${sign}${left}${right === "" ? "" : `.${right}`}${tail}`;
}
