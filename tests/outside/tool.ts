import { execFileSync } from "node:child_process";

/**
 * Runs a tool from outside the project and returns what it printed. A tool that is missing is a failure, never a reason
 * to skip: a check that does not run checks nothing.
 */
export function runTool(tool: string, debian: string, args: readonly string[], input = "", cwd?: string): string {
  try {
    return execFileSync(tool, args, { input, encoding: "utf8", ...(cwd === undefined ? {} : { cwd }) });
  } catch (cause) {
    const missing = cause instanceof Error && "code" in cause && cause.code === "ENOENT";
    const why = missing ? `${tool} is not installed: apt-get install ${debian}` : `${tool} failed`;
    throw new Error(why, { cause });
  }
}
