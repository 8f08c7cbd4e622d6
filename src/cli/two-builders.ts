import type { Worker } from "node:worker_threads";
import type { Builders } from "../build/builders.ts";
import { type Carved, carve, type PieceWork } from "../build/carve.ts";
import { type Bodies, type Meetings, meetingsOf } from "../build/clash/meetings.ts";
import type { Kernel } from "../geometry/kernel.ts";
import { breath } from "./breath.ts";

/** What the second thread is told to do. */
export type Order = { readonly works: readonly PieceWork[] } | { readonly machine: Bodies };

/** What it answers: body by body or all that meets, and then that it is done. */
export type Answer =
  | { readonly index: number; readonly carved: Carved }
  | { readonly found: Meetings }
  | "nothing left";

/**
 * Returns builders that leave to a second thread what needs the kernel, so that this one can go on with what does not.
 * Where there is none, or it ends early, this thread does what it left. `progress` hears of each body.
 */
export function twoBuilders(
  kernel: () => Promise<Kernel>,
  second: Worker | undefined,
  progress?: (words: string) => void,
): Builders {
  return {
    carve: async (works, heard) => {
      const done = new Set<number>();
      const step = () => progress?.(`building ${Math.min(done.size + 1, works.length)} of ${works.length} bodies`);
      const hear = (index: number, carved: Carved) => {
        done.add(index);
        step();
        heard(index, carved);
      };
      step();
      await answered(second, { works }, (answer) => {
        if ("carved" in answer) hear(answer.index, answer.carved);
      });
      for (const [index, work] of works.entries()) {
        if (done.has(index)) continue;
        hear(index, carve(work, await kernel()));
        await breath();
      }
    },
    compare: async (machine) => {
      let found: Meetings | undefined;
      await answered(second, { machine }, (answer) => {
        if ("found" in answer) found = answer.found;
      });
      return found ?? meetingsOf(machine, await kernel());
    },
  };
}

/** Gives a thread an order and hears its answers; fulfilled when it has nothing left to do, or is no more. */
function answered(
  worker: Worker | undefined,
  order: Order,
  hear: (answer: Exclude<Answer, string>) => void,
): Promise<void> {
  return new Promise((resolve) => {
    if (worker === undefined) return resolve();
    const end = () => {
      worker.off("message", listen);
      worker.off("exit", end);
      worker.unref();
      resolve();
    };
    const listen = (answer: Answer) => (answer === "nothing left" ? end() : hear(answer));
    worker.on("message", listen);
    worker.on("exit", end);
    worker.ref();
    worker.postMessage(order);
    // A thread that has ended has no number, and will not say so again.
    if (worker.threadId < 0) end();
  });
}
