// A standing caution in full.
import type { Cell } from "../../engine/cell.ts";
import { cautions } from "../cautions.ts";
import { el } from "../dom.ts";
import { row } from "../row.ts";
import type { ItemView, SheetContext } from "../sheet-context.ts";
import { stateMark } from "../state-mark.ts";

export function cautionView(context: SheetContext, cell: Cell): ItemView {
  const { item, name } = cell;
  const code = item.kind === "caution" ? item.code : "C8";
  const reference = ["caution", code, item.source].filter(Boolean).join(" ");
  const { element, head, body } = row(context, name, item, { wide: true, reference });
  head.prepend(stateMark("warning"));
  body.classList.add("serif");
  body.append(el("p", {}, cautions[code].text));
  return { element, update: () => undefined };
}
