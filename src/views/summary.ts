// Exceptions first: what fails, what has no answer, what is unproven or waived, then how much is proven.
import type { Cell } from "../engine/cell.ts";
import { isProblem, type Problem, root } from "../problem.ts";
import { type State, states } from "../verdict.ts";
import { el, replace } from "./dom.ts";
import { lineLink } from "./more.ts";
import { inPlace } from "./problem-note.ts";
import type { SheetContext } from "./sheet-context.ts";
import { type Mark, stateMark, stateWord } from "./state-mark.ts";
import { capital, counted } from "./words.ts";

export interface Exception {
  readonly mark: Mark;
  readonly name: string;
  readonly words: string;
}

export function stateOf(cell: Cell): State | undefined {
  if (isProblem(cell.value)) return "no answer";
  return cell.value.type === "check" ? cell.value.state : undefined;
}

/** One entry for each thing to look at; lines that only wait for another are counted with it. */
export function exceptions(cells: readonly Cell[]): readonly Exception[] {
  const waiting = new Map<string, number>();
  for (const { name, guilty } of cells)
    if (guilty !== undefined && guilty !== name) waiting.set(guilty, (waiting.get(guilty) ?? 0) + 1);
  const found = cells.flatMap((cell): Exception[] => {
    const { name, value } = cell;
    if (isProblem(value)) {
      if (cell.guilty !== undefined && cell.guilty !== name) return [];
      const wait = waiting.get(name) ?? 0;
      const others =
        wait === 0 ? "" : ` ${capital(counted(wait, "line"))} ${wait === 1 ? "waits" : "wait"} for it.`;
      return [{ mark: "no answer", name, words: inPlace(root(value)) + others }];
    }
    if (value.type === "check" && value.state !== "proven")
      return [
        {
          mark: value.state,
          name,
          words: value.waived ? `by ${value.waived.by}: ${value.waived.why}` : `${capital(value.why)}.`,
        },
      ];
    if (value.type === "solution")
      return value.solution.warnings.map((warning) => ({ mark: "warning", name, words: shortly(warning) }));
    return [];
  });
  const order: readonly Mark[] = [...states.filter((state) => state !== "waived"), "waived", "warning"];
  return [...found].sort((a, b) => order.indexOf(a.mark) - order.indexOf(b.mark));
}

/** What follows and what to do; the figures stand at the line itself. */
function shortly(warning: Problem): string {
  const words = [warning.why, warning.hint].filter(Boolean).join("; ");
  return words === "" ? inPlace(warning) : `${capital(words)}.`;
}

export interface Summary {
  readonly element: HTMLElement;
  readonly update: (cells: readonly Cell[]) => void;
}

export function summary(context: SheetContext): Summary {
  const counts = el("p", { class: "counts" });
  const list = el("ul", { class: "exceptions" });
  const element = el(
    "section",
    { class: "summary", "aria-label": "exceptions first" },
    el("div", { class: "reference" }, el("span", { class: "tiny" }, "exceptions first")),
    el("div", { class: "findings" }, list, counts),
  );
  const update = (cells: readonly Cell[]): void => {
    const found = exceptions(cells);
    const proven = cells.filter((cell) => stateOf(cell) === "proven").length;
    const checks = cells.filter((cell) => cell.item.kind === "check").length;
    replace(
      list,
      ...found.map(({ mark, name, words }) =>
        el(
          "li",
          {},
          stateWord(mark),
          el("span", { class: "finding" }, lineLink(name, context), " ", el("span", {}, words)),
        ),
      ),
    );
    replace(
      counts,
      stateMark("proven"),
      ` ${proven} of ${counted(checks, "check")} proven${found.length === 0 ? "; nothing else to look at first" : ""}.`,
    );
  };
  return { element, update };
}
