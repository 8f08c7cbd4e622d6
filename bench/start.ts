import { execFileSync } from "node:child_process";
import { inTurn, median, ms, table, times } from "./timing.ts";

const MOST = 1.6;

const run = (words: readonly string[]) => () => execFileSync("node", words, { stdio: "ignore" });

const rows = [["--version"], ["--help"], ["make", "--help"]].map((words) => {
  const [tool = [], bare = []] = inTurn([run(["dist/tramwright.cjs", ...words]), run(["-e", "0"])], 21);
  // Each run is held against the one beside it: a machine that slows down slows both.
  const ratio = median(tool.map((time, index) => time / (bare[index] ?? Number.NaN)));
  return [words.join(" "), ms(median(tool)), ms(median(bare)), times(ratio), ratio <= MOST ? "met" : "MISSED"];
});

table(`Answers that need nothing (at most ${MOST}x \`node -e 0\`)`, ["asked", "ours ms", "node ms", "ratio", ""], rows);
