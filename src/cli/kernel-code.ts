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

let code: Promise<WebAssembly.Module> | undefined;

/**
 * Returns the code of the kernel, once: as the build had it optimised, which is there in 5 ms where V8 needs 400 ms of
 * a processor to get so far; else as V8 compiles it now, on other threads, function by function and in two steps.
 */
export function kernelCode(): Promise<WebAssembly.Module> {
  code ??= (async () => optimised() ?? WebAssembly.compile(readShipped(WASM)))();
  // What is wrong is told where it is waited for, which may not have begun.
  code.catch(() => undefined);
  return code;
}

/** Undefined where the build left none for this Node and this machine, or V8 runs under other flags than usual. */
function optimised(): WebAssembly.Module | undefined {
  if (!exists(shipped(OPTIMISED))) return undefined;
  const [wasm, file] = [readShipped(WASM), readShipped(OPTIMISED)];
  const kept = file.subarray(DIGEST);
  if (!digest(wasm, kept).equals(file.subarray(0, DIGEST))) return undefined;
  return intrinsic<WebAssembly.Module>("DeserializeWasmModule", new Uint8Array(kept).buffer, new Uint8Array(wasm));
}

/** Puts the kernel's optimised code beside the program: for the build only, and in a process of its own. */
export async function keepOptimisedKernel(): Promise<void> {
  const wasm = readShipped(WASM);
  for (const flag of IN_FULL) v8.setFlagsFromString(`--no-${flag}`);
  const module = await WebAssembly.compile(wasm);
  for (const flag of IN_FULL) v8.setFlagsFromString(`--${flag}`);
  const serialised = intrinsic<ArrayBuffer>("SerializeWasmModule", module);
  if (serialised === undefined) return;
  const kept = Buffer.from(serialised);
  writeShipped(OPTIMISED, Buffer.concat([digest(wasm, kept), kept]));
}

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
