import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { CAUTIONS, forSupply } from "../../src/parts/cautions.ts";
import { folderWith, run } from "./program.ts";

const PLAN = readFileSync("presets/stages/glaze-shelf.yaml", "utf8").replace(/^printers?: .*\n(?: {2}.*\n)*/gm, "");
const told = (err: string) => err.replace(/\s+/g, " ");

// IEC 61140: extra-low voltage ends at 50 V of alternating current.
test.each([
  ["24", "heater-low-voltage"],
  ["50", "heater-low-voltage"],
  ["120", "mains"],
] as const)("a plate heated at %s V is told what fits that voltage, and nothing of the other", (volts, name) => {
  expect(forSupply(["springs", "heater-supply"], Number(volts))).toEqual(["springs", name]);
  const folder = folderWith({ "plan.yaml": PLAN.replace(/volts: \d+/, `volts: ${volts}`) });
  const { err } = run(["check", "plan.yaml"], folder);
  expect(told(err)).toContain(`caution: ${CAUTIONS[name]}`);
  for (const other of ["heater-low-voltage", "mains", "heater-supply"] as const)
    if (other !== name) expect(told(err)).not.toContain(CAUTIONS[other]);
});

test.each(["45", "50", "51"])("a heater is told of however warm the plate is to be: %s C", (temperature) => {
  const folder = folderWith({ "plan.yaml": PLAN.replace("temperature: 140 F", `temperature: ${temperature}`) });
  const { err } = run(["make", "plan.yaml", "--force"], folder);
  for (const name of ["mains", "hot-surface"] as const) expect(told(err)).toContain(`caution: ${CAUTIONS[name]}`);
  const sheets = readdirSync(folder, { recursive: true, encoding: "utf8" }).filter((name) =>
    /mount-[^/]*\.md$/.test(name),
  );
  const mounts = sheets.filter((name) => !name.includes("thumb-wheel"));
  expect(mounts.length).toBeGreaterThan(0);
  for (const name of mounts) expect(readFileSync(`${folder}/${name}`, "utf8")).toContain(CAUTIONS["heater-supply"]);
});

test("a plate as cold as its air has no heater to be told of", () => {
  const cold = run(["check", "tram-mount", "--set", "plateTemperature=20", "--set", "ambient=20"]);
  expect(told(cold.err)).not.toContain(CAUTIONS["heater-supply"]);
  expect(told(cold.err)).toContain(CAUTIONS.springs);
});

test("a mount by itself does not know the voltage, and is told both", () => {
  const { err } = run(["check", "tram-mount"]);
  expect(told(err)).toContain(CAUTIONS["heater-supply"]);
});

test("-q counts the cautions and says where they stand; without a part there is none", () => {
  const folder = folderWith({ "a.yaml": "format: 1\npart: tram-mount\n", "b.yaml": "format: 1\npart: none\n" });
  const checked = run(["check", "a.yaml", "-q"], folder);
  expect(checked.err).toMatch(/^\d cautions for your safety, which tramwright check without -q tells$/m);
  expect(checked.err).not.toContain("caution: ");
  const made = run(["make", "a.yaml", "-q"], folder);
  expect(made.err).toContain("cautions for your safety, which the sheet of each part (.md) tells");
  expect(readFileSync(`${folder}/out/a.md`, "utf8")).toContain(`- ${CAUTIONS.springs}`);
  expect(run(["check", "b.yaml", "-q"], folder).err).not.toContain("caution");
});
