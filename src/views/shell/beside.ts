// Above the page: what is kept and does not stand in it. Fetched only where there is something to list.
import { el, replace } from "../dom.ts";
import type { Kept } from "../kept/kept.ts";
import { lazily } from "./lazily.ts";
import type { Session } from "./session.ts";

export interface Beside {
  readonly element: HTMLElement;
  /** Lists what this page keeps aside; `put` enters a text as if it were typed. */
  readonly list: (session: Session | undefined, put: (key: string, text: string) => void) => void;
  /** What was entered into a file that cannot be opened, or is gone. */
  readonly only: (id: string, file: string, kept: Kept, again: () => void) => void;
}

/** An entry is on the screen first. */
const rest = 150;

export function beside(): Beside {
  const element = el("div");
  const lists = lazily(() => import("../kept/lists.ts"));
  let timer: ReturnType<typeof setTimeout> | undefined;
  const list: Beside["list"] = (session, put) => {
    clearTimeout(timer);
    timer = undefined;
    if (!session || session.aside().length === 0) return replace(element);
    const mine = setTimeout(() => {
      lists.use(({ listOf }) => {
        if (timer === mine) listOf(element, session, put); // else another page, or a later change
      });
    }, rest);
    timer = mine;
  };
  return {
    element,
    list,
    only: (...of) => lists.use(({ onlyKept }) => onlyKept(element, ...of)),
  };
}
