import { spawnSync } from "node:child_process";
import { cpSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { beforeAll, describe, expect, test } from "vitest";
import { fresh } from "./program.ts";

/** Returns a copy of the built program, in which the kernel's optimised code may be spoilt. */
function copied(): { readonly program: string; readonly code: string } {
  const folder = join(fresh(), "dist");
  cpSync(resolve("dist"), folder, { recursive: true });
  const names = readdirSync(folder).filter((name) => /^manifold-v.*\.compiled$/.test(name));
  expect(names).toHaveLength(1);
  return { program: join(folder, "tramwright.cjs"), code: join(folder, names[0] ?? "") };
}

/** What a run makes of a spacer: the bytes of its STL, and whether V8 took the optimised code. */
function made(program: string, options = ""): { readonly stl: string; readonly optimised: boolean } {
  const folder = fresh();
  // Code that is taken needs no compiling: V8 is asked for it only where there is none.
  const watch = join(folder, "watch.cjs");
  const counting = "const { compile } = WebAssembly; WebAssembly.compile = (...given) => ";
  writeFileSync(watch, `${counting}{ process.stderr.write("compiles\\n"); return compile(...given); };`);
  const { status, stderr } = spawnSync("node", ["-r", watch, program, "make", "wheel-spacer", "-o", folder], {
    encoding: "utf8",
    env: { ...process.env, NODE_OPTIONS: options },
  });
  expect(status).toBe(0);
  return { stl: readFileSync(join(folder, "wheel-spacer.stl"), "latin1"), optimised: !stderr.includes("compiles") };
}

describe("the kernel's code that the build had optimised", () => {
  let usual: ReturnType<typeof made>;
  beforeAll(() => {
    usual = made(resolve("dist/tramwright.cjs"));
  });

  test("is taken", () => expect(usual.optimised).toBe(true));

  test("is left alone where a byte of it is wrong, and the part is the same", () => {
    const { program, code } = copied();
    const bytes = readFileSync(code);
    bytes[bytes.length >> 1] = (bytes[bytes.length >> 1] ?? 0) ^ 1;
    writeFileSync(code, bytes);
    expect(made(program)).toEqual({ stl: usual.stl, optimised: false });
  });

  test("is left alone where it is cut off, or belongs to another kernel", () => {
    const { program, code } = copied();
    const whole = readFileSync(code);
    writeFileSync(code, whole.subarray(0, whole.length - 100));
    expect(made(program)).toEqual({ stl: usual.stl, optimised: false });
    writeFileSync(code, whole);
    const wasm = join(program, "..", "manifold.wasm");
    // A section of its own, which means nothing (WebAssembly core specification, 5.5.3).
    writeFileSync(wasm, Buffer.concat([readFileSync(wasm), Buffer.from([0, 2, 1, 0x78])]));
    expect(made(program)).toEqual({ stl: usual.stl, optimised: false });
  });

  test("is not needed, and is no good for a V8 that runs otherwise", () => {
    const { program, code } = copied();
    for (const options of ["--interpreted-frames-native-stack", "--disallow-code-generation-from-strings"])
      expect(made(program, options)).toEqual({ stl: usual.stl, optimised: false });
    rmSync(code);
    expect(made(program)).toEqual({ stl: usual.stl, optimised: false });
  });
});
