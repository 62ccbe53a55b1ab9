// A picture asked and drawn as a page does it: refused by its declaration, else told and drawn.
import type { PictureInputs, Told } from "../../../src/engine/line.ts";
import { pictureNamed } from "../../../src/engine/pictures.ts";
import { usualUnit } from "../../../src/methods/solution.ts";
import "../../../src/pictures/index.ts";
import { isProblem, type Problem } from "../../../src/problem.ts";
import { drawingOf } from "../../../src/views/drawings/index.ts";

export interface Drawing extends Told {
  readonly draw: (width: number) => SVGSVGElement;
}

export async function answer(name: string, inputs: PictureInputs): Promise<Drawing | Problem> {
  const picture = pictureNamed(name);
  if (isProblem(picture)) return picture;
  const told = picture.faultOf(inputs) ?? picture.tell(inputs, usualUnit);
  return isProblem(told) ? told : { ...told, draw: await drawingOf(told, usualUnit) };
}
