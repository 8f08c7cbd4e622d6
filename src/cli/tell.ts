import type { Located } from "../presets/read.ts";
import type { Io } from "./io.ts";
import { messageData, messageLine, messageLines } from "./message.ts";

/** Tells messages in the form that was asked for, to `say`; of those of a quiet run no notes. */
export function tell(messages: readonly Located[], io: Io, { say = io.err, quiet = false } = {}): void {
  for (const message of messages) {
    if (quiet && message.diagnostic.level === "note") continue;
    for (const line of linesOf(message, io)) say(line);
  }
}

function linesOf(message: Located, { paint, messages, verbose }: Io): string[] {
  if (messages === "json") return [JSON.stringify(messageData(message))];
  return messages === "short" ? [messageLine(message, paint)] : messageLines(message, paint, verbose);
}
