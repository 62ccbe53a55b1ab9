// Elements by createElement and createElementNS only: no markup strings, no style attributes,
// so that the strictest page policy holds.

import { visible } from "../visible.ts";

export type Child = Node | string | undefined | false | readonly Child[];
type Listener = (event: Event) => void;
export type Attributes = Readonly<Record<string, string | number | boolean | undefined | Listener>>;

const svgSpace = "http://www.w3.org/2000/svg";
const mathSpace = "http://www.w3.org/1998/Math/MathML";

function fill<E extends Element>(element: E, attributes: Attributes, children: readonly Child[]): E {
  for (const [name, value] of Object.entries(attributes)) {
    if (value === undefined || value === false) continue;
    if (typeof value === "function") element.addEventListener(name.slice(2), value);
    else element.setAttribute(name, value === true ? "" : String(value));
  }
  append(element, children);
  return element;
}

function append(parent: Element, children: readonly Child[]): void {
  for (const child of children) {
    if (child === undefined || child === false) continue;
    if (typeof child === "string") parent.append(visible(child));
    else if (child instanceof Node) parent.append(child);
    else append(parent, child);
  }
}

/** An attribute called onclick, oninput, ... takes a function. */
export const el = <K extends keyof HTMLElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly Child[]
): HTMLElementTagNameMap[K] => fill(document.createElement(tag), attributes, children);

export const svg = <K extends keyof SVGElementTagNameMap>(
  tag: K,
  attributes: Attributes = {},
  ...children: readonly Child[]
): SVGElementTagNameMap[K] => fill(document.createElementNS(svgSpace, tag), attributes, children);

export const mathElement = (
  tag: string,
  attributes: Attributes = {},
  ...children: readonly Child[]
): Element => fill(document.createElementNS(mathSpace, tag), attributes, children);

/** Puts new children in place of the old ones. */
export function replace(parent: Element, ...children: readonly Child[]): void {
  parent.replaceChildren();
  append(parent, children);
}
