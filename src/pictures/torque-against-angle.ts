// Torque against the angle each nut turned: a nut without the angle drags, one without the torque was read or set
// wrongly, and both look right by torque alone.
import { isProblem } from "../problem.ts";
import { cannotDraw, picture } from "./picture.ts";
import { needs, of, says, storyOf, table } from "./tightened.ts";

export const torqueAgainstAngle = picture({
  id: "torque-against-angle",
  question: "Which nut has the torque without the angle, or the angle without the torque?",
  of,
  needs,
  model: (given) => {
    const story = storyOf(given);
    if (isProblem(story) || story.nuts.some(({ torque }) => torque !== undefined)) return story;
    return cannotDraw(
      "no-rows",
      "no torque in record",
      "have at least one",
      "the torque at the nut stands in the rows that count of record-findings",
    );
  },
  says,
  table,
});
