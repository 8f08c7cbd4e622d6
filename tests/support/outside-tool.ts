import { spawnSync } from "node:child_process";

/**
 * Returns whether a program from outside the project is on this machine. Where it is not, its tests are skipped and say
 * so, because the README promises that Node and git are enough; with TRAMWRIGHT_TOOLS=required, as in CI, that fails.
 */
export function hasTool(name: string, ...probe: string[]): boolean {
  const present = spawnSync(name, probe, { stdio: "ignore" }).error === undefined;
  if (present) return true;
  if (process.env.TRAMWRIGHT_TOOLS === "required")
    throw new Error(`${name} is not installed, and TRAMWRIGHT_TOOLS=required asks for it: apt-get install ${name}`);
  console.warn(`${name} is not installed: its checks are skipped (apt-get install ${name})`);
  return false;
}
