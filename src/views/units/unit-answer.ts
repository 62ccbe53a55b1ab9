// One box for a unit question: what it is in the other units, by what exact rule, and how it was read.
// Stands on the unit layer alone, so that it opens at once.
import "./unit-answer.css";
import { isProblem, type Problem, sentence } from "../../problem.ts";
import { conversionRequest } from "../../units/conversion-request.ts";
import { convert } from "../../units/convert.ts";
import { inGroups } from "../../units/decimal.ts";
import { type Answer, rule, usualAnswers, wouldMean } from "../../units/explain.ts";
import type { Kind } from "../../units/kind.ts";
import { onScreen } from "../../units/on-screen.ts";
import { type Quantity, quantity } from "../../units/quantity.ts";
import { type Scan, scan } from "../../units/scan.ts";
import { scanFor } from "../../units/scan-for.ts";
import { unit, unitLabel } from "../../units/unit.ts";
import { onWrenchStep } from "../../units/wrench-step.ts";
import { type Child, el, replace } from "../dom.ts";
import { plainField } from "./question-entry.ts";
import { keepStep, keptStep, recent, remember } from "./recent.ts";

export interface UnitAnswer {
  readonly element: HTMLElement;
  /** Answers what stands in the box. */
  readonly renew: () => void;
  readonly ask: (text: string) => void;
}

const settled = 1500;

/** What stands in the box: a value, perhaps with the unit it is wanted in. */
function askedOf(text: string): { readonly found: Scan; readonly to?: string } {
  const request = conversionRequest(text);
  return request ? { found: scanFor(request.text, request.to), to: request.to } : { found: scan(text) };
}

export function unitAnswer(entry: HTMLInputElement, onAsk?: (text: string) => void): UnitAnswer {
  const { id } = entry;
  const outcome = el("div", { class: "outcome", id: `${id}-read`, role: "status", "aria-live": "polite" });
  const wrench = wrenchLine(`${id}-step`);
  const last = recentList((text) => ask(text));
  let timer: ReturnType<typeof setTimeout> | undefined;

  const keepQuestion = (): void => {
    clearTimeout(timer);
    if (askedOf(entry.value).found.quantity) remember(entry.value);
    last.renew();
  };
  const renew = (): void => {
    const { found: asked, to } = askedOf(entry.value);
    entry.toggleAttribute("aria-invalid", false);
    if (asked.outcome === "refuse" && entry.value.trim() !== "") entry.setAttribute("aria-invalid", "true");
    replace(outcome, entry.value.trim() === "" ? hint() : outcomeOf(asked, ask, to));
    wrench.renew(asked);
    onAsk?.(entry.value);
    clearTimeout(timer);
    timer = setTimeout(keepQuestion, settled);
  };
  function ask(text: string): void {
    entry.value = text;
    renew();
    entry.focus();
  }
  entry.addEventListener("input", renew);
  entry.addEventListener("change", keepQuestion);
  replace(outcome, hint());
  last.renew();
  const label = el("label", { for: id, class: "question-label" }, "A quantity with its unit");
  return {
    element: el("section", { class: "unit-answer" }, label, entry, outcome, wrench.element, last.element),
    renew,
    ask,
  };
}

/** The number to set on a wrench with steps, under a torque. */
function wrenchLine(id: string) {
  const step = el("input", { ...plainField(id), class: "step-entry" });
  step.value = keptStep();
  const set = el("p", { class: "set-line", role: "status" });
  const label = el("label", { for: id }, "wrench step");
  const element = el("div", { class: "wrench-step", hidden: true }, label, step, set);
  let wanted: Quantity | undefined;
  const renew = (asked: Scan): void => {
    wanted = asked.quantity?.kind === "torque" ? asked.quantity : undefined;
    element.hidden = wanted === undefined;
    if (!wanted) return;
    const typed = quantity(step.value, "torque");
    set.textContent = isProblem(typed) ? worded(typed) : onWrenchStep(wanted, typed);
  };
  step.addEventListener("input", () => {
    keepStep(step.value);
    if (wanted) renew(scan(wanted.text));
  });
  return { element, renew };
}

function recentList(ask: (text: string) => void) {
  const element = el("div", { class: "recent" });
  const renew = (): void => {
    const list = recent();
    const again = (text: string) =>
      el("button", { type: "button", class: "suggestion", onclick: () => ask(text) }, text);
    replace(element, list.length > 0 && el("h3", {}, "last asked"), ...list.map(again));
  };
  return { element, renew };
}

