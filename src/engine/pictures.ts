// The pictures that have been loaded, as far as the engine asks them. They stand above it and put themselves in.
import type { UnitChoice } from "../methods/solution.ts";
import { nearest } from "../nearest.ts";
import { type Problem, problem } from "../problem.ts";
import type { PictureInputs, Told } from "./line.ts";

export interface KnownPicture {
  readonly id: string;
  /** Names that it had before. */
  readonly formerly?: readonly string[];
  /** Words that may stand as this input without being a name of the page. */
  readonly choicesOf: (input: string) => readonly string[];
  /** What the entry asks that the picture cannot take. */
  readonly faultOf: (inputs: PictureInputs) => Problem | undefined;
  /** Sentence, table and numbers to draw, for inputs without a fault. */
  readonly tell: (inputs: PictureInputs, unitOf: UnitChoice) => Told | Problem;
}

const loaded = new Map<string, KnownPicture>();

export function addPictures(list: readonly KnownPicture[]): void {
  for (const picture of list) loaded.set(picture.id, picture);
}

export function pictureNamed(name: string): KnownPicture | Problem {
  const found = loaded.get(name);
  if (found) return found;
  const all = [...loaded.values()];
  const names = all.map(({ id }) => id);
  const now = all.find(({ formerly }) => formerly?.includes(name))?.id;
  const near = now === undefined ? nearest(name, names, 1) : [now];
  return problem({
    code: "unknown-picture",
    what: "picture",
    got: name,
    must: `be one of ${names.join(", ")}`,
    hint: now === undefined ? didYouMean(near) : `it is called ${now} now`,
    suggestions: near,
  });
}

export const didYouMean = (near: readonly string[]): string | undefined =>
  near.length > 0 ? `did you mean ${near.join(" or ")}?` : undefined;

/** An entry that no value of the page can make right; all else that a picture lacks may still come. */
const refusals = ["unknown-picture", "unknown-input", "missing-input", "wrong-kind", "odd-choice"];

export const isRefusal = ({ code }: Problem): boolean => refusals.includes(code);
