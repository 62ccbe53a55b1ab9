// Where a field of an item stands in the file, for a problem that is found when the page is worked out.
import { isScalar } from "yaml";
import { keyAt, nodeAt } from "./node-at.ts";
import { parseYaml, type YamlPage } from "./parse-yaml.ts";

/** file:line:column of a field, or of its item; `within` counts the characters of its text from 1, 0 is its name. */
export type FieldPlaces = (index: number, path: readonly (string | number)[], within?: number) => string;

/** The text is parsed at the first question: most pages are never asked. */
export function fieldPlaces(text: string, file: string): FieldPlaces {
  let yaml: YamlPage | undefined;
  return (index, path, within) => {
    if (yaml === undefined) {
      const parsed = parseYaml(text, file);
      if (!("root" in parsed)) return file;
      yaml = parsed;
    }
    const { root, from } = yaml;
    const full = ["page", index, ...path];
    if (within === 0) return from.where(keyAt(root, full.slice(0, -1), String(full.at(-1))));
    const { node, offset } = nodeAt(root, full);
    const value: unknown = isScalar(node) ? node.value : undefined;
    return from.where(within === undefined ? offset : offset + shift(text, offset, value, within));
  };
}

/** Characters from the start of a scalar to one of its text, where that stands as it is written. */
function shift(text: string, offset: number, value: unknown, within: number): number {
  const quote = text[offset] === '"' || text[offset] === "'" ? 1 : 0;
  const begin = offset + quote;
  return typeof value === "string" && text.startsWith(value, begin) ? quote + within - 1 : 0;
}
