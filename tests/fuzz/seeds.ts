import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import type { Dice } from "../outside/random.ts";
import { mutate } from "./mutate.ts";

/** A file to begin from. */
export interface Seed {
  readonly path: string;
  readonly text: string;
}

/** Returns every YAML file below a folder, in the order of their names. */
export function seedsIn(folder: string): Seed[] {
  const names = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) => name.endsWith(".yaml"));
  return names.sort().map((name) => ({ path: join(folder, name), text: readFileSync(join(folder, name), "utf8") }));
}

/** A machine takes twenty times as long as a part. */
const MACHINES = 1 / 120;

/** Returns a file changed by chance, and the path that it is said to have. */
export function nextCase(seeds: readonly Seed[], dice: Dice): Seed {
  const machine = dice.between(0, 1) < MACHINES;
  const { path, text } = dice.pick(seeds.filter((seed) => seed.text.includes("\nstage:") === machine));
  const others = seeds.map((seed) => seed.text);
  // The file of a printer is read again for each case: most do without.
  const alone = dice.whole(0, 3) > 0 ? text.replace(/^printer: \.\..*\n/m, "") : text;
  return { path, text: mutate(alone, dice, others) };
}
