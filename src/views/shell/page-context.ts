// What an item of the page may ask of the page it stands on.
import type { Item } from "../../document/item.ts";
import type { Line } from "../../engine/line.ts";
import type { OpenPage } from "../../engine/opened.ts";
import type { UnitChoice } from "../../methods/solution.ts";
import type { Keeping } from "../kept/keeper.ts";

export interface PageContext {
  readonly live: OpenPage;
  readonly unitOf: UnitChoice;
  readonly lineNumber: (name: string) => number | undefined;
  readonly itemOf: (name: string) => Item | undefined;
  /** Address of a line of this page, or of one row of it. */
  readonly address: (name: string, row?: string) => string;
  /** What stands in an entry now. */
  readonly typed: (name: string) => string;
  readonly edit: (name: string, text: string) => void;
  /** Takes back the last change of the page. */
  readonly undo: () => void;
  /** Makes it again. */
  readonly redo: () => void;
  /** The entry or reading that the last change was made to. */
  readonly lastChanged: () => string | undefined;
  readonly lastUndone: () => string | undefined;
  readonly keeping: () => Keeping;
  /** Opens the entry screen of a reading, at one place of it if asked. */
  readonly enterReadings: (name: string, place?: string) => void;
  /** Opens the way in for a table from a file. */
  readonly importTable: (name: string) => void;
  /** Remembers that a reading such as kg taken for force was meant. */
  readonly confirm: (name: string, text: string) => void;
  /** `row` is the key of one row where a line has an answer for each. */
  readonly why: (name: string, output?: string, row?: string) => void;
  /** Outputs of a working that other lines of the page read. */
  readonly outputsRead: (name: string) => ReadonlySet<string>;
}

export interface ItemView {
  readonly element: HTMLElement;
  readonly update: (line: Line) => void;
  /** Puts a text into the entry field, after an undo. */
  readonly setText?: (text: string) => void;
  /** The same for the source of a given. */
  readonly setSource?: (text: string) => void;
}
