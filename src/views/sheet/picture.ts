// The line of a picture; what draws it arrives when a page has one.
import type { PictureItem } from "../../document/item.ts";
import type { Line } from "../../engine/line.ts";
import { el } from "../dom.ts";
import { lazily } from "../shell/lazily.ts";
import type { ItemView, PageContext } from "../shell/page-context.ts";
import { row } from "./row.ts";

const figures = lazily(() => import("./picture-figure.ts"));

export function pictureView(context: PageContext, line: Line, item: PictureItem): ItemView {
  const { element, body } = row(context, line.name, item, {
    wide: true,
    reference: item.source ?? "drawn from this page",
  });
  const figure = el("figure", { class: "drawn" });
  body.append(figure);
  let latest = line;
  let draw: ((now: Line) => void) | undefined;
  figures.use(({ pictureFigure }) => {
    draw = pictureFigure(context, item, element, figure);
    draw(latest);
  });
  return {
    element,
    update: (now) => {
      latest = now;
      draw?.(now);
    },
  };
}
