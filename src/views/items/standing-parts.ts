// What is known about a checked value besides its number: why it may not hold, and where its doubt comes from.
import type { CheckValue } from "../../engine/line.ts";
import type { Unit } from "../../units/unit.ts";
import { listed } from "../../words.ts";
import { type Child, el } from "../dom.ts";
import { setText } from "../figure.ts";
import { list, part } from "../more.ts";
import { inPlace } from "../problem-note.ts";
import { stateMark } from "../state-mark.ts";

/** Each reason why nothing is proven by the number, with a mark of its own. */
export const reservationLines = ({
  reservations,
}: Pick<CheckValue, "reservations">): readonly HTMLElement[] =>
  [...new Set(reservations.map(inPlace))].map((words) =>
    el(
      "p",
      { class: "reservation" },
      stateMark("warning"),
      el("span", {}, el("b", {}, "may not hold"), ` ${words}`),
    ),
  );

const mostCauses = 4;

/** "± 4.2 kN comes from nut factor and torque" */
export function doubtWords({ carried, kind }: CheckValue, shown: Unit): string | undefined {
  const { halfWidth, from } = carried;
  if (halfWidth === 0 || from.length === 0) return undefined;
  const { offset: _, ...width } = shown; // a half-width is a difference
  const causes = from.length > mostCauses ? [...from.slice(0, mostCauses - 1), "others"] : from;
  return `± ${setText(halfWidth, kind, width, 2)} comes from ${listed(causes)}.`;
}

/** Sources nobody saw, and givens of which none is stated. */
export const sourceParts = ({ memory, unsourced }: CheckValue): readonly Child[] => [
  memory.length > 0 && part("rests on sources from memory", list(memory)),
  unsourced.length > 0 && part("rests on values whose source is not stated", list(unsourced)),
];
