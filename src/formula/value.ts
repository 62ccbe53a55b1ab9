// The value of a formula for one set of inputs. A tree becomes closures once; each evaluation
// reads every name at most once, and reads only what the taken branch of a choice needs.

import { isProblem, type Problem, problem } from "../problem.ts";
import {
  binaryFault,
  binaryOperations,
  comparisons,
  overflow,
  type UnaryFunction,
  unaryFault,
  unaryFunctions,
  underflow,
} from "./arithmetic.ts";
import { fewestRows, summaries } from "./columns.ts";
import { type ColumnFunction, isColumnFunction } from "./functions.ts";
import { refusal } from "./refusal.ts";
import { type BinaryNode, type CallNode, fullName, type NameNode, rowNames, type Tree } from "./tree.ts";

/** SI numbers; a column is a list of them. */
export type Value = number | boolean | readonly number[];
export type Lookup = (fullName: string) => Value | Problem;

/** One evaluation. The first fault is kept; what is computed after it is thrown away. */
interface Run {
  readonly lookup: Lookup;
  readonly values: Map<string, Value>;
  /** Results of column functions, which do not depend on the row. */
  readonly summaries: Map<CallNode, number>;
  /** -1 outside column functions. */
  row: number;
  fault: Problem | undefined;
}

type Step = (run: Run) => number;

export function evaluator(tree: Tree): (lookup: Lookup) => Value | Problem {
  if (tree.type === "name") return bareName(fullName(tree));
  const step = compile(tree);
  return (lookup) => {
    const run: Run = { lookup, values: new Map(), summaries: new Map(), row: -1, fault: undefined };
    const result = step(run);
    if (run.fault) return run.fault;
    return isTruth(tree, run) ? result === 1 : result;
  };
}

/** A formula that only names something passes it on, a whole column included. */
function bareName(name: string): (lookup: Lookup) => Value | Problem {
  return (lookup) => {
    const value = lookup(name);
    return isProblem(value) ? value : (notNumber(name, value) ?? value);
  };
}

function notNumber(name: string, value: Value): Problem | undefined {
  const numbers = typeof value === "number" ? [value] : typeof value === "boolean" ? [] : value;
  const found = numbers.find((number) => !Number.isFinite(number));
  return found === undefined
    ? undefined
    : problem({ code: "not-a-number", what: name, got: String(found), must: "be a finite number" });
}

function isTruth(tree: Tree, run: Run): boolean {
  if (tree.type === "compare") return true;
  if (tree.type === "name") return typeof run.values.get(fullName(tree)) === "boolean";
  return tree.type === "choose" && (isTruth(tree.yes, run) || isTruth(tree.no, run));
}

function fail(run: Run, fault: Problem): number {
  run.fault ??= fault;
  return Number.NaN;
}

function compile(tree: Tree): Step {
  switch (tree.type) {
    case "number": {
      const { value } = tree;
      return () => value;
    }
    case "quantity": {
      const { si } = tree.quantity;
      return () => si;
    }
    case "constant":
      return () => Math.PI;
    case "name":
      return name(tree);
    case "negate": {
      const of = compile(tree.of);
      return (run) => -of(run);
    }
    case "binary":
      return binary(tree);
    case "compare": {
      const left = compile(tree.left);
      const right = compile(tree.right);
      const holds = comparisons[tree.op];
      return (run) => (holds(left(run), right(run)) ? 1 : 0);
    }
    case "choose": {
      const test = compile(tree.test);
      const yes = compile(tree.yes);
      const no = compile(tree.no);
      return (run) => (test(run) === 1 ? yes(run) : no(run));
    }
    default:
      return call(tree);
  }
}

function read(run: Run, name: string): Value {
  const known = run.values.get(name);
  if (known !== undefined) return known;
  const found = run.lookup(name);
  const fault = isProblem(found) ? found : notNumber(name, found);
  if (fault) return fail(run, fault);
  const value = isProblem(found) ? Number.NaN : found;
  run.values.set(name, value);
  return value;
}

