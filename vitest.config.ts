import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    testTimeout: 300_000,
    hookTimeout: 300_000,
    maxWorkers: 2,
    pool: "forks",
    // `npm run coverage`: the sourced numbers and formulas are covered whole.
    coverage: {
      provider: "v8",
      include: ["src/mechanics/**/*.ts", "src/catalogue/**/*.ts"],
      reporter: ["text-summary", "json"],
      thresholds: { statements: 100, branches: 100, functions: 100, lines: 100 },
    },
  },
});
