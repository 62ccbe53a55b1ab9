// What a picture draws: numbers and texts of the page, or the reason why one is not there.
import type { PictureItem } from "../document/item.ts";
import type { UnitChoice } from "../methods/solution.ts";
import { isProblem, type Problem, problem } from "../problem.ts";
import { clear, joined, reserved, type Standing } from "../standing.ts";
import { dimensionWords } from "../units/dimension.ts";
import { kindsOf } from "../units/kind.ts";
import { oneValue } from "../units/quantity.ts";
import { asList, heldList } from "./as-list.ts";
import { looksLikeQuantity, workOut } from "./formula.ts";
import { inPart } from "./inputs.ts";
import { lackingReadings } from "./lacking-readings.ts";
import type { FormulaValue, Line, LineValue, PictureInput, PictureValue, Told } from "./line.ts";
import { pictureNamed } from "./pictures.ts";
import { type Results, upstream } from "./scope.ts";

/** An input without an answer is no fault of the picture: it is told beside the others, which have one. */
export function pictureValue(
  item: PictureItem,
  results: Results,
  unitOf: UnitChoice,
): PictureValue | Problem {
  const picture = pictureNamed(item.picture);
  if (isProblem(picture)) return picture;
  const drawn = Object.entries(item.of).map(
    ([name, text]) => [name, drawnInput(name, text, results, picture.choicesOf(name))] as const,
  );
  const inputs = Object.fromEntries(drawn.map(([name, { input }]) => [name, input]));
  const fault = picture.faultOf(inputs);
  if (fault) return fault;
  const told = picture.tell(inputs, unitOf);
  if (isProblem(told) && !Object.values(inputs).some(isProblem)) return told;
  const { reservations } = joined(drawn.map(([, { standing }]) => standing));
  return { type: "picture", picture: item.picture, inputs, told, reservations };
}

interface ToldPicture {
  readonly line: Line;
  readonly value: PictureValue;
  readonly told: Told;
}

/** The pictures of a page that have something to say. */
export const toldPictures = (lines: readonly Line[]): readonly ToldPicture[] =>
  lines.flatMap((line) => {
    const { value } = line;
    if (isProblem(value) || value.type !== "picture" || isProblem(value.told)) return [];
    return [{ line, value, told: value.told }];
  });

interface Drawn {
  readonly input: PictureInput;
  readonly standing: Standing;
}

const plain = (input: PictureInput): Drawn => ({ input, standing: clear });

function drawnInput(name: string, text: string, results: Results, choices: readonly string[]): Drawn {
  if (choices.includes(text)) return plain({ kind: "text", text });
  if (looksLikeQuantity(text)) {
    const read = oneValue(text);
    if (!isProblem(read)) {
      const { dimension } = read.unit;
      return plain(numberOf(text, { kind: read.kind ?? kindsOf(dimension)[0], si: read.si, dimension }));
    }
  }
  const named = namedOutput(text, results);
  if (named) return named;
  const worked = workOut("picture", undefined, text, results);
  return isProblem(worked)
    ? plain(inPart(worked, name))
    : { input: numberOf(text, worked), standing: worked.named.standing };
}

type Sized = Pick<FormulaValue, "kind" | "si" | "dimension">;

function numberOf(text: string, { kind, si, dimension }: Sized): PictureInput {
  if (kind === "yes/no") return { kind, yes: si === 1 };
  return kind === undefined
    ? problem({
        code: "no-kind",
        what: text,
        got: dimensionWords(dimension),
        must: "be a quantity with a name of its own, to be drawn",
      })
    : { kind, si };
}

/** Texts, lists and tables can be drawn too, so a plain name is looked up before it is read as a formula. */
function namedOutput(text: string, results: Results): Drawn | undefined {
  const [name = "", part] = text.split(".");
  const line = results.get(name);
  if (line === undefined) return undefined;
  if (isProblem(line)) return plain(upstream(text, line));
  if (line.type === "text") return plain({ kind: "text", text: line.text });
  if (line.type === "solution" && part !== undefined) {
    const output = line.solution.outputs[part];
    const isHeld = line.standing.reservations.length > 0;
    return (
      output && {
        input: isHeld && output.kind === "list" ? heldList(output) : output,
        standing: line.standing,
      }
    );
  }
  const list = part === undefined ? asList(line) : undefined;
  return list && { input: list, standing: standingOfList(line, name) };
}

/** What a drawn table or list of answers stands on: what was set aside, and what each answer hands on. */
function standingOfList(line: LineValue, name: string): Standing {
  if (line.type === "table")
    return reserved(
      clear,
      ...lackingReadings(line, name, undefined).filter(({ code }) => code === "readings-set-aside"),
    );
  if (line.type !== "rows") return clear;
  return joined(
    line.rows.flatMap(({ value }) => {
      if (isProblem(value)) return [];
      return [value.type === "formula" ? value.named.standing : value.standing];
    }),
  );
}
