// A list of one row has one, and what names a row names it once: the second would be ignored, or win unseen.
import { type Problem, problem } from "../problem.ts";
import type { ListField } from "./field.ts";
import type { Row } from "./inside.ts";

export function repeatedRow(where: string, field: ListField, rows: readonly Row[]): Problem | undefined {
  if (field.one && rows.length > 1)
    return problem({
      code: "too-many-rows",
      where,
      what: field.says,
      got: `${rows.length} rows`,
      must: "be one row",
    });
  const key = field.unique ?? [];
  if (key.length === 0) return undefined;
  const nameOf = (row: Row) =>
    key.map((column) =>
      String(row[column] ?? "")
        .trim()
        .toLowerCase(),
    );
  const names = rows.map((row) => nameOf(row).join(" · "));
  const second = names.findIndex(
    (name, index) => name.replaceAll(" · ", "") !== "" && names.indexOf(name) < index,
  );
  if (second < 0) return undefined;
  const first = names.indexOf(names[second] ?? "");
  const what = key.map((column) => field.of[column]?.says ?? column).join(" and ");
  return problem({
    code: "given-twice",
    where,
    what,
    got: `${key.map((column) => String(rows[second]?.[column] ?? "")).join(", ")} in rows ${first + 1} and ${second + 1}`,
    must: "be given once",
    why: "one of the two would be ignored",
  });
}
