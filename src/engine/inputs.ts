// The inputs of a method as a page writes them: names, formulas, quantities, texts, rows, tables of readings.
import type { InputText, RowText } from "../document/item.ts";
import {
  type InputField,
  type InputValue,
  isQuantityField,
  type ListField,
  type ListRow,
  type ScalarOutput,
  type SiValue,
} from "../methods/field.ts";
import type { Leaf } from "../methods/leaf.ts";
import { statedDoubt } from "../methods/stated-doubt.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { clear, reserved, type Standing } from "../standing.ts";
import { type Kind, kinds } from "../units/kind.ts";
import { type Quantity, quantity } from "../units/quantity.ts";
import { asList, tableRow } from "./as-list.ts";
import { rowByRow } from "./contexts.ts";
import { workOut } from "./formula.ts";
import { lackingReadings } from "./lacking-readings.ts";
import type { FormulaValue, LineValue, SolutionValue } from "./line.ts";
import { meant } from "./meant.ts";
import { outputStanding, type Results, type RowContext, rowsAtHand, unknownName, upstream } from "./scope.ts";

/** The working that the inputs go into. */
export interface Into {
  /** Its name: a ± typed in place is in doubt under it. */
  readonly name: string;
  /** Called with what each value that goes in hands on besides its number and its doubt. */
  readonly take: (standing: Standing) => void;
}

/** One input of a method: a text stays a text, everything else is a quantity or a formula over the page. */
export function inputValue(
  field: InputField | undefined,
  text: InputText,
  results: Results,
  into: Into,
): InputValue | Problem {
  if (field === undefined)
    return typeof text === "string"
      ? text
      : problem({ code: "unknown-input", what: "input", got: "a list", must: "be an input of the method" });
  if (field.kind === "text")
    return typeof text === "string"
      ? textInput(text, results, into, field.choices)
      : problem({ code: "not-a-text", what: field.says, got: "a list", must: "be a text" });
  if (field.kind === "list") return listInput(field, text, results, into);
  return typeof text === "string"
    ? quantityInput(field.kind, text, results, into)
    : problem({ code: "not-a-quantity", what: field.says, got: "a list", must: `be a ${field.kind}` });
}

const isList = (text: InputText): text is readonly string[] | readonly RowText[] => Array.isArray(text);

/**
 * Rows written in the page; the name of a table ("holes"), of one of its columns ("trial.stretch") or of
 * a list that a method gives ("selection.pairs"); or one record with `each`: a row for each row of that table.
 */
function listInput(
  field: ListField,
  text: InputText,
  results: Results,
  into: Into,
): readonly ListRow[] | Problem {
  if (isList(text)) return rowsInput(field, text, results, into);
  if (typeof text !== "string")
    return "each" in text ? builtRows(field, text, results, into) : rowsInput(field, [text], results, into);
  const [name = "", part] = text.split(".");
  const line = results.get(name);
  if (line === undefined) return unknownName(name, [...results.keys()]);
  if (isProblem(line)) return upstream(text, line);
  const rows = listed(line, name, part, results.row, into);
  if (!rows)
    return problem({
      code: "not-a-list",
      what: text,
      got: `a ${line.type}`,
      must: "be a table of readings, a list, or a list of rows",
    });
  return rows.flatMap((row) =>
    fitted(field, row, line.type === "table" || line.type === "rows" ? part : undefined),
  );
}

type Listed = readonly Readonly<Record<string, ScalarOutput>>[];

function listed(
  line: LineValue,
  name: string,
  part: string | undefined,
  row: RowContext | undefined,
  into: Into,
): Listed | undefined {
  if (line.type === "table") {
    into.take(reserved(clear, ...lackingReadings(line, name, row, part)));
    return rowsAtHand(line, row).map((i) => tableRow(line, i, name));
  }
  if (line.type === "rows") {
    for (const { value } of line.rows) if (!isProblem(value)) into.take(answerStanding(value));
    return asList(line)?.rows;
  }
  const output = line.type === "solution" && part !== undefined ? line.solution.outputs[part] : undefined;
  if (line.type !== "solution" || part === undefined || output?.kind !== "list") return undefined;
  into.take(outputStanding(line, part));
  return output.rows;
}

/** What a whole answer hands on, whichever of its outputs does not hold. */
const answerStanding = (value: SolutionValue | FormulaValue): Standing =>
  value.type === "formula"
    ? value.named.standing
    : reserved(value.standing, ...Object.values(value.solution.spoilt).flat());

/** Columns go to the fields of the same name; `only` is one column for a list of plain values. */
function fitted(
  field: ListField,
  row: Readonly<Record<string, ScalarOutput>>,
  only: string | undefined,
): ListRow[] {
  const [single] = Object.keys(field.of);
  const values: Record<string, string | SiValue> = {};
  for (const [name, value] of Object.entries(row)) {
    const target = only === undefined ? name : name === only ? (single ?? only) : undefined;
    if (target === undefined || !Object.hasOwn(field.of, target)) continue;
    if (value.kind === "text") values[target] = value.text;
    else if (value.kind === "yes/no") values[target] = value.yes ? "yes" : "no";
    else
      values[target] = {
        si: value.si,
        dimension: kinds[value.kind].dimension,
        kind: value.kind,
        doubt: value.doubt,
      };
  }
  return only !== undefined && Object.keys(values).length === 0 ? [] : [values];
}

