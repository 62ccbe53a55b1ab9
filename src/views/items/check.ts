// A check: state word with its mark, the value, and the margin bar at the same place on every check.
import type { CheckItem } from "../../document/item.ts";
import { whyAlone } from "../../engine/check-parts.ts";
import type { CheckValue, Line } from "../../engine/line.ts";
import { isProblem } from "../../problem.ts";
import type { Unit } from "../../units/unit.ts";
import { answer } from "../answer.ts";
import { el, replace } from "../dom.ts";
import { figure, setText } from "../figure.ts";
import { marginBar } from "../margin-bar.ts";
import { more, nameInFormulas, noteOf, part, relations } from "../more.ts";
import { onScreen } from "../on-screen.ts";
import type { ItemView, PageContext } from "../page-context.ts";
import { noAnswerNote } from "../problem-note.ts";
import { row } from "../row.ts";
import { stateWord } from "../state-mark.ts";
import { threeLines } from "../three-lines.ts";
import { asked, capital, labelOf } from "../words.ts";
import { doubtWords, reservationLines, sourceParts } from "./standing-parts.ts";

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

const shownUnit = (value: CheckValue, context: PageContext): Unit =>
  value.unit ?? context.unitOf(value.kind ?? "ratio");

function valueFigure(value: CheckValue, context: PageContext): HTMLElement {
  if (value.yes !== undefined) return el("span", { class: "figure" }, el("b", {}, value.yes ? "yes" : "no"));
  return figure(value.si, value.kind, shownUnit(value, context));
}

export function limitWords(value: CheckValue, context: PageContext): string {
  const text = (si: number) => setText(si, value.kind, shownUnit(value, context));
  const { atLeast, atMost } = value.limits;
  if (atLeast !== undefined && atMost !== undefined) return `${text(atLeast)} to ${text(atMost)}`;
  return atLeast === undefined ? `at most ${text(atMost ?? Number.NaN)}` : `at least ${text(atLeast)}`;
}

function marginParts(value: CheckValue, item: CheckItem, context: PageContext): readonly HTMLElement[] {
  const waived = value.waived
    ? [
        el(
          "p",
          { class: "waived-note" },
          `Waived by ${value.waived.by}: ${value.waived.why.replace(/\.$/, "")}. The numbers say: ${value.judged}.`,
        ),
      ]
    : [];
  const alone = onScreen(whyAlone(value));
  const said = [el("p", { class: "caption" }, `${capital(alone)}.`), ...reservationLines(value), ...waived];
  if (value.yes !== undefined) return said;
  const words = `${asked(labelOf(item))} ${alone}, ${value.judged}`;
  const holder = el("div", { class: "bar-holder" });
  holder.append(marginBar(value, limitWords(value, context), words));
  return [holder, ...said];
}

function limitPart(item: CheckItem, value: CheckValue, context: PageContext): HTMLElement | undefined {
  if (value.yes !== undefined) return undefined;
  const guard = setText(value.uncertainty, value.kind, shownUnit(value, context));
  const rule =
    value.uncertainty > 0
      ? `Guarded: proven only if the value stays inside with its whole uncertainty of ${guard}.`
      : "Compared unrounded; no uncertainty is stated.";
  const doubt = doubtWords(value, shownUnit(value, context));
  return part(
    "limit",
    el("p", {}, `${capital(limitWords(value, context))}${item.source ? `, ${item.source}` : ""}. ${rule}`),
    doubt !== undefined && el("p", {}, onScreen(doubt)),
  );
}
