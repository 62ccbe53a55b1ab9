// What was not given and taken by default: a note, or a warning beside the answer where it matters.
import { type Problem, problem } from "../problem.ts";
import type { InputField } from "./field.ts";
import { liveNames } from "./live.ts";
import type { Workspace } from "./workspace.ts";

/** A default that was taken; it is said only where the answer rests on it. */
export interface Assumed {
  readonly name: string;
  readonly field: Exclude<InputField, { kind: "list" }>;
}

export interface Said {
  readonly notes: readonly string[];
  readonly warnings: readonly Problem[];
}

export function sayAssumed(work: Workspace, assumed: readonly Assumed[]): Said {
  const live = liveNames(work);
  const used = assumed.filter(({ name }) => live.has(name));
  return {
    notes: used
      .filter(({ field }) => field.matters === undefined)
      .map(({ field }) => `${field.says} taken as ${field.default}: not given`),
    warnings: used
      .filter(({ field }) => field.matters !== undefined)
      .map(({ name, field }) =>
        problem({
          code: "assumed",
          where: work.d.id,
          what: field.says,
          got: `nothing, so ${field.default} is taken`,
          must: `be given as ${name}`,
          why: field.matters,
        }),
      ),
  };
}
