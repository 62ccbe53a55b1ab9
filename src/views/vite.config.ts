// The browser build: two entries, so that the unit answer stays light. The policy is added on build only,
// because the development server talks to the page over a socket.
import { fileURLToPath } from "node:url";
import { defineConfig, type Plugin } from "vite";
import { methodFamilies } from "../cli/method-folders.ts";

const here = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data:",
  "connect-src 'none'",
  "base-uri 'none'",
  "form-action 'none'",
  "require-trusted-types-for 'script'",
  "trusted-types 'none'",
].join("; ");

const pagePolicy: Plugin = {
  name: "splitline-page-policy",
  apply: "build",
  transformIndexHtml: () => [
    {
      tag: "meta",
      attrs: { "http-equiv": "Content-Security-Policy", content: policy },
      injectTo: "head-prepend",
    },
  ],
};

/** The parser can write TeX, which is never asked of it here: its tables of TeX stay out of the page. */
const noTex: Plugin = {
  name: "splitline-no-tex",
  enforce: "pre",
  resolveId: (id) => (id === "escape-latex" || id.endsWith("/utils/latex.js") ? "\0no-tex" : undefined),
  load: (id) => (id === "\0no-tex" ? noTexCode : undefined),
};
const noTexCode = `
export const latexSymbols = {}, latexOperators = {}, latexFunctions = {}, defaultTemplate = "";
export const toSymbol = (text) => text, escapeLatex = toSymbol, latexToFn = toSymbol;
export default toSymbol;
`;

/** A machine without a screen has no browser to open, and is not troubled with one. */
const hasScreen =
  process.env["CI"] === undefined &&
  (process.platform === "darwin" ||
    process.platform === "win32" ||
    Boolean(process.env["DISPLAY"] ?? process.env["WAYLAND_DISPLAY"]));

export default defineConfig({
  root: here("."),
  base: "./",
  publicDir: false,
  plugins: [pagePolicy, noTex],
  define: { methodFamilies: JSON.stringify(methodFamilies()) },
  server: { open: hasScreen, port: 5173, strictPort: false, fs: { allow: [here("../..")] } },
  build: {
    target: "es2022",
    outDir: here("../../dist/views"),
    emptyOutDir: true,
    license: { fileName: "licences-of-bundled-packages.md" },
    // What a late part needs besides is named in the part itself; only its styles have to be known before.
    modulePreload: {
      polyfill: false,
      resolveDependencies: (_, needed, { hostType }) =>
        hostType === "html" ? needed : needed.filter((file) => file.endsWith(".css")),
    },
    assetsInlineLimit: 0,
    chunkSizeWarningLimit: 700,
    rolldownOptions: {
      input: { index: here("index.html"), units: here("units.html") },
      // Parts that always go together stand in one file; the unit box goes without formulas.
      output: {
        codeSplitting: {
          groups: [
            {
              name: "units",
              test: /src\/(?:units\/|(?:problem|source|nearest)\.ts$)|src\/views\/dom\.ts$/,
              priority: 2,
            },
            {
              name: "formula",
              test: /src\/(?:formula\/|(?:verdict|standing|median|grouped)\.ts$)|\/mathjs\/|methods\/(?:solution|leaf|fold-columns|stated-doubt)\.ts$/,
              priority: 1,
            },
            {
              name: "places",
              test: /src\/document\/(?:markdown(?:-inline)?|bound-formulas|reading-table|csv|csv-fields|column-heading|decimal-mark|names|place-words)\.ts$/,
              priority: 1,
            },
          ],
        },
      },
    },
  },
});
