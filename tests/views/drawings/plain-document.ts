// The few parts of a document that drawings use, so that they can be read as text without a browser.

export class PlainElement {
  readonly tagName: string;
  readonly attributes = new Map<string, string>();
  readonly nodes: (PlainElement | string)[] = [];
  readonly namespaceURI = "http://www.w3.org/2000/svg";
  parent: PlainElement | undefined;
  readonly classList = {
    add: (name: string): void => {
      this.setAttribute("class", [this.attributes.get("class"), name].filter(Boolean).join(" "));
    },
  };

  constructor(tag: string) {
    this.tagName = tag;
  }

  get ownerDocument(): unknown {
    return plain;
  }

  get children(): readonly PlainElement[] {
    return this.nodes.filter((node) => typeof node !== "string");
  }

  getAttribute(name: string): string | null {
    return this.attributes.get(name) ?? null;
  }

  hasAttribute(name: string): boolean {
    return this.attributes.has(name);
  }

  setAttribute(name: string, value: string | number): void {
    this.attributes.set(name, String(value));
  }

  removeAttribute(name: string): void {
    this.attributes.delete(name);
  }

  append(...nodes: (PlainElement | string)[]): void {
    for (const node of nodes) this.insertBefore(node, null);
  }

  appendChild(node: PlainElement): PlainElement {
    return this.insertBefore(node, null);
  }

  /** A node that stands elsewhere is moved, as in a real document. */
  insertBefore<N extends PlainElement | string>(node: N, next: PlainElement | null | undefined): N {
    if (typeof node !== "string") {
      const before = node.parent?.nodes;
      before?.splice(before.indexOf(node), 1);
      node.parent = this;
    }
    this.nodes.splice(next ? this.nodes.indexOf(next) : this.nodes.length, 0, node);
    return node;
  }

  get textContent(): string {
    return this.nodes.map((node) => (typeof node === "string" ? node : node.textContent)).join("");
  }

  set textContent(words: string) {
    this.nodes.splice(0, this.nodes.length, words);
  }
}

const root = new PlainElement("html");
const plain = {
  documentElement: root,
  createElement: (tag: string) => new PlainElement(tag),
  createElementNS: (_: string, tag: string) => new PlainElement(tag),
};

export function usePlainDocument(): void {
  Object.assign(globalThis, { Node: PlainElement, document: plain });
}

interface Offset {
  readonly x: number;
  readonly y: number;
  /** Where words begin, as the groups about them say. */
  readonly anchor: string;
}

/** Every word with its place, every ring, mark and box with its place, the rest counted. Whole px. */
export function drawnText(root: PlainElement): string {
  const lines: string[] = [];
  const counts = new Map<string, number>();
  walk(root, { x: 0, y: 0, anchor: "" }, lines, counts);
  const others = [...counts].toSorted(([a], [b]) => (a < b ? -1 : 1)).map(([kind, n]) => `${n} ${kind}`);
  const size = `${root.attributes.get("width")} x ${root.attributes.get("height")}`;
  return [`size ${size}`, ...lines, `also ${others.join(", ")}`].join("\n");
}

const placed = new Set(["circle", "ellipse", "rect", "svg"]);

function walk(element: PlainElement, offset: Offset, lines: string[], counts: Map<string, number>): void {
  const of = (name: string): string => element.attributes.get(name) ?? "";
  const kind = of("class");
  const [, dx = "0", dy = "0"] = /^translate\(([-\d.]+)[ ,]([-\d.]+)\)$/.exec(of("transform")) ?? [];
  const anchor = of("text-anchor") || offset.anchor;
  const here = { x: offset.x + Number(dx), y: offset.y + Number(dy), anchor };
  const at = (x: string, y: string) => `${Math.round(Number(x) + here.x)},${Math.round(Number(y) + here.y)}`;
  const tag = element.tagName;
  if (tag === "text")
    lines.push(`${at(of("x"), of("y"))} ${anchor} "${element.textContent}"${kind ? ` (${kind})` : ""}`);
  else if (placed.has(tag) && kind !== "" && !kind.startsWith("drawing")) {
    const place = at(of("cx") || of("x"), of("cy") || of("y"));
    const size = [of("r"), of("rx"), of("ry"), of("width"), of("height")]
      .filter((part) => part !== "")
      .map((part) => Math.round(Number(part)))
      .join("x");
    lines.push(`${place} ${tag} ${kind}${size ? ` ${size}` : ""}`);
  } else if (kind !== "" && tag !== "svg") counts.set(kind, (counts.get(kind) ?? 0) + 1);
  if (tag === "svg" && kind.startsWith("state-mark")) return; // the shape of a mark is its own affair
  for (const child of element.children) walk(child, here, lines, counts);
}
