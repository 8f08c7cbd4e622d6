import { createHash } from "node:crypto";
import v8 from "node:v8";
import { exists, readShipped, shipped, writeShipped } from "./files.ts";

const WASM = "manifold.wasm";
/** What V8 made of it is good for one version of Node on one kind of machine, which no other ever looks at. */
const OPTIMISED = `manifold-${process.version}-${process.platform}-${process.arch}.compiled`;
/** Bytes of a SHA-256, which stands before the code. */
const DIGEST = 32;

/** How V8 compiles a module at once and in full, where it would begin with quick code and better it while it runs. */
const IN_FULL = ["liftoff", "wasm-lazy-compilation", "wasm-dynamic-tiering"] as const;

/**
 * Returns the kernel's code as the build had it optimised: ready in 5 ms, where V8 needs 400 ms of a processor to get
 * so far. Undefined where there is none for this Node and this machine. To be asked before any flag of V8 is set: V8
 * takes code only under the flags under which it was made.
 */
export function optimisedKernel(): WebAssembly.Module | undefined {
  if (!exists(shipped(OPTIMISED))) return undefined;
  const [wasm, file] = [readShipped(WASM), readShipped(OPTIMISED)];
  const code = file.subarray(DIGEST);
  if (!digest(wasm, code).equals(file.subarray(0, DIGEST))) return undefined;
  return intrinsic<WebAssembly.Module>("DeserializeWasmModule", Uint8Array.from(code).buffer, Uint8Array.from(wasm));
}

/** Puts the kernel's optimised code beside the program: for the build only, and in a process of its own. */
export async function keepOptimisedKernel(): Promise<void> {
  const wasm = readShipped(WASM);
  for (const flag of IN_FULL) v8.setFlagsFromString(`--no-${flag}`);
  const module = await WebAssembly.compile(wasm);
  for (const flag of IN_FULL) v8.setFlagsFromString(`--${flag}`);
  const code = Buffer.from(intrinsic<ArrayBuffer>("SerializeWasmModule", module) ?? new ArrayBuffer());
  writeShipped(OPTIMISED, Buffer.concat([digest(wasm, code), code]));
}

/** Returns the kernel's code as V8 compiles it now, on other threads: functions as they are called, in two steps. */
export const compiledKernel = (): Promise<WebAssembly.Module> => WebAssembly.compile(readShipped(WASM));

function digest(...parts: readonly Uint8Array[]): Buffer {
  const hash = createHash("sha256");
  for (const part of parts) hash.update(part);
  return hash.digest();
}

/**
 * Calls a function of V8 that Node offers under no other name: browsers keep WebAssembly between visits with these two.
 * Undefined where V8 does not take what it is given.
 */
function intrinsic<Answer>(name: string, ...values: readonly unknown[]): Answer | undefined {
  const names = values.map((_, index) => `value${index}`);
  v8.setFlagsFromString("--allow-natives-syntax");
  try {
    return new Function(...names, `return %${name}(${names})`)(...values);
  } catch {
    return undefined;
  } finally {
    v8.setFlagsFromString("--no-allow-natives-syntax");
  }
}
