// Checked pages as lines of text: exceptions first, then what has no answer, then a count.

import { reservationWords, whyAlone } from "../engine/check-parts.ts";
import type { ChecksValue, CheckValue, Line } from "../engine/line.ts";
import { toldPictures } from "../engine/picture.ts";
import { oddReadings, setAsideSentences, setAsidesOf } from "../engine/set-asides.ts";
import { isProblem, root } from "../problem.ts";
import { asked } from "../report/labels.ts";
import { type State, states } from "../verdict.ts";
import {
  type CheckedPage,
  isCheck,
  labelOf,
  missingInNote,
  missingParts,
  noteName,
  placed,
  rowName,
  rowState,
  stateOf,
  unsourcedNames,
  whyNoAnswer,
} from "./checked-page.ts";
import { columns, padEnd } from "./columns.ts";
import { worded } from "./outcome.ts";

const stateWidth = Math.max(...states.map((state) => state.length));

export function pageLines(page: CheckedPage): string[] {
  if (page.problems.length > 0)
    return [page.file, "  the page could not be read", ...page.problems.map((p) => `  ${worded(p)}`)];
  const checks = page.lines
    .filter(isCheck)
    .sort((a, b) => states.indexOf(stateOf(a)) - states.indexOf(stateOf(b)));
  const silent = withoutAnswer(page);
  return [
    `${page.file}: ${page.title}`,
    ...asideLines(page),
    ...(checks.length === 0
      ? ["  no checks on this page"]
      : checks.flatMap((line) => checkLines(page, line))),
    ...pictureLines(page),
    ...(silent.length === 0 ? [] : ["", "  no answer elsewhere", ...columns(silent, "    ")]),
    ...remarkLines(page),
    ...caveatLines(page),
  ];
}

/** What each picture shows, in the sentence that stands under it on the page. */
function pictureLines(page: CheckedPage): string[] {
  const said = toldPictures(page.lines).flatMap(({ line, value, told }) => [
    `    ${asked(labelOf(line.item))} ${told.sentence}`,
    ...reservationWords(value.reservations).map((text) => `      it may not hold: ${text}`),
  ]);
  return said.length === 0 ? [] : ["", "  pictures", ...said];
}

/** Readings that are kept and not used stand before all that is judged without them. */
function asideLines({ lines }: CheckedPage): string[] {
  return lines.flatMap((line) => {
    const aside = setAsidesOf(line);
    if (aside.length === 0) return [];
    const n = aside.length === 1 ? "1 reading" : `${aside.length} readings`;
    return [
      `  ${padEnd("set aside", stateWidth)}  ${line.name}: ${n} kept and not used`,
      ...setAsideSentences(aside).map((text) => `${" ".repeat(stateWidth + 4)}${text}`),
    ];
  });
}

/** What the page rests on that is far from the rest, or that nobody has stated. */
function caveatLines({ lines }: CheckedPage): string[] {
  const unsourced = unsourcedNames(lines);
  const odd = lines.flatMap((line) => oddReadings(line).map(({ place, value }) => [line.name, place, value]));
  return [
    ...(odd.length > 0 ? ["", "  far from the others of its group, and used", ...columns(odd, "    ")] : []),
    ...(unsourced.length > 0 ? ["", `  source not stated: ${unsourced.join(", ")}`] : []),
  ];
}

function remarkLines({ remarks }: CheckedPage): string[] {
  const rows = remarks.map(({ line, found }) => [noteName(line), worded(found)]);
  return rows.length === 0 ? [] : ["", "  remarks", ...columns(rows, "    ")];
}

function checkLines(page: CheckedPage, line: Line): string[] {
  const { value } = line;
  const said = `  ${padEnd(stateOf(line), stateWidth)}  ${line.name}: ${labelOf(line.item)}`;
  const indent = " ".repeat(stateWidth + 4);
  return [said, ...reasons(page, line, value).map((text) => indent + text)];
}

function reasons(page: CheckedPage, line: Line, value: Line["value"]): string[] {
  if (isProblem(value)) return [whyNoAnswer(page, line)];
  if (value.type === "checks")
    return [
      whyAlone(value),
      ...reservationWords(value.reservations).map((text) => `it may not hold: ${text}`),
      ...rowLines(value),
    ];
  return value.type === "check" ? oneReason(value) : [];
}

function oneReason(value: CheckValue): string[] {
  const { waived, judged } = value;
  const said = [
    whyAlone(value),
    ...reservationWords(value.reservations).map((text) => `it may not hold: ${text}`),
  ];
  if (!waived) return said;
  const without = judged === "proven" ? "" : `; without the waiver: ${judged}`;
  return [...said, `waived by ${waived.by}: ${waived.why}${without}`];
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

/** Lines other than checks that have no answer, each with the line that caused it. */
function withoutAnswer(page: CheckedPage): string[][] {
  return page.lines
    .filter((line) => !isCheck(line))
    .flatMap((line) => {
      const name = "name" in line.item ? line.name : labelOf(line.item);
      if (isProblem(line.value)) return [[name, whyNoAnswer(page, line)]];
      const missing = missingParts(line);
      const shown = line.item.kind === "picture" ? missing.slice(0, 1) : missing;
      return shown.map((p) => [name, worded(placed(page, line, p))]);
    })
    .concat(page.lines.flatMap((line) => missingInNote(line).map((p) => [noteName(line), worded(p)])));
}

export function countLine(pages: readonly CheckedPage[]): string {
  const found = pages.flatMap((page) => page.lines.filter(isCheck).map(stateOf));
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
