// What happens at Enter: read, asked about where unlikely, kept, and on to the next place.
import { isProblem, type Problem } from "../../problem.ts";
import type { Step } from "../../readings/places.ts";
import { questionAbout } from "../../readings/plausible.ts";
import { cannotRead, correct, setAside, type Taken, take } from "../../readings/take.ts";
import { inPlace } from "../../report/problem-words.ts";
import { rememberedWho, rememberWho } from "../shell/who.ts";
import { questionAsk, reasonAsk } from "./asks.ts";
import { changedStep, frontAt, meaningOf, spotOf } from "./bench-state.ts";
import { advance, type Flow, goTo, leaveAsk, put, say, stepAt } from "./flow.ts";

export function enter(flow: Flow): void {
  const step = stepAt(flow);
  if (flow.pending !== undefined || !step) return;
  if (isRefused(flow)) return;
  const written = flow.parts.entry.value.trim();
  if (written !== "") weigh(flow, step, written);
  else if (step.text !== "") advance(flow);
  else say(flow, "Type the reading first; if there is none, say that it cannot be read.");
}

/** What would be lost is not taken. */
function isRefused(flow: Flow): boolean {
  if (flow.context.keeping() !== "another tab") return false;
  say(flow, "Not taken: this page is open in another tab, which keeps it. Close one of them and load again.");
  return true;
}

function weigh(flow: Flow, step: Step, written: string): void {
  const front = frontAt(flow.context, flow.spot, step);
  const meaning = meaningOf(step, written, front);
  if (isProblem(meaning)) say(flow, inPlace(meaning));
  else if (meaning.text === step.text) {
    flow.said = `${step.words}: ${step.text}, as before.`;
    advance(flow);
  } else {
    const { item, table } = flow.spot;
    const { text, value } = meaning;
    const question = value && questionAbout({ item, table, step, text, value, front });
    if (!question) settle(flow, step, text);
    else {
      const keep = (kept: string) => settle(flow, step, kept, kept === text ? "kept when asked" : undefined);
      put(flow, written, questionAsk(question, { keep, again: () => leaveAsk(flow) }));
    }
  }
}

/** A blank is filled; where a reading stands, the reason for another is asked first. */
function settle(flow: Flow, step: Step, text: string, reason?: string): void {
  const isBlank = step.text === "" && step.state !== "set aside";
  if (isBlank) write(flow, take(takenAt(flow, step), text, reason), text);
  else askReason(flow, "correct", text);
}

const takenAt = ({ spot }: Flow, step: Step): Taken => ({ item: spot.item, rows: spot.rows, step });

type Purpose = "correct" | "set aside" | "cannot read";

export function askReason(flow: Flow, purpose: Purpose, text = ""): void {
  const step = stepAt(flow);
  if (!step) return;
  if (isRefused(flow)) return;
  const taken = takenAt(flow, step);
  const done: Readonly<Record<Purpose, (reason: string, by: string) => string | Problem>> = {
    correct: (reason, by) => correct(taken, text, reason, by),
    "set aside": (reason, by) => setAside(taken, reason, by),
    "cannot read": (reason, by) => cannotRead(taken, reason, by),
  };
  const before = done[purpose]("asked", "asked"); // a table without room for reasons says so before one is asked
  if (isProblem(before)) say(flow, inPlace(before));
  else {
    const reason = (words: string, by: string) => {
      rememberWho(by);
      write(flow, done[purpose](words, by), purpose === "correct" ? text : purpose);
    };
    const who = rememberedWho(); // not who read the table: somebody else may be the one who corrects it
    const ask = reasonAsk(purpose, step, text, { who, reason, leave: () => leaveAsk(flow) });
    put(flow, flow.pending ?? flow.parts.entry.value, ask);
  }
}

function write(flow: Flow, rows: string | Problem, words: string): void {
  if (isProblem(rows)) say(flow, inPlace(rows));
  else {
    const step = stepAt(flow);
    flow.context.edit(flow.name, rows);
    renew(flow);
    flow.said = `${step?.words ?? ""}: ${words}.`;
    advance(flow);
  }
}

function renew(flow: Flow): void {
  const spot = spotOf(flow.context, flow.name);
  if (!isProblem(spot)) flow.spot = spot;
}

export function undo(flow: Flow): void {
  if (flow.context.lastChanged() === flow.name) step(flow, flow.context.undo, "Taken back");
  else say(flow, "Nothing of this table is left to take back.");
}

export function redo(flow: Flow): void {
  if (flow.context.lastUndone() === flow.name) step(flow, flow.context.redo, "Put back");
}

function step(flow: Flow, make: () => void, says: string): void {
  const before = flow.spot;
  make();
  renew(flow);
  const at = changedStep(before, flow.spot);
  flow.said = `${says}: ${flow.spot.steps[at]?.words ?? "the last entry"}.`;
  goTo(flow, at >= 0 ? at : flow.at);
}
