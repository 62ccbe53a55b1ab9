// What a name in a formula stands for: a given, a working, an output, a column, the answer of a row.
import type { OutputValue, ScalarOutput } from "../methods/field.ts";
import { methods } from "../methods/register.ts";
import { nearest } from "../nearest.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { dimensionless } from "../units/dimension.ts";
import { type Kind, kinds } from "../units/kind.ts";
import type { CellValue, FormulaValue, Named, RowsValue, SolutionValue, TableValue } from "./cell.ts";

/** Results of the cells an item uses, and the names of the whole page for suggestions. */
export interface Results {
  readonly get: (name: string) => CellValue | Problem | undefined;
  readonly keys: () => Iterable<string>;
  /** Where one answer is worked out for each key of a table: the row at hand. */
  readonly row?: RowContext | undefined;
}

export interface RowContext {
  readonly key: string;
  readonly value: string;
  /** Texts of the row, its key among them. */
  readonly tags: Readonly<Record<string, string>>;
  /** Numbers of the row, read as row.diameter. */
  readonly numbers?: Readonly<Record<string, { readonly kind: Kind; readonly si: number }>>;
  /** The table whose rows are gone through. */
  readonly table: string;
  /** Where the rows are gone through one by one: this very row of this very table. */
  readonly only?: { readonly of: TableValue; readonly index: number };
}

/** A no-answer handed on: it keeps the first problem as its cause and shows no stale number. */
export function upstream(name: string, cause: Problem): Problem {
  return problem({
    code: "no-answer-upstream",
    what: name,
    why: "has no answer",
    cause: cause.cause ?? cause,
  });
}

export const truth = (yes: boolean): Named => ({
  typed: { dimension: dimensionless, truth: true },
  value: yes,
  leaf: undefined,
});

/** `stated`: the kind is binding, as where a field or an output states it; a product only has a dimension. */
export const number = (kind: Kind, si: number, symbol: string, stated: Kind | undefined = kind): Named => ({
  typed: { dimension: kinds[kind].dimension, kind: stated },
  value: si,
  leaf: { symbol, kind, si },
});

const numbers = (kind: Kind, values: readonly number[], symbol: string): Named => ({
  typed: { dimension: kinds[kind].dimension, kind, column: true },
  value: values,
  leaf: { symbol, kind, si: values },
});

const notANumber = (what: string, got: string): Problem =>
  problem({ code: "not-a-number", what, got, must: "be a number in a formula" });

/** The value of "name" or "name.output" among the cells worked out so far. */
export function resolve(results: Results, fullName: string): Named | Problem {
  const dot = fullName.indexOf(".");
  const name = dot < 0 ? fullName : fullName.slice(0, dot);
  const part = dot < 0 ? undefined : fullName.slice(dot + 1);
  const cell = name === "row" && part !== undefined ? results.row?.numbers?.[part] : undefined;
  if (cell) return number(cell.kind, cell.si, fullName);
  const found = results.get(name);
  if (found === undefined) return unknownName(name, [...results.keys()]);
  if (isProblem(found)) return upstream(name, found);
  switch (found.type) {
    case "quantity":
    case "formula":
      return part === undefined ? found.named : noPart(fullName, name, []);
    case "solution":
      return fromSolution(found, name, part);
    case "rows":
      return fromRows(found, name, part, results.row);
    case "table":
      return column(found, fullName, name, part, results.row);
    default:
      return notANumber(fullName, found.type === "checks" ? "checks" : `a ${found.type}`);
  }
}

function fromSolution({ solution }: SolutionValue, name: string, part: string | undefined): Named | Problem {
  const outputs = Object.keys(solution.outputs);
  const wanted = part ?? (outputs.length === 1 ? outputs[0] : undefined);
  if (wanted === undefined) return severalOutputs(name, outputs);
  const output = solution.outputs[wanted];
  if (!output) return noPart(`${name}.${wanted}`, name, outputs);
  return fromOutput(`${name}.${wanted}`, output, symbolOfOutput(solution.method, wanted));
}

function fromOutput(name: string, output: OutputValue, symbol: string): Named | Problem {
  if (output.kind === "yes/no") return truth(output.yes);
  if (output.kind === "text") return notANumber(name, "a text");
  if (output.kind !== "list") return number(output.kind, output.si, symbol);
  return listColumn(name, output.rows) ?? notANumber(name, "a list of several columns");
}

/** A list with one column of numbers is that column. */
function listColumn(
  name: string,
  rows: readonly Readonly<Record<string, ScalarOutput>>[],
): Named | undefined {
  const cells = rows.map((row) => Object.values(row).filter((cell) => "si" in cell));
  const [first] = cells[0] ?? [];
  if (!first || cells.some((numeric) => numeric.length !== 1)) return undefined;
  return numbers(
    first.kind,
    cells.flat().map((cell) => cell.si),
    name,
  );
}

