// A checked page as data for --json, with the exceptions and caveats that the page itself shows first.
import type { CheckItem } from "../document/item.ts";
import type { ChecksValue, CheckValue, Line } from "../engine/line.ts";
import { toldPictures } from "../engine/picture.ts";
import { formatShort } from "../methods/solution.ts";
import { isProblem, type Problem, root } from "../problem.ts";
import { type Bearing, bearingByRow, bearingOf, bearingOn } from "../report/behind.ts";
import { caveats } from "../report/caveats.ts";
import { doubtValue } from "../report/doubt.ts";
import { exceptions } from "../report/exceptions.ts";
import { labelOf } from "../report/labels.ts";
import { limitValues, limitWords, shownUnit } from "../report/limits.ts";
import { reservationWords } from "../report/reservations.ts";
import { type ItemOf, rowNames } from "../report/row-names.ts";
import { isCheck, stateOf } from "../report/states.ts";
import { numberRecord } from "../report/values.ts";
import { type CheckedPage, noteName, placed, whyNoAnswer } from "./checked-page.ts";
import { lineRecords } from "./line-records.ts";
import { problemRecord, worded } from "./outcome.ts";

export function pageRecord(page: CheckedPage) {
  const { lines } = page;
  const all = bearingOf(lines);
  const found = findings(page, all);
  const behind = bearingOn(all, lines);
  const rests = caveats(lines);
  const byName = new Map(lines.map((line) => [line.name, line]));
  const on: On = {
    page,
    lineAt: (name) => byName.get(name),
    itemOf: (name) => byName.get(name)?.item,
  };
  return {
    file: page.file,
    title: page.title,
    setAside: found.setAside,
    odd: found.odd,
    exceptions: exceptions(lines),
    checks: lines.flatMap((line) => (isCheck(line) ? [checkRecord(on, line, behind(line.name))] : [])),
    lines: lines.filter((line) => !isCheck(line)).flatMap((line) => lineRecords(line, page)),
    pictures: toldPictures(lines).map(({ line, value, told }) => ({
      name: line.name,
      picture: told.picture,
      says: labelOf(line.item),
      sentence: told.sentence,
      mayNotHold: reservationWords(value),
    })),
    warnings: found.warnings,
    notCovered: rests.notCovered,
    sourceNotStated: rests.unsourced,
    fromMemory: rests.memory,
    ...(page.remarks.length > 0 && {
      remarks: page.remarks.map(({ line, found: remark }) => problemRecord(remark.at(noteName(line)))),
    }),
    ...(page.problems.length > 0 && { problems: page.problems.map((p) => problemRecord(p)) }),
  };
}

interface On {
  readonly page: CheckedPage;
  readonly lineAt: (name: string) => Line | undefined;
  readonly itemOf: ItemOf;
}

/** Listed at a check; more of them stand in the list of the page. */
const most = 100;

const few = ({ warnings, odd, setAside }: Bearing): Bearing => ({
  warnings: warnings.slice(0, most),
  odd: odd.slice(0, most),
  setAside: setAside.slice(0, most),
});

function checkRecord(on: On, line: Line, behind: Bearing) {
  const { page } = on;
  const { item, value } = line;
  const start = { name: line.name, says: labelOf(item), state: stateOf(line) };
  const rests = findings(page, few(behind));
  if (isProblem(value)) {
    const why = whyNoAnswer(page, line);
    return { ...start, ...nothing, why, problem: problemRecord(placed(page, line, value), why), ...rests };
  }
  if (item.kind !== "check" || (value.type !== "check" && value.type !== "checks"))
    return { ...start, ...nothing, why: "", ...rests };
  if (value.type === "check") return { ...start, ...judged(on, item, value), ...rests };
  return {
    ...start,
    ...nothing,
    why: value.reason,
    mayNotHold: reservationWords(value),
    ...rests,
    rows: rowRecords(on, line, item, value, behind),
  };
}

function rowRecords(on: On, line: Line, item: CheckItem, value: ChecksValue, behind: Bearing) {
  const nameOf = rowNames(item, value, on.itemOf);
  const ofRow = bearingByRow(behind, value.key);
  return value.rows.map((row) => ({
    [value.key]: row.key,
    says: nameOf(row),
    state: stateOf(row),
    ...(isProblem(row.value)
      ? { ...nothing, why: worded(placed(on.page, line, row.value)) }
      : judged(on, item, row.value)),
    ...findings(on.page, few(ofRow(row.key))),
  }));
}

const nothing = { value: null, unit: "", limit: null, limits: null, doubt: null, mayNotHold: [] };

function judged({ page, lineAt }: On, item: CheckItem, value: CheckValue) {
  const shown = shownUnit(value, page.unitOf);
  const limit = limitWords(value, (si) => formatShort(si, shown)) || null;
  const stood = {
    why: value.reason,
    ...(value.because && { code: value.because.code }),
    mayNotHold: reservationWords(value),
    fromMemory: value.memory,
    sourceNotStated: value.unsourced,
    ...(value.waived && { waived: value.waived, withoutWaiver: value.judged }),
  };
  if (value.yes !== undefined)
    return { value: value.yes, unit: "", limit, limits: null, doubt: null, ...stood };
  const { value: number, unit } = numberRecord(value.si, shown, "");
  return {
    value: number,
    unit,
    limit,
    limits: limitValues(value, item, shown, lineAt),
    doubt: doubtValue(value, shown),
    ...stood,
  };
}

/** Warnings with the outputs that they spoil, and readings that are not used or asked about. */
const findings = (page: CheckedPage, { warnings, odd, setAside }: Bearing) => ({
  warnings: warnings.map(({ line, row, warning, spoils }) =>
    warningRecord(page, line, row === undefined ? line.name : `${line.name} ${row}`, warning, spoils),
  ),
  odd: odd.map(({ line, place, value }) => ({ reading: line.name, place, value })),
  setAside: setAside.map(({ line, place, value, why, by, when, now }) => ({
    reading: line.name,
    place,
    value,
    why,
    by: by || null,
    when: when || null,
    now,
  })),
});

const warningRecord = (
  page: CheckedPage,
  line: Line,
  name: string,
  warning: Problem,
  spoils: readonly string[],
) => ({ name, ...problemRecord(placed(page, line, warning), worded(root(warning))), spoils });
