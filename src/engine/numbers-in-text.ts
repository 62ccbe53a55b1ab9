// Numbers as they stand in prose: "11.4 µm", "176, 326 and 526 N·m", "four of twelve".
import { isProblem } from "../problem.ts";
import { type Unit, unit } from "../units/unit.ts";

export interface NumberInText {
  readonly text: string;
  readonly value: number;
  readonly decimals: number;
  readonly unit: Unit | undefined;
  /** Without a unit and without a point, of three digits or more: a number of any kind. */
  readonly whole: boolean;
}

// Counts are bounded, so that each place of a long text is looked at a few times at most.
// Not inside a word, a designation (M24x3, 10.9-M16) or another number.
const numberHere = /(?<![\p{L}\d.,/^×\-–])([-−+]?\d{1,30}(?:\.\d{1,30})?)(?![\d.,]*\d)/gu;
const unitHere = /^[ \u00A0\u2009]?([°%′″\p{L}·./²³^0-9-]{1,60})/u;
/** Between numbers that share the unit of the last. */
const sharing = /^(?:,| and| or| to|, and|, or)[ \u00A0\u2009]$/;
/** Words of the language that are units as well; a space before them makes them words. */
const words = new Set(["a", "as", "at", "in", "to", "of", "is"]);
/** "VDI 2230": a whole number behind capitals names a document. */
const documentBefore = /\b[A-Z][A-Z-]+[ \u00A0]$/;

interface Found {
  readonly text: string;
  readonly begin: number;
  readonly end: number;
  readonly unit: Unit | undefined;
  readonly unitEnd: number;
}

export function numbersIn(text: string): readonly NumberInText[] {
  const found = [...text.matchAll(numberHere)].map((match) => at(text, match.index, match[1] ?? ""));
  const units: (Unit | undefined)[] = found.map((one) => one.unit);
  for (let i = found.length - 2; i >= 0; i--) {
    const [here, next] = [found[i], found[i + 1]];
    if (!here || !next || units[i]) continue;
    if (sharing.test(text.slice(here.end, next.begin))) units[i] = units[i + 1];
  }
  return found.flatMap((one, i) => {
    const decimals = one.text.split(".")[1]?.length ?? 0;
    const digits = one.text.replace(/\D/g, "").replace(/^0+/, "").length;
    const whole = !units[i] && decimals === 0;
    if (whole && (digits < 3 || documentBefore.test(text.slice(Math.max(0, one.begin - 30), one.begin))))
      return [];
    const value = Number(one.text.replace("−", "-"));
    return [{ text: text.slice(one.begin, one.unitEnd), value, decimals, unit: units[i], whole }];
  });
}

function at(text: string, begin: number, number: string): Found {
  const end = begin + number.length;
  const token = unitHere.exec(text.slice(end));
  const spaced = token !== null && !token[0].startsWith(token[1] ?? "");
  const word = (token?.[1] ?? "").replace(/[./-]+$/, "");
  const isWord = word === "" || (spaced && words.has(word));
  const read = isWord ? undefined : unit(word);
  const found = read === undefined || isProblem(read) ? undefined : read;
  const unitEnd = found ? end + (token?.[0].length ?? 0) - ((token?.[1] ?? "").length - word.length) : end;
  return { text: number, begin, end, unit: found, unitEnd };
}

const numberWords =
  "zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen seventeen eighteen nineteen twenty".split(
    " ",
  );
const one = `(?:\\d+|none|${numberWords.slice(1).join("|")})`;
const shareHere = new RegExp(
  `\\b${one} of (?:the |all |these )?(\\d+|${numberWords.slice(2).join("|")})\\b`,
  "giu",
);

/** "four of twelve", "3 of the 20": a count that a table of the page has to say. */
export function sharesIn(text: string): readonly { readonly text: string; readonly of: number }[] {
  return [...text.matchAll(shareHere)].map((match) => {
    const of = (match[1] ?? "").toLowerCase();
    return { text: match[0], of: /\d/.test(of) ? Number(of) : numberWords.indexOf(of) };
  });
}
