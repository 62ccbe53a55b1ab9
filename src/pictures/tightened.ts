// What a record tells of each nut of one pass: angle, torque and stretch, each against its band. Two pictures draw it.

import { median } from "../median.ts";
import type { UnitChoice } from "../methods/solution.ts";
import type { Problem } from "../problem.ts";
import { figureText, setText } from "../report/figure-text.ts";
import type { Kind } from "../units/kind.ts";
import { type Given, list, maybe, number, word } from "./fields.ts";
import { cannotDraw } from "./picture.ts";
import { byName, numberIn, positionIn, type Row, wordIn } from "./rows.ts";

export const of = {
  record: list({ position: "text" }, { torque: "torque", angle: "angle", stretch: "length", pass: "text" }),
  band: number("angle"),
  target: maybe("torque"),
  torqueBand: maybe("ratio"),
  pass: word(),
};

export const needs = { target: "torqueBand", torqueBand: "target" } as const;

export interface Nut {
  readonly position: string;
  readonly angle: number | undefined;
  readonly torque: number | undefined;
  readonly stretch: number | undefined;
}

export interface Story {
  readonly nuts: readonly Nut[];
  readonly pass: string | undefined;
  readonly middle: number;
  readonly band: number;
  readonly target: number | undefined;
  /** Share of the target that the torque may be off. */
  readonly torqueBand: number | undefined;
}

export function storyOf({
  record,
  band,
  target,
  torqueBand,
  pass: asked,
}: Given<typeof of>): Story | Problem {
  const pass = asked ?? passWithAngles(record);
  const nuts = record
    .filter((row) => pass === undefined || wordIn(row, "pass") === pass)
    .map(
      (row): Nut => ({
        position: positionIn(row),
        angle: numberIn(row, "angle"),
        torque: numberIn(row, "torque"), // what was applied; a written target says nothing of it
        stretch: numberIn(row, "stretch"),
      }),
    )
    .toSorted((a, b) => byName(a.position, b.position));
  const middle = median(nuts.flatMap(({ angle }) => angle ?? []));
  if (middle === undefined)
    return cannotDraw(
      "no-rows",
      `no angle in record${pass === undefined ? "" : `, ${pass}`}`,
      "have at least one",
    );
  return { nuts, pass, middle, band, target, torqueBand };
}

/** A record of several passes is drawn from the last one in which angles were read. */
const passWithAngles = (rows: readonly Row[]): string | undefined => {
  const last = rows.findLast((row) => numberIn(row, "angle") !== undefined);
  return last && wordIn(last, "pass");
};

/** A hair more than the band is rounding of degrees, not an angle. */
const hair = 1e-9;

export function angleWord({ angle }: Nut, { middle, band }: Story): string {
  if (angle === undefined) return "missing";
  if (angle < middle - band - hair) return "low";
  return angle > middle + band + hair ? "high" : "inside";
}

export function torqueOff({ torque }: Nut, { target, torqueBand }: Story): "low" | "high" | undefined {
  if (torque === undefined || target === undefined || torqueBand === undefined) return undefined;
  if (torque < target * (1 - torqueBand) - hair) return "low";
  return torque > target * (1 + torqueBand) + hair ? "high" : undefined;
}

const shown =
  (kind: Kind, unitOf: UnitChoice) =>
  (si: number | undefined): string => {
    if (si === undefined) return "";
    return kind === "length" ? figureText(si, kind, unitOf(kind)) : setText(si, kind, unitOf(kind), 5);
  };

export function says(story: Story, unitOf: UnitChoice): string {
  const [angle, torque] = [shown("angle", unitOf), shown("torque", unitOf)];
  const { nuts, middle, band, target, pass } = story;
  const odd = nuts.filter((nut) => ["low", "high"].includes(angleWord(nut, story)));
  const off = nuts.filter((nut) => torqueOff(nut, story));
  const read = nuts.filter((nut) => nut.angle !== undefined).length;
  const where = pass === undefined ? "" : `, ${pass.startsWith("pass") ? pass : `pass ${pass}`}`;
  const turned = odd.map((nut) => `${nut.position} (${angle(nut.angle)}, ${angleWord(nut, story)})`);
  const pulled = off.map((nut) => `${nut.position} (${torque(nut.torque)}, ${torqueOff(nut, story)})`);
  return [
    `Median angle of ${read} nuts${where}: ${angle(middle)}, band ±${angle(band)}.`,
    odd.length === 0 ? "All lie in the band." : `Outside: ${turned.join(", ")}.`,
    ...(off.length === 0 ? [] : [`Torque off ${torque(target)}: ${pulled.join(", ")}.`]),
  ].join(" ");
}

export function table(story: Story, unitOf: UnitChoice) {
  const [angle, torque] = [shown("angle", unitOf), shown("torque", unitOf)];
  const stretch = shown("length", unitOf);
  const withStretch = story.nuts.some((nut) => nut.stretch !== undefined);
  return {
    title: "torque and angle as a table",
    head: ["position", "angle", "against the band", "torque", ...(withStretch ? ["stretch"] : [])],
    rows: story.nuts.map((nut) => [
      nut.position,
      angle(nut.angle) || "missing",
      angleWord(nut, story),
      [torque(nut.torque) || "missing", torqueOff(nut, story) ?? []].flat().join(", "),
      ...(withStretch ? [stretch(nut.stretch)] : []),
    ]),
  };
}
