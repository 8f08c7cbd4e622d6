import type { Worker } from "node:worker_threads";
import { type Arguments, chosen } from "./arguments.ts";
import { type Io, MESSAGE_FORMS } from "./io.ts";
import { type Progress, progressLine } from "./progress.ts";
import { type Screens, streams } from "./streams.ts";

/** What the program needs to know of the world round it. */
export interface World {
  readonly argv: readonly string[];
  readonly version: string;
  readonly environment: Readonly<Record<string, string | undefined>>;
  readonly screens: Screens;
  /** Whether somebody sits there who can be asked: words come from a terminal and go to one. */
  readonly person: boolean;
  readonly write: Pick<Io, "out" | "err">;
  /** Writes to the terminal of `err` without ending the line; how wide that is. */
  readonly draw: (text: string) => void;
  readonly columns: number;
  /** Returns the code of the kernel, which may have been begun when the program started. */
  readonly kernelCode: () => Promise<WebAssembly.Module>;
  /** Starts the thread that helps to build a machine, where there can be one. */
  readonly secondThread: () => Worker | undefined;
}

/** As much of the world as words go to. */
export type Outlets = Pick<World, "environment" | "screens" | "write" | "draw" | "columns">;

const COLORS = ["auto", "always", "never"] as const;

/** Returns where words go, as the command line and the world have it, and the line that tells of progress. */
export function outletsOf(
  args: Arguments,
  { environment, screens, write, draw, columns }: Outlets,
): { readonly io: Io; readonly progress: Progress } {
  const drawn = screens.err && environment.TERM !== "dumb" && !args.flags.has("quiet");
  const progress = progressLine(drawn ? draw : undefined, columns, Date.now);
  const io = {
    ...streams({ write, screens, environment, color: chosen(args, "color", COLORS, "auto"), progress }),
    progress: progress.step,
    messages: chosen(args, "messages", MESSAGE_FORMS, "full"),
    verbose: args.flags.has("verbose"),
  };
  return { io, progress };
}
