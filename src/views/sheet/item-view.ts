// The view of each item kind.
import type { Line } from "../../engine/line.ts";
import type { ItemView, PageContext } from "../shell/page-context.ts";
import { cautionView } from "./caution.ts";
import { checkView } from "./check-line.ts";
import { checksView } from "./check-rows.ts";
import { givenView } from "./given.ts";
import { noteView } from "./note.ts";
import { pictureView } from "./picture.ts";
import { readingView } from "./reading.ts";
import { rowsView } from "./rows.ts";
import { signOffView } from "./sign-off.ts";
import { workingView } from "./working.ts";

export function itemView(context: PageContext, line: Line): ItemView {
  const { item } = line;
  switch (item.kind) {
    case "note":
      return noteView(context, line);
    case "given":
      return givenView(context, line, item);
    case "working":
      return item.each === undefined ? workingView(context, line, item) : rowsView(context, line, item);
    case "check":
      return item.each === undefined && item.none === undefined
        ? checkView(context, line, item)
        : checksView(context, line, item);
    case "reading":
      return readingView(context, line, item);
    case "picture":
      return pictureView(context, line, item);
    case "caution":
      return cautionView(context, line);
    case "sign-off":
      return signOffView(context, line);
  }
}
