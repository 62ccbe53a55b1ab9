// The library, in reading order: problems and verdicts, units, formulas, methods, pages, the engine.

export type { Item, Page } from "./document/item.ts";
export { readPage } from "./document/read.ts";
export { writeValue } from "./document/write.ts";
export { writeCanonical } from "./document/write-canonical.ts";
export type { Line, LineValue } from "./engine/line.ts";
export { openPage } from "./engine/open-page.ts";
export type { OpenPage } from "./engine/opened.ts";
export { derive } from "./formula/derive.ts";
export { parse } from "./formula/parse.ts";
export { plain, show } from "./formula/show.ts";
export type { InputValue, OutputValue } from "./methods/field.ts";
export { methodNamed, methods, solve } from "./methods/index.ts";
export { method } from "./methods/method.ts";
export type { Solution, WorkedStep } from "./methods/solution.ts";
export { isProblem, Problem, root, sentence } from "./problem.ts";
export { cite, type Known, type Source } from "./source.ts";
export { convert } from "./units/convert.ts";
export { rule, usualAnswers, wouldMean } from "./units/explain.ts";
export { formatIn, roundDecimal } from "./units/format.ts";
export { type Kind, kinds } from "./units/kind.ts";
export { type Quantity, quantity } from "./units/quantity.ts";
export { type Scan, scan } from "./units/scan.ts";
export { type Unit, unit } from "./units/unit.ts";
export { judge, type Limits, type State, states } from "./verdict.ts";
