// Single readings that need a word: missing ones are listed as wanted, odd ones asked about, corrected and set-aside
// ones stand with their reasons.
import type { ReadingItem } from "../../document/item.ts";
import { groupWords } from "../../document/place-words.ts";
import type { TableValue } from "../../engine/line.ts";
import { grouped } from "../../grouped.ts";
import { reasonOf, type Step, textAt } from "../../readings/places.ts";
import { replacedBy, rowWords, valuesOfRow } from "../../readings/row-words.ts";
import { onScreen } from "../../units/on-screen.ts";
import { type Child, el } from "../dom.ts";
import { stateWord } from "../sheet/state-mark.ts";

export interface Noted {
  readonly item: ReadingItem;
  readonly table: TableValue;
  readonly steps: readonly Step[];
  readonly enter: (place: string) => void;
}

export function readingNotes(noted: Noted): HTMLElement | undefined {
  const lines = [...missing(noted), ...odd(noted), ...corrected(noted), ...aside(noted)];
  return lines.length === 0 ? undefined : el("ul", { class: "reading-notes" }, ...lines);
}

const line = (mark: Parameters<typeof stateWord>[0], ...words: readonly Child[]): HTMLElement =>
  el("li", {}, stateWord(mark), el("span", { class: "note-words" }, ...words));

const go = (words: string, act: () => void): HTMLElement =>
  el("button", { type: "button", class: "place-link", onclick: act }, words);

/** Whole groups by their name, single places by theirs. */
function missing({ item, steps, enter }: Noted): readonly HTMLElement[] {
  const wanted = steps.filter((step) => step.state === "missing" && step.reason === "");
  const noted = steps.filter((step) => step.state === "missing" && step.reason !== "");
  const all = grouped(steps, (step) => groupWords(item, step.place));
  const places = [...grouped(wanted, (step) => groupWords(item, step.place))].flatMap(([group, members]) => {
    const [first] = members;
    const whole = members.length > 1 && members.length === all.get(group)?.length;
    if (whole && first) return [go(`${group}, all ${members.length}`, () => enter(first.id))];
    return members.map((step) => go(step.words, () => enter(step.id)));
  });
  return [
    ...(wanted.length > 0 ? [line("missing", `${wanted.length} wanted: `, ...separated(places))] : []),
    ...noted.map((step) =>
      line(
        "missing",
        go(step.words, () => enter(step.id)),
        `: ${step.reason}`,
      ),
    ),
  ];
}

const separated = (parts: readonly HTMLElement[]): readonly Child[] =>
  parts.flatMap((part, i) => (i === 0 ? [part] : ["; ", part]));

function odd({ item, table, steps, enter }: Noted): readonly HTMLElement[] {
  return steps
    .filter((step) => step.state === "odd")
    .map((step) => {
      const reason = step.row === undefined ? "" : textAt(table, "reason", step.row);
      const limit = item.odd?.[step.column];
      const asked = onScreen(
        `${step.text} lies farther than ${limit ?? "usual"} from the middle of ${groupWords(item, step.place)}`,
      );
      return line(
        "odd",
        go(step.words, () => enter(step.id)),
        `: ${asked}${reason === "" ? "; keep, correct or set aside" : `; ${reason}`}`,
      );
    });
}

function corrected({ item, table }: Noted): readonly HTMLElement[] {
  return table.states.flatMap((state, row) => {
    const by = state === "corrected" ? replacedBy(table, row) : undefined;
    if (by === undefined) return [];
    const before = valuesOfRow(table, row);
    const words = before === "" ? [] : [el("s", {}, before), " to "];
    return [
      line(
        "corrected",
        `${rowWords(item, table, row)}: `,
        ...words,
        `${valuesOfRow(table, by)}; ${reasonOf(table, by)}`,
      ),
    ];
  });
}

function aside({ item, table }: Noted): readonly HTMLElement[] {
  return table.states.flatMap((state, row) =>
    state === "set aside"
      ? [
          line(
            "set aside",
            `${rowWords(item, table, row)}: `,
            el("s", {}, valuesOfRow(table, row)),
            `; ${reasonOf(table, row)}`,
          ),
        ]
      : [],
  );
}
