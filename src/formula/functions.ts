// The closed list of functions a formula may call.

import { nearest } from "../nearest.ts";

/** On single numbers. */
export const scalarFunctions = [
  "sqrt",
  "abs",
  "min",
  "max",
  "sin",
  "cos",
  "tan",
  "asin",
  "acos",
  "atan",
  "exp",
  "ln",
  "log10",
  "round",
] as const;

/** Over a column of readings or a list of rows. */
export const columnFunctions = ["count", "sum", "mean", "smallest", "largest", "deviation"] as const;

export type ScalarFunction = (typeof scalarFunctions)[number];
export type ColumnFunction = (typeof columnFunctions)[number];
export type FunctionName = ScalarFunction | ColumnFunction;

const scalars: ReadonlySet<string> = new Set(scalarFunctions);
const columns: ReadonlySet<string> = new Set(columnFunctions);

export const isScalarFunction = (name: string): name is ScalarFunction => scalars.has(name);
export const isColumnFunction = (name: string): name is ColumnFunction => columns.has(name);
export const isFunctionName = (name: string): name is FunctionName => scalars.has(name) || columns.has(name);

/** min and max compare two or more numbers; every other function takes one argument. */
export const takesSeveral = (name: FunctionName): boolean => name === "min" || name === "max";

/** What people write elsewhere, and what it is called here. */
const otherwiseKnownAs: Readonly<Record<string, string>> = {
  log: "ln or log10",
  lg: "log10",
  average: "mean",
  avg: "mean",
  std: "deviation",
  stdev: "deviation",
  sd: "deviation",
  total: "sum",
  minimum: "min, or smallest over a column",
  maximum: "max, or largest over a column",
  arcsin: "asin",
  arccos: "acos",
  arctan: "atan",
  root: "sqrt",
  power: "^",
  pow: "^",
};

/** Another statistic is never a spelling of one of ours. */
const otherStatistics: ReadonlySet<string> = new Set([
  "median",
  "mode",
  "quantile",
  "percentile",
  "variance",
  "var",
]);
export const isOtherStatistic = (name: string): boolean => otherStatistics.has(name.toLowerCase());

/** The function that was most likely meant, if there is a likely one: same first letter, close in spelling. */
export function likelyFunction(name: string): string | undefined {
  if (isOtherStatistic(name)) return undefined;
  const known = otherwiseKnownAs[name.toLowerCase()];
  if (known !== undefined || name.length < 3) return known;
  const close = nearest(name.slice(0, 40), [...scalarFunctions, ...columnFunctions]);
  return close.find((candidate) => candidate.charAt(0) === name.charAt(0).toLowerCase());
}
