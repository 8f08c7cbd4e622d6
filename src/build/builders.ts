import type { Kernel } from "../geometry/kernel.ts";
import type { Mesh } from "../geometry/mesh.ts";
import { type Solid, withKnown } from "../geometry/solid.ts";
import { type Carved, carve, type PieceWork } from "./carve.ts";
import { type Bodies, type Meetings, meetingsOf } from "./clash/meetings.ts";

/** Does all that needs the kernel, on this thread or on another one: what goes in and comes out is plain data. */
export interface Builders {
  /** Told as soon as it is clear that there will be something to build. */
  readonly getReady: () => void;
  /**
   * Carves bodies, the first ones while the others are still drawn; `heard` is told of each as it comes, in any order,
   * but not before the last one was taken. Fulfilled when it has heard of all.
   */
  readonly carve: (works: Iterable<PieceWork>, heard: (index: number, carved: Carved) => void) => Promise<void>;
  /**
   * Compares the bodies of a machine in pairs. It may be asked for while bodies are still carved: those that `carve`
   * was last given are not carved again.
   */
  readonly compare: (machine: Bodies) => Promise<Meetings>;
}

/** Returns builders that do everything on the thread that asks. `kernel` is loaded when something needs it. */
export function oneBuilder(kernel: () => Promise<Kernel>): Builders {
  let carving: Promise<ReadonlyMap<Solid, Mesh>> = Promise.resolve(new Map());
  const carveAll = async (works: Iterable<PieceWork>, heard: (index: number, carved: Carved) => void) => {
    const all = [...works];
    const ready = await kernel();
    const meshes = new Map<Solid, Mesh>();
    for (const [index, work] of all.entries()) {
      const carved = carve(work, ready);
      meshes.set(work.piece.solid, carved.mesh);
      heard(index, carved);
    }
    return meshes;
  };
  return {
    getReady: () => undefined,
    carve: async (works, heard) => {
      carving = carveAll(works, heard);
      await carving;
    },
    compare: async (machine) => meetingsOf(asCarved(machine, await carving), await kernel()),
  };
}

/** Returns the machine with what was carved in place of what it was carved from. */
export function asCarved({ bodies, lift }: Bodies, meshes: ReadonlyMap<Solid, Mesh>): Bodies {
  const known = (solid: Solid) => {
    const mesh = meshes.get(solid);
    return mesh === undefined ? undefined : ({ kind: "meshed", mesh } as const);
  };
  return { bodies: bodies.map((body) => ({ ...body, solid: withKnown(body.solid, known) })), lift };
}
