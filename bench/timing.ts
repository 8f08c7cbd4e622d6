/** Times in ms of one run after another. */
export type Times = readonly number[];

/** Returns the middle of the times. */
export function median(times: Times): number {
  const sorted = [...times].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

/** Time that this process has worked, ms: what others do on the machine does not count, its own helper threads do. */
export function worked(): number {
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/**
 * Runs the tasks in turn, `rounds` times after two warm-up rounds, and returns each one's times. Taking turns keeps a
 * machine that changes its speed from favouring one of them: compare the medians of one call only.
 */
export function inTurn(
  tasks: readonly (() => unknown)[],
  rounds: number,
  clock: () => number = () => performance.now(),
): Times[] {
  const times: number[][] = tasks.map(() => []);
  for (let round = -2; round < rounds; round++) {
    tasks.forEach((task, index) => {
      const start = clock();
      task();
      if (round >= 0) times[index]?.push(clock() - start);
    });
  }
  return times;
}

/** Prints a table with right-aligned columns. */
export function table(title: string, heading: readonly string[], rows: readonly (readonly string[])[]): void {
  const widths = heading.map((head, column) => Math.max(head.length, ...rows.map((row) => (row[column] ?? "").length)));
  const line = (row: readonly string[]) =>
    row
      .map((cell, column) => (column === 0 ? cell.padEnd(widths[0] ?? 0) : cell.padStart(widths[column] ?? 0)))
      .join("  ");
  console.log(`\n${title}\n${line(heading)}\n${widths.map((width) => "-".repeat(width)).join("  ")}`);
  for (const row of rows) console.log(line(row));
}

export const ms = (time: number) => time.toFixed(1);
export const times = (ratio: number) => `${ratio.toFixed(2)}x`;
