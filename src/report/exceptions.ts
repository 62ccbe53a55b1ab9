// Exceptions first: what was set aside, what fails, what has no answer, what is unproven or waived, then what is
// missing, odd or warned about. The page lists them, and `splitline check --json` holds the same.
import type { CheckValue, Line } from "../engine/line.ts";
import { noteOfLine } from "../engine/unbound-numbers.ts";
import { isProblem, type Problem, root } from "../problem.ts";
import { onScreen } from "../units/on-screen.ts";
import { states } from "../verdict.ts";
import { capital, counted } from "../words.ts";
import { inPlace } from "./problem-words.ts";
import { reasonAndDoubts } from "./reservations.ts";
import { type Exception, rowExceptions } from "./row-exceptions.ts";
import { type ItemOf, itemsOf } from "./row-names.ts";
import { setAsideSentences, setAsidesOf } from "./set-asides.ts";
import type { Mark } from "./states.ts";
import { warningsOf } from "./warnings.ts";

const order: readonly Mark[] = [
  "set aside",
  ...states.filter((state) => state !== "waived"),
  "waived",
  "missing",
  "odd",
  "warning",
];

/** One entry for each thing to look at; lines that only wait for another are counted with it. */
export function exceptions(lines: readonly Line[]): readonly Exception[] {
  const itemOf = itemsOf(lines);
  const waiting = new Map<string, number>();
  for (const { name, guilty } of lines)
    if (guilty !== undefined && guilty !== name) waiting.set(guilty, (waiting.get(guilty) ?? 0) + 1);
  const found = lines.flatMap((line) => [
    ...ofLine(line, waiting.get(line.name) ?? 0, itemOf),
    ...ofNote(line),
  ]);
  return order.flatMap((mark) => found.filter((one) => one.mark === mark));
}

function ofLine(line: Line, waiting: number, itemOf: ItemOf): readonly Exception[] {
  const { name, value } = line;
  if (isProblem(value))
    return line.guilty === undefined || line.guilty === name ? [begins(name, value, waiting)] : [];
  switch (value.type) {
    case "check":
      return value.state === "proven" ? [] : [{ mark: value.state, name, words: checkWords(value) }];
    case "table":
      return [...asides(line), ...rowExceptions(line, itemOf)];
    case "solution":
      return warningsOf(line).map(({ warning }) => ({ mark: "warning", name, words: shortly(warning) }));
    case "quantity":
      return warningsOf(line).map(({ warning }) => ({ mark: "warning", name, words: askedWords(warning) }));
    case "picture":
      return ownTrouble(name, Object.values(value.inputs).filter(isProblem));
    default:
      return rowExceptions(line, itemOf);
  }
}

/** Where trouble begins, with how many lines wait for it. */
function begins(name: string, found: Problem, waiting: number): Exception {
  const others =
    waiting === 0 ? "" : ` ${capital(counted(waiting, "line"))} ${waiting === 1 ? "waits" : "wait"} for it.`;
  return { mark: "no answer", name, words: inPlace(root(found)) + others };
}

/** What a note asks for in vain, where no line of the page tells it already. */
const ofNote = (line: Line): readonly Exception[] =>
  ownTrouble(
    line.name,
    Object.values(noteOfLine(line)?.bound ?? {}).flatMap(({ problem }) => problem ?? []),
  );

const ownTrouble = (name: string, found: readonly Problem[]): readonly Exception[] =>
  found
    .filter(({ cause }) => cause === undefined)
    .slice(0, 1)
    .map((problem) => ({ mark: "no answer", name, words: inPlace(problem) }));

const checkWords = (value: CheckValue): string =>
  value.waived ? `by ${value.waived.by}: ${value.waived.why}` : reasonAndDoubts(value);

/** "24,5 mm": the comma is read as a decimal mark, 24.5; is that meant? */
const askedWords = ({ got, why, hint }: Problem): string =>
  onScreen(`${got ?? ""}: ${why ?? hint ?? ""}`).replace(/[^?.]$/, "$&.");

/** Every reading that is kept and not used, with who and why: it leads, since all that follows rests on the others. */
function asides(line: Line): readonly Exception[] {
  const all = setAsidesOf(line);
  if (all.length === 0) return [];
  const rows = setAsideSentences(all).map((text) => ({
    key: "",
    says: onScreen(`${capital(text)}.`),
    words: "",
  }));
  const words = `${counted(all.length, "reading")} kept and not used:`;
  return [{ mark: "set aside", name: line.name, words, rows }];
}

/** What follows and what to do; the figures stand at the line itself. */
function shortly(warning: Problem): string {
  const words = [warning.why, warning.hint].filter(Boolean).join("; ");
  return words === "" ? inPlace(warning) : `${capital(words)}.`;
}
