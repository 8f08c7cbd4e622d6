import { execFileSync, spawnSync } from "node:child_process";

/** Programs from outside the project that tests compare with or type at, and the Debian package of each. */
const PACKAGES = {
  admesh: "admesh",
  ccx: "calculix-ccx",
  units: "units",
  python3: "python3",
  "g++": "g++ lib3mf-dev",
} as const;

type Tool = keyof typeof PACKAGES;

/** How each tells its version; to ccx any other word is the name of a job, for which it leaves files behind. */
const VERSION: Readonly<Record<Tool, string>> = {
  admesh: "--version",
  ccx: "-v",
  units: "--version",
  python3: "--version",
  "g++": "--version",
};

/**
 * Returns whether a program is on this machine. Where it is not, its tests are skipped and say so, because the README
 * promises that Node and git are enough; with TRAMWRIGHT_TOOLS=required, as in CI, that fails.
 */
export function hasTool(tool: Tool): boolean {
  if (spawnSync(tool, [VERSION[tool]], { stdio: "ignore" }).error === undefined) return true;
  const cure = `apt-get install ${PACKAGES[tool]}`;
  if (process.env.TRAMWRIGHT_TOOLS === "required")
    throw new Error(`${tool} is not installed, and TRAMWRIGHT_TOOLS=required asks for it: ${cure}`);
  console.warn(`${tool} is not installed: its checks are skipped (${cure})`);
  return false;
}

/** Runs a program and returns what it printed; throws when it fails. */
export function runTool(tool: Tool, args: readonly string[], input = "", cwd?: string): string {
  return execFileSync(tool, args, { input, encoding: "utf8", ...(cwd === undefined ? {} : { cwd }) });
}
