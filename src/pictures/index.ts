// All pictures in one list. Loading it puts them into the engine.
import { addPictures } from "../engine/pictures.ts";
import { angleByNut } from "./angle-by-nut.ts";
import { assignment } from "./assignment.ts";
import { dowelLimit } from "./dowel-limit.ts";
import { fitBar } from "./fit-bar.ts";
import { fitMap } from "./fit-map.ts";
import { fitsAgainstLimits } from "./fits-against-limits.ts";
import { gapMap } from "./gap-map.ts";
import { holeSection } from "./hole-section.ts";
import { jointDiagram } from "./joint-diagram.ts";
import { preloadWindow } from "./preload-window.ts";
import { runOnBars } from "./run-on-bars.ts";
import { tighteningMap } from "./tightening-map.ts";
import { torqueAgainstAngle } from "./torque-against-angle.ts";
import { trialSpread } from "./trial-spread.ts";
import { wrench } from "./wrench.ts";

export const pictures = [
  jointDiagram,
  preloadWindow,
  wrench,
  fitBar,
  fitMap,
  gapMap,
  dowelLimit,
  tighteningMap,
  angleByNut,
  torqueAgainstAngle,
  trialSpread,
  fitsAgainstLimits,
  holeSection,
  assignment,
  runOnBars,
] as const;

addPictures(pictures);
