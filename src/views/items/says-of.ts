// What an output of a method is called.

import { inWords } from "../../document/place-words.ts";
import type { OutputField } from "../../methods/field.ts";
import { methods } from "../../methods/register.ts";

function fieldOf(method: string, output: string): OutputField | undefined {
  return methods.get(method)?.outputs[output];
}

export const saysOf = (method: string, output: string): string =>
  fieldOf(method, output)?.says ?? inWords(output);
