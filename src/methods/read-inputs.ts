// From what a caller hands in (texts, numbers, SI values, rows) to SI values of the declared kinds.
// Bad input is a problem that names the input and says what to change.
import { nearest } from "../nearest.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { dimensionWords, sameDimension } from "../units/dimension.ts";
import { type Kind, kinds, kindsAgree, withArticle } from "../units/kind.ts";
import { quantity } from "../units/quantity.ts";
import type { Assumed } from "./assumed.ts";
import type {
  InputField,
  InputValue,
  ListField,
  ListRow,
  QuantityField,
  RowValue,
  SiValue,
  TextField,
} from "./field.ts";
import { isSiValue } from "./field.ts";
import type { Row } from "./inside.ts";
import { columnNumbers } from "./inside.ts";
import type { Leaf } from "./leaf.ts";
import type { Declaration } from "./method.ts";
import { judge } from "./plausible.ts";
import { repeatedRow } from "./repeated-row.ts";
import { keyTwice } from "./twice-in-text.ts";

type RowInside = Row;
export interface ReadInputs {
  readonly values: Map<string, number | string | readonly RowInside[]>;
  readonly leaves: Map<string, Leaf>;
  readonly assumed: readonly Assumed[];
  /** What is said about inputs that are unusual and still possible. */
  readonly warnings: readonly Problem[];
}

export function readInputs(
  d: Declaration,
  given: Readonly<Record<string, InputValue | undefined>>,
): ReadInputs | Problem {
  const unknown = Object.keys(given).find((name) => !Object.hasOwn(d.inputs, name));
  if (unknown !== undefined) return unknownInput(d, unknown);
  const values: ReadInputs["values"] = new Map();
  const leaves: ReadInputs["leaves"] = new Map();
  const assumed: Assumed[] = [];
  const warnings: Problem[] = [];
  for (const [name, field] of Object.entries(d.inputs)) {
    let value = given[name];
    if (value === undefined || value === "") {
      if (field.kind !== "list" && field.default !== undefined) {
        value = field.default;
        assumed.push({ name, field });
      } else if (field.optional) continue;
      else return missingInput(d, name, field);
    }
    const read = readField(d.id, name, field, value);
    if (isProblem(read)) return read;
    values.set(name, read.value);
    for (const [leaf, info] of read.leaves) leaves.set(leaf, info);
    warnings.push(...(read.warnings ?? []));
  }
  return { values, leaves, assumed, warnings };
}

interface ReadField {
  readonly value: number | string | readonly RowInside[];
  readonly leaves: readonly (readonly [string, Leaf])[];
  readonly warnings?: readonly Problem[];
}

function readField(id: string, name: string, field: InputField, value: InputValue): ReadField | Problem {
  if (field.kind === "text") {
    const text = readText(id, field, value);
    return isProblem(text) ? text : { value: text, leaves: [] };
  }
  if (field.kind === "list") return readRows(id, name, field, value);
  const read = readQuantity(id, field, value);
  if (isProblem(read)) return read;
  return {
    value: read.si,
    warnings: read.unusual ? [read.unusual] : [],
    leaves: [
      [
        name,
        { symbol: field.symbol ?? name, kind: field.kind, si: read.si, unit: read.unit, scale: read.scale },
      ],
    ],
  };
}

function readText(id: string, field: TextField, value: InputValue): string | Problem {
  if (typeof value !== "string" && typeof value !== "number")
    return problem({
      code: "not-a-text",
      where: id,
      what: field.says,
      got: "a quantity or a list",
      must: "be a text",
    });
  const text = String(value).trim();
  if (!field.choices) return text;
  const chosen = field.choices.find((choice) => choice.toLowerCase() === text.toLowerCase());
  if (chosen !== undefined) return chosen;
  return problem({
    code: "not-a-choice",
    where: id,
    what: field.says,
    got: text,
    must: `be one of ${field.choices.join(", ")}`,
    suggestions: nearest(text, field.choices),
  });
}

interface ReadQuantity {
  readonly si: number;
  readonly unit?: SiValue["unit"];
  readonly scale?: SiValue["scale"];
  readonly unusual?: Problem | undefined;
}

function readQuantity(where: string, field: QuantityField, value: InputValue): ReadQuantity | Problem {
  const read = asTyped(where, field, value);
  if (isProblem(read)) return read;
  const { refused, unusual } = judge(field, read, where);
  return refused ?? { ...read, unusual };
}

function asTyped(id: string, field: QuantityField, value: InputValue): ReadQuantity | Problem {
  if (isSiValue(value)) return readSiValue(id, field, value);
  if (typeof value !== "string" && typeof value !== "number")
    return problem({
      code: "not-a-quantity",
      where: id,
      what: field.says,
      got: "a list",
      must: `be ${withArticle(field.kind)}`,
    });
  const read = quantity(String(value), field.kind);
  if (isProblem(read)) return read.with({ where: id, what: field.says, got: read.got ?? String(value) });
  return { si: read.si, unit: read.unit };
}

function readSiValue(id: string, field: QuantityField, value: SiValue): ReadQuantity | Problem {
  const wrong = (got: string) =>
    problem({ code: "wrong-kind", where: id, what: field.says, got, must: `be ${withArticle(field.kind)}` });
  if (!sameDimension(value.dimension, kinds[field.kind].dimension))
    return wrong(value.kind ?? dimensionWords(value.dimension));
  if (value.kind !== undefined && !kindsAgree(value.kind, field.kind)) {
    const problem = wrong(withArticle(value.kind));
    return field.kind === "temperature difference"
      ? problem.with({ hint: "a given in K reads as a temperature: add as: temperature difference to it" })
      : problem;
  }
  if (!Number.isFinite(value.si))
    return problem({
      code: "not-finite",
      where: id,
      what: field.says,
      got: "no finite number",
      must: "be finite",
    });
  return { si: value.si, unit: value.unit, scale: value.scale };
}

