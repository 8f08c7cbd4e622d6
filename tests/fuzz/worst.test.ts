import { spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { fresh, PROGRAM } from "../cli/program.ts";

/** What any preset is made or refused within, as docs/limits.md says. */
const SECONDS = 60;
const MEGABYTES = 512;

/** Notes the largest amount of memory that a program had, kB, when it ends. */
const PEAK = `process.on("exit", () =>
  require("fs").writeFileSync(process.env.PEAK, String(process.resourceUsage().maxRSS)));`;

function made(preset: string) {
  const folder = fresh();
  const [meter, peak] = [join(folder, "peak.cjs"), join(folder, "peak")];
  writeFileSync(meter, PEAK);
  const words = ["--max-old-space-size=256", "--require", meter, PROGRAM, "make", preset, "-q", "-o", folder];
  const { status, stderr } = spawnSync("node", words, {
    encoding: "utf8",
    timeout: SECONDS * 1000,
    env: { ...process.env, PEAK: peak, NO_COLOR: "1" },
  });
  return { code: status, last: stderr.trimEnd().split("\n").at(-1), memory: Number(readFileSync(peak, "utf8")) / 1024 };
}

// Found by search: parameters and bought items at random and at the ends of their ranges, lists as long as they may be,
// every check accepted that may be; those that took longest were kept. The machines have all that a plan may hold.
describe("the largest presets that are allowed", () => {
  test.each([
    ["screw-foot", 0, /^1 part, /],
    ["tram-mount", 0, /^1 part, |^2 parts, /],
    ["wheel-plate", 0, / parts?, /],
    ["thumb-wheel", 0, /^1 part, /],
    ["wheel-spacer", 0, /^1 part, /],
    ["stage-built", 0, /^16 parts, 52 files /],
    ["stage-refused", 1, /^nothing written: \d+ errors/],
  ])("%s ends with %i within time and memory", (name, code, last) => {
    const run = made(`tests/fuzz/worst/${name}.yaml`);
    expect(run.last).toMatch(last);
    expect(run.code).toBe(code);
    expect(run.memory).toBeLessThan(MEGABYTES);
  });
});
