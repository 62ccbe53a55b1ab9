// Units in a sentence as a screen writes them: N.m → N·m, 3 um → 3 µm. What a person typed stands in quotes and stays.
import { isProblem } from "../problem.ts";
import { unit, unitLabel } from "./unit.ts";

const known = new Map<string, string>();

/** The label of a unit; anything that is no unit stays as it is. */
function label(token: string): string {
  let found = known.get(token);
  if (found === undefined) {
    const read = unit(token);
    found = isProblem(read) || read.text !== token ? token : unitLabel(read);
    known.set(token, found);
  }
  return found;
}

const joined = /(?<![\w./])[A-Za-z]\w*(?:[./][A-Za-z]\w*)+(?!\w)/g;
const afterNumber = /(?<=\d[ \u00a0])[A-Za-z]+\d?(?!\w|[./]\w)/g;

export const onScreen = (sentence: string): string =>
  sentence
    .split(/("[^"]*")/)
    .map((part) => (part.startsWith('"') ? part : part.replace(joined, label).replace(afterNumber, label)))
    .join("");
