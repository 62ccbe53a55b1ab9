import { defineConfig } from "vitest/config";
import { methodFamilies } from "../src/cli/method-folders.ts";

export default defineConfig({
  define: { methodFamilies: JSON.stringify(methodFamilies()) },
  test: {
    environment: "node",
    globalSetup: ["tests/views/which-chromium.ts"],
    setupFiles: ["tests/fast-check-seed.ts"],
    include: ["tests/**/*.test.ts"],
    pool: "forks",
    maxWorkers: 2, // browser tests start a Chromium of their own
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
