// An import points to a lower layer or into its own folder, and each outside package has one door.
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { parseSync } from "vite";
import { describe, expect, it } from "vitest";

const root = fileURLToPath(new URL("../", import.meta.url));
const src = join(root, "src");

const layers: Readonly<Record<string, number>> = {
  "problem.ts": 0,
  "visible.ts": 0,
  "source.ts": 0,
  "verdict.ts": 0,
  "standing.ts": 0,
  "nearest.ts": 0,
  "median.ts": 0,
  "grouped.ts": 0,
  "words.ts": 0,
  units: 1,
  formula: 1.5,
  spread: 1.6,
  tables: 2,
  methods: 3,
  document: 4,
  engine: 5,
  readings: 5.2,
  report: 5.4,
  pictures: 5.8,
  views: 6,
  cli: 6,
  "answering.ts": 6,
  "public-functions.ts": 7,
  "index.ts": 8,
};

/** Outside packages and who may import them; "node:" stands for every built-in module. */
const doors: Readonly<Record<string, (file: string) => boolean>> = {
  "@observablehq/runtime": (file) => file.startsWith("engine/"),
  mathjs: (file) => file === "formula/parse.ts",
  yaml: (file) => file.startsWith("document/"),
  zod: (file) => file.startsWith("document/"),
  "node:": (file) => file.startsWith("cli/"),
  d3: (file) => file.startsWith("views/"),
  "@observablehq/plot": (file) => file.startsWith("views/"),
};

const isConfig = (file: string): boolean => file.endsWith("vite.config.ts");

const files = readdirSync(src, { recursive: true, encoding: "utf8" })
  .map((name) => name.split(sep).join("/"))
  .filter((name) => name.endsWith(".ts") && !name.endsWith(".d.ts"));

interface Imported {
  readonly from: string;
  readonly to: string;
}

