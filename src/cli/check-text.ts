// Checked pages as lines of text: exceptions first, then what has no answer, then a count.
import type { ChecksValue, CheckValue, Line, PictureValue } from "../engine/line.ts";
import { toldPictures } from "../engine/picture.ts";
import { isProblem, root } from "../problem.ts";
import { caveatOrder, caveats, caveatWords } from "../report/caveats.ts";
import { labelOf } from "../report/labels.ts";
import { reservationWords } from "../report/reservations.ts";
import { type ItemOf, itemsOf, rowNames } from "../report/row-names.ts";
import { oddReadings, setAsideSentences, setAsidesOf } from "../report/set-asides.ts";
import { isCheck, stateCounts, stateOf, worstFirst } from "../report/states.ts";
import { waiverWords } from "../report/waiver.ts";
import { withoutAnswer } from "../report/without-answer.ts";
import { states } from "../verdict.ts";
import { counted } from "../words.ts";
import { type CheckedPage, noteName, placed, whyNoAnswer } from "./checked-page.ts";
import { columns, padEnd } from "./columns.ts";
import { worded } from "./outcome.ts";

const stateWidth = Math.max(...states.map((state) => state.length));

export function pageLines(page: CheckedPage): string[] {
  if (page.problems.length > 0)
    return [page.file, "  the page could not be read", ...page.problems.map((p) => `  ${worded(p)}`)];
  const itemOf = itemsOf(page.lines);
  const checks = worstFirst(page.lines.filter(isCheck));
  const silent = withoutAnswer(page.lines, itemOf).map(({ line, inNote, problem }) => [
    inNote ? noteName(line) : nameOf(line),
    inNote
      ? worded(problem)
      : isProblem(line.value)
        ? whyNoAnswer(page, line)
        : worded(placed(page, line, problem)),
  ]);
  return [
    `${page.file}: ${page.title}`,
    ...asideLines(page),
    ...(checks.length === 0
      ? ["  no checks on this page"]
      : checks.flatMap((line) => checkLines(page, line, itemOf))),
    ...pictureLines(page),
    ...section("no answer elsewhere", silent),
    ...section(
      "remarks",
      page.remarks.map(({ line, found }) => [noteName(line), worded(found)]),
    ),
    ...caveatLines(page),
  ];
}

/** What each picture shows, in the sentence that stands under it on the page. */
function pictureLines({ lines }: CheckedPage): readonly string[] {
  const said = toldPictures(lines).flatMap(({ line, value, told }) => [
    `    ${nameOf(line)}: ${told.sentence}`,
    ...held(value).map((text) => `      ${text}`),
  ]);
  return said.length === 0 ? [] : ["", "  pictures", ...said];
}

const section = (title: string, rows: readonly (readonly string[])[]): readonly string[] =>
  rows.length === 0 ? [] : ["", `  ${title}`, ...columns(rows, "    ")];

/** By its name, a note by its line, a picture as the file asks for it. */
function nameOf(line: Line): string {
  const { item } = line;
  if ("name" in item) return item.name;
  if (item.kind === "picture") return item.says ?? `picture ${item.picture}`;
  return item.kind === "note" ? noteName(line) : labelOf(item);
}

/** Readings that are kept and not used stand before all that is judged without them. */
function asideLines({ lines }: CheckedPage): string[] {
  return lines.flatMap((line) => {
    const aside = setAsidesOf(line);
    if (aside.length === 0) return [];
    return [
      `  ${padEnd("set aside", stateWidth)}  ${line.name}: ${counted(aside.length, "reading")} kept and not used`,
      ...setAsideSentences(aside).map((text) => `${" ".repeat(stateWidth + 4)}${text}`),
    ];
  });
}

/** What the page rests on that is far from the rest, what it leaves out, and what nobody has stated or seen. */
function caveatLines({ lines }: CheckedPage): readonly string[] {
  const odd = lines.flatMap((line) => oddReadings(line).map(({ place, value }) => [line.name, place, value]));
  const rests = caveats(lines);
  const said = caveatOrder
    .filter((of) => rests[of].length > 0)
    .map((of) => {
      const called = lines.filter(({ name }) => rests[of].includes(name)).map(nameOf);
      return `  ${caveatWords[of]}: ${called.join(", ")}`;
    });
  return [
    ...section("far from the others of its group, and used", odd),
    ...(said.length > 0 ? ["", ...said] : []),
  ];
}

function checkLines(page: CheckedPage, line: Line, itemOf: ItemOf): string[] {
  const said = `  ${padEnd(stateOf(line), stateWidth)}  ${line.name}: ${labelOf(line.item)}`;
  const indent = " ".repeat(stateWidth + 4);
  return [said, ...reasons(page, line, itemOf).map((text) => indent + text)];
}

function reasons(page: CheckedPage, line: Line, itemOf: ItemOf): readonly string[] {
  const { item, value } = line;
  if (isProblem(value)) return [whyNoAnswer(page, line)];
  if (value.type === "check") return oneReason(value);
  if (value.type !== "checks") return [];
  return [value.reason, ...held(value), ...rowLines(value, rowNames(item, value, itemOf))];
}

const held = (value: CheckValue | ChecksValue | PictureValue): readonly string[] =>
  reservationWords(value).map((text) => `it may not hold: ${text}`);

const oneReason = (value: CheckValue): readonly string[] => [
  value.reason,
  ...held(value),
  ...[waiverWords(value)].filter((words) => words !== undefined),
];

/** The rows that are not proven, worst first. */
const rowLines = ({ rows }: ChecksValue, named: ReturnType<typeof rowNames>): readonly string[] =>
  worstFirst(rows)
    .filter((row) => stateOf(row) !== "proven")
    .flatMap((row) => {
      const { value } = row;
      const [first = "", ...more] = isProblem(value) ? [worded(root(value))] : oneReason(value);
      return [`  ${stateOf(row)} · ${named(row)}: ${first}`, ...more.map((text) => `    ${text}`)];
    });

export function countLine(pages: readonly CheckedPage[]): string {
  const found = pages.flatMap((page) => page.lines.filter(isCheck).map(stateOf));
  const unread = pages.filter((page) => page.problems.length > 0).length;
  return [
    counted(pages.length, "page"),
    stateCounts(found) || "no checks",
    ...(unread > 0 ? [`${unread} not read`] : []),
  ].join("; ");
}
