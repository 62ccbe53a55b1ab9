// Which names, and which outputs of them, the texts of an item read.

import type { InputText, Item, RowText } from "../document/item.ts";
import { boundFormulas } from "../engine/prose.ts";

export interface NameRead {
  readonly name: string;
  readonly output: string | undefined;
}

export function namesRead(item: Item, known: (name: string) => boolean): readonly NameRead[] {
  const found = new Map<string, NameRead>();
  for (const text of [...textsOf(item), ...boundFormulas("note" in item ? item.note : undefined)])
    for (const [, name = "", output] of text.matchAll(/(?<![\w."])([a-z]\w*)(?:\.([A-Za-z]\w*))?/g))
      if (known(name)) found.set(`${name}.${output}`, { name, output });
  return [...found.values()];
}

function textsOf(item: Item): readonly string[] {
  switch (item.kind) {
    case "working":
      return [
        ...("formula" in item ? [item.formula] : Object.values(item.of).flatMap(inputTexts)),
        ...(item.each === undefined ? [] : [item.each]),
      ];
    case "check":
      return [
        item.that,
        item.none,
        item.each,
        item.atLeast,
        item.atMost,
        ...(item.between ?? []),
        item.uncertainty,
      ].filter((text): text is string => text !== undefined);
    case "picture":
      return Object.values(item.of);
    case "note":
      return boundFormulas(item.text);
    default:
      return [];
  }
}

function inputTexts(input: InputText): readonly string[] {
  if (typeof input === "string") return [input];
  if (isList(input)) return input.flatMap(inputTexts);
  return Object.values(input);
}

const isList = (input: InputText): input is readonly (string | RowText)[] & InputText => Array.isArray(input);
