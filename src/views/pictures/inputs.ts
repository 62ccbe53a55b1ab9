// Numbers that a picture draws, or the sentence that says which one has no answer.

import type { SiValue } from "../../methods/field.ts";
import { isProblem, type Problem, problem, root, sentence } from "../../problem.ts";
import { type Kind, kinds, kindsAgree } from "../../units/kind.ts";
import type { PictureInputs } from "./drawing.ts";

export type Numbers<Name extends string, Maybe extends string> = Readonly<
  Record<Name, number> & Partial<Record<Maybe, number>>
>;

export function numbersOf<Name extends string, Maybe extends string>(
  picture: string,
  inputs: PictureInputs,
  needed: Readonly<Record<Name, Kind>>,
  optional: Readonly<Record<Maybe, Kind>>,
): Numbers<Name, Maybe> | Problem {
  const found: Record<string, number> = {};
  const wanted: readonly (readonly [string, Kind, boolean])[] = [
    ...Object.entries<Kind>(needed).map(([name, kind]) => [name, kind, true] as const),
    ...Object.entries<Kind>(optional).map(([name, kind]) => [name, kind, false] as const),
  ];
  for (const [name, kind, must] of wanted) {
    const input = inputs[name];
    if (input === undefined) {
      if (must) return missing(picture, name, kind);
      continue;
    }
    if (isProblem(input)) return noAnswer(picture, name, input);
    if (!("si" in input) || !kindsAgree(input.kind, kind)) return wrongKind(picture, name, kind, input.kind);
    if (!Number.isFinite(input.si))
      return noAnswer(picture, name, problem({ code: "not-finite", what: name, got: "no finite number" }));
    found[name] = input.si;
  }
  if (!isComplete(found, needed)) throw new Error(`${picture}: an input was passed over`);
  return found;
}

const isComplete = <Name extends string, Maybe extends string>(
  found: object,
  needed: Readonly<Record<Name, Kind>>,
): found is Numbers<Name, Maybe> => Object.keys(needed).every((name) => name in found);

export const siValue = (kind: Kind, si: number): SiValue => ({ si, kind, dimension: kinds[kind].dimension });

export const missing = (picture: string, name: string, kind: string): Problem =>
  problem({
    code: "missing-input",
    what: `picture ${picture}`,
    got: `no ${name}`,
    must: `have a ${kind} for ${name}`,
    hint: `add ${name} under of`,
  });

export const noAnswer = (picture: string, name: string, cause: Problem): Problem =>
  problem({
    code: "no-answer-upstream",
    what: `picture ${picture}`,
    got: `no answer for ${name}`,
    why: sentence(root(cause)),
    cause: root(cause),
  });

export const wrongKind = (picture: string, name: string, kind: string, got: string): Problem =>
  problem({ code: "wrong-kind", what: `picture ${picture}`, got: `${name} as ${got}`, must: `be a ${kind}` });
