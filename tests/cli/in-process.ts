// The solve command in this process, where a test asks it hundreds of times: same words, same outcome.
import { solveCommand } from "../../src/cli/commands/solve.ts";
import type { Outcome } from "../../src/cli/outcome.ts";
import type { Inputs } from "../methods/helpers.ts";

/** { torque: "5 N.m", layers: […] } as name=value words; a list is JSON text. */
export const words = (inputs: Inputs): string[] =>
  Object.entries(inputs).map(
    ([name, value]) => `${name}=${typeof value === "string" ? value : JSON.stringify(value)}`,
  );

export const solved = (id: string, inputs: Inputs, ...flags: readonly string[]): Outcome =>
  solveCommand([id, ...words(inputs), ...flags], Number.POSITIVE_INFINITY);
