// What keeps a row out by itself: a blank in its key, a tag that the page does not know, set aside without a word.
import type { ReadingItem } from "../document/item.ts";
import { keyColumns } from "../document/place-words.ts";
import { nearest } from "../nearest.ts";
import { type Problem, problem } from "../problem.ts";
import type { ImportColumn } from "./import-columns.ts";
import { isSetAside } from "./remarks.ts";
import type { Row } from "./table.ts";

/** The rows of a file, and the headings they stand under. */
export interface Headed {
  readonly columns: readonly ImportColumn[];
  readonly rows: readonly Row[];
}

export function rowFault(item: ReadingItem, { line, texts }: Row, file: Headed): Problem | undefined {
  const blank = keyColumns(item).find((name) => (texts[name] ?? "") === "");
  if (blank !== undefined)
    return problem({
      code: "no-key",
      what: `line ${line}, ${blank}`,
      got: "nothing",
      must: "say which reading the row is",
    });
  if (isSetAside(texts) && (texts["reason"] ?? "") === "")
    return problem({
      code: "no-reason",
      what: `line ${line}, state`,
      got: "set aside without a reason",
      must: "say why in a column reason",
    });
  const strange = Object.entries(item.expect ?? {}).find(
    ([name, expected]) => Object.hasOwn(texts, name) && !expected.includes(texts[name] ?? ""),
  );
  return strange && notExpected(strange[0], strange[1], { line, got: texts[strange[0]] ?? "" }, file);
}

function notExpected(
  name: string,
  expected: readonly string[],
  { line, got }: { readonly line: number; readonly got: string },
  { columns, rows }: Headed,
): Problem {
  const swapped = columns.find(
    ({ column }) => column !== undefined && column !== name && holdsOnly(rows, column, expected),
  );
  // one figure for another is no slip of the pen
  const near = swapped || got.length < 3 ? undefined : nearest(got, expected, 1)[0];
  const most = 12;
  return problem({
    code: "not-expected",
    what: `line ${line}, ${name}`,
    got: got || "nothing",
    must: `be one of ${expected.slice(0, most).join(", ")}${expected.length > most ? ", …" : ""}, as the page expects`,
    hint: swapped
      ? `the heading ${swapped.heading} stands over such tags: are the two headings swapped?`
      : near && `did you mean ${near}?`,
    suggestions: near ? [near] : [],
  });
}

/** Whether a column of several rows holds these tags and no other text. */
function holdsOnly(rows: readonly Row[], name: string, tags: readonly string[]): boolean {
  const texts = rows.map(({ texts: fields }) => fields[name] ?? "").filter((text) => text !== "");
  return texts.length > 1 && texts.every((text) => tags.includes(text));
}