/** The symbol that the method's declaration gives an output. */
function symbolOfOutput(method: string, output: string): string {
  const field = methods.get(method)?.outputs[output];
  return field && "symbol" in field && field.symbol ? field.symbol : output;
}

const answerOf = (
  value: SolutionValue | FormulaValue,
  name: string,
  part: string | undefined,
): Named | Problem => (value.type === "formula" ? value.named : fromSolution(value, name, part));

/** Inside a row, the answer of the row with the same key; elsewhere the whole column, if every row has one. */
function fromRows(
  found: RowsValue,
  name: string,
  part: string | undefined,
  row: RowContext | undefined,
): Named | Problem {
  const wanted = row?.tags[found.key];
  if (row && wanted !== undefined) {
    const match = found.rows.find((r) => r.key === wanted);
    if (!match)
      return problem({
        code: "no-such-row",
        what: name,
        got: `no ${found.key} ${wanted}`,
        must: `have a row for ${found.key} ${wanted}`,
      });
    return isProblem(match.value)
      ? upstream(`${name} ${wanted}`, match.value)
      : answerOf(match.value, name, part);
  }
  const values: number[] = [];
  let kind: Kind | undefined;
  for (const { key, value } of found.rows) {
    if (isProblem(value)) return upstream(`${name} ${key}`, value);
    const named = answerOf(value, name, part);
    if (isProblem(named)) return named;
    if (typeof named.value !== "number" || !named.leaf) return notANumber(name, "a yes or no");
    kind = named.leaf.kind;
    values.push(named.value);
  }
  return numbers(kind ?? "ratio", values, part === undefined ? name : `${name}.${part}`);
}

/** Rows of a table that count: neither corrected nor set aside, and of the key at hand where there is one. */
export function rowsAtHand(table: TableValue, row: RowContext | undefined): number[] {
  if (row?.only?.of === table) return [row.only.index];
  const keyed = row && table.columns.find((c) => c.name === row.key);
  return table.states.flatMap((state, i) => {
    if (state === "corrected" || state === "set aside") return [];
    return keyed && keyed.typed[i] !== row.value ? [] : [i];
  });
}

function column(
  table: TableValue,
  fullName: string,
  name: string,
  part: string | undefined,
  row: RowContext | undefined,
): Named | Problem {
  const found = table.columns.find((c) => c.name === part);
  if (!found)
    return noPart(
      fullName,
      name,
      table.columns.map((c) => c.name),
    );
  if (found.kind === "tag" || found.kind === "text") return notANumber(fullName, "texts");
  const at = rowsAtHand(table, row);
  const values = at.map((i) => found.values[i]).filter((v): v is number => typeof v === "number"); // a blank is missing, never zero
  if (row?.table === name && at.length === 1) {
    const [value] = values;
    return value === undefined ? missingReading(fullName, row) : number(found.kind, value, fullName);
  }
  return numbers(found.kind, values, fullName);
}

/** Where each row stands by itself, a blank says so; it is neither zero nor left out. */
const missingReading = (what: string, row: RowContext): Problem =>
  problem({
    code: "missing",
    what: `${what} · ${[...new Set(Object.values(row.tags))].join(" · ")}`,
    got: "no reading",
    must: "be read",
  });

export function unknownName(name: string, known: readonly string[]): Problem {
  const near = nearest(
    name,
    known.filter((k) => !k.startsWith("#")),
  );
  return problem({
    code: "unknown-name",
    what: name,
    got: "a name that no item of the page has",
    must: "be the name of a given, a working or a reading",
    hint: near.length > 0 ? `did you mean ${near.join(" or ")}?` : undefined,
    suggestions: near,
  });
}

const severalOutputs = (name: string, outputs: readonly string[]): Problem =>
  problem({
    code: "several-outputs",
    what: name,
    got: "a working with several outputs",
    must: `be read as ${outputs
      .slice(0, 4)
      .map((o) => `${name}.${o}`)
      .join(", ")}`,
  });

function noPart(fullName: string, name: string, parts: readonly string[]): Problem {
  const part = fullName.slice(name.length + 1);
  const near = nearest(part, parts);
  return problem({
    code: "no-such-output",
    what: fullName,
    got: `no ${part} in ${name}`,
    must: parts.length > 0 ? `be one of ${parts.join(", ")}` : `be read as ${name}`,
    suggestions: near.map((p) => `${name}.${p}`),
  });
}
