// Two bundles, each without node_modules at run time: the command line and the library.
// A bundle starts in about 1.2 times bare Node where unbundled packages take 2 to 11 times.
import { chmod } from "node:fs/promises";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { defineConfig, type Plugin } from "vite";
import { methodFamilies } from "./method-folders.ts";

const at = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));

// What every command needs goes into one file: each file that is opened costs about a millisecond.
const shared = /src\/(units\/|(problem|nearest)\.ts|cli\/(arguments|columns|kind-named|outcome)\.ts)/;

/** A build writes a new file, and a new file cannot be run. */
const runBit: Plugin = {
  name: "splitline-run-bit",
  applyToEnvironment: ({ name }) => name === "cli",
  writeBundle: async ({ dir = at("dist/cli") }) => await chmod(join(dir, "splitline.js"), 0o755),
};

interface Bundle {
  readonly entry: string;
  readonly file: string;
  readonly outDir: string;
  /** The library is read and debugged where it is used; the command line has to start quickly. */
  readonly minify: boolean;
  readonly groups?: readonly { readonly name: string; readonly test: RegExp }[];
}

const bundle = ({ entry, file, outDir, minify, groups = [] }: Bundle) => ({
  consumer: "server" as const,
  resolve: { noExternal: true as const },
  build: {
    ssr: entry,
    outDir,
    emptyOutDir: true,
    target: "node20",
    minify,
    license: { fileName: "licences-of-bundled-packages.md" },
    reportCompressedSize: false,
    rolldownOptions: {
      output: {
        entryFileNames: file,
        chunkFileNames: "[name]-[hash].js",
        codeSplitting: groups.length > 0 ? { groups: [...groups] } : true,
      },
    },
  },
});

export default defineConfig({
  root: at("."),
  publicDir: false,
  plugins: [runBit],
  define: { methodFamilies: JSON.stringify(methodFamilies()) },
  environments: {
    cli: bundle({
      entry: at("src/cli/main.ts"),
      file: "splitline.js",
      outDir: at("dist/cli"),
      minify: true,
      groups: [{ name: "units", test: shared }],
    }),
    library: bundle({
      entry: at("src/index.ts"),
      file: "index.js",
      outDir: at("dist/library"),
      minify: false,
    }),
  },
  builder: {
    buildApp: async (builder) => {
      for (const name of ["cli", "library"]) {
        const environment = builder.environments[name];
        if (environment) await builder.build(environment);
      }
    },
  },
});
