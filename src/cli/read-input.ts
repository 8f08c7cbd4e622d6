import { readFileSync } from "node:fs";

/**
 * Returns what comes through standard input. The wait for it holds up everything, whoever handles signals too: they end
 * the program as they do any other, and nothing has been written that would have to go.
 */
export function readInput(): string {
  const signals = (["SIGINT", "SIGTERM"] as const).map((signal) => ({ signal, heard: process.rawListeners(signal) }));
  for (const { signal } of signals) process.removeAllListeners(signal);
  try {
    return readFileSync(0, "utf8");
  } finally {
    for (const { signal, heard } of signals)
      for (const listener of heard) process.on(signal, listener as NodeJS.SignalsListener);
  }
}
