// The few parts of a document that drawings use, so that they can be read as text without a browser.

export class PlainElement {
  readonly tag: string;
  readonly attributes = new Map<string, string>();
  readonly children: (PlainElement | string)[] = [];
  readonly classList = {
    add: (name: string): void => {
      this.setAttribute("class", [this.attributes.get("class"), name].filter(Boolean).join(" "));
    },
  };

  constructor(tag: string) {
    this.tag = tag;
  }

  setAttribute(name: string, value: string): void {
    this.attributes.set(name, value);
  }

  append(...children: (PlainElement | string)[]): void {
    this.children.push(...children);
  }

  get words(): string {
    return this.children.map((child) => (typeof child === "string" ? child : child.words)).join("");
  }
}

export function usePlainDocument(): void {
  Object.assign(globalThis, {
    Node: PlainElement,
    document: {
      createElement: (tag: string) => new PlainElement(tag),
      createElementNS: (_: string, tag: string) => new PlainElement(tag),
    },
  });
}

interface Offset {
  readonly x: number;
  readonly y: number;
}

/** Every word with its place, every ring, mark and box with its place, the rest counted. Whole px. */
export function drawnText(root: PlainElement): string {
  const lines: string[] = [];
  const counts = new Map<string, number>();
  walk(root, { x: 0, y: 0 }, lines, counts);
  const others = [...counts].toSorted(([a], [b]) => (a < b ? -1 : 1)).map(([kind, n]) => `${n} ${kind}`);
  const size = `${root.attributes.get("width")} x ${root.attributes.get("height")}`;
  return [`size ${size}`, ...lines, `also ${others.join(", ")}`].join("\n");
}

const placed = new Set(["circle", "ellipse", "rect", "svg"]);

function walk(element: PlainElement, offset: Offset, lines: string[], counts: Map<string, number>): void {
  const of = (name: string): string => element.attributes.get(name) ?? "";
  const kind = of("class");
  const [, dx = "0", dy = "0"] = /^translate\(([-\d.]+) ([-\d.]+)\)$/.exec(of("transform")) ?? [];
  const here = { x: offset.x + Number(dx), y: offset.y + Number(dy) };
  const at = (x: string, y: string) => `${Math.round(Number(x) + here.x)},${Math.round(Number(y) + here.y)}`;
  const tag = element.tag;
  if (tag === "text")
    lines.push(`${at(of("x"), of("y"))} ${of("text-anchor")} "${element.words}"${kind ? ` (${kind})` : ""}`);
  else if (placed.has(tag) && kind !== "" && !kind.startsWith("drawing")) {
    const place = at(of("cx") || of("x"), of("cy") || of("y"));
    const size = [of("r"), of("rx"), of("ry"), of("width"), of("height")]
      .filter((part) => part !== "")
      .map((part) => Math.round(Number(part)))
      .join("x");
    lines.push(`${place} ${tag} ${kind}${size ? ` ${size}` : ""}`);
  } else if (kind !== "" && tag !== "svg") counts.set(kind, (counts.get(kind) ?? 0) + 1);
  if (tag === "svg" && kind.startsWith("state-mark")) return; // the shape of a mark is its own affair
  for (const child of element.children) if (typeof child !== "string") walk(child, here, lines, counts);
}
