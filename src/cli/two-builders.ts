import { availableParallelism } from "node:os";
import { Worker } from "node:worker_threads";
import { type Builders, type PieceResult, type PieceWork, pieceResult } from "../build/piece-work.ts";
import { breath } from "./breath.ts";
import { exists, shipped } from "./files.ts";

/** What the second thread is told. Both threads take the next body from one counter in shared memory. */
export interface Orders {
  readonly works: readonly PieceWork[];
  readonly next: Int32Array;
}

/** What it answers: body by body, and then that it is done. */
export type Answer = { readonly index: number; readonly result: PieceResult } | "nothing left";

/** The second thread's program, beside this one. */
const PROGRAM = "builder.cjs";

/** Returns the number of the next body to build, which nobody else gets. */
export const taken = (next: Int32Array): number => Atomics.add(next, 0, 1);

/**
 * Returns the builders. The second thread works on its own until this one comes to help. Where it cannot start, or ends
 * early, this thread builds everything that it left. `code` is the kernel's compiled wasm; `progress` hears of each body.
 */
export function twoBuilders(code: Promise<WebAssembly.Module>, progress?: (words: string) => void): Builders {
  let second: Promise<Worker> | undefined;
  const prepare = () => {
    if (second !== undefined || availableParallelism() < 2 || !exists(shipped(PROGRAM))) return;
    second = code.then(started);
    // Whoever begins nothing never hears that it failed.
    second.catch(() => undefined);
  };
  return {
    prepare,
    begin: (works) => {
      const next = new Int32Array(new SharedArrayBuffer(4));
      const results: (PieceResult | undefined)[] = works.map(() => undefined);
      const over = second?.then((worker) => listen(worker, { works, next }, results)).catch(() => undefined);
      return async (kernel) => {
        const ready = await kernel;
        const build = (index: number) => {
          const work = works[index];
          if (work !== undefined) results[index] ??= pieceResult(work, ready);
        };
        for (let index = taken(next); index < works.length; index = taken(next)) {
          progress?.(`building ${index + 1} of ${works.length} bodies`);
          build(index);
          await breath();
        }
        await over;
        for (const index of works.keys()) build(index);
        return results as PieceResult[];
      };
    },
  };
}

function started(code: WebAssembly.Module): Worker {
  const worker = new Worker(shipped(PROGRAM), { workerData: code });
  worker.on("error", () => undefined);
  worker.unref();
  return worker;
}

/** Gives a thread its orders and collects what it does; fulfilled when it has nothing left to do, or is no more. */
function listen(worker: Worker, orders: Orders, results: (PieceResult | undefined)[]): Promise<void> {
  return new Promise((resolve) => {
    const end = () => {
      worker.off("message", collect);
      worker.off("exit", end);
      worker.unref();
      resolve();
    };
    const collect = (answer: Answer) => {
      if (answer === "nothing left") end();
      else results[answer.index] = answer.result;
    };
    worker.on("message", collect);
    worker.on("exit", end);
    worker.ref();
    worker.postMessage(orders);
    // A thread that has ended has no number, and will not say so again.
    if (worker.threadId < 0) end();
  });
}
