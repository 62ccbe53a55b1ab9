// Checked pages as lines of text: exceptions first, then what has no answer, then a count.
import type { Cell } from "../engine/cell.ts";
import { isProblem } from "../problem.ts";
import { type State, states } from "../verdict.ts";
import { type CheckedPage, isCheck, labelOf, missingInputs, stateOf, whyNoAnswer } from "./checked-page.ts";
import { columns, padEnd } from "./columns.ts";
import { worded } from "./outcome.ts";

const stateWidth = Math.max(...states.map((state) => state.length));

export function pageLines(page: CheckedPage): string[] {
  if (page.problems.length > 0)
    return [page.file, "  the page could not be read", ...page.problems.map((p) => `  ${worded(p)}`)];
  const checks = page.cells
    .filter(isCheck)
    .sort((a, b) => states.indexOf(stateOf(a)) - states.indexOf(stateOf(b)));
  const silent = withoutAnswer(page);
  return [
    `${page.file}: ${page.title}`,
    ...(checks.length === 0 ? ["  no checks on this page"] : checks.flatMap(checkLines)),
    ...(silent.length === 0 ? [] : ["", "  no answer elsewhere", ...columns(silent, "    ")]),
  ];
}

function checkLines(cell: Cell): string[] {
  const { value } = cell;
  const state = stateOf(cell);
  const said = [`  ${padEnd(state, stateWidth)}  ${cell.name}: ${labelOf(cell.item)}`];
  const indent = " ".repeat(stateWidth + 4);
  if (isProblem(value) || value.type !== "check") return [...said, indent + whyNoAnswer(cell)];
  said.push(indent + value.why);
  if (value.waived) {
    const judged = value.judged === "proven" ? "" : `; without the waiver: ${value.judged}`;
    said.push(`${indent}waived by ${value.waived.by}: ${value.waived.why}${judged}`);
  }
  return said;
}

/** Cells other than checks that have no answer, each with the cell that caused it. */
function withoutAnswer(page: CheckedPage): string[][] {
  return page.cells
    .filter((cell) => !isCheck(cell))
    .flatMap((cell) => {
      if (isProblem(cell.value)) return [[cell.name, whyNoAnswer(cell)]];
      const missing = missingInputs(cell)[0];
      return missing ? [[labelOf(cell.item), worded(missing.cause ?? missing)]] : [];
    });
}

export function countLine(pages: readonly CheckedPage[]): string {
  const found = pages.flatMap((page) => page.cells.filter(isCheck).map(stateOf));
  const counts = states.flatMap((state: State) => {
    const n = found.filter((s) => s === state).length;
    return n > 0 ? [`${n} ${state}`] : [];
  });
  const unread = pages.filter((page) => page.problems.length > 0).length;
  return [
    `${pages.length} ${pages.length === 1 ? "page" : "pages"}`,
    counts.length > 0 ? counts.join(", ") : "no checks",
    ...(unread > 0 ? [`${unread} not read`] : []),
  ].join("; ");
}
