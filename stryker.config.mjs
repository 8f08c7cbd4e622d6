// `npm run mutation` changes the code in small ways and asks that a test notices; by default all of mechanics and
// catalogue, which takes hours. Name files to try a few: npm run mutation -- -m src/mechanics/belt-loop.ts
/** @type {import("@stryker-mutator/api/core").PartialStrykerOptions} */
export default {
  mutate: ["src/mechanics/**/*.ts", "src/catalogue/**/*.ts", "!src/**/index.ts"],
  testRunner: "vitest",
  // Which tests a change needs is known from the first run; `related` would ask again for every change.
  vitest: { configFile: "vitest.mutation.config.ts", related: false },
  plugins: ["@stryker-mutator/vitest-runner"],
  // TypeScript 7 has no programming interface for the rewriting of this file, and nothing here needs it.
  tsconfigFile: "none.json",
  coverageAnalysis: "perTest",
  concurrency: 1,
  // Endless loops are told by how often they come round; the clock only has to let a busy machine finish.
  timeoutMS: 60_000,
  ignoreStatic: true,
  reporters: ["clear-text", "json"],
  clearTextReporter: { allowColor: false, reportTests: false },
  jsonReporter: { fileName: "out/mutation.json" },
  tempDirName: "out/stryker",
  ignorePatterns: ["dist", "out", "coverage", "docs", "presets"],
  thresholds: { high: 90, low: 90, break: 90 },
};
