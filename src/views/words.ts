export { asked, kindWords, labelOf } from "../report/labels.ts";
export { capital, counted } from "../words.ts";
