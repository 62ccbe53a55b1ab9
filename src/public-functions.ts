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

export const quantity = answering(
  "quantity",
  ["a text", maybe("a kind of quantity"), maybe("options")],
  read,
);
export const scan = answering("scan", ["a text", maybe("a kind of quantity")], scanned.scan);
export const unit = answering("unit", ["a text", maybe("a kind of quantity")], units.unit);
export const formatIn = answering("formatIn", ["a number", "a unit", maybe("options")], formats.formatIn);
export const roundDecimal = answering("roundDecimal", ["a number", maybe("options")], formats.roundDecimal);
export const rule = answering("rule", ["a unit"], explained.rule);
export const usualAnswers = answering("usualAnswers", ["a quantity"], explained.usualAnswers);
export const wouldMean = answering("wouldMean", ["a text"], explained.wouldMean);

/** A quantity, or the text of one, in another unit. */
export const convert = answering(
  "convert",
  ["a quantity or its text", "a text"],
  (from: Quantity | string, to: string): conversions.Converted | Problem => {
    const q = typeof from === "string" ? read(from) : from;
    return isProblem(q) ? q : conversions.convert(q, to);
  },
);

export const parse = answering("parse", ["a text"], formulas.parse);
export const derive = answering(
  "derive",
  ["a parsed formula", "a text", maybe("a function")],
  derivatives.derive,
);
export const show = answering("show", ["a parsed formula", "a function"], shown.show);
export const plain = answering("plain", ["what a formula shows"], plainText.plain);

export const method: typeof declared.method = answering(
  "method",
  ["a declaration of a method"],
  declared.method,
);
export const methodNamed = answering("methodNamed", ["a text"], known.methodNamed);
export const solve = answering("solve", ["a text", "inputs by name"], known.solve);

export const readPage = answering("readPage", ["a text", "a text"], readings.readPage);
export const openPage = answering("openPage", ["a text", "a text"], pages.openPage);
export const writeValue = answering("writeValue", ["a text", "a text", "a text"], write.writeValue);
export const writeCanonical = answering(
  "writeCanonical",
  ["a text", maybe("a text")],
  canonical.writeCanonical,
);

export const judge = answering(
  "judge",
  ["a number", "limits", maybe("a number"), maybe("a number")],
  verdicts.judge,
);
export const cite = answering("cite", ["a source"], sources.cite);
export const root = answering("root", ["a problem"], problems.root);
export const sentence = answering("sentence", ["a problem"], problems.sentence);
