import { once } from "node:events";
import { readdirSync, readFileSync, statSync } from "node:fs";
import { join, resolve } from "node:path";
import { Worker } from "node:worker_threads";
import { describe, expect, test } from "vitest";
import { oneBuilder } from "../../src/build/builders.ts";
import type { Carved } from "../../src/build/carve.ts";
import { planBuilds } from "../../src/build/part-builds.ts";
import { stageParts } from "../../src/build/stage-parts.ts";
import { makeStages } from "../../src/cli/commands/make-stage.ts";
import { painter } from "../../src/cli/io.ts";
import { readTarget } from "../../src/cli/load.ts";
import { twoBuilders } from "../../src/cli/two-builders.ts";
import { deriveStage } from "../../src/stage/index.ts";
import { kernel } from "../support/kernel.ts";
import { widePlan } from "../support/plans.ts";
import { printerWith } from "../support/printer.ts";
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

describe("a second thread", () => {
  const printer = printerWith();
  const { works } = planBuilds(
    stageParts(
      deriveStage(widePlan(), () => printer),
      () => ({ printer, calibrated: true }),
      "1",
    ),
  );
  const few = [...works].slice(0, 2);
  const carvedBy = async (second: Worker | undefined) => {
    const builders = twoBuilders(
      () => Promise.resolve(kernel),
      () => second,
    );
    const carved: Carved[] = [];
    await builders.carve(few, (index, one) => {
      expect(carved[index]).toBeUndefined();
      carved[index] = one;
    });
    return carved;
  };

  test("that is no more leaves everything to the first", async () => {
    const second = new Worker("", { eval: true });
    await once(second, "exit");
    expect(await carvedBy(second)).toEqual(await carvedBy(undefined));
  });

  test("that ends on the way leaves the rest, and nothing is carved twice", async () => {
    const [first] = await carvedBy(undefined);
    const program = `
      const { parentPort, workerData } = require("node:worker_threads");
      parentPort.once("message", () => {
        parentPort.postMessage({ index: 0, carved: workerData });
        setTimeout(() => process.exit(1), 50);
      });`;
    const second = new Worker(program, { eval: true, workerData: first });
    const carved = await carvedBy(second);
    expect(carved).toEqual(await carvedBy(undefined));
  });
});
