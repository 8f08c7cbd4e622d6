import { withKnown } from "../geometry/solid.ts";
import { type Assembled, type TestedAssembly, testedAssembly } from "./assembly.ts";
import type { Builders } from "./builders.ts";
import type { Carved, PieceWork } from "./carve.ts";
import type { Bodies } from "./clash/meetings.ts";
import { builtPart, isBuilt, type PartBuild, planBuilds } from "./part-builds.ts";
import { inspected, type PieceResult } from "./piece-work.ts";
import { forbidden, type StagePart } from "./stage-parts.ts";
import type { SetPart } from "./stage-set.ts";

/** What a machine is built with. */
export interface Means {
  readonly builders: Builders;
  readonly version: string;
  /** Hears of each part as it is built. */
  readonly heard?: (part: SetPart) => void;
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
  { builders, version, heard, earlier, pause }: Means,
): Promise<BuiltMachine> {
  const { builds, works, taken } = planBuilds([...missing].sort((one, other) => weightOf(one) - weightOf(other)));
  const results: (PieceResult | undefined)[] = [];
  const built = new Map<StagePart, SetPart>();
  const inspect = async (work: PieceWork, index: number, carved: Carved) => {
    results[index] = inspected(work, carved);
    for (const one of builds) {
      if (built.has(one.part) || !isBuilt(one, results)) continue;
      const part = builtPart(one, results, version);
      built.set(one.part, part);
      heard?.(part);
    }
    await pause?.();
  };
  // One after the other, as they come.
  let inspecting = Promise.resolve();
  const carving = builders.carve(works, (index, carved) => {
    const work = taken[index];
    if (work === undefined) return;
    inspecting = inspecting.then(() => inspect(work, index, carved));
    // A fault is told where all is waited for, which may not have begun.
    inspecting.catch(() => undefined);
  });
  const [assembly] = await Promise.all([
    testedAssembly(machine, earlier, version, (all) => builders.compare(asTwins(all, builds, taken))),
    carving.then(() => inspecting),
  ]);
  const stopped = forbidden(machine.stage, assembly?.found);
  const parts = missing.flatMap((part) => (stopped(part.owner) ? [] : (built.get(part) ?? [])));
  return { parts, assembly };
}

/** Simple parts come first: the first one can be inspected the sooner, and the last ones beside the comparison. */
const weightOf = ({ designed }: StagePart): number => designed.design.dimensions.length;

/** Returns the machine with the body that is built in the place of each that is alike: it need not be carved again. */
function asTwins({ bodies, lift }: Bodies, builds: readonly PartBuild[], taken: readonly PieceWork[]): Bodies {
  const own = builds.flatMap(({ draft, from }) =>
    draft.pieces.map(({ solid }, index) => [solid, taken[from + index]?.piece.solid] as const),
  );
  const twins = new Map(own.filter(([solid, twin]) => solid !== twin));
  return { bodies: bodies.map((body) => ({ ...body, solid: withKnown(body.solid, (one) => twins.get(one)) })), lift };
}