/** Every static, re-exporting and dynamic import, read from the syntax tree. */
function importsOf(file: string, code: string): Imported[] {
  const { module } = parseSync(file, code);
  const named = [
    ...module.staticImports.map((i) => i.moduleRequest.value),
    ...module.staticExports.flatMap((e) => e.entries.flatMap((x) => x.moduleRequest?.value ?? [])),
    ...module.dynamicImports.map((i) =>
      code.slice(i.moduleRequest.start, i.moduleRequest.end).replace(/^["'`]|["'`]$/g, ""),
    ),
  ];
  return named.map((to) => ({ from: file, to }));
}

const imports = files
  .filter((file) => !isConfig(file))
  .flatMap((file) => importsOf(file, readFileSync(join(src, file), "utf8")));

/** Path below src of a relative import; undefined for a package or a file outside src. */
function inside({ from, to }: Imported): string | undefined {
  if (!to.startsWith(".")) return undefined;
  const path = relative(src, resolve(src, dirname(from), to.replace(/\?.*$/, "")))
    .split(sep)
    .join("/");
  return path.startsWith("..") ? undefined : path;
}

const folderOf = (path: string): string => path.split("/")[0] ?? path;

/** "src/units/scan.ts imports src/engine/line.ts", where the arrow points up. */
function upward(all: readonly Imported[]): string[] {
  return all.flatMap((found) => {
    const to = inside(found);
    if (to === undefined || folderOf(to) === folderOf(found.from)) return [];
    const here = layers[folderOf(found.from)] ?? -1;
    const there = layers[folderOf(to)] ?? Number.POSITIVE_INFINITY;
    return there < here || (here === 0 && there === 0) ? [] : [`src/${found.from} imports src/${to}`];
  });
}

function throughTheWrongDoor(all: readonly Imported[]): string[] {
  return all.flatMap((found) => {
    if (found.to.startsWith(".")) return [];
    const door = Object.keys(doors).find(
      (name) => found.to === name || found.to.startsWith(name.endsWith(":") ? name : `${name}/`),
    );
    const open = door === undefined ? false : doors[door]?.(found.from);
    return open ? [] : [`src/${found.from} imports ${found.to}`];
  });
}

// Globals are looked for in code with comments and texts taken out. A field of that name is none,
// and a file that declares the name itself means its own.
const codeOnly = (code: string): string =>
  code.replace(/\/\*[\s\S]*?\*\/|\/\/[^\n]*|"(?:[^"\\\n]|\\.)*"|'(?:[^'\\\n]|\\.)*'/g, " ");

function usesGlobal(code: string, name: string): boolean {
  const bare = codeOnly(code);
  const own = new RegExp(
    String.raw`(?:const|let|function)\s+(?:\{[^}]*)?\b${name}\b|[({,]\s*${name}\s*[,:}]`,
  );
  return new RegExp(String.raw`(?<![.\w$])${name}\s*[.[(]`).test(bare) && !own.test(bare);
}

function usersOf(names: readonly string[], allowed: string): string[] {
  const others = files.filter((file) => !isConfig(file) && !file.startsWith(`${allowed}/`));
  return others.filter((file) => {
    const code = readFileSync(join(src, file), "utf8");
    return names.some((name) => usesGlobal(code, name));
  });
}

describe("imports", () => {
  it("every folder of src has a layer", () => {
    expect([...new Set(files.map(folderOf))].filter((name) => layers[name] === undefined)).toEqual([]);
  });

  it("no import points upward", () => expect(upward(imports)).toEqual([]));

  it("an upward import is named with both files", () => {
    const scan = importsOf("units/scan.ts", 'import type { Line } from "../engine/line.ts";');
    expect(upward(scan)).toEqual(["src/units/scan.ts imports src/engine/line.ts"]);
    expect(upward(importsOf("views/main.ts", 'export * from "../cli/columns.ts";'))).toHaveLength(1);
    expect(upward(importsOf("units/a.ts", 'await import("../formula/parse.ts");'))).toHaveLength(1);
  });

  it("each outside package is imported in its own place only", () =>
    expect(throughTheWrongDoor(imports)).toEqual([]));

  it("a package in the wrong place is named", () => {
    const found = importsOf(
      "methods/a.ts",
      'import { parse } from "mathjs/number"; import fs from "node:fs";',
    );
    expect(throughTheWrongDoor(found)).toEqual([
      "src/methods/a.ts imports mathjs/number",
      "src/methods/a.ts imports node:fs",
    ]);
  });

  it("only views touch the document and the window", () =>
    expect(usersOf(["document", "window"], "views")).toEqual([]));

  it("a use of the window is seen, a field or a name of one's own is not", () => {
    expect(usesGlobal("const w = window.innerWidth;", "window")).toBe(true);
    expect(usesGlobal('document.querySelector("a")', "document")).toBe(true);
    expect(usesGlobal("page.document.body", "document")).toBe(false);
    expect(usesGlobal("const document = parseDocument(text); document.errors;", "document")).toBe(false);
    expect(usesGlobal("// window.open is not used", "window")).toBe(false);
  });

  it("only cli touches the process", () => expect(usersOf(["process"], "cli")).toEqual([]));
});

/** Files of a face that neither touch what the face is for nor import, within the face, one that does. */
function strangers(face: string, touches: (file: string, code: string) => boolean): string[] {
  const own = files.filter((file) => file.startsWith(`${face}/`) && !isConfig(file));
  const reach = new Set(own.filter((file) => touches(file, codeOnly(readFileSync(join(src, file), "utf8")))));
  for (let size = -1; size !== reach.size; ) {
    size = reach.size;
    for (const found of imports) if (reach.has(inside(found) ?? "")) reach.add(found.from);
  }
  return own.filter((file) => !reach.has(file));
}

const imported = (file: string, what: RegExp): boolean =>
  imports.some(({ from, to }) => from === file && what.test(to));

/** Elements and events by their types, stores, addresses and files of the browser. */
const dom =
  /\b(?:HTML\w*|SVG\w*|DOM\w*|IDB\w*)?(?:Element|Event|Node|Rect|Database|Transaction)\b|\b(?:document|window|navigator|location|history|localStorage|sessionStorage|indexedDB|File|Blob|addEventListener|matchMedia)\b/;

describe("a face holds what it is for, the rest stands below", () => {
  const wordsAndLayout = [
    "views/drawings/breadth.ts", // px that a text takes
    "views/drawings/plan.ts", // where marks stand in a plan, px
    "views/shell/address.ts", // the words behind the # of the address
    "views/shell/lazily.ts", // when a part is fetched
    "views/shell/notebooks.ts", // the page files that the bundler finds
  ];
  it("views: the DOM, words and layout", () =>
    expect(
      strangers(
        "views",
        (file, code) => dom.test(code) || imported(file, /^(?:d3|@observablehq\/plot)|\.css$/),
      ),
    ).toEqual(wordsAndLayout));

  const answers = /\b(?:process|Outcome)\b/;
  const wordsAndColumns = [
    "cli/arguments.ts", // words and flags
    "cli/columns.ts", // columns of a terminal
    "cli/kind-named.ts", // a kind by its word
    "cli/output-units.ts", // --show
  ];
  it("cli: the process, files, and the words and columns of its answers", () =>
    expect(strangers("cli", (file, code) => answers.test(code) || imported(file, /^node:/))).toEqual(
      wordsAndColumns,
    ));
});

describe("top of the repository", () => {
  const agreed = [
    "README.md",
    "DEVELOPERS.md",
    "LICENSE",
    "package.json",
    "package-lock.json",
    "tsconfig.json",
    "notebooks",
    "src",
    "tests",
    "reference-checks",
    "demo-data",
  ];
  const made = ["node_modules", "dist"];

  it("holds the agreed names and dot files only", () => {
    const odd = readdirSync(root).filter(
      (name) => !name.startsWith(".") && ![...agreed, ...made].includes(name),
    );
    expect(odd).toEqual([]);
  });
});
