// The list of what is kept aside, put above a page that stands, or alone where none can be opened.
import { replace } from "../dom.ts";
import type { Session } from "../shell/session.ts";
import { asideList } from "./aside-list.ts";
import { beginWith, forgetAll } from "./keeper.ts";
import type { Aside, Kept } from "./kept.ts";

export function listOf(
  holder: HTMLElement,
  session: Session,
  put: (key: string, text: string) => void,
): void {
  const mayChange = session.keeping() !== "another tab";
  const show = (): void => {
    const hadFocus = holder.contains(document.activeElement);
    const list = asideList({
      file: session.file,
      aside: session.aside(),
      page: session.live.page,
      now: session.standing,
      use: mayChange ? put : undefined,
      letGo: mayChange ? letGo : undefined,
    });
    replace(holder, list);
    if (hadFocus) list?.querySelector("h2")?.focus();
  };
  const letGo = (one: Aside): void => {
    session.letGo(one);
    show();
  };
  show();
}

const nothingTyped = { typed: {}, saved: {}, changes: [], undone: [] };

export function onlyKept(holder: HTMLElement, id: string, file: string, kept: Kept, again: () => void): void {
  const typed: Aside = { why: "file changed", base: kept.base, typed: kept.typed };
  const list = asideList({
    file,
    aside: [...kept.aside, typed],
    page: undefined,
    now: () => undefined,
    letGo: (one) => {
      const aside = kept.aside.filter((other) => other !== one);
      const left = { ...kept, count: kept.count + 1, aside, ...(one === typed && nothingTyped) };
      if (aside.length === 0 && Object.keys(left.typed).length === 0) forgetAll(id);
      else void beginWith(id, left);
      again();
    },
  });
  replace(holder, list);
}
