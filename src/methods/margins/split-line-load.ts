// What load does the pressure put on the worst bolt of a split line?
import { type Problem, problem } from "../../problem.ts";
import { cellNumber, cellText, numberOf, rowsOf } from "../inside.ts";
import { type Insides, method } from "../method.ts";
import { strip } from "../sources.ts";

/** Strips are equal, so the zone of the highest pressure has the worst bolt; the pressure given alone is one too. */
function run(inputs: Insides): Insides | Problem {
  const places = rowsOf(inputs, "zones").map((row, index) => ({
    name: cellText(row, "zone") ?? `zone ${index + 1}`,
    pressure: cellNumber(row, "zonePressure") ?? Number.NaN,
  }));
  const alone = numberOf(inputs, "pressure");
  if (alone !== undefined) places.unshift({ name: "pressure", pressure: alone });
  const worst = places.toSorted((a, b) => b.pressure - a.pressure)[0];
  if (worst) return { worstPressure: worst.pressure, worstZone: worst.name };
  return problem({
    code: "missing-input",
    what: "pressure",
    got: "nothing",
    must: "be given as pressure, of the worst zone, or zone by zone as zones",
  });
}

export const splitLineLoad = method({
  id: "split-line-load",
  question: "What load does the pressure put on the worst bolt of a split line?",
  inputs: {
    pressure: {
      kind: "pressure",
      symbol: "p",
      says: "pressure on the strip of the worst bolt",
      optional: true,
    },
    halfWidth: { kind: "length", symbol: "w", says: "half width under pressure" },
    pitch: { kind: "length", symbol: "t", says: "distance from bolt to bolt" },
    zones: {
      kind: "list",
      says: "zones of different pressure",
      optional: true,
      unique: ["zone"],
      of: {
        zone: { kind: "text", says: "name of the zone", optional: true },
        zonePressure: { kind: "pressure", symbol: "p_z", says: "pressure of the zone" },
        bolts: { kind: "count", symbol: "n_z", says: "bolts in the zone" },
      },
    },
  },
  procedure: {
    says: "the zone of the highest pressure",
    source: strip,
    reads: ["pressure", "zones"],
    gives: {
      worstPressure: { kind: "pressure", symbol: "p_max", says: "highest pressure" },
    },
    run,
  },
  each: { zones: { zoneLoad: "zonePressure * halfWidth * pitch", zoneTotal: "zoneLoad * bolts" } },
  steps: { loadPerBolt: "worstPressure * halfWidth * pitch", total: "sum(zones.zoneTotal)" },
  between: {
    "zones.zoneLoad": { kind: "force", symbol: "P_z", says: "load per bolt in the zone" },
    "zones.zoneTotal": { kind: "force", symbol: "ΣP_z", says: "load of the zone" },
  },
  outputs: {
    loadPerBolt: { kind: "force", symbol: "P", says: "load of the worst bolt" },
    worstZone: { kind: "text", says: "where the worst bolt stands" },
    total: { kind: "force", symbol: "ΣP", says: "load of all zones together", optional: true },
    zones: {
      kind: "list",
      says: "load by zone",
      optional: true,
      of: {
        zone: { kind: "text", says: "zone" },
        zoneLoad: { kind: "force", symbol: "P_z", says: "load per bolt" },
        zoneTotal: { kind: "force", symbol: "ΣP_z", says: "load of the zone" },
      },
    },
  },
  limits: [
    { that: "pressure >= 0", else: "give the pressure above the outside" },
    { that: "smallest(zones.zonePressure) >= 0", else: "give the pressure above the outside" },
    { that: "smallest(zones.bolts) > 0", else: "a zone has bolts" },
    { that: "halfWidth > 0", else: "no strip is described" },
    { that: "pitch > 0", else: "no strip is described" },
    {
      that: "largest(zones.zonePressure) <= pressure",
      else: "a zone has more than the pressure given alone: the zone counts",
      warn: "advice",
    },
  ],
  sources: { "*": strip },
  notes: ["an average over all bolts hides the worst zone; remember the test pressure"],
});
