// A check: state word with its mark, the value, and the margin bar at the same place on every check.
import type { CheckItem } from "../../document/item.ts";
import type { CheckValue, Line } from "../../engine/line.ts";
import { isProblem } from "../../problem.ts";
import { doubtWords } from "../../report/doubt.ts";
import { setText } from "../../report/figure-text.ts";
import { asked, labelOf } from "../../report/labels.ts";
import { limitWords, ruleWords, shownUnit } from "../../report/limits.ts";
import { waiverWords } from "../../report/waiver.ts";
import { differenceUnit } from "../../units/in-unit.ts";
import { onScreen } from "../../units/on-screen.ts";
import { capital } from "../../words.ts";
import { el, replace } from "../dom.ts";
import { more, nameInFormulas, noteOf, part, relations } from "../shell/more.ts";
import type { ItemView, PageContext } from "../shell/page-context.ts";
import { threeLines } from "../shell/three-lines.ts";
import { answer } from "./answer.ts";
import { figure } from "./figure.ts";
import { marginBar } from "./margin-bar.ts";
import { noAnswerNote } from "./problem-note.ts";
import { row } from "./row.ts";
import { reservationLines, sourceParts } from "./standing-parts.ts";
import { stateWord } from "./state-mark.ts";

export function checkView(context: PageContext, line: Line, item: CheckItem): ItemView {
  const { element, body, result } = row(context, line.name, item);
  const margin = el("div", { class: "margin" });
  const opened = more("working and limits", labelOf(item));
  body.append(margin, opened.element);

  const update = (now: Line): void => {
    const { value } = now;
    element.classList.toggle("unanswered", isProblem(value));
    element.classList.toggle(
      "failing",
      !isProblem(value) && value.type === "check" && value.judged === "fails",
    );
    if (isProblem(value)) {
      replace(margin, noAnswerNote(now, value, context));
      replace(result, stateWord("no answer"));
      opened.fill(() => [noteOf(now), ...relations(now, context)]);
      return;
    }
    if (value.type !== "check") return;
    replace(margin, ...marginParts(value, item, context));
    replace(result, answer(context, now.name, valueFigure(value, context)), stateWord(value.state));
    opened.fill(() => [
      noteOf(now),
      part("working", threeLines(value.step, context.unitOf, value.unit)),
      limitPart(item, value, context),
      ...sourceParts(value),
      nameInFormulas(now),
      ...relations(now, context),
    ]);
  };
  update(line);
  return { element, update };
}

function valueFigure(value: CheckValue, context: PageContext): HTMLElement {
  if (value.yes !== undefined) return el("span", { class: "figure" }, el("b", {}, value.yes ? "yes" : "no"));
  return figure(value.si, value.kind, shownUnit(value, context.unitOf));
}

/** Limits with the digits that a person gave them. */
export const limitText = (value: CheckValue, context: PageContext): string =>
  limitWords(value, (si) => setText(si, value.kind, shownUnit(value, context.unitOf)));

function marginParts(value: CheckValue, item: CheckItem, context: PageContext): readonly HTMLElement[] {
  const waiver = waiverWords(value);
  const alone = onScreen(value.reason);
  const said = [el("p", { class: "caption" }, `${capital(alone)}.`), ...reservationLines(value)];
  if (waiver !== undefined) said.push(el("p", { class: "waived-note" }, `${capital(waiver)}.`));
  if (value.yes !== undefined) return said;
  const words = `${asked(labelOf(item))} ${alone}, ${value.judged}`;
  const holder = el("div", { class: "bar-holder" });
  holder.append(marginBar(value, limitText(value, context), words));
  return [holder, ...said];
}

function limitPart(item: CheckItem, value: CheckValue, context: PageContext): HTMLElement | undefined {
  if (value.yes !== undefined) return undefined;
  const shown = shownUnit(value, context.unitOf);
  const guard = setText(value.uncertainty, value.kind, differenceUnit(shown));
  const rule = ruleWords(value.uncertainty > 0 ? ` of ${guard}` : undefined);
  const doubt = doubtWords(value, shown);
  return part(
    "limit",
    el("p", {}, `${capital(limitText(value, context))}${item.source ? `, ${item.source}` : ""}. ${rule}`),
    doubt !== undefined && el("p", {}, onScreen(doubt)),
  );
}
