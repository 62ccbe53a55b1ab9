// Units typed with another keyboard: Cyrillic words, and Greek or Cyrillic letters that stand for Latin ones.
// A reading of such a text is always shown. The micro sign and the delta of a difference are no foreign letters.

const foreign = /[\u0370-\u0393\u0395-\u03bb\u03bd-\u03ff\u0400-\u04ff]/;
const run = /[\u0370-\u0393\u0395-\u03bb\u03bd-\u03ff\u0400-\u04ff]+/g;

/** Whole words whose letters alone would say something else. */
const words: Readonly<Record<string, string>> = {
  кгс: "kgf",
  гс: "gf",
  тс: "tf",
  т: "t",
  с: "s",
  мин: "min",
  ч: "h",
  град: "deg",
  об: "rev",
  мкм: "um",
  бар: "bar",
  Дж: "J",
  Вт: "W",
};

/** By sound for Cyrillic, by shape for Greek; Н is a newton, as on a Russian torque card. */
const letters: Readonly<Record<string, string>> = {
  а: "a",
  г: "g",
  к: "k",
  К: "K",
  м: "m",
  М: "M",
  Н: "N",
  П: "P",
  с: "c",
  С: "C",
  Α: "A",
  Κ: "K",
  Μ: "M",
  Ν: "N",
  Ρ: "P",
  α: "a",
  κ: "k",
  ν: "v",
  ο: "o",
};

export const hasForeignLetters = (text: string): boolean => foreign.test(text);

export const inLatin = (text: string): string =>
  text.replace(
    run,
    (word) => words[word] ?? Array.from(word, (letter) => letters[letter] ?? letter).join(""),
  );
