// What a formula hands on: the doubt of its names, moved through its one text, and everything else they carry.
import type { Tree } from "../formula/tree.ts";
import { evaluator, type Lookup, type Value } from "../formula/value.ts";
import { isProblem, type Problem, problem, sentence } from "../problem.ts";
import {
  type Contribution,
  changeBy,
  clear,
  followed,
  halfWidth,
  joined,
  moved,
  type Standing,
} from "../standing.ts";
import type { Named } from "./line.ts";
import { unknownName } from "./scope.ts";

interface Worked {
  /** What the formula brings by itself: a source from memory. */
  readonly own: Standing;
  readonly name: string;
  readonly tree: Tree;
  readonly evaluate: (lookup: Lookup) => Value | Problem;
  readonly named: (name: string) => Named | undefined;
  readonly used: readonly Named[];
  readonly si: number;
}

export function standingOf(worked: Worked): Standing {
  const standings = [worked.own, ...worked.used.map((named) => named.standing)];
  const uncertain = worked.used.some(({ standing, rows }) => standing.doubt.length > 0 || rows !== undefined);
  if (!uncertain) return standings.every((standing) => standing === clear) ? clear : joined(standings);
  const [only] = worked.used;
  if (worked.tree.type === "name" && only) return joined(standings, only.standing.doubt);
  if (worked.tree.type === "compare")
    return joined([...standings, reservations(comparisonDoubt(worked, worked.tree))]);
  const found = contributions(worked, worked.evaluate, worked.si);
  return joined([...standings, reservations(found.failed)], found.doubt);
}

const reservations = (problems: readonly Problem[]): Standing =>
  problems.length === 0 ? clear : { ...clear, reservations: problems };

interface Found {
  readonly doubt: readonly Contribution[];
  readonly failed: readonly Problem[];
}

/** Each cause at both ends of its half-width, the others held. */
function contributions(worked: Worked, evaluate: Worked["evaluate"], si: number): Found {
  const { roots, left } = followed(
    worked.used.flatMap(({ standing, rows = [] }) => [standing.doubt, ...rows]),
  );
  const doubt: Contribution[] = [];
  const failed: Problem[] = [...left];
  for (const root of roots) {
    if (root.applies?.output === worked.name) {
      const change = root.applies.share * Math.abs(si);
      doubt.push(moved(root, change, -change));
      continue;
    }
    const up = evaluate(lookupAt(worked, root.root, "up"));
    const down = evaluate(lookupAt(worked, root.root, "down"));
    if (isProblem(up) || isProblem(down)) {
      failed.push(
        problem({
          code: "within-doubt",
          what: `at an end of the stated ± of ${root.root}`,
          why: sentence(isProblem(up) ? up : isProblem(down) ? down : problem({ code: "", what: "" })),
        }),
      );
      continue;
    }
    const move = moved(root, Number(up) - si, Number(down) - si);
    if (move.up !== 0 || move.down !== 0) doubt.push(move);
  }
  return { doubt, failed };
}

function lookupAt({ named }: Worked, root: string, end: "up" | "down"): Lookup {
  return (name) => {
    const found = named(name);
    if (!found) return unknownName(name, []);
    const { value, standing, rows } = found;
    if (typeof value === "number") return value + changeBy(standing.doubt, root, end);
    if (typeof value === "boolean" || !rows) return value;
    return value.map((each, i) => each + changeBy(rows[i] ?? [], root, end));
  };
}

/** A comparison that the doubt of its two sides could turn holds for the stated values only. */
function comparisonDoubt(worked: Worked, tree: Extract<Tree, { type: "compare" }>): readonly Problem[] {
  const difference: Tree = { type: "binary", op: "-", left: tree.left, right: tree.right, at: tree.at };
  const evaluate = evaluator(difference);
  const apart = evaluate((name) => worked.named(name)?.value ?? unknownName(name, []));
  if (typeof apart !== "number") return [];
  const found = contributions(worked, evaluate, apart);
  const width = halfWidth(found.doubt);
  if (width === 0 || Math.abs(apart) > width) return found.failed;
  return [
    ...found.failed,
    problem({
      code: "within-doubt",
      what: worked.name,
      got: "two sides that differ by less than their stated ±",
      why: `it turns within the ± of ${found.doubt.map(({ root }) => root).join(", ")}`,
    }),
  ];
}
