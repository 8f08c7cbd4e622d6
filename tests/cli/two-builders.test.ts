import { readdirSync, readFileSync, statSync } from "node:fs";
import { join, resolve } from "node:path";
import { expect, test } from "vitest";
import { oneBuilder } from "../../src/build/builders.ts";
import { makeStages } from "../../src/cli/commands/make-stage.ts";
import { painter } from "../../src/cli/io.ts";
import { readTarget } from "../../src/cli/load.ts";
import { kernel } from "../support/kernel.ts";
import { fresh, run } from "./program.ts";

function filesIn(folder: string): Record<string, string> {
  const names = readdirSync(folder, { recursive: true, encoding: "utf8" }).sort();
  const files = names.filter((name) => statSync(join(folder, name)).isFile());
  return Object.fromEntries(files.map((name) => [name, readFileSync(join(folder, name), "latin1")]));
}

test("a machine built on two threads is, byte for byte, the one built on one", async () => {
  const plans = ["copy-stand", "glaze-shelf"].map((name) => resolve(`presets/stages/${name}.yaml`));
  const folder = fresh();
  expect(run(["make", ...plans, "-o", join(folder, "two"), "--quiet"], folder).code).toBe(0);
  const { version } = JSON.parse(readFileSync("package.json", "utf8")) as { version: string };
  const nothing = () => undefined;
  const io = { out: nothing, err: nothing, paint: painter("never", {}, false) };
  const usual = { set: [], printer: undefined, json: false, quiet: true, force: false, dry: false, version };
  const args = { ...usual, targets: plans.map(readTarget), output: join(folder, "one") };
  expect(
    await makeStages(
      args,
      oneBuilder(() => Promise.resolve(kernel)),
      io,
    ),
  ).toBe(0);
  expect(filesIn(join(folder, "two"))).toEqual(filesIn(join(folder, "one")));
});
