// The state of one run of a method, handed from part to part.
import type { Problem } from "../problem.ts";
import type { Inside } from "./inside.ts";
import type { Leaf } from "./leaf.ts";
import type { Declaration } from "./method.ts";
import type { Prepared, PreparedLimit } from "./prepared.ts";
import type { WorkedStep } from "./solution.ts";

export interface Workspace {
  readonly d: Declaration;
  readonly ready: Prepared;
  readonly values: Map<string, Inside>;
  readonly leaves: Map<string, Leaf>;
  readonly working: WorkedStep[];
  readonly warnings: Problem[];
  /** Outputs whose number does not hold, with the reasons. */
  readonly spoilt: Map<string, readonly Problem[]>;
  readonly judged: Set<PreparedLimit>;
}
