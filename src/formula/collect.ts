// The formulas of a page put into one graph: names become inputs, numbers or other formulas, and
// a column function becomes the operations on its rows.

import { isProblem, type Problem } from "../problem.ts";
import { fewestRows } from "./columns.ts";
import { type ColumnFunction, isColumnFunction } from "./functions.ts";
import { Graph } from "./graph.ts";
import { inOrder } from "./order.ts";
import { refusal } from "./refusal.ts";
import { type CallNode, fullName, names, rowNames, type Tree } from "./tree.ts";

/** A row of a column: a known number, or the name of an input or a line. */
type Row = number | string;

export interface BlockFormulas {
  /** In any order; a formula may use the names of others. */
  readonly lines: readonly { readonly name: string; readonly tree: Tree }[];
  /** Names drawn anew for every sample. */
  readonly inputs: readonly string[];
  /** Names that are the same in every sample. */
  readonly constants?: Readonly<Record<string, number | boolean>>;
  readonly columns?: Readonly<Record<string, readonly Row[]>>;
}

/** Rows times operations; a page with more is better asked for fewer rows. */
const mostOperations = 50_000;

export interface Collected {
  readonly graph: Graph;
  /** The place of each input and each line in the graph. */
  readonly places: ReadonlyMap<string, number>;
}

export function collect(formulas: BlockFormulas): Collected | Problem {
  const collector = new Collector(formulas);
  const fault = collector.run();
  return fault ?? collector;
}

class Collector implements Collected {
  readonly graph = new Graph();
  readonly places = new Map<string, number>();
  readonly #trees: ReadonlyMap<string, Tree>;
  readonly #columns: ReadonlyMap<string, readonly Row[]>;
  #fault: Problem | undefined;

  constructor({ lines, inputs, constants = {}, columns = {} }: BlockFormulas) {
    this.#trees = new Map(lines.map(({ name, tree }) => [name, tree]));
    this.#columns = new Map(Object.entries(columns));
    for (const [name, value] of Object.entries(constants))
      this.places.set(name, this.graph.constant(Number(value)));
    for (const [index, name] of inputs.entries()) this.places.set(name, this.graph.input(index));
  }

  run(): Problem | undefined {
    const order = inOrder([...this.#trees.keys()], (name) => this.#uses(name));
    if (isProblem(order)) return order;
    for (const name of order) {
      const tree = this.#trees.get(name);
      if (tree) this.places.set(name, this.#node(tree, -1));
      if (this.#fault) return this.#fault;
    }
    return undefined;
  }

  /** Names a line uses, through the rows of columns as well. */
  #uses(line: string): readonly string[] {
    const tree = this.#trees.get(line);
    return (tree ? names(tree) : []).flatMap((name) => {
      const rows = this.#columns.get(name) ?? [];
      return [name, ...rows.filter((row) => typeof row === "string")];
    });
  }

  #fail(fault: Problem): number {
    this.#fault ??= fault;
    return this.graph.constant(Number.NaN);
  }

  #node(tree: Tree, row: number): number {
    if (this.graph.nodes.length > mostOperations) {
      return this.#fail(
        refusal("formula-too-long", tree.at, {
          got: `more than ${mostOperations} operations`,
          must: "have fewer rows or parts",
        }),
      );
    }
    switch (tree.type) {
      case "number":
        return this.graph.constant(tree.value);
      case "quantity":
        return this.graph.constant(tree.quantity.si);
      case "constant":
        return this.graph.constant(Math.PI);
      case "name":
        return this.#name(fullName(tree), row, tree.at);
      case "negate":
        return this.graph.unary("negate", this.#node(tree.of, row));
      case "binary":
        return this.graph.binary(tree.op, this.#node(tree.left, row), this.#node(tree.right, row));
      case "compare":
        return this.graph.compare(tree.op, this.#node(tree.left, row), this.#node(tree.right, row));
      case "choose":
        return this.graph.choose(
          this.#node(tree.test, row),
          this.#node(tree.yes, row),
          this.#node(tree.no, row),
        );
      default:
        return this.#call(tree, row);
    }
  }

  #name(name: string, row: number, at: number): number {
    const line = row < 0 ? undefined : this.#columns.get(name)?.[row];
    if (typeof line === "number") return this.graph.constant(line);
    const place = this.places.get(line ?? name);
    if (place !== undefined) return place;
    if (this.#columns.has(name)) {
      return this.#fail(
        refusal("formula-whole-column", at, { got: `the whole column ${name}`, must: "be one number" }),
      );
    }
    return this.#fail(
      refusal("unknown-name", at, { got: line ?? name, must: "be an input, a constant or a formula" }),
    );
  }

  #call(tree: CallNode, row: number): number {
    const { name } = tree;
    if (isColumnFunction(name)) return this.#overColumn(tree, name);
    const [first = this.graph.constant(Number.NaN), ...rest] = tree.args.map((arg) => this.#node(arg, row));
    if (name === "min" || name === "max")
      return rest.reduce((all, next) => this.graph.binary(name, all, next), first);
    return this.graph.unary(name, first);
  }

  #overColumn(tree: CallNode, name: ColumnFunction): number {
    const [arg] = tree.args;
    const used = arg ? rowNames(arg).filter((full) => this.#columns.has(full)) : [];
    const lengths = new Set(used.map((full) => this.#columns.get(full)?.length ?? 0));
    const [rows = 0] = lengths;
    if (!arg || lengths.size === 0) {
      return this.#fail(
        refusal("formula-needs-column", tree.at, { got: `${name} of one number`, must: "be of a column" }),
      );
    }
    if (lengths.size > 1) {
      return this.#fail(
        refusal("columns-of-unlike-length", tree.at, {
          got: used.join(", "),
          must: "have the same number of rows",
        }),
      );
    }
    if (rows < fewestRows[name]) {
      return this.#fail(
        refusal("column-too-short", tree.at, {
          got: `${rows} rows`,
          must: `have ${fewestRows[name]} or more rows for ${name}`,
        }),
      );
    }
    if (name === "count") return this.graph.constant(rows);
    return this.#summary(
      name,
      Array.from({ length: rows }, (_, row) => this.#node(arg, row)),
    );
  }

  #summary(name: Exclude<ColumnFunction, "count">, each: readonly number[]): number {
    const { graph } = this;
    const join = (op: "+" | "min" | "max", places: readonly number[]): number => {
      const [first = graph.constant(0), ...rest] = places;
      return rest.reduce((all, next) => graph.binary(op, all, next), first);
    };
    const rows = graph.constant(each.length);
    switch (name) {
      case "sum":
        return join("+", each);
      case "mean":
        return graph.binary("/", join("+", each), rows);
      case "smallest":
        return join("min", each);
      case "largest":
        return join("max", each);
      default: {
        const middle = graph.binary("/", join("+", each), rows);
        const squares = each.map((place) => graph.unary("square", graph.binary("-", place, middle)));
        return graph.unary("sqrt", graph.binary("/", join("+", squares), graph.constant(each.length - 1)));
      }
    }
  }
}
