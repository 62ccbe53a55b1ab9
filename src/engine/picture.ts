// What a picture draws: numbers and texts of the page, or the reason why one is not there.
import type { PictureItem } from "../document/item.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { dimensionWords } from "../units/dimension.ts";
import { kindsOf } from "../units/kind.ts";
import { oneValue } from "../units/quantity.ts";
import { asList } from "./as-list.ts";
import type { PictureInput, PictureValue } from "./cell.ts";
import { looksLikeQuantity, workOut } from "./formula.ts";
import { pictureFault } from "./picture-faults.ts";
import { type PictureField, pictureDeclared } from "./picture-inputs.ts";
import { type Results, upstream } from "./scope.ts";

export function pictureValue(item: PictureItem, results: Results): PictureValue | Problem {
  const of = pictureDeclared(item.picture)?.of;
  const inputs = Object.fromEntries(
    Object.entries(item.of).map(([name, text]) => [name, pictureInput(text, results, of?.[name])]),
  );
  return pictureFault(item.picture, inputs) ?? { type: "picture", picture: item.picture, inputs };
}

function pictureInput(text: string, results: Results, field: PictureField | undefined): PictureInput {
  if (field?.is === "word" && field.choices.includes(text)) return { kind: "text", text };
  if (looksLikeQuantity(text)) {
    const read = oneValue(text);
    if (!isProblem(read))
      return { kind: read.kind ?? kindsOf(read.unit.dimension)[0] ?? "ratio", si: read.si };
  }
  const plain = namedOutput(text, results);
  if (plain) return plain;
  const worked = workOut("picture", undefined, text, results);
  if (isProblem(worked)) return worked;
  if (worked.kind === "yes/no") return { kind: "yes/no", yes: worked.si === 1 };
  return worked.kind === undefined
    ? problem({
        code: "no-kind",
        what: text,
        got: dimensionWords(worked.dimension),
        must: "be a quantity with a name of its own, to be drawn",
      })
    : { kind: worked.kind, si: worked.si };
}

/** Texts, lists and tables can be drawn too, so a plain name is looked up before it is read as a formula. */
function namedOutput(text: string, results: Results): PictureInput | undefined {
  const [name = "", part] = text.split(".");
  const cell = results.get(name);
  if (cell === undefined) return undefined;
  if (isProblem(cell)) return upstream(text, cell);
  if (cell.type === "text") return { kind: "text", text: cell.text };
  if (cell.type === "solution" && part !== undefined) return cell.solution.outputs[part];
  return part === undefined ? asList(cell) : undefined;
}
