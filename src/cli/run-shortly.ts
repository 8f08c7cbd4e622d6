import v8 from "node:v8";

/**
 * What suits a program that runs for a second, and not for days. Only what is used much more often than usual pays for
 * being optimised: that takes processors from the work itself. Threads that help with a short collection are waited
 * for longer than they help where every processor is busy. What is thrown away fits the first young generation; fresh
 * pages for a larger one cost more than its collection.
 */
const FLAGS = ["--interrupt-budget=600000", "--no-parallel-scavenge", "--semi-space-growth-factor=1"];

/**
 * Sets V8 up for a short run, on all threads: to be called when Node and the program are loaded, since what was
 * compiled of them beforehand is good under the usual flags only.
 */
export function runShortly(): void {
  // Other versions write of a flag that they do not know to the screen. What the build keeps is for the usual flags.
  if (!process.version.startsWith("v20.") || process.env.TRAMWRIGHT_KEEP_COMPILED !== undefined) return;
  for (const flag of FLAGS) v8.setFlagsFromString(flag);
}
