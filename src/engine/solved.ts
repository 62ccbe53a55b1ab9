// The answer of a method for inputs that have not moved is kept: with stated doubt a method is solved
// many times over, and a table asks it for every row while one reading changes.
import type { Item } from "../document/item.ts";
import type { InputValue, ListRow, RowValue, SiValue } from "../methods/field.ts";
import type { Solution } from "../methods/solution.ts";
import type { Problem } from "../problem.ts";
import type { Contribution } from "../standing.ts";
import { sameDimension } from "../units/dimension.ts";

type Inputs = Readonly<Record<string, InputValue>>;

interface Kept {
  readonly inputs: Inputs;
  readonly answer: Solution | Problem;
}

const kept = new WeakMap<Item, Map<string, Kept>>();

export function solved(
  item: Item,
  row: string,
  inputs: Inputs,
  solve: () => Solution | Problem,
): Solution | Problem {
  const rows = kept.get(item) ?? new Map<string, Kept>();
  kept.set(item, rows);
  const before = rows.get(row);
  if (before && sameInputs(before.inputs, inputs)) return before.answer;
  const answer = solve();
  rows.set(row, { inputs, answer });
  return answer;
}

function sameInputs(a: Inputs | RowValue, b: Inputs | RowValue): boolean {
  const names = Object.keys(a);
  return (
    names.length === Object.keys(b).length &&
    names.every((name) => Object.hasOwn(b, name) && sameInput(a[name], b[name]))
  );
}

type Part = InputValue | ListRow | undefined;

const isList = (value: Part): value is readonly ListRow[] => Array.isArray(value);
const isSi = (value: Part): value is SiValue =>
  typeof value === "object" && !isList(value) && "si" in value && "dimension" in value;
const isRow = (value: Part): value is RowValue => typeof value === "object" && !isList(value) && !isSi(value);

function sameInput(a: Part, b: Part): boolean {
  if (Object.is(a, b)) return true;
  if (isList(a)) return isList(b) && a.length === b.length && a.every((row, i) => sameInput(row, b[i]));
  if (isSi(a)) return isSi(b) && sameSi(a, b);
  return isRow(a) && isRow(b) && sameInputs(a, b);
}

const sameSi = (a: SiValue, b: SiValue): boolean =>
  Object.is(a.si, b.si) &&
  a.kind === b.kind &&
  a.unit === b.unit &&
  sameDimension(a.dimension, b.dimension) &&
  sameDoubt(a.doubt ?? [], b.doubt ?? []);

const sameDoubt = (a: readonly Contribution[], b: readonly Contribution[]): boolean =>
  a.length === b.length &&
  a.every((one, i) => {
    const other = b[i];
    return (
      other !== undefined &&
      one.root === other.root &&
      one.up === other.up &&
      one.down === other.down &&
      one.meaning === other.meaning &&
      one.applies?.share === other.applies?.share
    );
  });
