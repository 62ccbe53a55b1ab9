// What each nut tells: angle, torque and stretch side by side, with a band about the median of the
// angles. A low angle is torque gone into friction, a high one is yielding or crushing.
import { picture } from "./picture.ts";
import { needs, of, says, storyOf, table } from "./tightened.ts";

export const angleByNut = picture({
  id: "angle-by-nut",
  question: "Which nut turned less or more than the others, nut by nut?",
  of,
  needs,
  formerly: ["torque-angle"],
  model: storyOf,
  says,
  table,
});
