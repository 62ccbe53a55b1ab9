// Text to tokens with their columns. What a formula cannot hold is refused here, one character
// or word at a time, before the parser sees it: the parser reads far more than we let through.

import { isProblem, type Problem } from "../problem.ts";
import { refusal } from "./refusal.ts";
import { refusedCharacter, refusedWord } from "./refused-marks.ts";

export interface Token {
  readonly type:
    | "number"
    | "quantity"
    | "name"
    | "minus"
    | "binary"
    | "compare"
    | "("
    | ")"
    | ","
    | "?"
    | ":";
  /** As typed; a quantity without its quotes. */
  readonly text: string;
  readonly at: number;
}

/** Longer than any formula a person would read; keeps every walk over a tree shallow. */
const longestText = 2000;
const mostTokens = 600;

const blank = /[ \t\u00a0]/;
const numberShape = /^(?:\d+(?:\.\d+)?|\.\d+)(?:[eE][+-]?\d+)?/;
const nameShape = /^[A-Za-z][A-Za-z0-9_]*(?:\.[A-Za-z][A-Za-z0-9_]*)?/;
const markTypes: Readonly<Record<string, Token["type"]>> = {
  "-": "minus",
  "+": "binary",
  "*": "binary",
  "/": "binary",
  "^": "binary",
  "<": "compare",
  "<=": "compare",
  ">": "compare",
  ">=": "compare",
  "==": "compare",
  "!=": "compare",
  "(": "(",
  ")": ")",
  ",": ",",
  "?": "?",
  ":": ":",
};

export function tokenize(text: string): readonly Token[] | Problem {
  if (text.length > longestText) {
    return refusal("formula-too-long", longestText + 1, {
      got: `${text.length} characters`,
      must: `have at most ${longestText}`,
      hint: "give parts of it a name of their own",
    });
  }
  const tokens: Token[] = [];
  let index = 0;
  while (index < text.length) {
    if (blank.test(text.charAt(index))) {
      index++;
      continue;
    }
    const token = readToken(text, index);
    if (isProblem(token)) return token;
    tokens.push(token);
    if (tokens.length > mostTokens) {
      return refusal("formula-too-long", token.at, {
        got: `more than ${mostTokens} parts`,
        must: `have at most ${mostTokens}`,
        hint: "give parts of it a name of their own",
      });
    }
    index += token.type === "quantity" ? token.text.length + 2 : token.text.length;
  }
  return tokens;
}

function readToken(text: string, index: number): Token | Problem {
  const rest = text.slice(index);
  const first = text.charAt(index);
  const at = index + 1;
  if (first === '"') return readQuantity(rest, at);
  if (/[0-9]/.test(first) || /^\.\d/.test(rest)) return readNumber(rest, at);
  if (/[A-Za-z]/.test(first)) return readName(rest, at);
  const two = markTypes[rest.slice(0, 2)];
  if (two) return { type: two, text: rest.slice(0, 2), at };
  const refused = refusedCharacter(text, index);
  if (refused) return refused;
  const one = markTypes[first];
  if (one) return { type: one, text: first, at };
  const character = String.fromCodePoint(rest.codePointAt(0) ?? 0);
  return refusal("formula-character", at, {
    got: `"${character}"`,
    must: "use letters a to z, digits, + - * / ^ ( ) , < > = ? : and quotes",
  });
}

function readQuantity(rest: string, at: number): Token | Problem {
  const end = rest.indexOf('"', 1);
  const text = rest.slice(1, end < 0 ? rest.length : end);
  if (end < 0) {
    return refusal("formula-quotes", at, {
      got: `a quote that is not closed`,
      must: 'end with a second quote, as in "5 kN"',
    });
  }
  if (/[\\\r\n]/.test(text)) {
    return refusal("formula-quotes", at, {
      got: "a backslash or line break in quotes",
      must: 'hold a quantity such as "5 kN"',
    });
  }
  return { type: "quantity", text, at };
}

function readNumber(rest: string, at: number): Token | Problem {
  const text = numberShape.exec(rest)?.[0] ?? "";
  const next = rest.slice(text.length);
  const whole = /^[A-Za-z0-9_.]+/.exec(rest)?.[0] ?? text;
  if (/^0[xXbBoO]/.test(rest)) {
    return refusal("formula-number", at, { got: whole, must: "be written in decimal digits" });
  }
  if (/^\.(?:[*/^])/.test(next)) return refusedCharacter(rest, text.length, at - 1) ?? badNumber(whole, at);
  if (next.startsWith(".")) return badNumber(whole, at);
  if (next.startsWith("_")) {
    return refusal("formula-number", at, {
      got: whole,
      must: "be digits only",
      suggestions: [whole.replaceAll("_", "")],
    });
  }
  const value = Number(text);
  if (!Number.isFinite(value)) {
    return refusal("formula-number-range", at, { got: text, must: "be below 1.8e308" });
  }
  if (value === 0 && /[1-9]/.test(text.split(/[eE]/)[0] ?? "")) {
    return refusal("formula-number-range", at, { got: text, must: "be above 5e-324 or exactly 0" });
  }
  return { type: "number", text, at };
}

function badNumber(text: string, at: number): Problem {
  return refusal("formula-number", at, { got: text, must: "be a number such as 5, 0.25 or 1.2e-5" });
}

function readName(rest: string, at: number): Token | Problem {
  const text = nameShape.exec(rest)?.[0] ?? "";
  const first = text.split(".")[0] ?? text;
  const word = refusedWord(first, at);
  if (word) return word;
  const next = rest.slice(text.length);
  if (/^\.[*/^]/.test(next)) return { type: "name", text, at };
  if (next.startsWith(".")) {
    const deeper = text.includes(".");
    return refusal("formula-name", at + text.length, {
      got: /^[A-Za-z0-9_.]+/.exec(rest)?.[0] ?? text,
      must: deeper ? "be name or name.output, one point only" : "have an output name right after the point",
    });
  }
  return { type: "name", text, at };
}