function name(tree: NameNode): Step {
  const full = fullName(tree);
  return (run) => {
    const value = read(run, full);
    if (typeof value === "number") return value;
    if (typeof value === "boolean") return value ? 1 : 0;
    const number = value[run.row];
    if (number !== undefined) return number;
    return fail(
      run,
      refusal("formula-whole-column", tree.at, { got: `the whole column ${full}`, must: "be one number" }),
    );
  };
}

function binary(tree: BinaryNode): Step {
  const { op, at } = tree;
  const left = compile(tree.left);
  const right = compile(tree.right);
  const apply = binaryOperations[op];
  const scales = op === "*";
  const sums = op === "+" || op === "-";
  return (run) => {
    const a = left(run);
    const b = right(run);
    const result = apply(a, b);
    if (run.fault) return result;
    if (!Number.isFinite(result)) return fail(run, binaryFault(op, a, b, at));
    if (result === 0 && a !== 0 && (scales ? b !== 0 : !sums))
      return fail(run, underflow(at, `${a} ${op} ${b}`));
    return result;
  };
}

function call(tree: CallNode): Step {
  if (isColumnFunction(tree.name)) return overColumn(tree, tree.name);
  const args = tree.args.map(compile);
  if (tree.name === "min")
    return (run) => args.reduce((least, arg) => Math.min(least, arg(run)), Number.POSITIVE_INFINITY);
  if (tree.name === "max")
    return (run) => args.reduce((most, arg) => Math.max(most, arg(run)), Number.NEGATIVE_INFINITY);
  return unary(tree.name, args[0] ?? (() => Number.NaN), tree.at);
}

function unary(name: UnaryFunction, arg: Step, at: number): Step {
  const apply = unaryFunctions[name];
  return (run) => {
    const x = arg(run);
    const result = apply(x);
    if (run.fault) return result;
    if (!Number.isFinite(result)) return fail(run, unaryFault(name, x, at));
    if (name === "exp" && result === 0) return fail(run, underflow(at, `exp(${x})`));
    return result;
  };
}

function overColumn(tree: CallNode, name: ColumnFunction): Step {
  const [arg] = tree.args;
  if (!arg) return () => Number.NaN;
  const each = compile(arg);
  const used = rowNames(arg);
  return (run) => {
    const known = run.summaries.get(tree);
    if (known !== undefined) return known;
    const rows = countRows(run, used, tree);
    if (isProblem(rows)) return fail(run, rows);
    const result = summarise(run, each, rows, name, tree.at);
    run.summaries.set(tree, result);
    return result;
  };
}

function summarise(run: Run, each: Step, rows: number, name: ColumnFunction, at: number): number {
  if (rows < fewestRows[name]) {
    const got = rows === 0 ? "an empty column" : `${rows} row`;
    return fail(
      run,
      refusal("column-too-short", at, { got, must: `have ${fewestRows[name]} or more rows for ${name}` }),
    );
  }
  const outer = run.row;
  const values: number[] = [];
  for (run.row = 0; run.row < rows && !run.fault; run.row++) values.push(each(run));
  run.row = outer;
  const result = summaries[name](values);
  return Number.isFinite(result) || run.fault ? result : fail(run, overflow(at, name));
}

function countRows(run: Run, used: readonly string[], tree: CallNode): number | Problem {
  let rows: number | undefined;
  let first = "";
  for (const full of used) {
    const value = read(run, full);
    if (run.fault) return run.fault;
    if (typeof value === "number" || typeof value === "boolean") continue;
    if (rows !== undefined && value.length !== rows) {
      return refusal("columns-of-unlike-length", tree.at, {
        got: `${first} with ${rows} rows and ${full} with ${value.length}`,
        must: "have the same number of rows",
      });
    }
    rows = value.length;
    first = full;
  }
  return (
    rows ??
    refusal("formula-needs-column", tree.at, { got: `${tree.name} of one number`, must: "be of a column" })
  );
}
