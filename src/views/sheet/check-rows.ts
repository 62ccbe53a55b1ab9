// A check over the rows of a table, or over a list that must stay empty: exceptions first, then how many are
// proven; each row with its state, its reason and a small margin bar.
import type { CheckItem } from "../../document/item.ts";
import type { ChecksValue, CheckValue, Line, RowOf } from "../../engine/line.ts";
import { isProblem, root } from "../../problem.ts";
import { labelOf } from "../../report/labels.ts";
import { ruleWords } from "../../report/limits.ts";
import { inPlace } from "../../report/problem-words.ts";
import { rowNames } from "../../report/row-names.ts";
import { stateOf, worstFirst } from "../../report/states.ts";
import { waiverWords } from "../../report/waiver.ts";
import { onScreen } from "../../units/on-screen.ts";
import { capital } from "../../words.ts";
import { type Child, el, replace } from "../dom.ts";
import { more, nameInFormulas, noteOf, part, relations } from "../shell/more.ts";
import type { ItemView, PageContext } from "../shell/page-context.ts";
import { threeLines } from "../shell/three-lines.ts";
import { limitText } from "./check-line.ts";
import { marginBar } from "./margin-bar.ts";
import { noAnswerNote } from "./problem-note.ts";
import { row, rowId } from "./row.ts";
import { reservationLines } from "./standing-parts.ts";
import { stateWord } from "./state-mark.ts";

type CheckRow = RowOf<CheckValue>;

export function checksView(context: PageContext, line: Line, item: CheckItem): ItemView {
  const { element, body, result } = row(context, line.name, item);
  element.classList.add("over-rows");
  const found = el("div");
  const proven = el("details", { class: "more proven-rows" });
  const opened = more("working and limits", labelOf(item));
  body.append(found, proven, opened.element);

  const update = (now: Line): void => {
    const { value } = now;
    element.classList.toggle("unanswered", isProblem(value));
    element.classList.toggle(
      "failing",
      !isProblem(value) && value.type === "checks" && value.state === "fails",
    );
    if (isProblem(value)) {
      replace(found, noAnswerNote(now, value, context));
      replace(proven);
      proven.hidden = true;
      replace(result, stateWord("no answer"));
    } else if (value.type === "checks") {
      const about = { context, name: now.name, item, nameOf: rowNames(item, value, context.itemOf) };
      const exceptions = value.rows.filter((one) => stateOf(one) !== "proven");
      const rest = value.rows.filter((one) => stateOf(one) === "proven");
      replace(
        found,
        rowList(about, worstFirst(exceptions)),
        value.rows.length === 0 && el("p", { class: "caption" }, `${capital(value.reason)}.`),
        ...reservationLines(value),
      );
      replace(
        proven,
        el("summary", {}, `proven: ${rest.map((one) => one.key).join(", ")}`),
        rowList(about, rest),
      );
      proven.hidden = rest.length === 0;
      replace(result, ...resultParts(value, rest.length));
    }
    opened.fill(() => [
      noteOf(now),
      ...workingOfOne(now, context),
      nameInFormulas(now),
      ...relations(now, context),
    ]);
  };
  update(line);
  return { element, update };
}

function resultParts(value: ChecksValue, proven: number): readonly Child[] {
  const all = value.rows.length;
  const words =
    value.key === "finding" ? (all === 0 ? "nothing found" : `${all} found`) : `${proven} of ${all} proven`;
  return [el("p", { class: "rows-count" }, words), stateWord(value.state)];
}

interface About {
  readonly context: PageContext;
  readonly name: string;
  readonly item: CheckItem;
  readonly nameOf: (row: CheckRow) => string;
}

const rowList = (about: About, rows: readonly CheckRow[]): HTMLElement | undefined =>
  rows.length === 0
    ? undefined
    : el("ul", { class: "check-rows" }, ...rows.map((one) => checkRow(about, one)));

function checkRow({ context, name, item, nameOf }: About, one: CheckRow): HTMLElement {
  const { key, value } = one;
  const state = stateOf(one);
  const words = isProblem(value) ? inPlace(root(value)) : onScreen(capital(value.reason));
  const waiver = isProblem(value) ? undefined : waiverWords(value);
  const named = nameOf(one);
  return el(
    "li",
    { id: rowId(name, key), tabindex: "-1", class: state === "fails" ? "row-fails" : undefined },
    stateWord(state),
    el(
      "button",
      { type: "button", class: "row-key", onclick: () => context.why(name, undefined, key) },
      named,
      el("span", { class: "unseen" }, ", why?"),
    ),
    el(
      "span",
      { class: "row-why" },
      waiver === undefined ? words : `${words}. ${capital(waiver)}`,
      ...(isProblem(value) ? [] : reservationLines(value)),
    ),
    !isProblem(value) &&
      Number.isFinite(value.si) &&
      el(
        "span",
        { class: "row-bar" },
        marginBar(value, undefined, `${labelOf(item)}, ${named}: ${onScreen(value.reason)}, ${value.judged}`),
      ),
  );
}

/** The same working stands behind every row: shown for the first that has an answer. */
function workingOfOne({ value }: Line, context: PageContext): readonly Child[] {
  if (isProblem(value) || value.type !== "checks" || value.key === "finding") return [];
  const first = value.rows.find((one) => !isProblem(one.value));
  if (!first || isProblem(first.value)) return [];
  const check = first.value;
  const guarded = value.rows.some((one) => !isProblem(one.value) && one.value.uncertainty > 0);
  return [
    part(`worked for ${value.key} ${first.key}`, threeLines(check.step, context.unitOf, check.unit)),
    check.yes === undefined &&
      part(
        "limit",
        el("p", {}, `${capital(limitText(check, context))}. ${ruleWords(guarded ? "" : undefined)}`),
      ),
  ];
}
