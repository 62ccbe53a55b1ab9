// Exceptions among the rows of a line: checks by row, answers by row, and readings that are missing or odd.

import { nounOfRows } from "../document/place-words.ts";
import { whyAlone } from "../engine/check-parts.ts";
import type { CheckValue, Line } from "../engine/line.ts";
import { isProblem, type Problem, root } from "../problem.ts";
import { stepsOf } from "../readings/places.ts";
import { withUnit } from "../readings/row-words.ts";
import { type State, states } from "../verdict.ts";
import { rowName, rowState } from "./items/checks.ts";
import { onScreen } from "./on-screen.ts";
import type { PageContext } from "./page-context.ts";
import { inPlace } from "./problem-note.ts";
import type { Exception } from "./summary.ts";
import { capital, counted } from "./words.ts";

export interface RowException {
  readonly key: string;
  /** "hole 18" */
  readonly says: string;
  readonly words: string;
}

/** Every judgement of the page, row by row where a check has rows. */
export function statesOf({ item, value }: Line): readonly State[] {
  if (item.kind !== "check") return [];
  if (isProblem(value)) return ["no answer"];
  if (value.type === "check") return [value.state];
  if (value.type !== "checks") return [];
  return value.key === "finding" || value.rows.length === 0 ? [value.state] : value.rows.map(rowState);
}

export function rowExceptions(line: Line, itemOf: PageContext["itemOf"]): readonly Exception[] {
  return [...ofChecks(line, itemOf), ...ofAnswers(line, itemOf), ...ofReadings(line)];
}

/** One entry for each state that is not proven, with its rows. */
function ofChecks({ name, item, value }: Line, itemOf: PageContext["itemOf"]): readonly Exception[] {
  if (isProblem(value) || value.type !== "checks") return [];
  const noun = value.key === "finding" ? "finding" : nounOfRows(item, value.key, itemOf);
  return states
    .filter((state) => state !== "proven")
    .flatMap((state): Exception[] => {
      const rows = value.rows.filter((row) => rowState(row) === state);
      if (rows.length === 0) return [];
      const listed = rows.map(({ key, value: check }) => ({
        key,
        says: rowName(noun, key),
        words: isProblem(check) ? waitWords(check) : checkWords(check),
      }));
      const words =
        noun === "finding"
          ? `${rows.length} found.`
          : `${rows.length} of ${value.rows.length} ${inState(state, rows.length)}:`;
      return [{ mark: state, name, words, rows: listed }];
    });
}

/** "1 of 8 has no answer", "3 of 8 fail" */
function inState(state: State, n: number): string {
  if (state === "fails") return n === 1 ? "fails" : "fail";
  if (state === "no answer") return n === 1 ? "has no answer" : "have no answer";
  return `${n === 1 ? "is" : "are"} ${state}`;
}

const checkWords = (check: CheckValue): string =>
  [onScreen(whyAlone(check)), ...shortReservations(check).map((words) => `may not hold: ${words}`)].join(
    "; ",
  );

/** Why a number may not hold, in few words: the whole sentence stands at the check, what was set aside leads. */
export const shortReservations = ({ reservations }: Pick<CheckValue, "reservations">): readonly string[] => [
  ...new Set(
    reservations.map(({ code, what, why }) => onScreen(code.startsWith("readings-") ? what : (why ?? what))),
  ),
];

/** What a row without an answer waits for, in few words: the whole story stands at its own line. */
function waitWords(check: Problem): string {
  const first = root(check);
  if (notMeasured.has(first.code)) return "waits for a reading";
  return check.cause ? `waits for ${first.what}` : inPlace(first);
}

const notMeasured: ReadonlySet<string> = new Set(["missing", "not-measured"]);

/** Rows that have no answer of their own, and rows with warnings, each once. */
function ofAnswers({ name, item, value }: Line, itemOf: PageContext["itemOf"]): readonly Exception[] {
  if (isProblem(value) || value.type !== "rows") return [];
  const noun = nounOfRows(item, value.key, itemOf);
  const without = value.rows.flatMap(({ key, value: answer }) =>
    isProblem(answer) && answer.cause === undefined
      ? [{ key, says: `${noun} ${key}`, words: inPlace(answer) }]
      : [],
  );
  const warned = value.rows.flatMap(({ key, value: answer }) => {
    const warning =
      !isProblem(answer) && answer.type === "solution" ? answer.solution.warnings[0] : undefined;
    return warning ? [{ key, says: `${noun} ${key}`, words: capital(warning.why ?? warning.what) }] : [];
  });
  return [
    ...(without.length > 0
      ? [
          {
            mark: "no answer" as const,
            name,
            words: `${without.length} of ${value.rows.length} ${inState("no answer", without.length)}:`,
            rows: without,
          },
        ]
      : []),
    ...(warned.length > 0
      ? [
          {
            mark: "warning" as const,
            name,
            words: `${warned.length} of ${value.rows.length} with a warning:`,
            rows: warned,
          },
        ]
      : []),
  ];
}

function ofReadings({ name, item, value }: Line): readonly Exception[] {
  if (item.kind !== "reading" || isProblem(value) || value.type !== "table") return [];
  const steps = stepsOf(item, value);
  const odd = steps.filter((step) => step.state === "odd");
  const missing = steps.filter((step) => step.state === "missing");
  const all = counted(steps.length, "reading");
  return [
    ...(value.missing > 0
      ? [
          {
            mark: "missing" as const,
            name,
            words: `${Math.max(missing.length, value.missing)} of ${all} missing.`,
          },
        ]
      : []),
    ...(odd.length > 0
      ? [
          {
            mark: "odd" as const,
            name,
            words: `${odd.length} of ${all} asked about: ${odd.map(({ words, text, unit }) => `${words}, ${withUnit(text, unit)}`).join("; ")}.`,
          },
        ]
      : []),
  ];
}
