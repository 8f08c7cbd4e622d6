const SIGNALS = ["SIGINT", "SIGTERM"] as const;

/**
 * Returns what `read` returns. A wait for a terminal or a pipe holds up everything, whoever handles signals too: while
 * it lasts they end the program as they do any other, and nothing has been written that would have to go.
 */
export function interruptible<What>(read: () => What): What {
  const kept = SIGNALS.map((signal) => ({ signal, heard: process.rawListeners(signal) }));
  for (const { signal } of kept) process.removeAllListeners(signal);
  try {
    return read();
  } finally {
    for (const { signal, heard } of kept)
      for (const listener of heard) process.on(signal, listener as NodeJS.SignalsListener);
  }
}
