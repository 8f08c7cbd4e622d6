// Hunts for files that the program does not answer: npm run fuzz -- [cases] [seed]. What fails is kept in the corpus.
import { createHash } from "node:crypto";
import { writeFileSync } from "node:fs";
import { nextCase, seedsIn } from "../tests/fuzz/seeds.ts";
import { flawOf } from "../tests/fuzz/survives.ts";
import { dice } from "../tests/outside/random.ts";

const [cases = "200000", seed = String(Date.now() % 1e9)] = process.argv.slice(2);
const seeds = seedsIn("presets");
const known = new Map<string, number>();
console.log(`${cases} cases from seed ${seed}`);
for (let index = 0; index < Number(cases); index++) {
  const { path, text } = nextCase(seeds, dice(Number(seed) + index));
  const flaw = flawOf(text, path);
  if (index % 5000 === 4999) console.log(`${index + 1} cases, ${known.size} flaws`);
  if (flaw === undefined) continue;
  // The same fault is kept once.
  const key = flaw.replace(/\d+/g, "#").split("\n").slice(0, 3).join("\n");
  const times = known.get(key) ?? 0;
  known.set(key, times + 1);
  if (times > 0) continue;
  const kept = `tests/fuzz/corpus/${createHash("sha256").update(text).digest("hex").slice(0, 12)}.yaml`;
  writeFileSync(kept, text);
  console.log(`case ${index} from ${path} ${flaw}\n  kept as ${kept}`);
}
for (const [flaw, times] of known) console.log(`${times} x ${flaw.split("\n")[0]}`);
process.exitCode = known.size === 0 ? 0 : 1;
