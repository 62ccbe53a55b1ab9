// What a check says, part by part, so that a face can set its reservations apart from its numbers.
import { type Problem, sentence } from "../problem.ts";
import type { CheckValue } from "./line.ts";
import { withReservations } from "./verdict-of.ts";

/** Value against limit, without the reservations that the whole sentence ends in. */
export function whyAlone({ why, reservations }: Pick<CheckValue, "why" | "reservations">): string {
  const tail = withReservations("", reservations);
  return tail !== "" && why.endsWith(tail) ? why.slice(0, -tail.length) : why;
}

/** "hole 13 with 4 readings set aside: judged on fewer readings than the plan expects" */
export const reservationWords = (reservations: readonly Problem[]): readonly string[] => [
  ...new Set(reservations.map(sentence)),
];
