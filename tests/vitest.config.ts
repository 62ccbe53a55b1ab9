// Three kinds of suites: pure ones share one world per worker, which spares them loading the sources a
// hundred times; those that start processes of their own, and those that start a browser, stand each alone.
import { defineConfig } from "vitest/config";
import { methodFamilies } from "../src/cli/method-folders.ts";

const browser = ["tests/**/*.browser.test.ts"];
const processes = [
  "tests/package.test.ts",
  "tests/bench/weight.test.ts",
  "tests/cli/hostile.test.ts",
  "tests/cli/main.test.ts",
];

export default defineConfig({
  define: { methodFamilies: JSON.stringify(methodFamilies()) },
  test: {
    projects: [
      {
        extends: true,
        test: {
          name: "pure",
          include: ["tests/**/*.test.ts"],
          exclude: [...browser, ...processes],
          isolate: false,
          sequence: { groupOrder: 0 },
        },
      },
      { extends: true, test: { name: "processes", include: processes, sequence: { groupOrder: 1 } } },
      {
        extends: true,
        test: {
          name: "browser",
          include: browser,
          globalSetup: ["tests/views/which-chromium.ts"],
          sequence: { groupOrder: 1 },
        },
      },
    ],
    environment: "node",
    setupFiles: ["tests/fast-check-seed.ts"],
    pool: "forks",
    maxWorkers: 2, // browser tests start a Chromium of their own
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
