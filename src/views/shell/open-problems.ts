// What keeps a file from being opened, each at file:line:column. Nothing is lost meanwhile.
import type { Problem } from "../../problem.ts";
import { problemSentence } from "../../report/problem-words.ts";
import { counted } from "../../words.ts";
import { el } from "../dom.ts";

export function openProblems(file: string, problems: readonly Problem[], dismiss?: () => void): HTMLElement {
  return el(
    "section",
    { class: "page open-problems", "aria-label": `problems in ${file}` },
    el("h2", { tabindex: "-1" }, `${file} cannot be opened yet`),
    el(
      "p",
      {},
      `${counted(problems.length, "thing")} to mend in the file.${dismiss ? " The page below is as it was." : ""}`,
    ),
    el("ul", {}, ...problems.map((problem) => el("li", {}, problemSentence(problem)))),
    dismiss && el("button", { type: "button", class: "tool", onclick: dismiss }, "Close this list"),
  );
}

/** What was entered and a saved file has no place for: it stays here, and the page is not called saved. */
export function leftOut(problems: readonly Problem[]): HTMLElement {
  return el(
    "section",
    { class: "page open-problems", role: "alert" },
    el("h2", {}, `${counted(problems.length, "entry")} not in the saved file`),
    el("p", {}, "What was entered stays here until it is shortened or taken back."),
    el("ul", {}, ...problems.map((problem) => el("li", {}, problemSentence(problem)))),
  );
}
