// What keeps a row out by itself: a blank in its key, a tag that the page does not know, set aside without a word.
import type { ReadingItem } from "../../document/item.ts";
import { nearest } from "../../nearest.ts";
import { type Problem, problem } from "../../problem.ts";
import { isSetAside, textIn } from "./key-words.ts";
import type { OpenTable, TableRow } from "./open-table.ts";

export function rowFault(item: ReadingItem, row: TableRow, file: OpenTable): Problem | undefined {
  const blank = item.key?.find((name) => textIn(row, name) === "");
  if (blank !== undefined)
    return problem({
      code: "no-key",
      what: `line ${row.line}, ${blank}`,
      got: "nothing",
      must: "say which reading the row is",
    });
  if (isSetAside(row) && textIn(row, "reason") === "")
    return problem({
      code: "no-reason",
      what: `line ${row.line}, state`,
      got: "set aside without a reason",
      must: "say why in a column reason",
    });
  const [strange] = Object.entries(item.expect ?? {}).filter(
    ([name, expected]) => row.fields.has(name) && !expected.includes(textIn(row, name)),
  );
  return strange && notExpected(strange[0], strange[1], row, file);
}

function notExpected(name: string, expected: readonly string[], row: TableRow, file: OpenTable): Problem {
  const got = textIn(row, name);
  const swapped = file.columns.find((other) => other.name !== name && holdsOnly(file, other.name, expected));
  const near = swapped || got === "" ? undefined : nearest(got, expected, 1)[0];
  const most = 12;
  return problem({
    code: "not-expected",
    what: `line ${row.line}, ${name}`,
    got: got || "nothing",
    must: `be one of ${expected.slice(0, most).join(", ")}${expected.length > most ? ", …" : ""}, as the page expects`,
    hint: swapped
      ? `the heading ${swapped.heading} stands over such tags: are the two headings swapped?`
      : near && `did you mean ${near}?`,
    suggestions: near ? [near] : [],
  });
}

/** Whether a column of several rows holds these tags and no other text. */
function holdsOnly({ rows }: OpenTable, name: string, tags: readonly string[]): boolean {
  const texts = rows.map((row) => textIn(row, name)).filter((text) => text !== "");
  return texts.length > 1 && texts.every((text) => tags.includes(text));
}
