import { defineConfig } from "vitest/config";
import type { TestSequencer, TestSpecification } from "vitest/node";

/** The first test that fails ends a run, so the file whose library of formulas loads slowest comes last. */
function quickFirst(): TestSequencer {
  const slow = (file: TestSpecification) => Number(file.moduleId.endsWith("printed-formulas.test.ts"));
  const order = (a: TestSpecification, b: TestSpecification) =>
    slow(a) - slow(b) || a.moduleId.localeCompare(b.moduleId);
  return { sort: async (files) => [...files].sort(order), shard: async (files) => files };
}

/** Tests of the numbers only: what `npm run mutation` runs for each change of the code. */
export default defineConfig({
  test: {
    include: [
      "tests/mechanics/**/*.test.ts",
      "tests/catalogue/**/*.test.ts",
      "tests/reference/**/*.test.ts",
      "tests/outside/refusals.test.ts",
    ],
    testTimeout: 300_000,
    hookTimeout: 300_000,
    maxWorkers: 1,
    sequence: { sequencer: quickFirst as never },
    // Thousands of short runs: test files share what they import, and each library is loaded as one file.
    isolate: false,
    deps: { optimizer: { ssr: { enabled: true, include: ["mathjs/number", "fast-check", "zod"] } } },
  },
});
