// Exceptions among the rows of a line: checks by row, answers by row, and readings that are missing or odd.
import type { CheckValue, Line } from "../engine/line.ts";
import { isProblem, type Problem, root } from "../problem.ts";
import { stepsOf } from "../readings/places.ts";
import { onScreen } from "../units/on-screen.ts";
import { type State, states } from "../verdict.ts";
import { capital, counted } from "../words.ts";
import { inPlace } from "./problem-words.ts";
import { reasonAndDoubts, shortReservations } from "./reservations.ts";
import { type ItemOf, rowNames } from "./row-names.ts";
import { oddReadings } from "./set-asides.ts";
import { type Mark, stateOf } from "./states.ts";
import { warningsOf } from "./warnings.ts";

export interface RowException {
  readonly key: string;
  /** "hole 18" */
  readonly says: string;
  readonly words: string;
}

export interface Exception {
  readonly mark: Mark;
  readonly name: string;
  readonly words: string;
  /** Single rows of the line, each with its own words. */
  readonly rows?: readonly RowException[];
}

export function rowExceptions(line: Line, itemOf: ItemOf): readonly Exception[] {
  const { value } = line;
  if (isProblem(value)) return [];
  if (value.type === "checks") return ofChecks(line, value, itemOf);
  if (value.type === "rows") return ofAnswers(line, value, itemOf);
  return value.type === "table" ? ofReadings(line, value) : [];
}

type Of<T extends string> = Extract<Line["value"], { readonly type: T }>;

/** One entry for each state that is not proven, with its rows; a list may be empty and still not hold. */
function ofChecks({ name, item }: Line, value: Of<"checks">, itemOf: ItemOf): readonly Exception[] {
  const { key, rows, state } = value;
  if (rows.length === 0)
    return state === "proven" ? [] : [{ mark: state, name, words: reasonAndDoubts(value) }];
  const nameOf = rowNames(item, value, itemOf);
  return states
    .filter((state) => state !== "proven")
    .flatMap((mark): Exception[] => {
      const these = rows.filter((row) => stateOf(row) === mark);
      if (these.length === 0) return [];
      const words =
        key === "finding"
          ? `${these.length} found.`
          : `${these.length} of ${rows.length} ${inState(mark, these.length)}:`;
      const listed = these.map((row) => ({
        key: row.key,
        says: nameOf(row),
        words: isProblem(row.value) ? waitWords(row.value) : checkWords(row.value),
      }));
      return [{ mark, name, words, rows: listed }];
    });
}

/** "1 of 8 has no answer", "3 of 8 fail" */
function inState(state: State, n: number): string {
  if (state === "fails") return n === 1 ? "fails" : "fail";
  if (state === "no answer") return n === 1 ? "has no answer" : "have no answer";
  return `${n === 1 ? "is" : "are"} ${state}`;
}

const checkWords = (check: CheckValue): string =>
  [onScreen(check.reason), ...shortReservations(check).map((words) => `may not hold: ${words}`)].join("; ");

/** What a row without an answer waits for, in few words: the whole story stands at its own line. */
function waitWords(check: Problem): string {
  const first = root(check);
  if (notMeasured.has(first.code)) return "waits for a reading";
  return check.cause ? `waits for ${first.what}` : inPlace(first);
}

const notMeasured: ReadonlySet<string> = new Set(["missing", "not-measured"]);

/** Rows that have no answer of their own, and rows with warnings, each once. */
function ofAnswers(line: Line, value: Of<"rows">, itemOf: ItemOf): readonly Exception[] {
  const { name, item } = line;
  const nameOf = rowNames(item, value, itemOf);
  const all = value.rows.length;
  const without = value.rows.flatMap(({ key, value: answer }) =>
    isProblem(answer) && answer.cause === undefined
      ? [{ key, says: nameOf({ key }), words: inPlace(answer) }]
      : [],
  );
  const first = new Map(
    warningsOf(line)
      .toReversed()
      .map(({ row = "", warning }) => [row, warning]),
  );
  const warned = value.rows.flatMap(({ key }) => {
    const warning = first.get(key);
    return warning ? [{ key, says: nameOf({ key }), words: capital(warning.why ?? warning.what) }] : [];
  });
  return [
    ...some(
      "no answer",
      name,
      `${without.length} of ${all} ${inState("no answer", without.length)}:`,
      without,
    ),
    ...some("warning", name, `${warned.length} of ${all} with a warning:`, warned),
  ];
}

const some = (
  mark: Mark,
  name: string,
  words: string,
  rows: readonly RowException[],
): readonly Exception[] => (rows.length === 0 ? [] : [{ mark, name, words, rows }]);

function ofReadings(line: Line, value: Of<"table">): readonly Exception[] {
  const { name, item } = line;
  if (item.kind !== "reading") return [];
  const steps = stepsOf(item, value);
  const missing = Math.max(steps.filter((step) => step.state === "missing").length, value.missing);
  const all = counted(steps.length, "reading");
  const odd = oddReadings(line).map((one) => onScreen(`${one.place}, ${one.value}`));
  return [
    ...(value.missing > 0
      ? [{ mark: "missing" as const, name, words: `${missing} of ${all} missing.` }]
      : []),
    ...(odd.length > 0
      ? [{ mark: "odd" as const, name, words: `${odd.length} of ${all} asked about: ${odd.join("; ")}.` }]
      : []),
  ];
}
