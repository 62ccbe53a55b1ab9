// The library, in reading order: problems and verdicts, units, formulas, methods, pages, the engine.

export type { Item, Page } from "./document/item.ts";
export type { Line, LineValue } from "./engine/line.ts";
export type { OpenPage } from "./engine/opened.ts";
export type { InputValue, OutputValue } from "./methods/field.ts";
export { methods } from "./methods/index.ts";
export type { Solution, WorkedStep } from "./methods/solution.ts";
export { isProblem, Problem } from "./problem.ts";
export {
  cite,
  convert,
  derive,
  formatIn,
  judge,
  method,
  methodNamed,
  openPage,
  parse,
  plain,
  quantity,
  readPage,
  root,
  roundDecimal,
  rule,
  scan,
  sentence,
  show,
  solve,
  unit,
  usualAnswers,
  wouldMean,
  writeCanonical,
  writeValue,
} from "./public-functions.ts";
export type { Known, Source } from "./source.ts";
export { type Kind, kinds } from "./units/kind.ts";
export type { Quantity } from "./units/quantity.ts";
export type { Scan } from "./units/scan.ts";
export type { Unit } from "./units/unit.ts";
export { type Limits, type State, states } from "./verdict.ts";
