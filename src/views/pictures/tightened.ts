// What a record tells of each nut of one pass: angle, torque and stretch, each against its band.
import { median } from "d3";
import type { UnitChoice } from "../../methods/solution.ts";
import { isProblem, type Problem, problem } from "../../problem.ts";
import type { Kind } from "../../units/kind.ts";
import { figureText, setText } from "../figure.ts";
import type { Drawing, PictureInputs } from "./drawing.ts";
import { numbersOf } from "./inputs.ts";
import { byName, maybeWord, numberIn, positionIn, type Row, rowsOf, wordIn } from "./lists.ts";

type Name = "angle-by-nut" | "torque-against-angle";

export interface Told {
  readonly position: string;
  readonly angle: number | undefined;
  readonly torque: number | undefined;
  readonly stretch: number | undefined;
}

export interface Story {
  readonly nuts: readonly Told[];
  readonly pass: string | undefined;
  readonly middle: number;
  readonly band: number;
  readonly target: number | undefined;
  /** Share of the target that the torque may be off. */
  readonly torqueBand: number | undefined;
}

/** The sentence and the table are those of the record, however it is drawn. */
export function toldBy(
  name: Name,
  draw: (story: Story, width: number, unitOf: UnitChoice) => SVGSVGElement,
): (inputs: PictureInputs, unitOf: UnitChoice) => Drawing | Problem {
  return (inputs, unitOf) => {
    const story = read(name, inputs);
    return isProblem(story) ? story : told(story, unitOf, (width) => draw(story, width, unitOf));
  };
}

function told(story: Story, unitOf: UnitChoice, draw: Drawing["draw"]): Drawing {
  const show = (kind: Kind) => (si: number | undefined) =>
    si === undefined
      ? ""
      : kind === "length"
        ? figureText(si, kind, unitOf(kind))
        : setText(si, kind, unitOf(kind), 5);
  const [angle, torque, stretch] = [show("angle"), show("torque"), show("length")];
  const withStretch = story.nuts.some((nut) => nut.stretch !== undefined);
  return {
    draw,
    sentence: sentenceOf(story, angle, torque),
    table: {
      title: "torque and angle as a table",
      head: ["position", "angle", "against the band", "torque", ...(withStretch ? ["stretch"] : [])],
      rows: story.nuts.map((nut) => [
        nut.position,
        angle(nut.angle) || "missing",
        angleWord(nut, story),
        `${torque(nut.torque) || "missing"}${torqueOff(nut, story) ? `, ${torqueOff(nut, story)}` : ""}`,
        ...(withStretch ? [stretch(nut.stretch)] : []),
      ]),
    },
  };
}

function read(name: Name, inputs: PictureInputs): Story | Problem {
  const numbers = numbersOf(name, inputs);
  if (isProblem(numbers)) return numbers;
  const rows = rowsOf(name, inputs, "record");
  if (isProblem(rows)) return rows;
  const asked = maybeWord(name, inputs, "pass");
  if (isProblem(asked)) return asked;
  const pass = asked ?? passWithAngles(rows);
  const nuts = rows
    .filter((row) => pass === undefined || wordIn(row, "pass") === pass)
    .map(
      (row): Told => ({
        position: positionIn(row),
        angle: numberIn(row, "angle"),
        torque: numberIn(row, "torque"), // what was applied; a written target says nothing of it
        stretch: numberIn(row, "stretch"),
      }),
    )
    .toSorted((a, b) => byName(a.position, b.position));
  const middle = median(nuts.flatMap(({ angle }) => (angle === undefined ? [] : [angle])));
  if (middle === undefined)
    return problem({
      code: "no-rows",
      what: `picture ${name}`,
      got: `no angle in record${pass === undefined ? "" : `, ${pass}`}`,
      must: "have at least one",
    });
  if (name === "torque-against-angle" && nuts.every(({ torque }) => torque === undefined))
    return problem({
      code: "no-rows",
      what: `picture ${name}`,
      got: "no torque in record",
      must: "have at least one",
      hint: "the torque at the nut stands in the rows that count of record-findings",
    });
  const { band, target, torqueBand } = numbers;
  return { nuts, pass, middle, band, target, torqueBand };
}

/** A record of several passes is drawn from the last one in which angles were read. */
const passWithAngles = (rows: readonly Row[]): string | undefined => {
  const last = rows.findLast((row) => numberIn(row, "angle") !== undefined);
  return last && wordIn(last, "pass");
};

/** A hair more than the band is rounding of degrees, not an angle. */
const hair = 1e-9;

export function angleWord({ angle }: Told, { middle, band }: Story): string {
  if (angle === undefined) return "missing";
  if (angle < middle - band - hair) return "low";
  return angle > middle + band + hair ? "high" : "inside";
}

export function torqueOff({ torque }: Told, { target, torqueBand }: Story): "low" | "high" | undefined {
  if (torque === undefined || target === undefined || torqueBand === undefined) return undefined;
  if (torque < target * (1 - torqueBand) - hair) return "low";
  return torque > target * (1 + torqueBand) + hair ? "high" : undefined;
}

type Words = (si: number | undefined) => string;

function sentenceOf(story: Story, angle: Words, torque: Words): string {
  const { nuts, middle, band, target, torqueBand, pass } = story;
  const odd = nuts.filter((nut) => ["low", "high"].includes(angleWord(nut, story)));
  const read = nuts.filter((nut) => nut.angle !== undefined).length;
  const where = pass === undefined ? "" : `, ${pass.startsWith("pass") ? pass : `pass ${pass}`}`;
  const outside =
    odd.length === 0
      ? "All lie in the band."
      : `Outside: ${odd.map((nut) => `${nut.position} (${angle(nut.angle)}, ${angleWord(nut, story)})`).join(", ")}.`;
  const off = nuts.filter((nut) => torqueOff(nut, story));
  const torques =
    target === undefined || torqueBand === undefined || off.length === 0
      ? ""
      : ` Torque off ${torque(target)}: ${off.map((nut) => `${nut.position} (${torque(nut.torque)}, ${torqueOff(nut, story)})`).join(", ")}.`;
  return `Median angle of ${read} nuts${where}: ${angle(middle)}, band ±${angle(band)}. ${outside}${torques}`;
}
