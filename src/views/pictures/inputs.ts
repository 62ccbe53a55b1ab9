// Numbers and words that a picture draws, or the sentence that says which one has no answer. Names and kinds
// are those that the engine declares and has checked.
import { type PictureName, pictureInputs } from "../../engine/picture-inputs.ts";
import type { SiValue } from "../../methods/field.ts";
import { isProblem, type Problem, problem, root, sentence } from "../../problem.ts";
import { type Kind, kinds } from "../../units/kind.ts";
import type { PictureInputs } from "./drawing.ts";

type Fields<P extends PictureName> = (typeof pictureInputs)[P]["of"];
export type Named<P extends PictureName, Is> = {
  [N in keyof Fields<P>]: Fields<P>[N] extends Is ? N : never;
}[keyof Fields<P>] &
  string;

export type Numbers<P extends PictureName> = Readonly<
  Record<Named<P, { is: "number"; optional: false }>, number> &
    Partial<Record<Named<P, { is: "number"; optional: true }>, number>>
>;

export function numbersOf<P extends PictureName>(picture: P, inputs: PictureInputs): Numbers<P> | Problem {
  const found: Record<string, number> = {};
  const declared = Object.entries(pictureInputs[picture].of).filter(([, field]) => field.is === "number");
  for (const [name] of declared) {
    const input = inputs[name];
    if (input === undefined) continue;
    if (isProblem(input)) return noAnswer(picture, name, input);
    if (!("si" in input) || !Number.isFinite(input.si))
      return noAnswer(picture, name, problem({ code: "not-finite", what: name, got: "no finite number" }));
    found[name] = input.si;
  }
  if (!isComplete(found, picture)) throw new Error(`${picture}: an input was passed over`);
  return found;
}

const isComplete = <P extends PictureName>(found: object, picture: P): found is Numbers<P> =>
  Object.entries(pictureInputs[picture].of).every(
    ([name, field]) => field.is !== "number" || field.optional || name in found,
  );

export const siValue = (kind: Kind, si: number): SiValue => ({ si, kind, dimension: kinds[kind].dimension });

export const noAnswer = (picture: string, name: string, cause: Problem): Problem =>
  problem({
    code: "no-answer-upstream",
    what: `picture ${picture}`,
    got: `no answer for ${name}`,
    why: sentence(root(cause)),
    cause: root(cause),
  });
