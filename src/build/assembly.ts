import { bodiesOf } from "../stage/bodies/index.ts";
import type { PrinterOf, Stage } from "../stage/index.ts";
import { type AssemblyFault, faultsOf } from "./clash/index.ts";
import type { Bodies, Meetings } from "./clash/meetings.ts";
import { shortHash } from "./hash.ts";
import type { StagePart } from "./stage-parts.ts";

/** What was found between the bodies of the assembled machine, and what stands for all that it follows from. */
export interface TestedAssembly {
  readonly key: string;
  readonly found: readonly AssemblyFault[];
}

/** A machine with its parts and their printers. */
export interface Assembled {
  readonly stage: Stage;
  readonly parts: readonly StagePart[];
  readonly printer: PrinterOf;
}

/** Returns what stands for the bodies of a machine and for what was told of them before. */
export function assemblyKey({ stage, parts }: Pick<Assembled, "stage" | "parts">, version: string): string {
  const { plan, pulleys, loops, diagnostics } = stage;
  const placed = parts.map(({ request: { name }, hash, owner: { placement } }) => ({ name, hash, placement }));
  return shortHash({ version, plan, pulleys, loops, diagnostics, placed });
}

/**
 * Tests the assembled machine for clashes and for gaps too small. `earlier` is believed where it is of the same
 * machine. A plan from which no part could be derived has nothing to put together, and gives undefined; so has one of
 * which things were left out, since the others stand elsewhere with them.
 */
export async function testedAssembly(
  machine: Assembled,
  earlier: TestedAssembly | undefined,
  version: string,
  compare: (machine: Bodies) => Promise<Meetings>,
): Promise<TestedAssembly | undefined> {
  if (machine.parts.length === 0 || machine.stage.partly === true) return undefined;
  const key = assemblyKey(machine, version);
  if (earlier?.key === key) return earlier;
  const { stage, printer } = machine;
  const bodies = bodiesOf(stage, printer);
  return { key, found: faultsOf(stage, bodies, await compare({ bodies, lift: stage.plan.travel.lift })) };
}
