// Names of a page are the names its formulas use.
import { isFunctionName } from "../formula/functions.ts";
import { type Problem, problem } from "../problem.ts";

const camelCase = /^[a-z][A-Za-z0-9]*$/;
const longestName = 60;

// The constant, and words that a formula parser reads as operators or values.
const words = "pi in to mod and or not xor true false null undefined end".split(" ");
const everyObjectHas = "constructor prototype toString valueOf hasOwnProperty".split(" ");
const reserved: ReadonlySet<string> = new Set([...words, ...everyObjectHas]);

export const isReserved = (name: string): boolean => reserved.has(name) || isFunctionName(name);

/** "bolt circle" → "boltCircle", "head_a" → "headA". */
export function toCamelCase(text: string): string {
  const words = text
    .replace(/^[^A-Za-z]+/, "")
    .split(/[^A-Za-z0-9]+/)
    .filter((word) => word !== "");
  const joined = words.map((word, i) => (i === 0 ? decapital(word) : capital(word))).join("");
  return joined.replace(/^[0-9]+/, "");
}

const capital = (word: string): string => word.slice(0, 1).toUpperCase() + word.slice(1);
const decapital = (word: string): string =>
  word === word.toUpperCase() ? word.toLowerCase() : word.slice(0, 1).toLowerCase() + word.slice(1);

export function checkName(name: string, where: string): Problem | undefined {
  if (name.length > longestName) {
    return problem({
      code: "bad-name",
      where,
      what: "name",
      got: `${name.length} characters`,
      must: `be at most ${longestName} characters`,
    });
  }
  if (!camelCase.test(name)) {
    const suggestion = toCamelCase(name);
    return problem({
      code: "bad-name",
      where,
      what: "name",
      got: name,
      must: "be camelCase: a small letter, then letters and digits",
      why: "formulas use it",
      hint: camelCase.test(suggestion) ? `write ${suggestion}` : "for example nutFactor",
      suggestions: camelCase.test(suggestion) ? [suggestion] : [],
    });
  }
  if (isReserved(name)) {
    return problem({
      code: "reserved-name",
      where,
      what: "name",
      got: name,
      must: "not be a word of the formula language",
      hint: `write a longer name, for example ${name}Value`,
    });
  }
  return undefined;
}
