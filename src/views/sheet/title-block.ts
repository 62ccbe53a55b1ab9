// The title block, as on a drawing: machine, title, and what makes this page this page.
import { type Child, el } from "../dom.ts";
import { lazily } from "../shell/lazily.ts";
import type { Session } from "../shell/session.ts";

export interface TitleBlock {
  readonly element: HTMLElement;
  readonly update: () => void;
}

/** The content is identified once typing rests. */
const settled = 300;

const cell = (label: string, ...children: readonly Child[]): HTMLElement =>
  el(
    "div",
    { class: "cell" },
    el("span", { class: "tiny" }, label),
    el("span", { class: "cell-text" }, ...children),
  );

/** Fetched after the first screen, which does not wait for it. */
const identities = lazily(() => import("../shell/identity.ts"), "soon");

export function titleBlock(session: Session): TitleBlock {
  const { page } = session.live;
  const state = el("span");
  const content = el("span", { class: "fingerprint" }, "…");
  const element = el(
    "header",
    { class: "title-block" },
    el("div", { class: "reference" }, cell("machine", page.machine ?? "not stated")),
    el(
      "div",
      { class: "title" },
      el("h1", { tabindex: "-1" }, page.title),
      page.subject !== undefined && el("p", {}, page.subject),
    ),
    el(
      "div",
      { class: "facts" },
      cell("state", state),
      cell("revision", page.revision ?? "none"),
      cell("file", session.file),
      cell("content", content),
    ),
  );
  let asked = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const identify = (): void => {
    asked += 1;
    const mine = asked;
    identities.use(async ({ identify: identified }) => {
      const words = await identified(session);
      if (mine === asked) content.textContent = words;
    });
  };
  const update = (): void => {
    state.textContent = session.isChanged() ? "draft, changed here" : "draft";
    content.textContent = "…";
    clearTimeout(timer);
    timer = setTimeout(identify, settled);
  };
  update();
  return { element, update };
}
