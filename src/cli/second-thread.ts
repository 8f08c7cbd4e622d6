import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import { exists, shipped } from "./files.ts";

/** The second thread's program, beside this one. */
const PROGRAM = "builder.cjs";

/**
 * Starts the thread that builds bodies beside this one: it gets ready while this one works out what to build. Undefined
 * where there is one processor, or no program for it.
 */
export function secondThread(): Worker | undefined {
  if (availableParallelism() < 2 || !exists(shipped(PROGRAM))) return undefined;
  const worker = new Worker(shipped(PROGRAM));
  worker.on("error", () => undefined);
  // A run that builds nothing does not wait for it.
  worker.unref();
  return worker;
}
