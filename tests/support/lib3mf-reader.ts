import { execFileSync } from "node:child_process";
import { mkdtempSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { hasTool } from "./outside-tool.ts";

/** What lib3mf finds in a 3MF file. */
export interface Found {
  readonly path: string;
  /** 0 where the file was read in strict mode. */
  readonly result: number;
  readonly warnings: number;
  /** 1 is the millimetre. */
  readonly unit: number;
  readonly picture: boolean;
  readonly metadata: Readonly<Record<string, string>>;
  readonly objects: readonly {
    readonly name: string;
    readonly vertices: number;
    readonly triangles: number;
    readonly sound: boolean;
    readonly volume: number;
  }[];
  readonly items: readonly { readonly of: string; readonly at: readonly [number, number, number] }[];
}

/** Returns what reads 3MF files by lib3mf; undefined where the library or a compiler is missing, as `hasTool` does. */
export function lib3mfReader(): ((paths: readonly string[]) => Found[]) | undefined {
  if (!hasTool("g++")) return undefined;
  const program = join(mkdtempSync(join(tmpdir(), "tramwright-3mf-")), "read-3mf");
  const source = resolve("tests/outside/read-3mf.cpp");
  try {
    execFileSync("g++", ["-O1", "-I/usr/include/lib3mf", source, "-o", program, "-l3MF"], { stdio: "pipe" });
  } catch (thrown) {
    const cure = "apt-get install g++ lib3mf-dev";
    if (process.env.TRAMWRIGHT_TOOLS === "required") throw new Error(`the 3MF reader cannot be built: ${cure}`);
    console.warn(`the 3MF reader cannot be built: its checks are skipped (${cure}): ${String(thrown).slice(0, 200)}`);
    return undefined;
  }
  return (paths) => {
    const lines = execFileSync(program, paths, { encoding: "utf8", maxBuffer: 2 ** 28 })
      .trimEnd()
      .split("\n");
    return lines.map((line) => JSON.parse(line) as Found);
  };
}
