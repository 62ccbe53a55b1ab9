// A picture drawn from the page's values, with its sentence and the same as a table.

import { fieldPlaces } from "../../document/field-places.ts";
import type { PictureItem } from "../../document/item.ts";
import { guiltyField } from "../../engine/guilty-field.ts";
import type { Line, PictureValue, Told } from "../../engine/line.ts";
import { isRefusal } from "../../engine/pictures.ts";
import { isProblem, type Problem } from "../../problem.ts";
import { shortReservations } from "../../report/reservations.ts";
import { el, replace } from "../dom.ts";
import { drawingOf } from "../drawings/index.ts";
import type { PageContext } from "../shell/page-context.ts";
import { scrollTable } from "../shell/scroll-table.ts";
import { problemNote } from "./problem-note.ts";
import { reservationLines } from "./standing-parts.ts";

const narrowest = 260;
const none: Pick<PictureValue, "reservations"> = { reservations: [] };

/** Draws into the figure of a line; gives what is to be called with each of its values. */
export function pictureFigure(
  context: PageContext,
  item: PictureItem,
  element: HTMLElement,
  figure: HTMLElement,
): (now: Line) => void {
  let shown: Problem | { readonly told: Told; readonly draw: (width: number) => SVGSVGElement } | undefined;
  let drawnWidth = 0;
  let latest: Line | undefined;
  const table = el("details", { class: "more as-table" }, el("summary", {}, "as a table"));

  const draw = (): void => {
    if (shown === undefined) return;
    element.classList.toggle("unanswered", isProblem(shown));
    if (isProblem(shown)) {
      replace(figure, problemNote(shown, undefined), isRefusal(shown) && inTheFile(shown));
      return;
    }
    const { told } = shown;
    const value = latest && !isProblem(latest.value) && latest.value.type === "picture" ? latest.value : none;
    drawnWidth = Math.max(narrowest, figure.clientWidth);
    table.replaceChildren(el("summary", {}, "as a table"), tableOf(told));
    const picture = shown.draw(drawnWidth);
    picture.setAttribute("role", "img");
    picture.setAttribute("aria-label", [told.sentence, ...shortReservations(value)].join(" May not hold: "));
    replace(
      figure,
      picture,
      el("figcaption", {}, told.sentence),
      ...reservationLines(value),
      told.source !== undefined && el("p", { class: "quiet" }, `Limits: ${told.source}`),
      table,
    );
  };
  /** An entry is mended in the page file, so its place there is named. */
  const inTheFile = (found: Problem): HTMLElement => {
    const { path, within } = guiltyField(item, found);
    const place = fieldPlaces(context.live.text(), context.live.page.file)(item.index, path, within);
    return el("p", { class: "quiet" }, `In the file: ${place}`);
  };
  const update = async (now: Line): Promise<void> => {
    latest = now;
    if (isProblem(now.value)) shown = now.value;
    else if (now.value.type === "picture") {
      const { told } = now.value;
      const drawing = isProblem(told) ? told : { told, draw: await drawingOf(told, context.unitOf) };
      if (latest !== now) return; // a newer value came while the drawing code was fetched
      shown = drawing;
    }
    draw();
  };
  new ResizeObserver(() => {
    if (Math.abs(figure.clientWidth - drawnWidth) > 8 && figure.clientWidth > 0) draw();
  }).observe(figure);
  return (now) => void update(now);
}

function tableOf({ table }: Told): HTMLElement {
  const rows = table.rows.map((cells) => el("tr", {}, ...cells.map((text) => el("td", {}, text))));
  return scrollTable(table.title, { heads: table.head }, rows);
}
