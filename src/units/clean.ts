// One spelling for each sign before anything is read: two micro signs, many minus signs, dots, primes and spaces.
import { inLatin } from "./foreign-letters.ts";
import { phrases } from "./spellings.ts";

const signs: Readonly<Record<string, string>> = {
  "\u2212": "-", // minus
  "\u2010": "-", // hyphen
  "\u2011": "-", // no-break hyphen
  "\u2013": "-", // dashes, of a range or of a mixed number
  "\u2014": "-",
  "\u2026": "...",
  "\u00b5": "u", // micro sign
  "\u03bc": "u", // Greek mu
  "\u00b7": "·",
  "\u22c5": "·",
  "\u2022": "·",
  "\u2219": "·",
  "\u2044": "/", // fraction slash
  "\u2215": "/",
  "\u2032": "'",
  "\u2019": "'",
  "\u2033": '"',
  "\u201d": '"',
  "\u00ba": "°",
  "\u02da": "°",
  "\u2103": "°C",
  "\u2109": "°F",
  "\u0394": "delta_",
  "\u2206": "delta_",
  "\u00a0": "\u2009",
  "\u202f": "\u2009",
  "\u2007": "\u2009",
  "\u200a": "\u2009",
  "\t": " ",
  "\u00bd": " 1/2",
  "\u00bc": " 1/4",
  "\u00be": " 3/4",
  "\u215b": " 1/8",
  "\u215c": " 3/8",
  "\u215d": " 5/8",
  "\u215e": " 7/8",
};

const superscripts = "⁰¹²³⁴⁵⁶⁷⁸⁹";

/**
 * Thin, no-break and figure spaces all become the thin one (a digit group); superscripts become ^2.
 * Phrases such as "pound-force", "square inch" and "deg C" become the listed units.
 */
export function clean(text: string): string {
  const plain = inLatin(text)
    .replace(/[^\x20-\x7e]/g, (sign) => signs[sign] ?? sign)
    .replace(/(⁻?)([⁰¹²³⁴⁵⁶⁷⁸⁹]+)/g, (_, minus: string, digits: string) => {
      const ordinary = digits.replace(/./g, (digit) => String(superscripts.indexOf(digit)));
      return `^${minus === "" ? "" : "-"}${ordinary}`;
    })
    .replace(/''/g, '"')
    .trim();
  return phrases.reduce((line, [pattern, unit]) => line.replace(pattern, unit), plain);
}
