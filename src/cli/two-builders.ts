import type { Worker } from "node:worker_threads";
import { asCarved, type Builders } from "../build/builders.ts";
import { type Carved, carve, type PieceWork } from "../build/carve.ts";
import { type Bodies, type Meetings, meetingsOf } from "../build/clash/meetings.ts";
import type { Kernel } from "../geometry/kernel.ts";
import type { Mesh } from "../geometry/mesh.ts";
import type { Solid } from "../geometry/solid.ts";
import { breath } from "./breath.ts";

/** What the second thread is told to do: to carve bodies, by their numbers from 0, then to compare them. */
export type Order =
  | { readonly index: number; readonly work: PieceWork }
  /** `carved` are the solids of the works before, in their order, as they stand in the machine. */
  | { readonly machine: Bodies; readonly carved: readonly Solid[] };

/** What it answers: body by body, and all that meets. */
export type Answer = { readonly index: number; readonly carved: Carved } | { readonly found: Meetings };

/**
 * Returns builders that leave to a second thread what needs the kernel, so that this one can go on with what does not.
 * `start` starts it when there is something to build. Where there is none, or it ends early, this thread does what it
 * left. `progress` hears of each body.
 */
export function twoBuilders(
  kernel: () => Promise<Kernel>,
  start: () => Worker | undefined,
  progress?: (words: string) => void,
): Builders {
  let giving: Give | undefined;
  const second = (): Give => {
    giving ??= giver(start());
    return giving;
  };
  let solids: Solid[] = [];
  let carving: Promise<ReadonlyMap<Solid, Mesh>> = Promise.resolve(new Map());
  const carveAll = async (drawn: Iterable<PieceWork>, heard: (index: number, carved: Carved) => void) => {
    const works: PieceWork[] = [];
    function* orders(): Generator<Order> {
      for (const work of drawn) {
        solids.push(work.piece.solid);
        yield { index: works.push(work) - 1, work };
      }
      step();
    }
    const done = new Set<number>();
    const meshes = new Map<Solid, Mesh>();
    const step = () => progress?.(`building ${Math.min(done.size + 1, works.length)} of ${works.length} bodies`);
    const hear = (index: number, work: PieceWork | undefined, carved: Carved) => {
      if (work === undefined) return;
      done.add(index);
      meshes.set(work.piece.solid, carved.mesh);
      step();
      heard(index, carved);
    };
    await second()(orders(), (answer) => {
      if ("carved" in answer) hear(answer.index, works[answer.index], answer.carved);
      return done.size === works.length;
    });
    for (const [index, work] of works.entries()) {
      if (done.has(index)) continue;
      hear(index, work, carve(work, await kernel()));
      await breath();
    }
    return meshes;
  };
  return {
    getReady: () => {
      second();
    },
    carve: async (works, heard) => {
      solids = [];
      carving = carveAll(works, heard);
      await carving;
    },
    compare: async (machine) => {
      let found: Meetings | undefined;
      await second()([{ machine, carved: solids }], (answer) => {
        if ("found" in answer) found = answer.found;
        return found !== undefined;
      });
      return found ?? meetingsOf(asCarved(machine, await carving), await kernel());
    },
  };
}

/** Gives orders and hears the answers until one is the last; fulfilled then, or when the thread is no more. */
type Give = (orders: Iterable<Order>, isLast: (answer: Answer) => boolean) => Promise<void>;

/**
 * Returns how a thread is given its orders. This program ends only when it has answered all of them. Without a thread
 * they are taken, and nobody answers.
 */
function giver(worker: Worker | undefined): Give {
  if (worker === undefined)
    return async (orders) => {
      Array.from(orders);
    };
  let open = 0;
  return (orders, isLast) =>
    new Promise((resolve, reject) => {
      const leave = () => {
        worker.off("message", listen);
        worker.off("exit", end);
        open--;
        if (open === 0) worker.unref();
      };
      const end = () => {
        leave();
        resolve();
      };
      const listen = (answer: Answer) => {
        if (isLast(answer)) end();
      };
      worker.on("message", listen);
      worker.on("exit", end);
      open++;
      worker.ref();
      let given = 0;
      try {
        for (const order of orders) {
          worker.postMessage(order);
          given++;
        }
      } catch (thrown) {
        leave();
        reject(thrown);
        return;
      }
      // A thread that has ended has no number, and will not say so again.
      if (given === 0 || worker.threadId < 0) end();
    });
}
