// The view of each item kind.
import type { Cell } from "../../engine/cell.ts";
import type { ItemView, SheetContext } from "../sheet-context.ts";
import { cautionView } from "./caution.ts";
import { checkView } from "./check.ts";
import { givenView } from "./given.ts";
import { noteView } from "./note.ts";
import { pictureView } from "./picture.ts";
import { readingView } from "./reading.ts";
import { signOffView } from "./sign-off.ts";
import { workingView } from "./working.ts";

export function itemView(context: SheetContext, cell: Cell): ItemView {
  switch (cell.item.kind) {
    case "note":
      return noteView(context, cell);
    case "given":
      return givenView(context, cell, cell.item.value);
    case "working":
      return workingView(context, cell);
    case "check":
      return checkView(context, cell);
    case "reading":
      return readingView(context, cell);
    case "picture":
      return pictureView(context, cell);
    case "caution":
      return cautionView(context, cell);
    case "sign-off":
      return signOffView(context, cell);
  }
}
