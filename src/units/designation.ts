// Texts that name a thread, a fit or a class: another type, never a quantity. Shape only;
// whether such a thread exists is for the tables to say.

const size = String.raw`(?:#?\d{1,2}|\d-\d{1,2}\/\d{1,2}|\d \d{1,2}\/\d{1,2}|\d{1,2}\/\d{1,2}|\d?\.\d{2,4})`;
const pitches = "4|4\\.5|5|6|7|8|9|10|11|11\\.5|12|13|14|16|18|20|24|27|28|32|36|40|44|48|56|64|72|80";
const deviation = "(?:[A-HJKM-PR-Z]|[a-hjkm-pr-z]|CD|EF|FG|JS|Z[ABC]|cd|ef|fg|js|z[abc])";

const shapes: readonly RegExp[] = [
  // M24, M24x3, M12x1.75-6g, MJ8x1
  /^MJ?\d{1,3}(?:\.\d)?(?: ?[x×] ?\d(?:\.\d{1,2})?)?(?: ?- ?\d[A-Za-z0-9/]{1,6})?(?: ?LH)?$/,
  // 3/8-24 UNF, 1/2-13, 1-1/4-12 UN-2A, #10-32
  new RegExp(`^${size} ?- ?(?:${pitches})(?: ?UN[A-Z]{0,3})?(?: ?- ?[1-5][AB])?(?: ?LH)?$`),
  // H7, k6, H7/k6, 25 H7/g6; a size goes with grade 5 and up, so that "5 m2" stays an area
  new RegExp(`^${deviation}(?:[0-9]|1[0-8])(?: ?\\/ ?${deviation}(?:[0-9]|1[0-8]))?$`),
  new RegExp(
    `^\\d{1,4}(?:\\.\\d{1,3})? ?${deviation}(?:[5-9]|1[0-8])(?: ?\\/ ?${deviation}(?:[5-9]|1[0-8]))?$`,
  ),
  // LN 2, RC 4 and the thread classes 2A, 3B, 6H
  /^(?:RC|LC|LT|LN|FN) ?\d{1,2}$/,
  /^(?:[1-5][AB]|[3-9][GH]|[3-9][g-h][3-9][g-h])$/,
];

export const isDesignation = (line: string): boolean =>
  line.length <= 30 && shapes.some((shape) => shape.test(line));
