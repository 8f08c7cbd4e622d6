import type { Kernel } from "../geometry/kernel.ts";
import { type Carved, carve, type PieceWork } from "./carve.ts";
import { type Bodies, type Meetings, meetingsOf } from "./clash/meetings.ts";

/** Does all that needs the kernel, on this thread or on another one: what goes in and comes out is plain data. */
export interface Builders {
  /** Carves bodies; `heard` is told of each as it comes, in any order. Fulfilled when it has heard of all. */
  readonly carve: (works: readonly PieceWork[], heard: (index: number, carved: Carved) => void) => Promise<void>;
  /** Compares the bodies of a machine in pairs. */
  readonly compare: (machine: Bodies) => Promise<Meetings>;
}

/** Returns builders that do everything on the thread that asks. `kernel` is loaded when something needs it. */
export function oneBuilder(kernel: () => Promise<Kernel>): Builders {
  return {
    carve: async (works, heard) => {
      const ready = await kernel();
      for (const [index, work] of works.entries()) heard(index, carve(work, ready));
    },
    compare: async (machine) => meetingsOf(machine, await kernel()),
  };
}
