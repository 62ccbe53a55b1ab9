// Four kinds of suites. Pure ones share one world in each worker, which spares them loading the sources two
// hundred times: `fast` is what is run again and again while working, `long` what takes its time. Those that
// start processes of their own and those that start a browser stand each alone.
import { defineConfig } from "vitest/config";
import { methodFamilies } from "../src/cli/method-folders.ts";

const browser = ["tests/**/*.browser.test.ts"];
const processes = [
  "tests/package.test.ts",
  "tests/bench/weight.test.ts",
  "tests/cli/hostile.test.ts",
  "tests/cli/main.test.ts",
];
/** What takes longest: the rest fits into thirty seconds on two cores. */
const long = [
  "tests/cli/**/*.test.ts",
  "tests/demo/**/*.test.ts",
  "tests/reference-checks.test.ts",
  "tests/document/{bounds,strict-yaml,write-canonical,write-rows}.test.ts",
  "tests/engine/{bounds,change,inherits,laws,notebooks,size,typed-text,unbound-numbers}.test.ts",
  "tests/formula/{block,value}.test.ts",
  "tests/methods/{inputs,nothing-ignored,oracle,plausible}.test.ts",
  "tests/methods/{fits,margins,shear}/*.test.ts",
  "tests/methods/plan/record-findings.test.ts",
  "tests/methods/preload/preload-bounds.test.ts",
  "tests/methods/stiffness/{bolt-stiffness,clamped-stiffness-cone}.test.ts",
  "tests/methods/torque/{nut-factor-trial,torque-from-friction}.test.ts",
  "tests/pictures/**/*.test.ts",
  "tests/readings/both-faces.test.ts",
  "tests/report/both-faces.test.ts",
  "tests/spread/**/*.test.ts",
  "tests/units/{laws,negated}.test.ts",
  "tests/views/drawings/*.test.ts",
];

const shared = { extends: true, test: { isolate: false, sequence: { groupOrder: 0 } } } as const;

export default defineConfig({
  define: { methodFamilies: JSON.stringify(methodFamilies()) },
  test: {
    projects: [
      {
        ...shared,
        test: {
          ...shared.test,
          name: "fast",
          include: ["tests/**/*.test.ts"],
          exclude: [...browser, ...processes, ...long],
        },
      },
      {
        ...shared,
        test: { ...shared.test, name: "long", include: long, exclude: [...browser, ...processes] },
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
