import { join } from "node:path";
import { MANIFEST } from "../outputs/manifest.ts";
import { tryOrdinary } from "./file-text.ts";
import { sha256 } from "./sha256.ts";

/** What a command line is about, as far as a glance tells before it is really read: enough to load the right things. */
export interface Glance {
  readonly ofMachine: boolean;
  /** Machines are to be made: all may be there as they would be made now, or some have to be built; else undefined. */
  readonly machines: "there" | "new" | undefined;
}

const MACHINE_COMMANDS = ["report", "compare", "tram"];
/** With these everything is worked out in any case. */
const IN_FULL = ["--json", "--force", "--dry-run"];

/** Looks at a command line. */
export function glanceAt(argv: readonly string[]): Glance {
  const plans = argv.flatMap((word) => planIn(word) ?? []);
  const ofMachine = plans.length > 0 || MACHINE_COMMANDS.includes(argv[0] ?? "");
  if (plans.length === 0 || !argv.includes("make")) return { ofMachine, machines: undefined };
  const after = argv.findIndex((word) => word === "-o" || word === "--output") + 1;
  const output = after > 0 ? (argv[after] ?? "") : "out";
  const isThere = ({ stage, text }: Plan) => {
    const manifest = tryOrdinary(join(output, stage, MANIFEST));
    return "text" in manifest && manifest.text.includes(sha256(text));
  };
  const all = plans.every(isThere) && !IN_FULL.some((flag) => argv.includes(flag));
  return { ofMachine, machines: all ? "there" : "new" };
}

interface Plan {
  readonly stage: string;
  readonly text: string;
}

/** Returns the plan that a word of the command line names. */
function planIn(word: string): Plan | undefined {
  if (!/\.ya?ml$/.test(word)) return undefined;
  const read = tryOrdinary(word);
  const stage = "text" in read ? stageIn(read.text) : undefined;
  return stage === undefined || !("text" in read) ? undefined : { stage, text: read.text };
}

/** Returns the name of the machine in the text of a plan; undefined where it is not written in the plain way. */
export const stageIn = (text: string): string | undefined => /^stage:[ \t]*([^\s#]*)/m.exec(text)?.[1];
