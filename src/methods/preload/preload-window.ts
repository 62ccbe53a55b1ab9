// Which torques are neither too low (the joint opens) nor too high (a bolt yields)?
// A closed window gives no torque, never a midpoint.
import { method } from "../method.ts";
import { shortTorque, windowForm } from "../sources.ts";

export const preloadWindow = method({
  id: "preload-window",
  question: "Which preloads and torques keep the joint closed and the bolt below proof?",
  inputs: {
    separationLoad: {
      kind: "force",
      symbol: "P_s",
      says: "outside load per bolt at which the joint must stay closed",
    },
    separationFactor: {
      kind: "ratio",
      symbol: "n_s",
      says: "owner's factor on that load",
      default: "1",
      matters: "the floor then has nothing in hand against the load; the factor is the owner's",
    },
    tripLoad: {
      kind: "force",
      symbol: "P_t",
      says: "outside load per bolt in a trip",
      default: "0 kN",
      matters: "the floor then stands on the working load alone",
    },
    tripFactor: {
      kind: "ratio",
      symbol: "n_t",
      says: "owner's factor in a trip",
      default: "1",
      matters: "the floor then has nothing in hand in a trip; the factor is the owner's",
    },
    tripThermalChange: {
      kind: "force",
      symbol: "ΔF_t",
      says: "thermal change of preload in a trip, with its sign",
      default: "0 kN",
    },
    scatter: { kind: "ratio", as: "scatter", symbol: "u", says: "scatter of preload, plus or minus" },
    relaxation: {
      kind: "ratio",
      as: "loss",
      symbol: "r",
      says: "share of preload lost",
      default: "0 %",
      matters:
        "every joint loses some preload; NASA-STD-5020 asks for at least 5 % in all-metal joints (from memory)",
    },
    proofLoad: { kind: "force", symbol: "F_p", says: "proof load of the bolt" },
    assemblyShare: {
      kind: "ratio",
      as: "share",
      symbol: "ν",
      says: "owner's share of proof at assembly",
      default: "1",
      matters: "the ceiling then is proof itself; the share is the owner's",
    },
    warmUpChange: { kind: "force", symbol: "ΔF_w", says: "largest thermal rise of preload", default: "0 kN" },
    nutFactor: { kind: "ratio", as: "nut factor", symbol: "K", says: "nut factor" },
    diameter: { kind: "length", as: "bolt diameter", symbol: "d", says: "nominal diameter of the thread" },
  },
  steps: {
    floorAtLoad: "separationFactor * separationLoad / ((1 - scatter) * (1 - relaxation))",
    floorAtTrip: "(tripFactor * tripLoad - tripThermalChange) / ((1 - scatter) * (1 - relaxation))",
    floorPreload: "max(floorAtLoad, floorAtTrip)",
    ceilingAtAssembly: "assemblyShare * proofLoad / (1 + scatter)",
    ceilingAtWarmUp: "(proofLoad - warmUpChange) / (1 + scatter)",
    ceilingPreload: "min(ceilingAtAssembly, ceilingAtWarmUp)",
    floorTorque: "nutFactor * diameter * floorPreload",
    ceilingTorque: "nutFactor * diameter * ceilingPreload",
    open: "floorPreload <= ceilingPreload",
  },
  between: {
    floorAtLoad: { kind: "force", symbol: "F_s", says: "least preload for the load" },
    floorAtTrip: { kind: "force", symbol: "F_t", says: "least preload for the trip" },
    ceilingAtAssembly: { kind: "force", symbol: "F_a", says: "largest preload at assembly" },
    ceilingAtWarmUp: { kind: "force", symbol: "F_w", says: "largest preload before the warm-up" },
  },
  outputs: {
    floorPreload: { kind: "force", symbol: "F_lo", says: "floor of preload" },
    ceilingPreload: { kind: "force", symbol: "F_hi", says: "ceiling of preload" },
    floorTorque: { kind: "torque", symbol: "T_lo", says: "floor of torque" },
    ceilingTorque: { kind: "torque", symbol: "T_hi", says: "ceiling of torque" },
    open: { kind: "yes/no", says: "is there a torque that passes" },
  },
  limits: [
    { that: "separationLoad >= 0", else: "give the load as a pull" },
    { that: "separationFactor > 0", else: "no floor is defined" },
    { that: "tripFactor > 0", else: "no floor is defined" },
    { that: "tripLoad >= 0", else: "give the load as a pull" },
    { that: "proofLoad > 0", else: "a bolt without proof load has no ceiling" },
    { that: "assemblyShare > 0", else: "no ceiling is defined" },
    { that: "ceilingPreload > 0", else: "the warm-up alone reaches proof" },
    {
      that: "floorTorque <= ceilingTorque",
      else: "no torque passes",
      code: "closed-window",
      hint: "measure the nut factor, control by stretch, change the bolts or slow the warm-up",
      warn: "advice",
    },
  ],
  sources: { "*": windowForm, floorTorque: shortTorque, ceilingTorque: shortTorque },
  notes: ["factors, share and scatter are the owner's; leave room for the tool's own error at both ends"],
  cautions: ["C8"],
});