function readRows(id: string, name: string, field: ListField, value: InputValue): ReadField | Problem {
  const given = typeof value === "string" ? rowsFromText(id, field, value) : value;
  const rows = isOneRow(given) ? [given] : given; // {"x": "3 kN", "y": "4 kN"} is a list of one row
  if (isProblem(rows)) return rows;
  if (!Array.isArray(rows) || rows.length === 0)
    return problem({
      code: "not-a-list",
      where: id,
      what: field.says,
      got: "no rows",
      must: "be a list with at least one row",
      hint: exampleOf(field),
    });
  const inside: RowInside[] = [];
  const warnings: Problem[] = [];
  for (const [index, row] of (rows as readonly ListRow[]).entries()) {
    const read = readRow(`${id} · ${name} ${index + 1}`, field, row, warnings);
    if (isProblem(read)) return read;
    inside.push(read);
  }
  const repeated = repeatedRow(`${id} · ${name}`, field, inside);
  if (repeated) return repeated;
  const leaves = Object.entries(field.of).flatMap(([column, part]): [string, Leaf][] =>
    part.kind === "text"
      ? []
      : [
          [
            `${name}.${column}`,
            {
              symbol: part.symbol ?? column,
              kind: part.kind,
              si: columnNumbers(inside, column),
            },
          ],
        ],
  );
  return { value: inside, leaves, warnings };
}

const isOneRow = (value: unknown): value is RowValue =>
  typeof value === "object" &&
  value !== null &&
  !Array.isArray(value) &&
  !isProblem(value) &&
  !isSiValue(value);

function readRow(where: string, field: ListField, row: ListRow, warnings: Problem[]): RowInside | Problem {
  const only = Object.keys(field.of);
  if ((typeof row === "string" || typeof row === "number" || isSiValue(row)) && only.length === 1)
    return readRow(where, field, { [only[0] ?? ""]: row }, warnings); // a list of plain values, such as ["150 kN", "142 kN"]
  if (typeof row !== "object" || row === null || isSiValue(row))
    return problem({
      code: "not-a-row",
      where,
      what: field.says,
      got: typeof row === "object" ? "one value" : String(row),
      must: "be a row of named values",
      hint: exampleOf(field),
    });
  const odd = Object.keys(row).find((column) => !Object.hasOwn(field.of, column));
  if (odd !== undefined)
    return problem({
      code: "unknown-input",
      where,
      what: odd,
      must: `be one of ${Object.keys(field.of).join(", ")}`,
      suggestions: nearest(odd, Object.keys(field.of)),
    });
  const inside: Record<string, string | number> = {};
  for (const [column, part] of Object.entries(field.of)) {
    const value = row[column];
    if (value === undefined || value === "") {
      if (part.optional) continue;
      return problem({
        code: "missing-input",
        where,
        what: part.says,
        got: "nothing",
        must: `be given as ${column}`,
        hint: exampleOf(field),
      });
    }
    const read = part.kind === "text" ? readText(where, part, value) : readQuantity(where, part, value);
    if (isProblem(read)) return read;
    inside[column] = typeof read === "string" ? read : read.si;
    if (typeof read !== "string" && read.unusual) warnings.push(read.unusual);
  }
  return inside;
}

function rowsFromText(id: string, field: ListField, text: string): unknown {
  try {
    const rows = JSON.parse(text) as unknown;
    const twice = keyTwice(text);
    return twice === undefined
      ? rows
      : problem({
          code: "given-twice",
          where: id,
          what: field.says,
          got: `${twice} twice in one row`,
          must: "be given once",
        });
  } catch {
    return problem({
      code: "not-a-list",
      where: id,
      what: field.says,
      got: text.length > 60 ? `${text.slice(0, 60)}…` : text,
      must: "be a list as JSON text",
      hint: exampleOf(field),
    });
  }
}

const exampleText = (kind: Kind): string => `"… ${kinds[kind].usual[0] ?? ""}"`;

/** A row with what is needed, and the first of the optional ones where that alone says too little. */
function exampleOf(field: ListField): string {
  const parts = Object.entries(field.of);
  const needed = parts.filter(([, part]) => !part.optional);
  const shown =
    needed.length < 2 ? [...needed, ...parts.filter(([, part]) => part.optional).slice(0, 1)] : needed;
  return `for example [{${shown.map(([column, part]) => `"${column}": ${part.kind === "text" ? '"…"' : exampleText(part.kind)}`).join(", ")}}]`;
}

function unknownInput(d: Declaration, name: string): Problem {
  const names = Object.keys(d.inputs);
  return problem({
    code: "unknown-input",
    where: d.id,
    what: name,
    got: "a name this method does not know",
    must: `be one of ${names.join(", ")}`,
    suggestions: nearest(name, names),
  });
}

function missingInput(d: Declaration, name: string, field: InputField): Problem {
  const example =
    field.kind === "list"
      ? exampleOf(field)
      : field.kind === "text"
        ? `${name}=…`
        : `${name}=${exampleText(field.kind)}`;
  return problem({
    code: "missing-input",
    where: d.id,
    what: field.says,
    got: "nothing",
    must: `be given as ${name}`,
    hint: field.kind === "list" ? example : `for example ${example}`,
  });
}
