// Checked pages as lines of text: exceptions first, then what has no answer, then a count.
import type { Cell, ChecksValue, CheckValue } from "../engine/cell.ts";
import { isProblem, root } from "../problem.ts";
import { type State, states } from "../verdict.ts";
import {
  type CheckedPage,
  isCheck,
  labelOf,
  missingInNote,
  missingParts,
  noteName,
  rowName,
  rowState,
  stateOf,
  whyNoAnswer,
} from "./checked-page.ts";
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
    ...remarkLines(page),
  ];
}

function remarkLines({ remarks }: CheckedPage): string[] {
  const rows = remarks.map(({ cell, found }) => [noteName(cell), worded(found)]);
  return rows.length === 0 ? [] : ["", "  remarks", ...columns(rows, "    ")];
}

function checkLines(cell: Cell): string[] {
  const { value } = cell;
  const said = `  ${padEnd(stateOf(cell), stateWidth)}  ${cell.name}: ${labelOf(cell.item)}`;
  const indent = " ".repeat(stateWidth + 4);
  return [said, ...reasons(cell, value).map((text) => indent + text)];
}

function reasons(cell: Cell, value: Cell["value"]): string[] {
  if (isProblem(value)) return [whyNoAnswer(cell)];
  if (value.type === "checks") return [value.why, ...rowLines(value)];
  return value.type === "check" ? oneReason(value) : [];
}

function oneReason({ why, waived, judged }: CheckValue): string[] {
  if (!waived) return [why];
  const without = judged === "proven" ? "" : `; without the waiver: ${judged}`;
  return [why, `waived by ${waived.by}: ${waived.why}${without}`];
}

/** The rows that are not proven, worst first. */
const rowLines = ({ key, rows }: ChecksValue): string[] =>
  rows
    .filter((row) => rowState(row) !== "proven")
    .sort((a, b) => states.indexOf(rowState(a)) - states.indexOf(rowState(b)))
    .flatMap((row) => {
      const { value } = row;
      const [first = "", ...more] = isProblem(value) ? [worded(root(value))] : oneReason(value);
      return [`  ${rowState(row)} · ${rowName(key, row)}: ${first}`, ...more.map((text) => `    ${text}`)];
    });

/** Cells other than checks that have no answer, each with the cell that caused it. */
function withoutAnswer(page: CheckedPage): string[][] {
  return page.cells
    .filter((cell) => !isCheck(cell))
    .flatMap((cell) => {
      const name = "name" in cell.item ? cell.name : labelOf(cell.item);
      if (isProblem(cell.value)) return [[name, whyNoAnswer(cell)]];
      const missing = missingParts(cell);
      const shown = cell.item.kind === "picture" ? missing.slice(0, 1) : missing;
      return shown.map((p) => [name, worded(p.cause ?? p)]);
    })
    .concat(page.cells.flatMap((cell) => missingInNote(cell).map((p) => [noteName(cell), worded(p)])));
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
