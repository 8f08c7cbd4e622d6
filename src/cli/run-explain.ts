import type { Located } from "../presets/read.ts";
import { UNCALIBRATED } from "../printing/printer.ts";
import { footName } from "../stage/feet/foot-choice.ts";
import { type Arguments, last } from "./arguments.ts";
import { loadPrinter } from "./calibration.ts";
import { explain } from "./commands/explain.ts";
import { factPages } from "./explain/fact-page.ts";
import { EXIT, type Io, trouble } from "./io.ts";
import { isPlan, load, readTarget, type Target } from "./load.ts";
import { loadStage, type Machine } from "./load-stage.ts";
import { inOrder } from "./message.ts";
import { tell } from "./tell.ts";

/** Runs `explain`: for the defaults, for a preset, or for the plan of a stage. Returns the exit code. */
export function runExplain(args: Arguments, io: Io, version: string): number {
  const [what, ...more] = args.operands;
  if (what === undefined) throw trouble("explain needs the name of a number, a calculation, a check or a source");
  if (more.length > 0)
    throw trouble(`explain takes one name, not ${args.operands.length}; put quotation marks round it`);
  const json = args.flags.has("json");
  const set = args.values.set ?? [];
  const preset = last(args, "preset") ?? (set.length === 0 ? undefined : what.split(".")[0]);
  const chosen = last(args, "printer");
  if (preset === undefined) {
    const { printer, messages } = chosen === undefined ? { printer: UNCALIBRATED, messages: [] } : loadPrinter(chosen);
    complain(messages, io);
    return printer === undefined ? EXIT.errors : explain({ what, json }, io, printer);
  }
  const target = readTarget(preset);
  if (isPlan(target)) return explainPlan(what, target, { set, printer: chosen, version, json }, io);
  const { request, messages } = load(target, { set, printer: chosen });
  complain(messages, io);
  if (request === undefined) return EXIT.errors;
  const { family, parameters, printer } = request;
  return explain({ what, family: family.name, parameters: { ...parameters }, json }, io, printer);
}

interface PlanOptions {
  readonly set: readonly string[];
  readonly printer: string | undefined;
  readonly version: string;
  readonly json: boolean;
}

function explainPlan(what: string, target: Target, options: PlanOptions, io: Io): number {
  const { machine, messages } = loadStage(target, options);
  complain(
    messages.filter(({ diagnostic }) => machine === undefined || diagnostic.level === "error"),
    io,
  );
  if (machine === undefined) return EXIT.errors;
  const { stage } = machine;
  const name = ofToday(what);
  const part = partIn(machine, name);
  const { json } = options;
  if (part === undefined) return explain({ what: name, stage, json }, io, UNCALIBRATED);
  const { family, parameters, printer } = part.request;
  const own = name.slice(part.request.name.length + 1);
  const before = factPages(stage, name);
  return explain({ what: `${family.name}.${own}`, family: family.name, parameters, json, before }, io, printer);
}

/** Returns the name that a number of a foot has now: `foot-a.plane-over-datum` was once `foot.A.plane`. */
function ofToday(what: string): string {
  const [, screw, own] = /^foot\.([^.]+)\.(.+)$/.exec(what.trim()) ?? [];
  if (screw === undefined || own === undefined) return what;
  return `${footName(screw)}.${own === "plane" ? "plane-over-datum" : own}`;
}

/** Returns the part whose number is meant: `foot-a.seat`. */
const partIn = ({ parts }: Machine, what: string) => parts.find(({ request }) => what.startsWith(`${request.name}.`));

function complain(messages: readonly Located[], io: Io): void {
  tell(inOrder(messages), io);
}
