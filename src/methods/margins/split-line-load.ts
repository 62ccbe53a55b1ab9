// What load does the pressure put on one bolt of a split line?
import { method } from "../method.ts";
import { strip } from "../sources.ts";

export const splitLineLoad = method({
  id: "split-line-load",
  question: "What load does the pressure put on one bolt of a split line?",
  inputs: {
    pressure: { kind: "pressure", symbol: "p", says: "pressure on the strip of one bolt" },
    halfWidth: { kind: "length", symbol: "w", says: "half width under pressure" },
    pitch: { kind: "length", symbol: "t", says: "distance from bolt to bolt" },
    zones: {
      kind: "list",
      says: "zones of different pressure",
      optional: true,
      of: {
        zonePressure: { kind: "pressure", symbol: "p_z", says: "pressure of the zone" },
        bolts: { kind: "count", symbol: "n_z", says: "bolts in the zone" },
      },
    },
  },
  each: { zones: { zoneLoad: "zonePressure * halfWidth * pitch", zoneTotal: "zoneLoad * bolts" } },
  steps: { loadPerBolt: "pressure * halfWidth * pitch", total: "sum(zones.zoneTotal)" },
  between: {
    "zones.zoneLoad": { kind: "force", symbol: "P_z", says: "load per bolt in the zone" },
    "zones.zoneTotal": { kind: "force", symbol: "ΣP_z", says: "load of the zone" },
  },
  outputs: {
    loadPerBolt: { kind: "force", symbol: "P", says: "load per bolt" },
    total: { kind: "force", symbol: "ΣP", says: "load of all zones together", optional: true },
    zones: {
      kind: "list",
      says: "load by zone",
      optional: true,
      of: {
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
  ],
  sources: { "*": strip },
  notes: ["one average for all bolts hides the worst zone; remember the test pressure"],
});
