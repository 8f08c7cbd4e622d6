import { type Arguments, last } from "./arguments.ts";
import { newPreset } from "./commands/new.ts";
import { type Io, trouble } from "./io.ts";
import { STAGE_FLAGS } from "./new/stage-flags.ts";
import type { World } from "./world.ts";

/** Runs `new`; what asks is loaded only where somebody can answer. Returns the exit code. */
export async function runNew(args: Arguments, io: Io, { person }: World): Promise<number> {
  const { operands, flags, values } = args;
  if (operands.length > 1) throw trouble(`new takes at most 1 name, not ${operands.length}`);
  const answered = ["name", ...STAGE_FLAGS].flatMap((flag) => {
    const value = last(args, flag);
    return value === undefined ? [] : [[flag, value]];
  });
  const from = last(args, "from");
  if (from !== undefined) {
    if (operands.length > 0 || answered.length > 0 || values.set !== undefined)
      throw trouble("new --from takes a preset and nothing that is asked for a new one");
    const { fromPreset } = await import("./new/from-preset.ts");
    return fromPreset({ from, output: last(args, "output"), force: flags.has("force"), json: flags.has("json") }, io);
  }
  const asks = person && !flags.has("json") ? await import("./new/ask.ts") : undefined;
  return await newPreset(
    {
      subject: operands[0],
      output: last(args, "output"),
      given: Object.fromEntries(answered),
      set: values.set ?? [],
      force: flags.has("force"),
      json: flags.has("json"),
      // Results may go to a file: questions go where talk goes.
      ask: asks?.asker({ input: process.stdin, output: process.stderr }),
    },
    io,
  );
}
