// A bore cut open once in each direction of reading: the value of each reading at its place.
import type { UnitChoice } from "../../methods/solution.ts";
import { isProblem, type Problem } from "../../problem.ts";
import { unitLabel } from "../../units/unit.ts";
import { numberText, setText } from "../figure.ts";
import { allReadings, type Bore, type BoreReading, nextReading, readBore } from "./bore-readings.ts";
import type { Drawing, PictureInputs } from "./drawing.ts";
import { drawBore } from "./hole-section-drawing.ts";
import { type Small, signed, smallLength } from "./lengths.ts";
import { spaced } from "./words.ts";

export function holeSection(inputs: PictureInputs, unitOf: UnitChoice): Drawing | Problem {
  const bore = readBore(inputs);
  if (isProblem(bore)) return bore;
  const small = smallLength(unitOf);
  const shown = unitOf("length");
  const number = (si: number) => numberText(si, "length", shown);
  const label = unitLabel(shown);
  return {
    draw: (width) =>
      drawBore(bore, width, { number, small, nominal: setText(bore.nominal, "length", shown) }),
    sentence: sentenceOf(bore, (si) => `${number(si)} ${label}`, small),
    table: {
      title: "readings as a table",
      head: ["depth", "direction", `diameter/${label}`, `from nominal/${small.label}`, "state"],
      rows: allReadings(bore).map((reading) => [
        spaced(reading.depth),
        reading.direction,
        reading.value === undefined ? "" : number(reading.value),
        reading.value === undefined ? "" : signed(small.number(reading.value - bore.nominal)),
        reading.value === undefined ? "missing" : (reading.remark ?? "entered"),
      ]),
    },
  };
}

export const placeWords = ({ depth, direction }: BoreReading): string => `${spaced(depth)} ${direction}`;

function sentenceOf(bore: Bore, length: (si: number) => string, small: Small): string {
  const all = allReadings(bore);
  const read = all.filter((each) => each.value !== undefined);
  const sorted = read.toSorted((a, b) => (a.value ?? 0) - (b.value ?? 0));
  const [least, most] = [sorted[0], sorted.at(-1)];
  const hole = bore.position === undefined ? "Hole" : `Hole ${bore.position}`;
  const next = nextReading(bore);
  const parts = [`${hole}: ${read.length} of ${all.length} readings`];
  if (least?.value !== undefined && most?.value !== undefined)
    parts.push(
      `, smallest ${length(least.value)} at ${placeWords(least)}, largest ${length(most.value)} at ${placeWords(most)}`,
    );
  const worst = bore.depths.toSorted((a, b) => (b.ovality ?? 0) - (a.ovality ?? 0))[0];
  if (worst?.ovality !== undefined && worst.ovality > 0)
    parts.push(
      `; most oval at ${spaced(worst.depth)}, ${small.text(worst.ovality)}, wide ${worst.wide ?? ""}`,
    );
  if (bore.taper !== undefined) parts.push(`; depth means differ by ${small.text(bore.taper)}`);
  parts.push(".");
  if (next) parts.push(` Next: ${placeWords(next)}.`);
  return parts.join("");
}
