// Each clearance from tightest to loosest with its uncertainty, against what the owner allows.

import type { UnitChoice } from "../methods/solution.ts";
import { type State, states } from "../verdict.ts";
import { capital, listed } from "../words.ts";
import { type Given, list, number } from "./fields.ts";
import { smallLength } from "./lengths.ts";
import { picture } from "./picture.ts";
import { byName, numberIn, positionIn, stateIn } from "./rows.ts";

const of = {
  pairs: list(
    { position: "text" },
    { tightest: "length", loosest: "length", uncertainty: "length", state: "text" },
  ),
  tightestAllowed: number("length"),
  loosestAllowed: number("length"),
};

interface Fit {
  readonly position: string;
  readonly tightest: number | undefined;
  readonly loosest: number | undefined;
  readonly uncertainty: number;
  readonly state: State;
}

export interface Fits extends Omit<Given<typeof of>, "pairs"> {
  readonly fits: readonly Fit[];
}

export const fitsAgainstLimits = picture({
  id: "fits-against-limits",
  question: "Which fits lie within what the owner allows, with their uncertainty?",
  of,
  model,
  says,
  table: ({ fits }, unitOf) => {
    const small = smallLength(unitOf);
    const columns = ["tightest", "loosest", "uncertainty"] as const;
    return {
      title: "fits as a table",
      head: ["position", ...columns.map((column) => `${column}/${small.label}`), "state"],
      rows: fits.map((fit) => {
        const cells = columns.map((column) => fit[column]);
        return [fit.position, ...cells.map((si) => (si === undefined ? "" : small.number(si))), fit.state];
      }),
    };
  },
});

function model({ pairs, ...allowed }: Given<typeof of>): Fits {
  const fits = pairs.map(
    (row): Fit => ({
      position: positionIn(row),
      tightest: numberIn(row, "tightest"),
      loosest: numberIn(row, "loosest"),
      uncertainty: numberIn(row, "uncertainty") ?? 0,
      state: stateIn(row),
    }),
  );
  return { ...allowed, fits: fits.toSorted((a, b) => byName(a.position, b.position)) };
}

function says({ fits, tightestAllowed, loosestAllowed }: Fits, unitOf: UnitChoice): string {
  const small = smallLength(unitOf);
  const by = (state: State) => fits.filter((fit) => fit.state === state).map(({ position }) => position);
  return [
    `${by("proven").length} of ${fits.length} fits are proven between ${small.set(tightestAllowed)} and ${small.set(loosestAllowed)} ${small.label}.`,
    ...states
      .filter((state) => state !== "proven" && by(state).length > 0)
      .map((state) => `${capital(state)}: ${listed(by(state))}.`),
    "Thick from tightest to loosest, thin the uncertainty beyond.",
  ].join(" ");
}
