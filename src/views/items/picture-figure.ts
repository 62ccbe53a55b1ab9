// A picture drawn from the page's values, with its sentence and the same as a table.
import type { PictureItem } from "../../document/item.ts";
import type { Line, PictureValue } from "../../engine/line.ts";
import { isProblem, type Problem } from "../../problem.ts";
import { el, replace } from "../dom.ts";
import type { PageContext } from "../page-context.ts";
import type { Drawing } from "../pictures/drawing.ts";
import { pictureNamed } from "../pictures/index.ts";
import { problemNote } from "../problem-note.ts";
import { shortReservations } from "../row-exceptions.ts";
import { reservationLines } from "./standing-parts.ts";

const narrowest = 260;
const none = { reservations: [] };

/** Draws into the figure of a line; gives what is to be called with each of its values. */
export function pictureFigure(
  context: PageContext,
  item: PictureItem,
  element: HTMLElement,
  figure: HTMLElement,
): (now: Line) => void {
  let drawing: Drawing | Problem | undefined;
  let drawnWidth = 0;
  let latest: PictureValue | undefined;
  const table = el("details", { class: "more as-table" }, el("summary", {}, "as a table"));

  const draw = (): void => {
    if (drawing === undefined) return;
    element.classList.toggle("unanswered", isProblem(drawing));
    if (isProblem(drawing)) {
      replace(figure, problemNote(drawing, undefined));
      return;
    }
    drawnWidth = Math.max(narrowest, figure.clientWidth);
    table.replaceChildren(el("summary", {}, "as a table"), tableOf(drawing));
    const picture = drawing.draw(drawnWidth);
    picture.setAttribute("role", "img");
    picture.setAttribute(
      "aria-label",
      [drawing.sentence, ...shortReservations(latest ?? none)].join(" May not hold: "),
    );
    replace(
      figure,
      picture,
      el("figcaption", {}, drawing.sentence),
      ...(latest ? reservationLines(latest) : []),
      drawing.source !== undefined && el("p", { class: "quiet" }, `Limits: ${drawing.source}`),
      table,
    );
  };
  const update = async (now: Line): Promise<void> => {
    if (isProblem(now.value)) drawing = now.value;
    else if (now.value.type === "picture") {
      latest = now.value;
      const picture = await pictureNamed(item.picture);
      if (latest !== now.value) return; // a newer value came while the drawing code was fetched
      drawing = isProblem(picture) ? picture : picture(now.value.inputs, context.unitOf);
    }
    draw();
  };
  new ResizeObserver(() => {
    if (Math.abs(figure.clientWidth - drawnWidth) > 8 && figure.clientWidth > 0) draw();
  }).observe(figure);
  return (now) => void update(now);
}

function tableOf({ table }: Drawing): HTMLElement {
  return el(
    "div",
    { class: "scroll", tabindex: "0", role: "region", "aria-label": table.title },
    el(
      "table",
      { class: "readings" },
      el("thead", {}, el("tr", {}, ...table.head.map((text) => el("th", { scope: "col" }, text)))),
      el("tbody", {}, ...table.rows.map((cells) => el("tr", {}, ...cells.map((text) => el("td", {}, text))))),
    ),
  );
}
