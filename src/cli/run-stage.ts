import { loadKernel } from "../geometry/kernel.ts";
import { type Arguments, last } from "./arguments.ts";
import { compare } from "./commands/compare.ts";
import { report } from "./commands/report.ts";
import { tram } from "./commands/tram.ts";
import { EXIT, type Io, trouble } from "./io.ts";
import { readTarget } from "./load.ts";
import { type LoadedStage, loadStage, type Machine } from "./load-stage.ts";
import { inOrder } from "./message.ts";
import { tell } from "./tell.ts";
import type { World } from "./world.ts";

/** Runs `report`. Returns the exit code. */
export function runReport(args: Arguments, io: Io, version: string): number {
  const [plan, ...more] = args.operands;
  if (plan === undefined || more.length > 0) throw trouble("report takes the plan of one stage");
  const flags = { json: args.flags.has("json"), quiet: args.flags.has("quiet"), version };
  return report(stageOf(plan, args, version), flags, io);
}

/** Runs `tram`. Returns the exit code. */
export function runTram(args: Arguments, io: Io, version: string): number {
  // `--probe a b c` gives the first to the option and leaves the others among the names.
  const isProbe = (word: string) => word.includes(",");
  const [plan, ...more] = args.operands.filter((word) => !isProbe(word));
  const probes = [...(args.values.probe ?? []), ...args.operands.filter(isProbe)];
  if (plan === undefined || more.length > 0) throw trouble("tram takes the plan of one stage, and --probe x,y,height");
  if (probes.length < 3) throw trouble(`tram needs three probes or more, and there are ${probes.length}`);
  const { machine, wrong } = machineOf(stageOf(plan, args, version), io);
  if (machine === undefined) return EXIT.errors;
  const code = tram(machine, { probes, springs: args.values.spring ?? [], json: args.flags.has("json") }, io);
  return wrong ? EXIT.errors : code;
}

/** Runs `compare`: two plans, or one with what `--set` makes of it. Returns the exit code. */
export async function runCompare(args: Arguments, io: Io, { version, kernelCode }: World): Promise<number> {
  const [old, next, ...more] = args.operands;
  const set = args.values.set ?? [];
  if (old === undefined || more.length > 0 || (next === undefined && set.length === 0))
    throw trouble("compare takes two plans, or one and --set key=value");
  const before = machineOf(stageOf(old, args, version, []), io);
  const after = machineOf(stageOf(next ?? old, args, version), io);
  if (before.machine === undefined || after.machine === undefined) return EXIT.errors;
  const wrong = { before: before.wrong, after: after.wrong };
  const flags = { json: args.flags.has("json"), quiet: args.flags.has("quiet"), wrong };
  return await compare(before.machine, after.machine, flags, loadKernel(kernelCode()), io);
}

function stageOf(plan: string, args: Arguments, version: string, set = args.values.set ?? []): LoadedStage {
  const target = readTarget(plan);
  if (target.family !== undefined) throw trouble(`${plan} is a family of parts, and the plan of a stage is wanted`);
  return loadStage(target, { set, printer: last(args, "printer"), version });
}

interface Told {
  /** Undefined when the errors leave none to work with. */
  readonly machine: Machine | undefined;
  /** Whether the plan has errors. */
  readonly wrong: boolean;
}

/** Tells the errors of a plan. Returns its machine, and whether there were any. */
function machineOf({ machine, messages }: LoadedStage, io: Io): Told {
  const errors = inOrder(messages).filter(({ diagnostic }) => diagnostic.level === "error");
  tell(errors, io);
  return { machine, wrong: errors.length > 0 };
}
