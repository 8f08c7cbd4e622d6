import type { Mesh } from "../geometry/mesh.ts";
import { type Solid, withMeshes } from "../geometry/solid.ts";
import { type Assembled, type TestedAssembly, testedAssembly } from "./assembly.ts";
import type { Builders } from "./builders.ts";
import type { Carved } from "./carve.ts";
import type { Bodies } from "./clash/meetings.ts";
import { builtPart, isBuilt, type PartBuild, planBuilds } from "./part-builds.ts";
import { inspected, type PieceResult } from "./piece-work.ts";
import { forbidden, type StagePart } from "./stage-parts.ts";
import type { SetPart } from "./stage-set.ts";

/** What a machine is built with. */
export interface Means {
  readonly builders: Builders;
  readonly version: string;
  /** What was found of the assembled machine before. */
  readonly earlier?: TestedAssembly | undefined;
  /** Lets others have their turn: a key that was pressed, a body that came from another thread. */
  readonly pause?: () => Promise<void>;
}

/** The parts that were built and may be printed, and what was found between the bodies of the machine. */
export interface BuiltMachine {
  readonly parts: readonly SetPart[];
  readonly assembly: TestedAssembly | undefined;
}

/**
 * Builds and verifies `missing` parts of a machine and puts the whole together. While the builders carve bodies and
 * compare them, what has come is inspected and written down here.
 */
export async function builtMachine(
  machine: Assembled,
  missing: readonly StagePart[],
  { builders, version, earlier, pause }: Means,
): Promise<BuiltMachine> {
  const { builds, works } = planBuilds(missing);
  const results: (PieceResult | undefined)[] = works.map(() => undefined);
  const built = new Map<PartBuild, SetPart>();
  const meshes = new Map<Solid, Mesh>();
  const line = waitingLine<{ readonly index: number; readonly carved: Carved }>();
  const carving = builders.carve(works, (index, carved) => {
    const work = works[index];
    if (work !== undefined) meshes.set(work.piece.solid, carved.mesh);
    line.join({ index, carved });
  });
  const inspecting = async () => {
    for (let left = works.length; left > 0; left--) {
      const { index, carved } = await line.next();
      const work = works[index];
      if (work !== undefined) results[index] = inspected(work, carved);
      for (const one of builds)
        if (!built.has(one) && isBuilt(one, results)) built.set(one, builtPart(one, results, version));
      await pause?.();
    }
  };
  const compare = async ({ bodies, lift }: Bodies) => {
    await carving;
    // What is carved is not carved again for the comparison.
    return await builders.compare({
      bodies: bodies.map((body) => ({ ...body, solid: withMeshes(body.solid, meshes) })),
      lift,
    });
  };
  const [assembly] = await Promise.all([testedAssembly(machine, earlier, version, compare), inspecting(), carving]);
  const stopped = forbidden(machine.stage, assembly?.found);
  const parts = builds.flatMap((one) => (stopped(one.part.owner) ? [] : (built.get(one) ?? [])));
  return { parts, assembly };
}

/** Returns a line in which things wait, first come, first served. */
function waitingLine<Thing>(): { readonly join: (thing: Thing) => void; readonly next: () => Promise<Thing> } {
  const waiting: Thing[] = [];
  let called: (() => void) | undefined;
  return {
    join: (thing) => {
      waiting.push(thing);
      called?.();
    },
    next: async () => {
      for (;;) {
        const first = waiting.shift();
        if (first !== undefined) return first;
        await new Promise<void>((come) => {
          called = come;
        });
      }
    },
  };
}
