// Two bundles, each without node_modules at run time: the command line and the library.
// A bundle starts in about 1.2 times bare Node where unbundled packages take 2 to 11 times.
import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";
import { methodFamilies } from "./method-folders.ts";

const at = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));

// What every command needs goes into one file: each file that is opened costs about a millisecond.
const shared =
  /src\/(units\/|(problem|nearest)\.ts|cli\/(arguments|columns|exact-text|kind-named|outcome)\.ts)/;

const bundle = (entry: string, name: string, outDir: string, groups: { name: string; test: RegExp }[]) => ({
  consumer: "server" as const,
  resolve: { noExternal: true as const },
  build: {
    ssr: entry,
    outDir,
    emptyOutDir: true,
    target: "node20",
    minify: true,
    reportCompressedSize: false,
    rolldownOptions: {
      output: {
        entryFileNames: name,
        chunkFileNames: "[name]-[hash].js",
        codeSplitting: groups.length > 0 ? { groups } : true,
      },
    },
  },
});

export default defineConfig({
  root: at("."),
  publicDir: false,
  define: { methodFamilies: JSON.stringify(methodFamilies()) },
  environments: {
    cli: bundle(at("src/cli/main.ts"), "splitline.js", at("dist/cli"), [{ name: "units", test: shared }]),
    library: bundle(at("src/index.ts"), "index.js", at("dist/library"), []),
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
