import { resolve } from "node:path";
import { nearest } from "../core/nearest.ts";
import { loadKernel } from "../geometry/kernel.ts";
import { type Arguments, last, readArguments, refuseContradictions, refuseStrangers, VALUES } from "./arguments.ts";
import { make } from "./commands/make.ts";
import { stock } from "./commands/stock.ts";
import { cleanUp as cleanFiles } from "./files.ts";
import { COMMANDS, helpOf, overview } from "./help.ts";
import { EXIT, type Io, trouble } from "./io.ts";
import { isPlan, readTarget } from "./load.ts";
import type { Progress } from "./progress.ts";
import { outletsOf, type World } from "./world.ts";

let progress: Progress | undefined;

/** Removes what an interrupted run would leave behind, on the screen and on the disk. */
export function cleanUp(): void {
  progress?.clear();
  cleanFiles();
}

/** Runs one command line and returns its exit code. Troubles are thrown for `main` to print. */
export async function run(world: World): Promise<number> {
  const { argv, version } = world;
  const args = readArguments(argv);
  const { io, progress: line } = outletsOf(args, world);
  progress = line;
  if (args.flags.has("version")) return say(io, version);
  if (args.command === "help") atMost(args.operands, 1, "help");
  const helps = args.flags.has("help") || args.command === "help";
  const [about = ""] = args.operands;
  const asked = args.command !== "help" ? args.command : about === "help" ? "" : about;
  if (asked === "" && (helps || argv.length === 0)) return say(io, overview(version));
  if (!Object.hasOwn(COMMANDS, asked)) throw trouble(unknownCommand(asked));
  if (helps) return say(io, helpOf(asked));
  refuseStrangers(args);
  refuseContradictions(args);
  try {
    return await dispatch(args, io, world);
  } finally {
    progress?.clear();
  }
}

/** What only some commands need, machines above all, is loaded by them: making one part is over sooner without it. */
async function dispatch(args: Arguments, io: Io, world: World): Promise<number> {
  const { command, operands, flags } = args;
  const json = flags.has("json");
  switch (command) {
    case "make":
    case "check":
      return await build(args, io, world);
    case "parts":
      atMost(operands, 1, command);
      return (await import("./commands/parts.ts")).parts(
        operands[0] === undefined ? { json } : { family: operands[0], json },
        io,
      );
    case "schema":
      atMost(operands, 1, command);
      return (await import("./commands/schema.ts")).schema(operands[0], io);
    case "completion":
      atMost(operands, 1, command);
      return (await import("./commands/completion.ts")).completion(operands[0], io);
    case "new":
      return await (await import("./run-new.ts")).runNew(args, io, world);
    case "rebuild":
      return await (await import("./run-rebuild.ts")).runRebuild(args, io, world);
    case "explain":
      return (await import("./run-explain.ts")).runExplain(args, io, world.version);
    case "report":
      return (await import("./run-stage.ts")).runReport(args, io, world.version);
    case "tram":
      return (await import("./run-stage.ts")).runTram(args, io, world.version);
    case "compare":
      return await (await import("./run-stage.ts")).runCompare(args, io, world);
    default: {
      atMost(operands, 2, command);
      const [table, row] = operands;
      const filters = Object.fromEntries(
        Object.entries(args.values)
          .filter(([name]) => !VALUES.includes(name))
          .map(([name, all]) => [name, all.at(-1) ?? ""]),
      );
      return stock(
        { ...(table === undefined ? {} : { table }), ...(row === undefined ? {} : { row }), filters, json },
        io,
      );
    }
  }
}

async function build(args: Arguments, io: Io, { kernelCode, secondThread, version }: World): Promise<number> {
  const { command, operands, flags, values } = args;
  if (operands.length === 0)
    throw trouble(`${command} needs a preset, a plan or a part family; tramwright parts lists the families`);
  if (last(args, "output") === "-")
    throw trouble(`${command} writes several files, which standard output cannot take; -o is followed by a folder`);
  const kernel = () => loadKernel(kernelCode());
  const targets = oneOfEach(operands).map(readTarget);
  const shared = {
    set: values.set ?? [],
    output: last(args, "output") ?? "out",
    printer: last(args, "printer"),
    json: flags.has("json"),
    quiet: flags.has("quiet"),
    force: flags.has("force"),
    dry: command === "check" || flags.has("dry-run"),
    version,
  };
  const plans = targets.filter(isPlan);
  const parts = targets.filter((target) => !isPlan(target));
  if (shared.json && plans.length > 0 && parts.length > 0)
    throw trouble("--json tells of parts or of stages: name them in runs of their own");
  const codes = parts.length === 0 ? [] : [await make({ ...shared, targets: parts }, kernel(), io)];
  if (plans.length > 0) {
    const [{ makeStages }, { twoBuilders }] = [
      await import("./commands/make-stage.ts"),
      await import("./two-builders.ts"),
    ];
    codes.push(await makeStages({ ...shared, targets: plans }, twoBuilders(kernel, secondThread, io.progress), io));
  }
  return Math.max(...codes);
}

/** A file that is named twice is made once. */
function oneOfEach(targets: readonly string[]): string[] {
  return [...new Map(targets.map((target) => [resolve(target), target])).values()];
}

function say(io: Io, words: string): number {
  io.out(words);
  return EXIT.done;
}

function atMost(operands: readonly string[], most: number, command: string): void {
  if (operands.length > most)
    throw trouble(`${command} takes at most ${most} name${most === 1 ? "" : "s"}, not ${operands.length}`);
}

function unknownCommand(command: string): string {
  const close = nearest(command, Object.keys(COMMANDS));
  const hint = close === undefined ? `the commands are ${Object.keys(COMMANDS).join(", ")}` : `the nearest is ${close}`;
  return command === "" ? `a command is missing; ${hint}` : `there is no command ${command}; ${hint}`;
}
