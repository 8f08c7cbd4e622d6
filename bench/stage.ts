// How long a whole machine takes: worked out and checked without meshes, made from a cold start, made again unchanged,
// and its assembled bodies tested for clashes.
import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { assemblyFaults } from "../src/build/clash/index.ts";
import { drawPart } from "../src/build/make.ts";
import { stageParts } from "../src/build/stage-parts.ts";
import { hasErrors } from "../src/core/diagnostic.ts";
import { loadKernel } from "../src/geometry/kernel.ts";
import { reportJson } from "../src/outputs/report-json.ts";
import { deriveStage } from "../src/stage/index.ts";
import { loadedPlan } from "../tests/support/loaded-plan.ts";
import { prepare, runBare } from "./bare.ts";
import { inTurn, median, ms, table, times, worked } from "./timing.ts";

const DEMO = "presets/stages/seed-bench.yaml";

const kernel = await loadKernel();
const { machine, errors } = loadedPlan(DEMO);
const { printer, preset } = machine;
const { plan } = preset;
const printing = (family: string) => ({ printer: printer(family), calibrated: true });
const verdict = (met: boolean) => (met ? "met" : "MISSED");

/** The road of `report` and of `check` up to the meshes. */
function workedOut() {
  const stage = deriveStage(plan, printer);
  const parts = stageParts(stage, printing, "bench");
  const listed = parts.map(({ request: { name, family }, hash, owner }) => ({
    name,
    family: family.name,
    hash,
    owner,
  }));
  return { stage, parts, report: reportJson({ name: preset.name, version: "bench", stage, parts: listed }) };
}

const { stage, parts } = workedOut();
if (errors.length > 0 || hasErrors(parts.flatMap(({ designed }) => designed.diagnostics)))
  throw new Error("the machine of this bench has errors, so its parts would not be built");

const [derivation = [], everything = [], clashes = []] = inTurn(
  [() => deriveStage(plan, printer), workedOut, () => assemblyFaults(stage, printer, kernel)],
  15,
  worked,
);
const limits: readonly (readonly [string, number, number])[] = [
  ["derivation", median(derivation), 150],
  ["derivation, report and all checks", median(everything), 150],
  ["clash test of the assembled machine", median(clashes), 2000],
];
table(
  `A machine of ${parts.length} parts, warm, time that the process worked`,
  ["what", "ms", "limit ms", ""],
  limits.map(([what, is, limit]) => [what, ms(is), ms(limit), verdict(is <= limit)]),
);

/** What is left when this program is taken away: the kernel's own work for every solid that is printed. */
const solids = parts.flatMap(({ request, designed }) => drawPart(request, designed).pieces.map(({ solid }) => solid));
const bare = solids.map(prepare);

const folder = mkdtempSync(join(tmpdir(), "tramwright-bench-"));
let made = 0;
const make = () =>
  execFileSync("node", ["dist/tramwright.cjs", "make", DEMO, "-o", join(folder, `${made}`), "--quiet"], {
    stdio: "ignore",
  });
const makeNew = () => {
  made++;
  make();
};
// Everything in turn, so that each time is held against those of its own round.
const [first = [], again = [], node = [], solidTimes = []] = inTurn(
  [makeNew, make, () => execFileSync("node", ["-e", "0"]), () => bare.map(runBare)],
  15,
);
rmSync(folder, { recursive: true });
const allowed = first.map((_, round) => 8 * (node[round] ?? 0) + 1.2 * (solidTimes[round] ?? 0));
const ofAllowed = median(first.map((time, round) => time / (allowed[round] ?? 0)));
table(
  `Cold \`make\` of the same machine, ${solids.length} solids (at most 8x \`node -e 0\` and 1.2x the bare kernel's time)`,
  ["node ms", "bare kernel ms", "make ms", "allowed ms", "of allowed", ""],
  [[...[node, solidTimes, first, allowed].map(median).map(ms), times(ofAllowed), verdict(ofAllowed <= 1)]],
);
const share = median(again.map((time, round) => time / (first[round] ?? 0)));
table(
  "Made again unchanged (at most a quarter of the first)",
  ["first ms", "again ms", "share", ""],
  [[ms(median(first)), ms(median(again)), times(share), verdict(share <= 0.25)]],
);
