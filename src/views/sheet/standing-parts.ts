// What is known about a checked value besides its number: why it may not hold, and what it rests on.
import type { CheckValue } from "../../engine/line.ts";
import { inPlace } from "../../report/problem-words.ts";
import { reservationWords } from "../../report/reservations.ts";
import { type Child, el } from "../dom.ts";
import { list, part } from "../shell/more.ts";
import { stateMark } from "./state-mark.ts";

/** Each reason why nothing is proven by the number, with a mark of its own. */
export const reservationLines = (reserved: Pick<CheckValue, "reservations">): readonly HTMLElement[] =>
  reservationWords(reserved, inPlace).map((words) =>
    el(
      "p",
      { class: "reservation" },
      stateMark("warning"),
      el("span", {}, el("b", {}, "may not hold"), ` ${words}`),
    ),
  );

/** Sources nobody saw, and givens of which none is stated. */
export const sourceParts = ({ memory, unsourced }: CheckValue): readonly Child[] => [
  memory.length > 0 && part("rests on sources from memory", list(memory)),
  unsourced.length > 0 && part("rests on values whose source is not stated", list(unsourced)),
];
