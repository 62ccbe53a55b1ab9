// What the functions ask of their arguments and give back.

import { isProblem, type Problem } from "../problem.ts";
import { dimensionless, powerDimension, sameDimension } from "../units/dimension.ts";
import { alike } from "./alike.ts";
import { refusal } from "./refusal.ts";
import type { CallNode } from "./tree.ts";
import { factor, plainNumber, type Typed, wordsFor } from "./typed.ts";

/** Those that give an angle. */
const angleFunctions: ReadonlySet<string> = new Set(["asin", "acos", "atan"]);

/** What a function of single numbers gives. */
export function scalarCall(tree: CallNode, args: readonly Typed[]): Typed | Problem {
  const [first = plainNumber, ...rest] = args;
  switch (tree.name) {
    case "min":
    case "max":
      return rest.reduce<Typed | Problem>(
        (all, next) => (isProblem(all) ? all : alike(all, next, "and", tree.at)),
        first,
      );
    case "abs":
      return first;
    case "sqrt":
      return { dimension: powerDimension(first.dimension, 0.5) };
    default:
      if (!sameDimension(first.dimension, dimensionless)) return notPlain(tree, first);
      return angleFunctions.has(tree.name) ? { ...plainNumber, kind: "angle" } : factor;
  }
}

function notPlain(tree: CallNode, got: Typed): Problem {
  const angle = tree.name === "sin" || tree.name === "cos" || tree.name === "tan";
  return refusal("formula-dimension", tree.args[0]?.at ?? tree.at, {
    got: `${tree.name} of ${wordsFor(got)}`,
    must: angle ? "be of an angle or a ratio" : "be of a number without dimension",
    ...(tree.name === "round" ? { hint: 'to round to a step, write round(x / "0.1 mm") * "0.1 mm"' } : {}),
  });
}

/** What a function over a column gives, by what its argument is. */
export function columnCall(tree: CallNode, typed: Typed): Typed | Problem {
  const [arg] = tree.args;
  if (!typed.column) {
    return refusal("formula-needs-column", arg?.at ?? tree.at, {
      got: `${tree.name} of one number`,
      must: "be of a column",
      ...(tree.name === "smallest" ? { hint: "of single numbers take min" } : {}),
      ...(tree.name === "largest" ? { hint: "of single numbers take max" } : {}),
    });
  }
  const reading = typed.kind === "temperature";
  if (tree.name === "count") return { dimension: dimensionless, kind: "count" };
  if (tree.name === "sum" && reading) {
    return refusal("formula-temperature", tree.at, {
      got: "the sum of temperature readings",
      must: "be of differences",
      hint: "take mean",
    });
  }
  const kind = tree.name === "deviation" && reading ? "temperature difference" : typed.kind;
  return { dimension: typed.dimension, kind };
}
