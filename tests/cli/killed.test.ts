import { spawn } from "node:child_process";
import { createHash } from "node:crypto";
import { mkdirSync, readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { runs } from "../support/thorough.ts";
import { fresh, PROGRAM, run } from "./program.ts";

/** TRAMWRIGHT_KILLS tries as many as are wanted; each costs about a second of two cores. */
const RUNS = Number(process.env.TRAMWRIGHT_KILLS ?? runs(100, 8));

const PLAN = readFileSync("presets/stages/copy-stand.yaml", "utf8").replace(
  /printer: .*\n/,
  "printer: ../workshop-petg.yaml\n",
);
/** Two machines that differ in a few parts, so that a run has something to build and something to keep. */
const PLANS = [PLAN, PLAN.replace(/plateTop: 2\.5\b/, "plateTop: 6.5")];

/** Returns what the folder of the set holds, or the first thing that is wrong with it. */
function stateOf(folder: string): string {
  const manifest = readFileSync(join(folder, "manifest.json"));
  const { files } = JSON.parse(manifest.toString()) as { files: { name: string; sha256: string }[] };
  for (const { name, sha256 } of files) {
    const is = createHash("sha256")
      .update(readFileSync(join(folder, name)))
      .digest("hex");
    if (is !== sha256) return `${name} is torn`;
  }
  const there = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => name.includes("."));
  if (there.length !== files.length + 1) return `${there.length} files for ${files.length} in the manifest`;
  return createHash("sha256").update(manifest).digest("hex");
}

/** Runs `make` and kills it after a while; whether it was still running. */
function killed(words: readonly string[], after: number): Promise<boolean> {
  return new Promise((resolve) => {
    const child = spawn("node", [PROGRAM, ...words], { stdio: "ignore" });
    const timer = setTimeout(() => child.kill("SIGKILL"), after);
    child.on("exit", (_, signal) => {
      clearTimeout(timer);
      resolve(signal === "SIGKILL");
    });
  });
}

describe("make of a stage, killed at any moment", () => {
  test("leaves the old set whole or the new one", async () => {
    expect(PLANS[1]).not.toBe(PLANS[0]);
    const root = fresh();
    mkdirSync(join(root, "plans"));
    writeFileSync(join(root, "workshop-petg.yaml"), readFileSync("presets/printers/workshop-petg.yaml"));
    const words = PLANS.map((text, index) => {
      writeFileSync(join(root, `plans/${index}.yaml`), text);
      return ["make", join(root, `plans/${index}.yaml`), "-o", join(root, "out"), "--quiet"];
    });
    const folder = join(root, "out/copy-stand");
    const [whole = [], other = []] = words;
    const ways = [whole, other].map((way) => {
      const start = performance.now();
      expect(run(way, root).code).toBe(0);
      return { took: performance.now() - start, state: stateOf(folder) };
    });
    const states = ways.map(({ state }) => state);
    expect(new Set(states).size).toBe(2);
    const longest = Math.max(...ways.map(({ took }) => took));
    let interrupted = 0;
    for (let round = 0; round < RUNS; round++) {
      // Every moment of a run is as likely as any other, and some runs get to their end.
      const moment = ((round * 61) % RUNS) / RUNS;
      if (await killed(words[round % 2] ?? whole, 30 + moment * longest)) interrupted++;
      expect(states, `after ${round + 1} runs`).toContain(stateOf(folder));
    }
    expect(interrupted).toBeGreaterThan(RUNS / 4);
    expect(run(whole, root).code).toBe(0);
    expect(stateOf(folder)).toBe(states[0]);
    expect(readdirSync(join(root, "out"))).toEqual(["copy-stand"]);
  }, 240_000);
});
