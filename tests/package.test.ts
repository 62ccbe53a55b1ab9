// What an install gets: a command that runs, a library that can be read, types that need nothing else.
import { execFileSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { beforeAll, describe, expect, test } from "vitest";
import { z } from "zod";

const root = fileURLToPath(new URL("../", import.meta.url));
const packed = z.array(z.object({ files: z.array(z.object({ path: z.string(), mode: z.number() })) }));

describe("the package", () => {
  let modes: ReadonlyMap<string, number>;

  beforeAll(() => {
    const said = execFileSync("npm", ["pack", "--dry-run", "--json", "--ignore-scripts"], {
      cwd: root,
      encoding: "utf8",
      shell: process.platform === "win32",
    });
    const [found] = packed.parse(JSON.parse(said));
    modes = new Map(found?.files.map(({ path, mode }) => [path, mode]));
  });

  test.each([
    "dist/cli/splitline.js",
    "dist/library/index.js",
    "dist/types/index.d.ts",
    "dist/views/index.html",
    "dist/views/units.html",
    "dist/cli/licences-of-bundled-packages.md",
    "dist/library/licences-of-bundled-packages.md",
    "dist/views/licences-of-bundled-packages.md",
    "LICENSE",
    "README.md",
    "notebooks/pump-2-tightening.yaml",
  ])("holds %s", (path) => expect([...modes.keys()]).toContain(path));

  test("its command may be run after every build", () => {
    expect((modes.get("dist/cli/splitline.js") ?? 0) & 0o111).toBe(0o111);
  });

  test("its library has lines that a person can read", () => {
    const lines = readFileSync(join(root, "dist/library/index.js"), "utf8").split("\n");
    expect(lines.length).toBeGreaterThan(10_000);
    expect(lines.filter((line) => line.length > 600).length).toBeLessThan(2); // one list of letters, not ours
  });

  test("its types name no other package", () => {
    const seen = new Set<string>();
    const outside: string[] = [];
    const read = (file: string): void => {
      if (seen.has(file)) return;
      seen.add(file);
      const text = readFileSync(file, "utf8");
      for (const [, to = ""] of text.matchAll(/(?:from|import\()\s*"([^"]+)"/g))
        if (to.startsWith(".")) read(join(dirname(file), to.replace(/\.ts$/, ".d.ts")));
        else outside.push(`${file}: ${to}`);
    };
    read(join(root, "dist/types/index.d.ts"));
    expect(outside).toEqual([]);
    expect(seen.size).toBeGreaterThan(20);
  });
});
