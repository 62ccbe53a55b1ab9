// Characters and words that mean something elsewhere and are not part of a formula here,
// each with what to write instead.

import type { Problem } from "../problem.ts";
import { refusal } from "./refusal.ts";

interface Instead {
  readonly code: string;
  readonly got?: string;
  readonly must?: string;
  readonly hint?: string;
  readonly suggestions?: readonly string[];
}

const write = (mark: string): Instead => ({
  code: "formula-character",
  hint: `write ${mark}`,
  suggestions: [mark],
});
const logical: Instead = {
  code: "formula-logic",
  must: "compare two values",
  hint: "join tests with a choice: a > b ? c > d : 0 > 1, or make two checks",
};
const index: Instead = {
  code: "formula-index",
  must: "use a name as a whole",
  hint: "an output is read as name.output, a column through sum, mean, smallest, largest, deviation or count",
};
const elementwise: Instead = {
  code: "formula-elementwise",
  hint: "write * / ^: inside sum, mean and the like they work row by row",
};
const shift: Instead = { code: "formula-character", must: "be one of < <= > >= == !=" };
const lineBreak: Instead = { code: "formula-line-break", must: "be one expression on one line" };

/** Tried in this order, so longer marks come first. */
const marks: readonly (readonly [string, Instead])[] = [
  [".*", elementwise],
  ["./", elementwise],
  [".^", elementwise],
  ["<<", shift],
  [">>", shift],
  ["<>", { code: "formula-character", hint: "write !=", suggestions: ["!="] }],
  ["=>", write(">=")],
  ["=<", write("<=")],
  ["&", logical],
  ["|", logical],
  ["~", logical],
  [
    "!",
    {
      code: "formula-factorial",
      must: "be arithmetic",
      hint: "the factorial is not part of a formula; unequal is !=",
    },
  ],
  ["[", index],
  ["]", index],
  ["{", { code: "formula-object", must: "be one expression", hint: "group with ( )" }],
  ["}", { code: "formula-object", must: "be one expression", hint: "group with ( )" }],
  [";", { ...lineBreak, code: "formula-separator", hint: "give the second expression an item of its own" }],
  ["\n", { ...lineBreak, got: "a line break" }],
  ["\r", { ...lineBreak, got: "a line break" }],
  ["#", { code: "formula-comment", must: "be one expression", hint: "put remarks in a note" }],
  ["×", write("*")],
  ["·", write("*")],
  ["⋅", write("*")],
  ["÷", write("/")],
  ["∕", write("/")],
  ["−", write("-")],
  ["–", write("-")],
  ["—", write("-")],
  ["²", write("^2")],
  ["³", write("^3")],
  ["√", write("sqrt( )")],
  ["π", write("pi")],
  ["≤", write("<=")],
  ["≥", write(">=")],
  ["≠", write("!=")],
  ["°", { code: "formula-character", hint: 'write an angle in quotes: "30 deg"' }],
  ["“", { code: "formula-quotes", hint: 'write straight quotes: "5 kN"' }],
  ["”", { code: "formula-quotes", hint: 'write straight quotes: "5 kN"' }],
  [".", { code: "formula-name", must: "stand between a name and its output, or in a number" }],
];

/** Why the character at `index` cannot stand there; undefined when it may. */
export function refusedCharacter(text: string, position: number, shiftBy = 0): Problem | undefined {
  const rest = text.slice(position);
  const at = position + 1 + shiftBy;
  if (rest.startsWith("%")) return percent(text, position, at);
  if (rest.startsWith("'")) return singleQuote(text, position, at);
  if (rest.startsWith("=") && !/^=[<>]/.test(rest)) return equalsSign(text, position, at);
  const found = marks.find(([mark]) => rest.startsWith(mark));
  if (!found) return undefined;
  const { code, ...fields } = found[1];
  return refusal(code, at, { got: `"${found[0]}"`, ...fields });
}

function percent(text: string, position: number, at: number): Problem {
  const before = /(?<![\d.])[\d.]+\s*$/.exec(text.slice(0, position))?.[0].trim();
  const remainder = /^%\s*[A-Za-z0-9.("]/.test(text.slice(position));
  if (remainder) {
    return refusal("formula-remainder", at, {
      got: '"%" between two values',
      must: "be arithmetic",
      hint: "the remainder is not part of a formula",
    });
  }
  const quoted = before === undefined ? '"20 %"' : `"${before} %"`;
  return refusal("formula-percent", at, {
    got: before === undefined ? '"%"' : `${before}%`,
    must: "stand in quotes",
    hint: `write ${quoted}`,
    ...(before === undefined ? {} : { suggestions: [quoted] }),
  });
}

function singleQuote(text: string, position: number, at: number): Problem {
  const afterValue = /[A-Za-z0-9_)\]]\s*$/.test(text.slice(0, position));
  return afterValue
    ? refusal("formula-prime", at, {
        got: '"\'"',
        must: "be arithmetic",
        hint: "a dash after a value has no meaning here",
      })
    : refusal("formula-quotes", at, { got: "a single quote", hint: 'write double quotes: "5 kN"' });
}

function equalsSign(text: string, position: number, at: number): Problem {
  const definesFunction = /^\s*[A-Za-z]\w*\s*\([^()]*\)\s*$/.test(text.slice(0, position));
  return definesFunction
    ? refusal("formula-function-definition", at, {
        got: '"="',
        must: "be one expression",
        hint: "functions are not defined in a formula; use a working for each result",
      })
    : refusal("formula-assignment", at, {
        got: '"="',
        must: "be one expression",
        hint: "compare with ==; a result gets its name from its item",
      });
}

const words: Readonly<Record<string, Instead>> = {
  in: { code: "formula-conversion", hint: "units of a result are set where it is shown" },
  to: { code: "formula-conversion", hint: "units of a result are set where it is shown" },
  mod: { code: "formula-remainder", hint: "the remainder is not part of a formula" },
  and: logical,
  or: logical,
  xor: logical,
  not: logical,
  true: { code: "formula-word", hint: "write a comparison such as 1 > 0" },
  false: { code: "formula-word", hint: "write a comparison such as 0 > 1" },
  null: { code: "formula-word" },
  undefined: { code: "formula-word" },
  NaN: { code: "formula-word" },
  Infinity: { code: "formula-word" },
  end: { code: "formula-word" },
};

/** Words that cannot be names. */
export function refusedWord(word: string, at: number): Problem | undefined {
  if (!Object.hasOwn(words, word)) return undefined;
  const { code, ...fields } = words[word] ?? { code: "formula-word" };
  return refusal(code, at, {
    got: `"${word}"`,
    must: "be a name, a number or a function of the list",
    ...fields,
  });
}
