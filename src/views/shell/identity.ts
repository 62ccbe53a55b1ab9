// What tells one content of a page from another, on the screen and in the margin of every printed page.
import { contentFingerprint, shortFingerprint } from "../../document/fingerprint.ts";
import { readPage } from "../../document/read.ts";
import type { Session } from "./session.ts";

let latest = 0;

/** Without a secure context there is no digest; the page is then shown without one. */
export async function identify({ live, file }: Session): Promise<string> {
  latest += 1;
  const mine = latest;
  const { page } = live;
  const now = readPage(live.text(), file).page ?? page;
  const words = globalThis.isSecureContext
    ? shortFingerprint(await contentFingerprint(now))
    : "not computed here";
  if (mine === latest) repeatOnPaper(page.title, page.revision, words);
  return words;
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
