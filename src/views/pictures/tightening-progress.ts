// How far the tightening has come: which pass, which position is next, what was passed over.
import { isProblem, type Problem, problem } from "../../problem.ts";
import type { PictureInputs } from "./drawing.ts";
import { maybeWord, numberIn, positionIn, type Row, rowsOf, wordIn } from "./lists.ts";
import { type Place, placeless, placesOf } from "./place.ts";

export interface Setting {
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
}

const name = "tightening-map";

/** "pass 1" and "1" are the same pass. */
const plainPass = (pass: string): string => pass.replace(/^pass\s+/i, "");

export function readProgress(inputs: PictureInputs): Progress | Problem {
  const places = placesOf(name, inputs);
  if (isProblem(places)) return places;
  const orderRows = rowsOf(name, inputs, "order");
  if (isProblem(orderRows)) return orderRows;
  const settings = rowsOf(name, inputs, "passes");
  if (isProblem(settings)) return settings;
  const written = rowsOf(name, inputs, "done");
  if (isProblem(written)) return written;
  const adapters = rowsOf(name, inputs, "adapters");
  if (isProblem(adapters)) return adapters;
  const chosen = maybeWord(name, inputs, "pass");
  if (isProblem(chosen)) return chosen;
  const lists = { order: orderRows, passes: settings, done: written, adapters };
  for (const [list, rows] of Object.entries(lists)) {
    const lost = placeless(name, list, rows, places);
    if (lost) return lost;
  }
  const order = orderRows.map(positionIn);
  const passes = passesOf(settings, written, order);
  const now = passDrawn(passes, chosen, order);
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
  const names = passes.map(({ pass }) => pass);
  if (chosen !== undefined) {
    const found = passes.find(({ pass }) => pass === plainPass(chosen));
    return (
      found ??
      problem({
        code: "unknown-pass",
        what: `picture ${name}`,
        got: `pass ${plainPass(chosen)}`,
        must: `be one of ${names.join(", ")}`,
      })
    );
  }
  const begun = passes.findLastIndex(({ done }) => done.size > 0);
  const last = passes[Math.max(0, begun)];
  const now = last && order.every((position) => last.done.has(position)) ? (passes[begun + 1] ?? last) : last;
  return (
    now ?? problem({ code: "no-rows", what: `picture ${name}`, got: "no passes", must: "have at least one" })
  );
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
