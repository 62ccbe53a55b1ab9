// The functions of the library as they are called from outside: each answers a wrong argument with a problem.
import { answering, maybe } from "./answering.ts";
import * as readings from "./document/read.ts";
import * as write from "./document/write.ts";
import * as canonical from "./document/write-canonical.ts";
import * as pages from "./engine/open-page.ts";
import * as derivatives from "./formula/derive.ts";
import * as formulas from "./formula/parse.ts";
import * as plainText from "./formula/plain.ts";
import * as shown from "./formula/show.ts";
import * as known from "./methods/index.ts";
import * as declared from "./methods/method.ts";
import "./pictures/index.ts";
import * as problems from "./problem.ts";
import { isProblem, type Problem } from "./problem.ts";
import * as sources from "./source.ts";
import * as conversions from "./units/convert.ts";
import * as explained from "./units/explain.ts";
import * as formats from "./units/format.ts";
import { type Quantity, quantity as read } from "./units/quantity.ts";
import * as scanned from "./units/scan.ts";
import * as units from "./units/unit.ts";
import * as verdicts from "./verdict.ts";

/**
 * A text such as "180 N.m", "24 mm ± 0.1 mm" or "1/2 in" as one quantity: the text as typed, its unit, kind and
 * SI number (`si`), exact beside it. `expected` is the kind of the field that asks. Problems: no unit, an unknown
 * one, another kind, two readings of one text (kg.m, a comma) with what would settle it.
 * Units: SI brochure (BIPM, 9th edition) and NIST SP 811, as src/units/definitions.ts says one by one.
 */
export const quantity = answering(
  "quantity",
  ["a text", maybe("a kind of quantity"), maybe("options")],
  read,
);
/**
 * The same with all that was understood: outcome "accept", "note", "warn", "refuse" or "designation", the quantity
 * where there is one, and the problem to ask or to tell. Never fails on any text.
 */
export const scan = answering("scan", ["a text", maybe("a kind of quantity")], scanned.scan);
/**
 * A unit text such as "N.m", "lbf.ft", "kgf/cm2": dimension, exact factor to SI, offset of a temperature.
 * Problems: an unknown unit with the nearest ones, one that is read only after a question.
 */
export const unit = answering("unit", ["a text", maybe("a kind of quantity")], units.unit);
/**
 * An SI number as text in a unit, "142.9 kN": 4 significant digits unless told otherwise, "no answer" where the
 * number is not finite. Rounds halves to even, from the exact decimal.
 */
export const formatIn = answering("formatIn", ["a number", "a unit", maybe("options")], formats.formatIn);
/**
 * A bare number as text, 4 significant digits unless told otherwise; rounds halves to even.
 */
export const roundDecimal = answering("roundDecimal", ["a number", maybe("options")], formats.roundDecimal);
/**
 * The rule behind a unit: "1 lbf.in = 0.112 984 829 027 616 7 N.m (exact)". Factors are built from the
 * definitions of the foot, the pound and standard gravity, never typed in.
 */
export const rule = answering("rule", ["a unit"], explained.rule);
/**
 * The quantity in every usual unit of its kind but its own, as numbers and as text; a size gets no um or thou.
 */
export const usualAnswers = answering("usualAnswers", ["a quantity"], explained.usualAnswers);
/**
 * What a bare number would mean with each usual unit of each kind: `[{ unit, kind, text }]`; empty where the text is no number.
 */
export const wouldMean = answering("wouldMean", ["a text"], explained.wouldMean);

/**
 * A quantity, or the text of one, in another unit: exact value, number, and text with 4 significant digits ("24.86 N.m").
 * A torque is no energy and a reading no difference: the problem says what would be one.
 */
export const convert = answering(
  "convert",
  ["a quantity or its text", "a text"],
  (from: Quantity | string, to: string): conversions.Converted | Problem => {
    const q = typeof from === "string" ? read(from) : from;
    return isProblem(q) ? q : conversions.convert(q, to);
  },
);

/**
 * A formula text as a tree of plain records. Only what the formula language has is let through (page-format);
 * the problem names the column. Parsed by mathjs, evaluated by nothing but our own functions.
 */
export const parse = answering("parse", ["a text"], formulas.parse);
/**
 * The exact partial derivative of a parsed formula by one name, as a tree; a problem where none exists, as for a
 * step of a rounding. `isColumn` tells which names hold a column.
 */
export const derive = answering(
  "derive",
  ["a parsed formula", "a text", maybe("a function")],
  derivatives.derive,
);
/**
 * What a formula looks like: fractions, roots and symbols as plain records, without markup. The second argument
 * gives for each name or number what stands in its place, so the same tree shows symbols, numbers, or both.
 */
export const show = answering("show", ["a parsed formula", "a function"], shown.show);
/**
 * The same on one line of text: "T/(K·d)".
 */
export const plain = answering("plain", ["what a formula shows"], plainText.plain);

/**
 * Declares a method: inputs and outputs with their kinds, steps as formula texts, limits, sources. Formulas are
 * checked for dimension at first use; `solve` answers with outputs in SI, working, warnings, or a problem.
 */
export const method: typeof declared.method = answering(
  "method",
  ["a declaration of a method"],
  declared.method,
);
/**
 * The method of an id of the catalogue, or a problem with the nearest ids.
 */
export const methodNamed = answering("methodNamed", ["a text"], known.methodNamed);
/**
 * Solves the method of this id: `solve("preload-from-torque", { torque: "705 N.m", nutFactor: 0.2, diameter: "24 mm" })`.
 * Inputs are texts with units, or plain numbers where the input is a ratio; lists are arrays. Gives outputs in SI,
 * the working step by step, limits kept and broken, sources; or the problem of the first input that cannot be used.
 */
export const solve = answering("solve", ["a text", "inputs by name"], known.solve);

/**
 * A page file (YAML text, file name for the places) as `{ page, problems }`; every problem names line and column.
 * Nothing is computed.
 */
export const readPage = answering("readPage", ["a text", "a text"], readings.readPage);
/**
 * A page that recomputes: `lines()` gives each item with its value in SI or its problem, `change` and `enter` put
 * typed texts in, `settle` waits for all that follows, `why` gives the chain behind a value, `text` the file as it
 * stands. A file that cannot be read gives its problems. Dispose of it when done.
 */
export const openPage = answering("openPage", ["a text", "a text"], pages.openPage);
/**
 * The page file with the value of one given replaced, all else to the letter as it was.
 */
export const writeValue = answering("writeValue", ["a text", "a text", "a text"], write.writeValue);
/**
 * The page file in its one canonical form (order of keys, spacing), or the problem why it cannot be read.
 */
export const writeCanonical = answering(
  "writeCanonical",
  ["a text", maybe("a text")],
  canonical.writeCanonical,
);

/**
 * The state of a value against its limits, all in SI: "proven" when the whole half-width `uncertainty` lies inside,
 * "fails" when it lies outside, else "unproven"; "no answer" where a number is missing. A value on its limit is
 * inside; `scale` is the largest size behind a difference. Idea: ISO 14253-1 (from memory).
 */
export const judge = answering(
  "judge",
  ["a number", "limits", maybe("a number"), maybe("a number")],
  verdicts.judge,
);
/**
 * One line for a source: "body, title, edition, place (how known)".
 */
export const cite = answering("cite", ["a source"], sources.cite);
/**
 * The problem that started it all, behind one that was handed on.
 */
export const root = answering("root", ["a problem"], problems.root);
/**
 * A problem in words: *where · what: got …, must …; why; hint*, lower case, no full stop.
 */
export const sentence = answering("sentence", ["a problem"], problems.sentence);
