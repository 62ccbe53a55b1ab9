// A note: prose through both fields.
import type { Line } from "../../engine/line.ts";
import { isProblem } from "../../problem.ts";
import type { ItemView, PageContext } from "../shell/page-context.ts";
import { prose } from "./prose.ts";
import { row } from "./row.ts";

export function noteView(context: PageContext, line: Line): ItemView {
  const { item, name } = line;
  const update = ({ value }: Line): void => {
    if (!isProblem(value) && value.type === "prose") body.replaceChildren(...prose(value));
  };
  const { element, head, body } = row(context, name, item, {
    wide: true,
    ...(item.says === undefined && { label: false as const }),
  });
  if (item.says === undefined) head.remove();
  body.classList.add("serif");
  update(line);
  return { element, update };
}
