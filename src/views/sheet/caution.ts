// A standing caution in full.
import type { Line } from "../../engine/line.ts";
import { cautions } from "../../report/cautions.ts";
import { el } from "../dom.ts";
import type { ItemView, PageContext } from "../shell/page-context.ts";
import { row } from "./row.ts";
import { stateMark } from "./state-mark.ts";

export function cautionView(context: PageContext, line: Line): ItemView {
  const { item, name } = line;
  const code = item.kind === "caution" ? item.code : "C8";
  const reference = ["caution", code, item.source].filter(Boolean).join(" ");
  const { element, head, body } = row(context, name, item, { wide: true, reference });
  head.prepend(stateMark("warning"));
  body.classList.add("serif");
  body.append(el("p", {}, cautions[code].text));
  return { element, update: () => undefined };
}