/** `{ each: toSelect, tag: position, smallest: hole.smallest }`: one row for each row of that table. */
function builtRows(
  field: ListField,
  record: RowText,
  results: Results,
  into: Into,
): readonly ListRow[] | Problem {
  const { each = "", ...columns } = record;
  const contexts = rowByRow(each, results);
  if (isProblem(contexts)) return contexts;
  const table = results.get(each);
  if (table !== undefined && !isProblem(table) && table.type === "table")
    into.take(reserved(clear, ...lackingReadings(table, each, results.row)));
  const rows: ListRow[] = [];
  for (const row of contexts) {
    if (row.problem) return row.problem;
    const built = rowsInput(field, [columns], { get: results.get, keys: results.keys, row }, into);
    if (isProblem(built)) return inPart(built, `${each} ${row.value}`);
    rows.push(...built);
  }
  return rows;
}

/** One of the choices is meant as such; else a text may name a given that holds a text; else it is taken as written. */
function textInput(
  text: string,
  results: Results,
  into: Into,
  choices: readonly string[] = [],
): string | Problem {
  if (choices.some((choice) => choice.toLowerCase() === text.toLowerCase())) return text;
  const tag = results.row?.tags[text];
  if (tag !== undefined) return tag;
  const named = results.get(text);
  if (named === undefined) return text;
  if (isProblem(named))
    return problem({
      code: "no-answer-upstream",
      what: text,
      why: "has no answer",
      cause: named.cause ?? named,
    });
  if (named.type === "text") return named.text;
  if (named.type === "quantity") into.take({ ...named.named.standing, doubt: [] });
  return named.type === "quantity"
    ? named.typed.text
    : problem({ code: "not-a-text", what: text, got: `a ${named.type}`, must: "be a text" });
}

function quantityInput(kind: Kind, text: string, results: Results, into: Into): string | SiValue | Problem {
  const found = meant(text, (typed) => quantity(typed, kind));
  if (isProblem(found)) return found;
  if ("quantity" in found) return found.quantity.spread ? uncertain(found.quantity, text, into) : text;
  const worked = workOut("input", undefined, text, results);
  if (isProblem(worked)) return worked;
  if (worked.kind === "yes/no")
    return problem({ code: "wrong-kind", what: text, got: "a yes or no", must: `be a ${kind}` });
  const { standing } = worked.named;
  into.take({ ...standing, doubt: [] });
  const typed = worked.step.tree.type === "name" ? typedUnit(text, results) : undefined;
  return {
    si: worked.si,
    dimension: worked.dimension,
    kind: worked.named.typed.kind,
    unit: typed,
    doubt: standing.doubt.length === 0 ? undefined : standing.doubt,
    scale: () => worked.step.scale(),
  };
}

/** A ± typed in place is a cause of its own. */
const uncertain = (read: Quantity, text: string, { name }: Into): SiValue => ({
  si: read.si,
  dimension: read.unit.dimension,
  kind: read.kind,
  unit: read.unit,
  doubt: statedDoubt(`${text} in ${name}`, read),
});

const typedUnit = (name: string, results: Results): Leaf["unit"] => {
  const line = results.get(name);
  return line && !isProblem(line) && line.type === "quantity" ? line.typed.unit : undefined;
};

function rowsInput(
  { of }: ListField,
  rows: readonly (string | RowText)[],
  results: Results,
  into: Into,
): readonly ListRow[] | Problem {
  const read: ListRow[] = [];
  const columns = Object.values(of);
  for (const [index, row] of rows.entries()) {
    const only = columns.length === 1 ? columns[0] : undefined;
    if (typeof row === "string" && only && isQuantityField(only)) {
      const value = quantityInput(only.kind, row, results, into);
      if (isProblem(value)) return inPart(value, `row ${index + 1}`);
      read.push(value);
      continue;
    }
    if (typeof row === "string")
      return problem({
        code: "not-a-row",
        what: `row ${index + 1}`,
        got: row,
        must: "be a row of named values",
      });
    const values: Record<string, string | SiValue> = {};
    for (const [column, text] of Object.entries(row)) {
      const field = of[column];
      const value =
        field && isQuantityField(field)
          ? quantityInput(field.kind, text, results, into)
          : textInput(text, results, into);
      if (isProblem(value)) return inPart(value, `row ${index + 1} · ${column}`);
      values[column] = value;
    }
    read.push(values);
  }
  return read;
}

/** The part of a list that a problem is about; a reading that is not there names its own place. */
export const inPart = (found: Problem, part: string): Problem =>
  found.code === "not-measured" ? found : found.with({ what: `${part} · ${found.what}` });
