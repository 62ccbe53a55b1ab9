// Why a number may not hold, each reason once, in the wording of a face.
import { type Problem, sentence } from "../problem.ts";
import { onScreen } from "../units/on-screen.ts";
import { capital, ended } from "../words.ts";

interface Reserved {
  readonly reservations: readonly Problem[];
}

/** "hole 13 with 4 readings set aside: judged on fewer readings than the plan expects" */
export const reservationWords = (
  { reservations }: Reserved,
  words: (reservation: Problem) => string = sentence,
): readonly string[] => [...new Set(reservations.map(words))];

/** In few words: the whole sentence stands at the check, and what was set aside leads the summary. */
export const shortReservations = (reserved: Reserved): readonly string[] =>
  reservationWords(reserved, ({ code, what, why }) =>
    onScreen(code.startsWith("readings-") ? what : (why ?? what)),
  );

/** "0.08 mm against at most 0.05 mm. May not hold: hole 13 with 1 reading set aside." */
export const reasonAndDoubts = (said: Reserved & { readonly reason: string }): string =>
  [
    onScreen(ended(capital(said.reason))),
    ...shortReservations(said).map((words) => `May not hold: ${ended(words)}`),
  ].join(" ");
