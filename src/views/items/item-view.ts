// The view of each item kind.
import type { Cell } from "../../engine/cell.ts";
import type { ItemView, SheetContext } from "../sheet-context.ts";
import { cautionView } from "./caution.ts";
import { checkView } from "./check.ts";
import { checksView } from "./checks.ts";
import { givenView } from "./given.ts";
import { noteView } from "./note.ts";
import { pictureView } from "./picture.ts";
import { readingView } from "./reading.ts";
import { rowsView } from "./rows.ts";
import { signOffView } from "./sign-off.ts";
import { workingView } from "./working.ts";

export function itemView(context: SheetContext, cell: Cell): ItemView {
  const { item } = cell;
  switch (item.kind) {
    case "note":
      return noteView(context, cell);
    case "given":
      return givenView(context, cell, item);
    case "working":
      return item.each === undefined ? workingView(context, cell, item) : rowsView(context, cell, item);
    case "check":
      return item.each === undefined && item.none === undefined
        ? checkView(context, cell, item)
        : checksView(context, cell, item);
    case "reading":
      return readingView(context, cell, item);
    case "picture":
      return pictureView(context, cell, item);
    case "caution":
      return cautionView(context, cell);
    case "sign-off":
      return signOffView(context, cell);
  }
}
