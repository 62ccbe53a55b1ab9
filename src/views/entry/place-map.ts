// Where the next reading is: the groups in a line, and the places of this group as a small plan, the next one lit.
// It shows what the words beside it say, so it is not read out.

import { inWords } from "../../document/place-words.ts";
import { grouped } from "../../grouped.ts";
import type { Step } from "../../readings/places.ts";
import { el, replace } from "../dom.ts";

export interface PlaceMap {
  readonly element: HTMLElement;
  readonly show: (steps: readonly Step[], current: Step | undefined) => void;
}

export function placeMap(): PlaceMap {
  const groups = el("div", { class: "map-groups" });
  const plan = el("div", { class: "map-plan" });
  const element = el("div", { class: "place-map", "aria-hidden": "true" }, groups, plan);
  return {
    element,
    show: (steps, current) => {
      replace(groups, ...groupMarks(steps, current));
      replace(plan, current && planOf(steps, current));
    },
  };
}

const groupOf = (step: Step): string => step.place[0]?.[1] ?? "";

function groupMarks(steps: readonly Step[], current: Step | undefined): readonly HTMLElement[] {
  const groups = grouped(steps, groupOf);
  if (groups.size < 2) return [];
  return [...groups].map(([group, members]) => {
    const left = members.filter((step) => step.state === "missing" && !step.optional).length;
    const state =
      left === 0
        ? "all-read"
        : left === members.filter((step) => !step.optional).length
          ? "none-read"
          : "some-read";
    const lit = current !== undefined && groupOf(current) === group ? " lit" : "";
    return el("span", { class: `map-group ${state}${lit}` }, group);
  });
}

/** One box for each place: the last key runs across, the one before it down. */
function planOf(steps: readonly Step[], current: Step): HTMLElement | undefined {
  const members = steps.filter((step) => groupOf(step) === groupOf(current));
  if (members.length < 2) return undefined;
  const across = (step: Step) =>
    step.place.length > 2 ? (step.place.at(-1)?.[1] ?? "") : columnOrPlace(step);
  const down = (step: Step) =>
    step.place.length > 2
      ? step.place
          .slice(1, -1)
          .map(([, v]) => v)
          .join(", ")
      : "";
  const columns = [...new Set(members.map(across))];
  const lines = [...grouped(members, down)];
  const hasNames = lines.some(([name]) => name !== "");
  return el(
    "table",
    { class: "map-table" },
    el("tr", {}, hasNames && el("td", {}), ...columns.map((name) => el("td", { class: "map-head" }, name))),
    ...lines.map(([name, row]) =>
      el(
        "tr",
        {},
        hasNames && el("td", { class: "map-head" }, name),
        ...columns.map((column) =>
          box(
            row.find((step) => across(step) === column),
            current,
          ),
        ),
      ),
    ),
  );
}

const columnOrPlace = (step: Step): string =>
  step.place.length > 1 ? (step.place.at(-1)?.[1] ?? "") : inWords(step.column);

function box(step: Step | undefined, current: Step): HTMLElement {
  if (!step) return el("td", {});
  const lit = step.id === current.id ? " lit" : "";
  const text = step.text === "" ? (step.reason === "" ? "" : "–") : step.text;
  return el("td", { class: `map-box ${step.state.replace(" ", "-")}${lit}` }, text);
}
