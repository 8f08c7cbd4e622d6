import type { Worker } from "node:worker_threads";
import type { Carved, PieceWork } from "../build/carve.ts";
import { type Builders, inspected, type PieceResult, pieceResult } from "../build/piece-work.ts";
import { breath } from "./breath.ts";
import { taken } from "./taken.ts";

/** What the second thread is told to build. Both threads take the next one from one counter in shared memory. */
export interface Orders {
  readonly works: readonly PieceWork[];
  readonly next: Int32Array;
}

/** What it answers: body by body, and then that it is done. */
export type Answer = { readonly index: number; readonly carved: Carved } | "nothing left";

/**
 * Returns the builders. The second thread works on its own until this one comes to help. Where there is none, or it ends
 * early, this thread builds everything that it left. `progress` hears of each body.
 */
export function twoBuilders(second: Worker | undefined, progress?: (words: string) => void): Builders {
  return {
    begin: (works) => {
      const next = new Int32Array(new SharedArrayBuffer(4));
      const results: (PieceResult | undefined)[] = works.map(() => undefined);
      let tell = () => {};
      const over = second === undefined ? undefined : listen(second, { works, next }, results, () => tell());
      return async (kernel, arrived) => {
        const ready = await kernel;
        tell = () => arrived?.(results);
        const build = (index: number) => {
          const work = works[index];
          if (work === undefined || results[index] !== undefined) return;
          results[index] = pieceResult(work, ready);
          tell();
        };
        tell();
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

/** Gives a thread its orders and collects what it does; fulfilled when it has nothing left to do, or is no more. */
function listen(
  worker: Worker,
  orders: Orders,
  results: (PieceResult | undefined)[],
  arrived: () => void,
): Promise<void> {
  return new Promise((resolve) => {
    const end = () => {
      worker.off("message", collect);
      worker.off("exit", end);
      worker.unref();
      resolve();
    };
    const collect = (answer: Answer) => {
      if (answer === "nothing left") return end();
      const work = orders.works[answer.index];
      if (work !== undefined) results[answer.index] = inspected(work, answer.carved);
      arrived();
    };
    worker.on("message", collect);
    worker.on("exit", end);
    worker.ref();
    worker.postMessage(orders);
    // A thread that has ended has no number, and will not say so again.
    if (worker.threadId < 0) end();
  });
}
