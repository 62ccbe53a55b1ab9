// How closely a way of tightening meets a wanted preload, as one handbook table prints it.
// An estimate to start from; a trial on the bolts of the job replaces it.
import type { Problem } from "../problem.ts";
import type { Source } from "../source.ts";
import { notInTable, once, plainKey, readRows, type TableInfo } from "./table.ts";

export interface TighteningAccuracy {
  readonly method: string;
  /** Half width about the wanted preload, as a ratio; a printed range keeps both ends. */
  readonly least: number;
  readonly most: number;
}

export const tighteningAccuracySource: Source = {
  body: "Industrial Press",
  title: "Machinery's Handbook, accuracy of bolt preload application methods, quoted in a course handout",
  at: "Table 1 of the handout",
  known: "second-hand",
};

export const tighteningAccuracyTable: TableInfo = {
  title: "Accuracy of preload by way of tightening",
  units: { method: "", least: "%", most: "%" },
  sources: [tighteningAccuracySource],
};

const text = `
method,least,most
by feel,35,35
torque wrench,25,25
turn-of-nut,15,15
preload indicating washer,10,10
strain gages,1,1
computer-controlled wrench below yield,15,15
yield-point sensing,8,8
bolt elongation,3,5
ultrasonic sensing,1,1
`;

export const tighteningAccuracies = once(() =>
  readRows(
    text,
    (cell): TighteningAccuracy => ({
      method: cell.text("method"),
      least: cell.number("least") / 100,
      most: cell.number("most") / 100,
    }),
  ),
);

export function tighteningAccuracy(method: string): TighteningAccuracy | Problem {
  const found = tighteningAccuracies().find((row) => plainKey(row.method) === plainKey(method));
  if (found) return found;
  return notInTable({
    code: "unknown-method-of-tightening",
    what: "way of tightening",
    got: method.trim() || "nothing",
    choices: tighteningAccuracies().map((row) => row.method),
    hint: "a trial on the bolts, paste and washers of the job beats a table",
  });
}
