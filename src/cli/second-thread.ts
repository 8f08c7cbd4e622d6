import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import { exists, shipped } from "./files.ts";
import type { KernelCode } from "./kernel-code.ts";
import type { Order } from "./two-builders.ts";

/** The second thread's program, beside this one. */
const PROGRAM = "builder.cjs";

/**
 * Starts the thread that builds bodies beside this one: it gets ready while this one works out what to build. `kernel`
 * is the code that both run. Undefined where there is one processor, or no program for it.
 */
export function secondThread(kernel: KernelCode): Worker | undefined {
  if (availableParallelism() < 2 || !exists(shipped(PROGRAM))) return undefined;
  const worker = new Worker(shipped(PROGRAM));
  worker.on("error", () => undefined);
  const send = (code: WebAssembly.Module) => worker.postMessage({ kernel: code } satisfies Order);
  // At once where it can be: this thread is busy from here on, and no promise is kept until it is done.
  if ("then" in kernel) kernel.then(send, () => undefined);
  else send(kernel);
  // A run that builds nothing does not wait for it.
  worker.unref();
  return worker;
}
