// Builds every shipped preset into out/ and prints what was made, checked and measured.
import { spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { join } from "node:path";

const root = "presets/parts";
const presets = readdirSync(root)
  .flatMap((family) => readdirSync(join(root, family)).map((file) => join(root, family, file)))
  .filter((file) => file.endsWith(".yaml"))
  .sort();
const stages = readdirSync("presets/stages")
  .filter((file) => file.endsWith(".yaml"))
  .sort()
  .map((file) => join("presets/stages", file));
// What an earlier build of the program left there is made anew.
const { status } = spawnSync(
  process.execPath,
  ["dist/tramwright.cjs", "make", ...presets, ...stages, "-o", "out", "--force"],
  {
    stdio: "inherit",
  },
);
process.exitCode = status ?? 70;
