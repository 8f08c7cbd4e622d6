import { defineConfig } from "vitest/config";

/** Tests of the numbers only: what `npm run mutation` runs for each change of the code. */
export default defineConfig({
  test: {
    include: ["tests/mechanics/**/*.test.ts", "tests/catalogue/**/*.test.ts", "tests/reference/**/*.test.ts"],
    testTimeout: 300_000,
    hookTimeout: 300_000,
    maxWorkers: 1,
  },
});
