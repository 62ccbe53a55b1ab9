// A note: prose through both fields.
import type { Cell } from "../../engine/cell.ts";
import { isProblem } from "../../problem.ts";
import { prose } from "../prose.ts";
import { row } from "../row.ts";
import type { ItemView, SheetContext } from "../sheet-context.ts";

export function noteView(context: SheetContext, cell: Cell): ItemView {
  const { item, name } = cell;
  const update = ({ value }: Cell): void => {
    if (!isProblem(value) && value.type === "prose") body.replaceChildren(...prose(value));
  };
  const { element, head, body } = row(context, name, item, {
    wide: true,
    ...(item.says === undefined && { label: false as const }),
  });
  if (item.says === undefined) head.remove();
  body.classList.add("serif");
  update(cell);
  return { element, update };
}
