// What a name in a formula stands for: a given, a working, an output, a column, the answer of a row.
import type { Typed } from "../formula/check-dimensions.ts";
import { type ScalarOutput, symbolIn } from "../methods/field.ts";
import { methods } from "../methods/register.ts";
import { nearest } from "../nearest.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { type Contribution, clear, joined, reserved, type Standing } from "../standing.ts";
import { type Dimension, dimensionless } from "../units/dimension.ts";
import { type Kind, kinds, kindsOf } from "../units/kind.ts";
import { answerWith, countedRows, countedWith } from "./by-key.ts";
import { lackingReadings, readingDoubt } from "./lacking-readings.ts";
import type { FormulaValue, LineValue, Named, RowsValue, SolutionValue, TableValue } from "./line.ts";

/** Results of the lines an item uses, and the names of the whole page for suggestions. */
export interface Results {
  readonly get: (name: string) => LineValue | Problem | undefined;
  readonly keys: () => Iterable<string>;
  /** Where one answer is worked out for each key of a table: the row at hand. */
  readonly row?: RowContext | undefined;
}

interface RowNumber {
  readonly kind: Kind;
  readonly si: number;
  readonly doubt?: readonly Contribution[] | undefined;
}

export interface RowContext {
  readonly key: string;
  readonly value: string;
  /** Texts of the row, its key among them. */
  readonly tags: Readonly<Record<string, string>>;
  /** Numbers of the row, read as row.diameter. */
  readonly numbers?: Readonly<Record<string, RowNumber>>;
  /** What is known about all of the row. */
  readonly standing?: Standing | undefined;
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

export const truth = (yes: boolean, standing: Standing = clear): Named => ({
  typed: { dimension: dimensionless, truth: true },
  value: yes,
  leaf: undefined,
  standing,
});

interface About {
  readonly standing?: Standing | undefined;
  readonly scale?: (() => number) | undefined;
}

/** A number whose kind is binding, as where a field or an output states it. */
const number = (kind: Kind, si: number, symbol: string, about: About = {}): Named => ({
  typed: { dimension: kinds[kind].dimension, kind },
  value: si,
  leaf: { symbol, kind, si, scale: about.scale },
  standing: about.standing ?? clear,
});

interface Column {
  readonly kind: Kind | undefined;
  readonly dimension: Dimension;
  readonly values: readonly number[];
  readonly doubts: readonly (readonly Contribution[])[];
  readonly standing: Standing;
}

const numbers = ({ kind, dimension, values, doubts, standing }: Column, symbol: string): Named => ({
  typed: { dimension, kind, column: true },
  value: values,
  leaf: { symbol, kind, dimension, si: values },
  standing,
  rows: doubts.some((doubt) => doubt.length > 0) ? doubts : undefined,
});

const withDoubt = (standing: Standing, doubt: readonly Contribution[] | undefined): Standing =>
  doubt === undefined || doubt.length === 0 ? standing : { ...standing, doubt };

const notANumber = (what: string, got: string): Problem =>
  problem({ code: "not-a-number", what, got, must: "be a number in a formula" });

/** The value of "name" or "name.output" among the lines worked out so far. */
export function resolve(results: Results, fullName: string): Named | Problem {
  const dot = fullName.indexOf(".");
  const name = dot < 0 ? fullName : fullName.slice(0, dot);
  const part = dot < 0 ? undefined : fullName.slice(dot + 1);
  const line = name === "row" && part !== undefined ? results.row?.numbers?.[part] : undefined;
  if (line)
    return number(line.kind, line.si, fullName, {
      standing: withDoubt(results.row?.standing ?? clear, line.doubt),
    });
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

function fromSolution(value: SolutionValue, name: string, part: string | undefined): Named | Problem {
  const { solution } = value;
  const outputs = Object.keys(solution.outputs);
  const wanted = part ?? (outputs.length === 1 ? outputs[0] : undefined);
  if (wanted === undefined) return severalOutputs(name, outputs);
  const output = solution.outputs[wanted];
  if (!output) return noPart(`${name}.${wanted}`, name, outputs);
  const standing = outputStanding(value, wanted);
  if (output.kind === "yes/no") return truth(output.yes, standing);
  if (output.kind === "text") return notANumber(`${name}.${wanted}`, "a text");
  if (output.kind === "list")
    return (
      listColumn(`${name}.${wanted}`, output.rows, standing) ??
      notANumber(`${name}.${wanted}`, "a list of several columns")
    );
  return number(output.kind, output.si, symbolOfOutput(solution.method, wanted), {
    standing: withDoubt(standing, output.doubt),
    scale: () => solution.working.findLast((step) => step.name === wanted)?.scale() ?? Math.abs(output.si),
  });
}

/** What the inputs hand on, and why this output may not hold. */
export const outputStanding = ({ solution, standing }: SolutionValue, output: string): Standing =>
  reserved(standing, ...(solution.spoilt[output] ?? []));

/** A list with one column of numbers is that column. */
function listColumn(
  name: string,
  rows: readonly Readonly<Record<string, ScalarOutput>>[],
  standing: Standing,
): Named | undefined {
  const cells = rows.map((row) => Object.values(row).filter((cell) => "si" in cell));
  const [first] = cells[0] ?? [];
  if (!first || cells.some((numeric) => numeric.length !== 1)) return undefined;
  const all = cells.flat();
  return numbers(
    {
      kind: first.kind,
      dimension: kinds[first.kind].dimension,
      values: all.map((cell) => cell.si),
      doubts: all.map((cell) => cell.doubt ?? []),
      standing,
    },
    name,
  );
}

/** The symbol that the method's declaration gives an output. */
const symbolOfOutput = (method: string, output: string): string =>
  symbolIn(methods.get(method)?.outputs[output]) ?? output;

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
    const match = answerWith(found, wanted);
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
  const standings: Standing[] = [];
  let typed: Typed = { dimension: dimensionless };
  for (const { key, value } of found.rows) {
    if (isProblem(value)) return upstream(`${name} ${key}`, value);
    const named = answerOf(value, name, part);
    if (isProblem(named)) return named;
    if (typeof named.value !== "number" || !named.leaf) return notANumber(name, "a yes or no");
    typed = named.typed;
    values.push(named.value);
    standings.push(named.standing);
  }
  const { dimension } = typed;
  const doubts = standings.map((standing) => standing.doubt);
  return numbers(
    { kind: typed.kind ?? kindsOf(dimension)[0], dimension, values, doubts, standing: joined(standings) },
    part === undefined ? name : `${name}.${part}`,
  );
}

/** Rows of a table that count: neither corrected nor set aside, and of the key at hand where there is one. */
export function rowsAtHand(table: TableValue, row: RowContext | undefined): readonly number[] {
  if (row?.only?.of === table) return [row.only.index];
  const isKeyed = row !== undefined && table.columns.some((c) => c.name === row.key);
  return isKeyed ? countedWith(table, row.key, row.value) : countedRows(table);
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
  const all = rowsAtHand(table, row);
  const at = all.filter((i) => typeof found.values[i] === "number"); // a blank is missing, never zero
  const values = at.map((i) => found.values[i]).filter((v): v is number => typeof v === "number");
  const doubts = at.map((i) => readingDoubt(table, found, i, name));
  const standing = reserved(clear, ...lackingReadings(table, name, row, part));
  const alone = row?.table === name && (row.only !== undefined || table.key.length < 2);
  if (row && alone && all.length === 1) {
    const [value] = values;
    if (value === undefined) return missingReading(row);
    return number(found.kind, value, fullName, { standing: withDoubt(standing, doubts[0]) });
  }
  return numbers(
    { kind: found.kind, dimension: kinds[found.kind].dimension, values, doubts, standing },
    fullName,
  );
}

/** Where each row stands by itself, a blank says so; it is neither zero nor left out. */
const missingReading = (row: RowContext): Problem => {
  const [first = "", ...more] = new Set(Object.values(row.tags));
  const noun = /^([a-z]+[^s])s$/.exec(row.table)?.[1] ?? row.table;
  return problem({
    code: "not-measured",
    what: [`${noun} ${first}`, ...more].join(", "),
    why: "not measured yet",
  });
};

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
