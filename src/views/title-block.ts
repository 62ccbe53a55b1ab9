// The title block, as on a drawing: machine, title, and what makes this page this page.
import { readPage } from "../document/read.ts";
import { type Child, el } from "./dom.ts";
import { lazily } from "./lazily.ts";
import type { Session } from "./session.ts";

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
const fingerprints = lazily(() => import("../document/fingerprint.ts"), "soon");

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
    const now = readPage(session.live.text(), session.file).page ?? page;
    // Without a secure context there is no digest; the page is then shown without one.
    const show = (words: string): void => {
      if (mine !== asked) return;
      content.textContent = words;
      repeatOnPaper(page.title, page.revision, words);
    };
    if (globalThis.isSecureContext)
      fingerprints.use(async ({ contentFingerprint, shortFingerprint }) =>
        show(shortFingerprint(await contentFingerprint(now))),
      );
    else show("not computed here");
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

const marginBoxes = new CSSStyleSheet();

/** Margin boxes carry title, revision and content on every printed page where the browser knows them. */
function repeatOnPaper(title: string, revision: string | undefined, content: string): void {
  const quoted = (text: string) =>
    `"${text.replaceAll("\\", "\\\\").replaceAll('"', '\\"').replaceAll("\n", " ")}"`;
  const facts = [revision && `revision ${revision}`, `content ${content}`].filter(Boolean).join(" · ");
  marginBoxes.replaceSync(
    `@page { @top-left { content: ${quoted(title)} } @bottom-left { content: ${quoted(facts)} } }`,
  );
  if (!document.adoptedStyleSheets.includes(marginBoxes)) document.adoptedStyleSheets.push(marginBoxes);
}
