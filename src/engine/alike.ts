// Whether two results show the same thing, so that an unchanged value stops the wave.
import { isProblem, type Problem, sentence } from "../problem.ts";
import type { Standing } from "../standing.ts";
import type { LineValue, ProseValue } from "./line.ts";

export type Result = LineValue | Problem;

export function alike(a: Result, b: Result): boolean {
  if (isProblem(a) || isProblem(b)) return isProblem(a) && isProblem(b) && sameProblem(a, b);
  if (a.type !== b.type) return false;
  switch (a.type) {
    case "quantity":
      return (
        b.type === "quantity" &&
        a.typed.text === b.typed.text &&
        Object.is(a.si, b.si) &&
        a.kind === b.kind &&
        a.sourceState === b.sourceState &&
        sameStanding(a.named.standing, b.named.standing)
      );
    case "formula":
      return (
        b.type === "formula" &&
        Object.is(a.si, b.si) &&
        a.kind === b.kind &&
        sameStanding(a.named.standing, b.named.standing) &&
        sameNumbers(a.step, b.step)
      );
    case "check":
      return (
        b.type === "check" &&
        Object.is(a.si, b.si) &&
        a.yes === b.yes &&
        a.state === b.state &&
        a.why === b.why &&
        a.limits.atLeast === b.limits.atLeast &&
        a.limits.atMost === b.limits.atMost &&
        a.uncertainty === b.uncertainty &&
        sameWords(a.memory, b.memory) &&
        sameWords(a.unsourced, b.unsourced) &&
        sameNumbers(a.step, b.step)
      );
    case "solution":
      return (
        b.type === "solution" && sameSolution(a.solution, b.solution) && sameStanding(a.standing, b.standing)
      );
    case "text":
      return b.type === "text" && a.text === b.text;
    case "rows":
      return b.type === "rows" && a.key === b.key && sameRows(a.rows, b.rows);
    case "checks":
      return b.type === "checks" && a.state === b.state && a.why === b.why && sameRows(a.rows, b.rows);
    case "table":
      return JSON.stringify(a) === JSON.stringify(b);
    case "picture": // what it says follows from these
      return (
        b.type === "picture" &&
        JSON.stringify([a.inputs, a.reservations]) === JSON.stringify([b.inputs, b.reservations])
      );
    case "prose":
      return b.type === "prose" && sameBound(a.bound, b.bound);
  }
}

const sameBound = (a: ProseValue["bound"], b: ProseValue["bound"]): boolean =>
  Object.entries(a).every(([formula, { text, problem }]) => {
    const other = b[formula];
    if (other?.text !== text) return false;
    return problem && other.problem ? sameProblem(problem, other.problem) : problem === other.problem;
  });

const sameWords = (a: readonly string[], b: readonly string[]): boolean =>
  a === b || (a.length === b.length && a.every((word, i) => word === b[i]));

/** Whether two values are known equally well, as far as anything shows it. */
function sameStanding(a: Standing, b: Standing): boolean {
  if (a === b) return true;
  return (
    a.doubt.length === b.doubt.length &&
    a.doubt.every(
      (part, i) =>
        part.root === b.doubt[i]?.root && part.up === b.doubt[i]?.up && part.down === b.doubt[i]?.down,
    ) &&
    a.reservations.length === b.reservations.length &&
    a.reservations.every((p, i) => sentence(p) === sentence(b.reservations[i] ?? p)) &&
    sameWords(a.memory, b.memory) &&
    sameWords(a.unsourced, b.unsourced)
  );
}

const sameProblem = (a: Problem, b: Problem): boolean =>
  sentence(a) === sentence(b) && (a.cause && b.cause ? sameProblem(a.cause, b.cause) : a.cause === b.cause);

type Solution = Extract<LineValue, { type: "solution" }>["solution"];

/** A working whose inputs moved shows other numbers even when its result stayed. */
function sameSolution(a: Solution, b: Solution): boolean {
  return (
    a.working.length === b.working.length &&
    a.working.every((step, i) => {
      const other = b.working[i];
      return other !== undefined && Object.is(step.si, other.si) && sameNumbers(step, other);
    }) &&
    JSON.stringify(a.outputs) === JSON.stringify(b.outputs) &&
    sameWarnings(a, b) &&
    sameSpoilt(a, b) &&
    a.notes.join("\n") === b.notes.join("\n")
  );
}

const sameWarnings = (a: Solution, b: Solution): boolean =>
  a.warnings.length === b.warnings.length &&
  a.warnings.every((w, i) => sentence(w) === sentence(b.warnings[i] ?? w));

const spoiltWords = ({ spoilt }: Solution): string =>
  Object.entries(spoilt)
    .map(([name, why]) => `${name}: ${why.map(sentence).join("; ")}`)
    .join("\n");
const sameSpoilt = (a: Solution, b: Solution): boolean => spoiltWords(a) === spoiltWords(b);

type Step = Solution["working"][number];
const sameNumbers = (a: Step, b: Step): boolean =>
  JSON.stringify(a.numbers()) === JSON.stringify(b.numbers());

/** Whether formulas that use the two would see the same, their working included. */
export function sameWorth(a: Result, b: Result): boolean {
  if (isProblem(a) || isProblem(b)) return isProblem(a) && isProblem(b) && sameProblem(a, b);
  if (a.type === "formula" && b.type === "formula")
    return (
      Object.is(a.si, b.si) &&
      a.kind === b.kind &&
      a.named.typed.kind === b.named.typed.kind &&
      a.unit === b.unit &&
      sameStanding(a.named.standing, b.named.standing)
    );
  if (a.type === "solution" && b.type === "solution")
    return (
      JSON.stringify(a.solution.outputs) === JSON.stringify(b.solution.outputs) &&
      sameWarnings(a.solution, b.solution) &&
      sameSpoilt(a.solution, b.solution) &&
      sameStanding(a.standing, b.standing)
    );
  return alike(a, b);
}

type Rows = readonly { readonly key: string; readonly tags: unknown; readonly value: Result }[];

const sameRows = (a: Rows, b: Rows): boolean =>
  a.length === b.length &&
  a.every((row, i) => {
    const other = b[i];
    return (
      other !== undefined &&
      row.key === other.key &&
      JSON.stringify(row.tags) === JSON.stringify(other.tags) &&
      alike(row.value, other.value)
    );
  });
