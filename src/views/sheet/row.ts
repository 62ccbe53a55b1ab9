// One line of the page in three fields, as on ruled calculation paper: reference, working, result.
import type { Item } from "../../document/item.ts";
import { kindWords, labelOf } from "../../report/labels.ts";
import { el } from "../dom.ts";
import type { PageContext } from "../shell/page-context.ts";

export interface Row {
  readonly element: HTMLElement;
  readonly head: HTMLElement;
  readonly body: HTMLElement;
  readonly result: HTMLElement;
  /** The margin: number of the line and source. */
  readonly reference: HTMLElement;
}

export const lineId = (name: string): string => `line-${name.replace("#", "")}`;

/** One row of a line that has an answer for each key. */
export const rowId = (name: string, key: string): string =>
  `${lineId(name)}-row-${key.replaceAll(/[^\w.-]/g, "_")}`;

/** `wide` rows let the working run through the result field: notes, tables, pictures, cautions. */
export function row(
  context: PageContext,
  name: string,
  item: Item,
  options: {
    readonly wide?: boolean;
    readonly label?: HTMLElement | false;
    readonly reference?: string;
  } = {},
): Row {
  const labelId = `${lineId(name)}-label`;
  const label = options.label === false ? undefined : (options.label ?? el("span", {}, labelOf(item)));
  label?.setAttribute("id", labelId);
  const head = el("div", { class: "head" }, label);
  const body = el("div", { class: "body" });
  const result = el("div", { class: "result" });
  const source = options.reference ?? item.source;
  const reference = el(
    "div",
    { class: "reference" },
    el(
      "a",
      { class: "line-number", href: context.address(name), title: `address of this ${kindWords[item.kind]}` },
      `${context.lineNumber(name) ?? ""}`,
    ),
    source !== undefined && el("span", { class: "source" }, source),
  );
  const element = el(
    "div",
    {
      class: `row ${item.kind}${options.wide ? " wide" : ""}`,
      id: lineId(name),
      tabindex: "-1",
      role: "group",
      ...(label ? { "aria-labelledby": labelId } : { "aria-label": labelOf(item) }),
    },
    reference,
    head,
    body,
    options.wide ? undefined : result,
  );
  return { element, head, body, result, reference };
}
