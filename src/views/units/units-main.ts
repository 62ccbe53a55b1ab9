// The unit answer at an address of its own: units.html?q=140+in+lb
import "../shell/paper.css";
import "../shell/controls.css";
import "./unit-answer.css";
import { el } from "../dom.ts";
import { questionEntry } from "./question-entry.ts";
import { unitAnswer } from "./unit-answer.ts";

const asked = new URLSearchParams(location.search).get("q");

const entry = questionEntry();
const answer = unitAnswer(entry, (text) => {
  const query = text.trim() === "" ? "" : `?${new URLSearchParams({ q: text.trim() }).toString()}`;
  history.replaceState(null, "", location.pathname + query);
});

document.body.append(
  el(
    "nav",
    { class: "top-bar", "aria-label": "tools" },
    el("span", { class: "mark-name" }, "splitline"),
    el("a", { class: "tool", href: "index.html" }, "Pages"),
  ),
  el("main", { class: "page unit-page" }, el("h1", {}, "Units"), answer.element),
);
if (asked !== null) answer.ask(asked);
entry.focus();
entry.select();
