// A number in the result field. It can be asked "why?".
import { type Child, el } from "../dom.ts";
import type { PageContext } from "../shell/page-context.ts";

export function answer(
  context: PageContext,
  name: string,
  shown: Child,
  options: { readonly label?: string | undefined; readonly output?: string | undefined } = {},
): HTMLElement {
  return el(
    "button",
    { type: "button", class: "answer", onclick: () => context.why(name, options.output) },
    options.label !== undefined && el("span", { class: "answer-label" }, options.label),
    el("span", { class: "why-word" }, "why?"),
    shown,
  );
}
