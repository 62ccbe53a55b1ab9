// What a browser has to fetch before it can show the unit answer, or a page before its pictures.
// Bytes of the built entries, gzip -9, 1 kB = 1000 B. Bytes are the same on every machine, so this is a test.
import { join } from "node:path";
import { gzipSync } from "node:zlib";
import { build } from "vite";
import { beforeAll, describe, expect, it } from "vitest";
import { root } from "../cli/built.ts";

interface Built {
  readonly code: string;
  /** Files fetched with it. */
  readonly needs: readonly string[];
}

const files = new Map<string, Built>();

beforeAll(async () => {
  const made = await build({
    configFile: join(root, "src/views/vite.config.ts"),
    logLevel: "error",
    build: { write: false },
  });
  for (const result of [made].flat()) {
    if (!("output" in result)) throw new Error("the build of src/views gives no files");
    for (const file of result.output) {
      if (file.type === "chunk") files.set(file.fileName, { code: file.code, needs: file.imports });
      else
        files.set(file.fileName, {
          code: String(file.source),
          needs: linkedFrom(file.fileName, String(file.source)),
        });
    }
  }
});

function linkedFrom(name: string, text: string): string[] {
  if (!name.endsWith(".html")) return [];
  return [...text.matchAll(/<(?:script|link)\b[^>]*?\b(?:src|href)="\.?\/?([^"#?]+)"/g)].flatMap(
    ([, path]) => path ?? [],
  );
}

/** Every file the entry fetches by itself, without what comes by import() later. */
function fetched(entry: string): string[] {
  const found = new Set([entry]);
  for (const name of found) for (const next of files.get(name)?.needs ?? []) found.add(next);
  return [...found].filter((name) => files.has(name) && !/\.(svg|png|woff2?)$/.test(name));
}

const gzipped = (name: string): number => gzipSync(files.get(name)?.code ?? "", { level: 9 }).length;
const weight = (entry: string): number => fetched(entry).reduce((sum, name) => sum + gzipped(name), 0);

/** Largest first, for the message when a bar is broken. */
const parts = (entry: string): string =>
  fetched(entry)
    .map((name) => ({ name, bytes: gzipped(name) }))
    .sort((a, b) => b.bytes - a.bytes)
    .map(({ name, bytes }) => `${name} ${bytes}`)
    .join(", ");

const holds = (entry: string, text: RegExp): string[] =>
  fetched(entry).filter((name) => text.test(files.get(name)?.code ?? ""));

describe("weight of the browser build", () => {
  it("the unit answer stays below 45 kB", () => {
    expect(fetched("units.html").length).toBeGreaterThan(1);
    expect(weight("units.html"), parts("units.html")).toBeLessThanOrEqual(45_000);
  });

  it("a page before its pictures stays below 180 kB", () => {
    expect(fetched("index.html").length).toBeGreaterThan(1);
    expect(weight("index.html"), parts("index.html")).toBeLessThanOrEqual(180_000);
  });

  it("the unit answer fetches no YAML reader and no formula parser", () => {
    expect(holds("units.html", /parseDocument|ParseDependencies|typed-function/)).toEqual([]);
  });

  it("no bundle makes code from text", () => {
    const makers = [...files].filter(
      ([name, { code }]) => name.endsWith(".js") && /\bnew Function\b|[^.\w]eval\(/.test(code),
    );
    expect(makers.map(([name]) => name)).toEqual([]);
  });
});
