// What each nut tells: angle, torque and stretch side by side, with a band about the median of the
// angles. A low angle is torque gone into friction, a high one is yielding or crushing.
import { drawTold } from "./angle-by-nut-drawing.ts";
import { toldBy } from "./tightened.ts";

export const angleByNut = toldBy("angle-by-nut", drawTold);
