import { defineConfig } from "vitest/config";
import facts from "./package.json" with { type: "json" };

/** Puts something in the place of a module; its worker is its own, so that no other file meets that. */
const MOCKS = ["tests/cli/stage.test.ts"];

export default defineConfig({
  // As the build does.
  define: { TRAMWRIGHT_VERSION: JSON.stringify(facts.version) },
  test: {
    testTimeout: 300_000,
    hookTimeout: 300_000,
    maxWorkers: 2,
    pool: "forks",
    projects: [
      // Files share what they import: loading it anew for each took as long as half of the tests.
      { extends: true, test: { name: "shared", include: ["tests/**/*.test.ts"], exclude: MOCKS, isolate: false } },
      { extends: true, test: { name: "alone", include: MOCKS } },
    ],
    // `npm run coverage`: the sourced numbers and formulas are covered whole.
    coverage: {
      provider: "v8",
      include: ["src/mechanics/**/*.ts", "src/catalogue/**/*.ts"],
      reporter: ["text-summary", "json"],
      thresholds: { statements: 100, branches: 100, functions: 100, lines: 100 },
    },
  },
});
