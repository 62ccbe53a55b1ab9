// One sentence for those who listen, about 700 ms after the last change.
import { el } from "../dom.ts";

const quiet = 700;

export interface StatusLine {
  readonly element: HTMLElement;
  readonly say: (sentence: () => string) => void;
}

export function statusLine(): StatusLine {
  const element = el("p", { class: "unseen", role: "status", "aria-live": "polite", "aria-atomic": "true" });
  let timer: ReturnType<typeof setTimeout> | undefined;
  return {
    element,
    say: (sentence) => {
      clearTimeout(timer);
      timer = setTimeout(() => {
        element.textContent = sentence();
      }, quiet);
    },
  };
}
