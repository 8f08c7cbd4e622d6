import { execFileSync } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { make } from "../src/build/make.ts";
import { loadKernel } from "../src/geometry/kernel.ts";
import { FAMILIES } from "../src/parts/index.ts";
import { printerSchema } from "../src/printing/printer.ts";
import { prepare, runBare } from "./bare.ts";
import { openEdges, prepareModeling } from "./boolean-modeling.ts";
import { inTurn, median, ms, table, times } from "./timing.ts";

const kernel = await loadKernel();
const printer = printerSchema.parse({});
const MAIN = ["screw-foot", "tram-mount", "wheel-plate"];

const parts = FAMILIES.filter(({ name }) => MAIN.includes(name)).map((family) => {
  const parameters = family.schema.parse({});
  const request = { name: family.name, family, parameters, printer, calibrated: true, accept: [] };
  const solid = family.design(parameters, printer).pieces()[0]?.solid;
  if (solid === undefined) throw new Error(`${family.name} has no piece`);
  return { family, request, solid };
});

const evaluated = parts.map(({ family, solid }) => {
  const bare = prepare(solid);
  const [ours = [], theirs = []] = inTurn([() => kernel.build(solid, (body) => body.mesh()), () => runBare(bare)], 25);
  const ratio = median(ours) / median(theirs);
  return [family.name, ms(median(ours)), ms(median(theirs)), times(ratio), ratio <= 1.3 ? "met" : "MISSED"];
});
table(
  "Evaluating each default part against the bare kernel (at most 1.3x)",
  ["part", "ours ms", "bare ms", "ratio", ""],
  evaluated,
);

const modeled = parts.map(({ family, solid }) => {
  const other = prepareModeling(solid);
  const [ours = [], theirs = []] = inTurn([() => kernel.build(solid, (body) => body.mesh()), other], 5);
  const ratio = median(theirs) / median(ours);
  return [
    family.name,
    ms(median(ours)),
    ms(median(theirs)),
    times(ratio),
    String(openEdges(other())),
    ratio >= 10 ? "met" : "MISSED",
  ];
});
table(
  "The same solids by @jscad/modeling booleans (at least 10x slower, and not closed)",
  ["part", "ours ms", "theirs ms", "ratio", "open edges", ""],
  modeled,
);

const tolerances = [0.04, 0.02, 0.01].map((tolerance) => {
  const rows = inTurn(
    parts.map(
      ({ solid }) =>
        () =>
          kernel.build(solid, (body) => body.mesh(), tolerance),
    ),
    11,
  );
  const facets = parts.map(({ solid }) => kernel.build(solid, (body) => body.mesh().triangles.length / 3, tolerance));
  return [String(tolerance), ...rows.flatMap((row, index) => [ms(median(row)), String(facets[index])])];
});
table(
  "Time against chord tolerance, halved twice",
  ["mm", ...parts.flatMap(({ family }) => [family.name, "facets"])],
  tolerances,
);

const counts = [1, 4, 16].map((count) => {
  const batch = Array.from({ length: count }, (_, index) => parts[index % parts.length]?.request).filter(
    (one) => one !== undefined,
  );
  const [row = []] = inTurn([() => batch.map((request) => make(request, kernel))], 5);
  return [String(count), ms(median(row)), ms(median(row) / count)];
});
table("Designing, building and verifying several parts", ["parts", "all ms", "each ms"], counts);

const folder = mkdtempSync(join(tmpdir(), "tramwright-bench-"));
const cold = parts.map(({ family }) => {
  const command = ["dist/tramwright.cjs", "make", family.name, "-o", folder, "--force", "--quiet"];
  const [tool = [], bare = []] = inTurn(
    [() => execFileSync("node", command, { stdio: "ignore" }), () => execFileSync("node", ["-e", "0"])],
    7,
  );
  const ratio = median(tool) / median(bare);
  return [family.name, ms(median(tool)), ms(median(bare)), times(ratio), ratio <= 5 ? "met" : "MISSED"];
});
rmSync(folder, { recursive: true });
table(
  "A cold `make` to the written and verified file (at most 5x `node -e 0`)",
  ["part", "make ms", "node ms", "ratio", ""],
  cold,
);
