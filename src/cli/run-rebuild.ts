import { loadKernel } from "../geometry/kernel.ts";
import { type Arguments, last } from "./arguments.ts";
import { rebuild } from "./commands/rebuild.ts";
import { type Io, trouble } from "./io.ts";
import type { World } from "./world.ts";

/** Runs `rebuild`. Returns the exit code. */
export async function runRebuild(args: Arguments, io: Io, { kernelCode, version }: World): Promise<number> {
  const { operands, flags } = args;
  if (operands.length === 0) throw trouble("rebuild needs the 3MF file of a part");
  const kernel = loadKernel(kernelCode());
  // A file that cannot be read ends the run before anything waits for it.
  kernel.catch(() => undefined);
  const has = (flag: string) => flags.has(flag);
  const choices = { json: has("json"), quiet: has("quiet"), force: has("force") };
  return await rebuild({ files: operands, output: last(args, "output"), version, ...choices }, kernel, io);
}
