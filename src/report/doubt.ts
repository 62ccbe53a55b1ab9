// Where the doubt of a checked value comes from, and the width that judged.
import type { CheckValue } from "../engine/line.ts";
import { differenceUnit, inUnit } from "../units/in-unit.ts";
import type { Unit } from "../units/unit.ts";
import { listed } from "../words.ts";
import { setText } from "./figure-text.ts";
import { unitText } from "./values.ts";

const mostCauses = 4;

/** "± 4.2 kN comes from nut factor and torque" */
export function doubtWords({ carried, kind }: CheckValue, shown: Unit): string | undefined {
  const { halfWidth, from } = carried;
  if (halfWidth === 0 || from.length === 0) return undefined;
  const causes = from.length > mostCauses ? [...from.slice(0, mostCauses - 1), "others"] : from;
  return `± ${setText(halfWidth, kind, differenceUnit(shown), 2)} comes from ${listed(causes)}.`;
}

/** The half-width that judged, and what it comes from; none where nothing is stated. */
export const doubtValue = ({ uncertainty, carried }: CheckValue, shown: Unit) =>
  uncertainty > 0
    ? {
        halfWidth: inUnit(uncertainty, differenceUnit(shown)),
        unit: unitText(shown.text),
        from: carried.from,
      }
    : null;
