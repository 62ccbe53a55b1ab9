// What a page rests on and does not say by a state: what it leaves out, values of which no source is stated,
// sources that nobody saw.
import { fromMemory } from "../engine/given.ts";
import type { Line } from "../engine/line.ts";
import type { Solution } from "../methods/solution.ts";
import { isProblem } from "../problem.ts";

/** Names of lines, in the order of the page. */
export interface Caveats {
  readonly notCovered: readonly string[];
  readonly unsourced: readonly string[];
  readonly memory: readonly string[];
}

export const caveatWords: Readonly<Record<keyof Caveats, string>> = {
  notCovered: "what this page does not cover",
  unsourced: "values whose source is not stated",
  memory: "sources from memory, to be confirmed before use",
};

export const caveatOrder: readonly (keyof Caveats)[] = ["notCovered", "unsourced", "memory"];

export function caveats(lines: readonly Line[]): Caveats {
  const those = (is: (line: Line) => boolean): readonly string[] => lines.filter(is).map(({ name }) => name);
  return {
    notCovered: those(({ item }) => item.kind === "note" && /\bnot cover/i.test(item.text)),
    unsourced: those(
      ({ value }) => !isProblem(value) && value.type === "quantity" && value.sourceState !== "stated",
    ),
    memory: those(isRecalled),
  };
}

/** By its own source, or by one of its method; a given by the source that was stated last. */
function isRecalled({ item, value }: Line): boolean {
  if (!isProblem(value) && value.type === "quantity") return value.named.standing.memory.length > 0;
  return fromMemory(item.source) || solutionsOf(value).some(isFromMemory);
}

const isFromMemory = ({ sources }: Solution): boolean => sources.some(({ known }) => known === "memory");

function solutionsOf(value: Line["value"]): readonly Solution[] {
  if (isProblem(value)) return [];
  if (value.type === "solution") return [value.solution];
  if (value.type !== "rows") return [];
  return value.rows.flatMap((row) =>
    !isProblem(row.value) && row.value.type === "solution" ? [row.value.solution] : [],
  );
}
