// Which formula comes after which, from the names they use.

import { type Problem, problem } from "../problem.ts";

/**
 * Names in an order in which each stands behind those it uses; a loop is named. No recursion from
 * name to name: chains on a page may be long.
 */
export function inOrder(
  all: readonly string[],
  usesOf: (name: string) => readonly string[],
): readonly string[] | Problem {
  const known = new Set(all);
  const done = new Set<string>();
  const open = new Set<string>();
  const waiting = all.toReversed();
  for (let name = waiting.at(-1); name !== undefined; name = waiting.at(-1)) {
    const before = done.has(name)
      ? []
      : [...new Set(usesOf(name))].filter((other) => known.has(other) && !done.has(other));
    const loop = before.find((other) => other === name || open.has(other));
    if (loop !== undefined) {
      const got = loop === name ? "a use of itself" : `a use of ${loop}, which uses ${name}`;
      return problem({ code: "loop", what: name, got, must: "not depend on itself" });
    }
    if (before.length > 0) {
      open.add(name);
      waiting.push(...before);
    } else {
      open.delete(name);
      done.add(name);
      waiting.pop();
    }
  }
  return [...done];
}