const hint = (): Child =>
  el("p", { class: "quiet" }, "For example 140 in lb, 6 kgf.m, 3/8 in, 20 thou, 68 degF.");

const worded = (problem: Problem): string => {
  const text = sentence(problem);
  return onScreen(`${text.slice(0, 1).toUpperCase()}${text.slice(1)}.`);
};

function outcomeOf(asked: Scan, apply: (text: string) => void, to?: string): Child {
  if (asked.outcome === "designation")
    return el("p", {}, `${asked.text.trim()} names a thread or a fit; it is not a quantity.`);
  const typed = asked.quantity;
  if (!typed) return refused(asked, apply);
  const wanted = to === undefined ? undefined : convert(typed, to);
  if (isProblem(wanted)) return trouble(wanted, apply);
  return [
    asked.problem && trouble(asked.problem, apply),
    wanted ? answerList([wanted]) : answers(typed),
    el(
      "dl",
      { class: "reading-of" },
      el("dt", {}, "read as"),
      el("dd", {}, onScreen(asked.readAs ?? typed.text)),
      el("dt", {}, "rule"),
      el("dd", {}, onScreen(rule(typed.unit))),
    ),
    ...(wanted ? [] : otherKinds(typed)).map(([kind, other]) =>
      el(
        "div",
        { class: "other-kind" },
        el("h3", {}, `as ${/^[aeiou]/.test(kind) ? "an" : "a"} ${kind}`),
        answers(other),
      ),
    ),
  ];
}

/** The number large, one answer a line. */
function answers(typed: Quantity): HTMLElement {
  const found = usualAnswers(typed);
  if (found.length === 0)
    return el(
      "p",
      { class: "quiet" },
      "A combination without a name of its own: the rule below gives it in SI units.",
    );
  return answerList(found);
}

function answerList(found: readonly Answer[]): HTMLElement {
  return el(
    "ul",
    { class: "answers" },
    ...found.map(({ unit: shown, text, spread }) => {
      const [number = ""] = text.split(" ");
      const label = unitLabel(shown);
      return el(
        "li",
        {},
        el("b", {}, inGroups(number, "\u2009")),
        label === "°" ? "" : "\u00a0",
        el("span", { class: "unit" }, label),
        spread !== undefined &&
          el("span", { class: "unit" }, onScreen(spread.startsWith("±") ? ` ${spread}` : `, ${spread}`)),
      );
    }),
  );
}

/** 68 degF is a reading and, on its own, a difference; MPa is a stress and a pressure. */
function otherKinds(typed: Quantity): readonly (readonly [Kind, Quantity])[] {
  const plain = unit(typed.unit.text);
  const kinds: readonly Kind[] = isProblem(plain) ? [] : plain.kinds;
  const also = typed.kind === "temperature" ? ([...kinds, "temperature difference"] as const) : kinds;
  return [...new Set(also)].flatMap((kind) => {
    if (kind === typed.kind || kind === "energy") return []; // a torque is hardly ever meant as energy
    const other = quantity(typed.text, kind, { confirmed: true });
    return isProblem(other) || usualAnswers(other).length === 0 ? [] : [[kind, other] as const];
  });
}

function refused(asked: Scan, apply: (text: string) => void): Child {
  const meanings = wouldMean(asked.text);
  if (meanings.length === 0) return asked.problem && trouble(asked.problem, apply);
  const kinds = [...new Set(meanings.map((meaning) => meaning.kind))];
  return [
    el("p", { class: "asks" }, `Which unit? ${asked.text.trim()} alone would mean:`),
    ...kinds.map((kind) =>
      el(
        "div",
        { class: "meanings" },
        el("h3", {}, kind),
        ...meanings
          .filter((meaning) => meaning.kind === kind)
          .map(({ unit: shown, text }) =>
            el(
              "button",
              { type: "button", class: "suggestion", onclick: () => apply(`${asked.text.trim()} ${shown}`) },
              onScreen(text),
            ),
          ),
      ),
    ),
  ];
}

const trouble = (problem: Problem, apply: (text: string) => void): HTMLElement =>
  el(
    "div",
    { class: "problem" },
    el("p", {}, worded(problem)),
    problem.suggestions.length > 0 &&
      el(
        "p",
        { class: "suggestions" },
        ...problem.suggestions
          .slice(0, 6)
          .map((text) =>
            el("button", { type: "button", class: "suggestion", onclick: () => apply(text) }, onScreen(text)),
          ),
      ),
  );
