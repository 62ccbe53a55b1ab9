// What an item of the sheet may ask of the sheet it stands on.
import type { Item } from "../document/item.ts";
import type { Cell } from "../engine/cell.ts";
import type { LivePage } from "../engine/live-page.ts";
import type { UnitChoice } from "../methods/solution.ts";

export interface SheetContext {
  readonly live: LivePage;
  readonly unitOf: UnitChoice;
  readonly lineNumber: (name: string) => number | undefined;
  readonly itemOf: (name: string) => Item | undefined;
  /** Address of a line of this page. */
  readonly address: (name: string) => string;
  /** What stands in an entry now. */
  readonly typed: (name: string) => string;
  readonly edit: (name: string, text: string) => void;
  /** Remembers that a reading such as kg taken for force was meant. */
  readonly confirm: (name: string, text: string) => void;
  readonly isConfirmed: (name: string, text: string) => boolean;
  readonly why: (name: string, output?: string) => void;
  /** Outputs of a working that other lines of the page read. */
  readonly outputsRead: (name: string) => ReadonlySet<string>;
}

export interface ItemView {
  readonly element: HTMLElement;
  readonly update: (cell: Cell) => void;
  /** Puts a text into the entry field, after an undo. */
  readonly setText?: (text: string) => void;
}
