// The flange in the order of tightening: which pass, what is done, what comes next and what was passed over.

import type { UnitChoice } from "../methods/solution.ts";
import { isProblem, type Problem } from "../problem.ts";
import { setText } from "../report/figure-text.ts";
import { listed } from "../words.ts";
import { type Given, list, maybeList, word } from "./fields.ts";
import { cannotDraw, picture } from "./picture.ts";
import { type Place, placesOf, plan } from "./place.ts";
import { numberIn, positionIn, type Row, wordIn } from "./rows.ts";

const of = {
  positions: plan.positions,
  order: list({ position: "text" }),
  passes: list({ position: "text", pass: "text" }, { net: "torque", set: "torque" }),
  done: list({ position: "text", pass: "text" }),
  adapters: maybeList({ position: "text" }),
  pass: word(),
  yRuns: plan.yRuns,
};

interface Setting {
  readonly net: number | undefined;
  readonly set: number | undefined;
  /** Whether a longer or shorter lever than the bare wrench is on. */
  readonly adapter: boolean;
}

export interface PassProgress {
  readonly pass: string;
  readonly done: ReadonlySet<string>;
  /** Positions left out although a later one in the order, or a later pass, is done. */
  readonly passedOver: readonly string[];
}

export interface Progress {
  readonly places: readonly Place[];
  readonly order: readonly string[];
  readonly passes: readonly PassProgress[];
  /** The pass drawn. */
  readonly now: PassProgress;
  /** The first position in the order that is not done in it. */
  readonly next: string | undefined;
  readonly after: string | undefined;
  readonly settingAt: (position: string) => Setting;
  readonly yUp: boolean;
}

export const tighteningMap = picture({
  id: "tightening-map",
  question: "Which position is next, what is the wrench set to there, and was any passed over?",
  of,
  model,
  says: (progress, unitOf) => [nextWords(progress, unitOf), ...gaps(progress)].join(" "),
  table: (progress, unitOf) => {
    const torque = torqueText(unitOf);
    const kinds = new Map(progress.places.map(({ position, kind }) => [position, kind]));
    return {
      title: "tightening as a table",
      head: ["turn", "position", "kind", `pass ${progress.now.pass}`, "net", "set", "lever"],
      rows: progress.order.map((position, i) => {
        const { net, set, adapter } = progress.settingAt(position);
        const [kind, state] = [kinds.get(position) ?? "", stateAt(progress, position)];
        return [String(i + 1), position, kind, state, torque(net), torque(set), adapter ? "adapter" : ""];
      }),
    };
  },
});

/** "pass 1" and "1" are the same pass. */
const plainPass = (pass: string): string => pass.replace(/^pass\s+/i, "");

function model({
  order: turns,
  passes: settings,
  done,
  adapters,
  ...given
}: Given<typeof of>): Progress | Problem {
  const places = placesOf(given.positions, { order: turns, passes: settings, done, adapters });
  if (isProblem(places)) return places;
  const order = turns.map(positionIn);
  const passes = passesOf(settings, done, order);
  const now = passDrawn(passes, given.pass, order);
  if (isProblem(now)) return now;
  const left = order.filter((position) => !now.done.has(position));
  return {
    places,
    order,
    passes,
    now,
    next: left[0],
    after: left[1],
    settingAt: settingsOf(settings, adapters, now.pass),
    yUp: given.yRuns === "up",
  };
}

function passesOf(
  settings: readonly Row[],
  written: readonly Row[],
  order: readonly string[],
): readonly PassProgress[] {
  const passOf = (row: Row) => plainPass(wordIn(row, "pass") ?? "");
  const names = [...new Set(settings.map(passOf))];
  const done = names.map(
    (pass) => new Set(written.filter((row) => passOf(row) === pass).map((row) => positionIn(row))),
  );
  return names.map((pass, i) => {
    const here = done[i] ?? new Set<string>();
    const begunLater = done.slice(i + 1).some((later) => later.size > 0);
    const last = begunLater
      ? order.length
      : Math.max(
          0,
          order.findLastIndex((position) => here.has(position)),
        );
    return { pass, done: here, passedOver: order.slice(0, last).filter((position) => !here.has(position)) };
  });
}

/** The pass asked for; else the last one begun, or the one after it when that is complete. */
function passDrawn(
  passes: readonly PassProgress[],
  chosen: string | undefined,
  order: readonly string[],
): PassProgress | Problem {
  if (chosen !== undefined) {
    const asked = plainPass(chosen);
    const names = passes.map(({ pass }) => pass);
    return (
      passes.find(({ pass }) => pass === asked) ??
      cannotDraw("unknown-pass", `pass ${asked}`, `be one of ${names.join(", ")}`)
    );
  }
  const begun = passes.findLastIndex(({ done }) => done.size > 0);
  const last = passes[Math.max(0, begun)];
  const now = last && order.every((position) => last.done.has(position)) ? (passes[begun + 1] ?? last) : last;
  return now ?? cannotDraw("no-rows", "no passes", "have at least one");
}

function settingsOf(
  settings: readonly Row[],
  adapters: readonly Row[],
  pass: string,
): (position: string) => Setting {
  const fitted = new Set(adapters.map(positionIn));
  return (position) => {
    const row = settings.find(
      (each) => positionIn(each) === position && plainPass(wordIn(each, "pass") ?? "") === pass,
    );
    return {
      net: row && numberIn(row, "net"),
      set: row && numberIn(row, "set"),
      adapter: fitted.has(position),
    };
  };
}

const torqueText =
  (unitOf: UnitChoice) =>
  (si: number | undefined): string =>
    si === undefined ? "" : setText(si, "torque", unitOf("torque"), 5);

const stateAt = ({ now, next }: Progress, position: string): string => {
  if (now.done.has(position)) return "done";
  if (position === next) return "next";
  return now.passedOver.includes(position) ? "passed over" : "to do";
};

function nextWords({ now, next, order, settingAt }: Progress, unitOf: UnitChoice): string {
  const count = `Pass ${now.pass}: ${now.done.size} of ${order.length} done`;
  if (next === undefined) return `${count}.`;
  const { set, adapter } = settingAt(next);
  const setting = set === undefined ? "no set torque" : `set ${torqueText(unitOf)(set)}`;
  return `${count}; next is position ${next}, ${setting}${adapter ? " with the adapter" : ""}.`;
}

const gaps = ({ passes, now }: Progress): readonly string[] =>
  passes
    .filter(({ passedOver }) => passedOver.length > 0)
    .map((pass: PassProgress) =>
      pass === now
        ? `Passed over in this pass: ${listed(pass.passedOver)}.`
        : `Missing in pass ${pass.pass}: ${listed(pass.passedOver)}.`,
    );
