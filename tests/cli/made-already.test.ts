import { appendFileSync, cpSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { oneBuilder } from "../../src/build/builders.ts";
import { readArguments } from "../../src/cli/arguments.ts";
import { makeStages } from "../../src/cli/commands/make-stage.ts";
import { glanceAt } from "../../src/cli/glance.ts";
import { readTarget } from "../../src/cli/load.ts";
import { madeAlready } from "../../src/cli/made-already.ts";
import { outletsOf } from "../../src/cli/world.ts";
import { fresh, run } from "./program.ts";

const { version } = JSON.parse(readFileSync("package.json", "utf8")) as { version: string };
const COPY = readFileSync("presets/stages/copy-stand.yaml", "utf8").replace("../printers/", "./");

/** A folder with a plan and its printer, made once. */
const made = fresh();
writeFileSync(join(made, "plan.yaml"), COPY);
cpSync("presets/printers/workshop-petg.yaml", join(made, "workshop-petg.yaml"));
expect(run(["make", "plan.yaml", "-q"], made).code).toBe(0);

/** A copy of that folder. */
function copied(): { readonly plan: string; readonly out: string; readonly folder: string } {
  const folder = fresh();
  cpSync(made, folder, { recursive: true });
  return { folder, plan: join(folder, "plan.yaml"), out: join(folder, "out") };
}

/** Where words go, and the words. */
function outlets() {
  const said: string[] = [];
  const write = { out: (line: string) => said.push(`out ${line}`), err: (line: string) => said.push(`err ${line}`) };
  const screens = { out: false, err: false };
  return { said, outlets: { environment: {}, screens, write, draw: () => undefined, columns: 80 } };
}

function answer(...argv: string[]) {
  const { said, outlets: own } = outlets();
  return { code: madeAlready(argv, version, own), said };
}

describe("a machine that is there as it would be made", () => {
  test.each([[[]], [["--quiet"]], [["--verbose"]], [["--messages", "short"]]])(
    "is answered with the words of the whole program: %j",
    async (words) => {
      const { plan, out } = copied();
      const argv = ["make", plan, "-o", out, ...words];
      const { code, said } = answer(...argv);
      expect(code).toBe(0);
      const whole = outlets();
      const { io } = outletsOf(readArguments(argv), whole.outlets);
      const usual = { set: [], printer: undefined, json: false, force: false, dry: false, version, output: out };
      const args = { ...usual, quiet: words.includes("--quiet"), targets: [readTarget(plan)] };
      const builders = oneBuilder(() => Promise.reject(new Error("there is nothing to build")));
      expect(await makeStages(args, builders, io)).toBe(0);
      expect(said).toEqual(whole.said);
      expect(said.at(-1)).toMatch(/^err nothing has changed, \d+ parts kept in /);
    },
  );

  test("is answered by the bundled program too, from its own folder", () => {
    const { folder } = copied();
    expect(run(["make", "plan.yaml"], folder)).toEqual(run(["make", "./plan.yaml", "plan.yaml"], folder));
    expect(run(["make", "plan.yaml"], folder).err).toMatch(/nothing has changed/);
  });

  test("together with another one", () => {
    const { folder, plan, out } = copied();
    const other = join(folder, "other.yaml");
    writeFileSync(other, COPY.replace("stage: copy-stand", "stage: other-stand"));
    expect(answer("make", plan, other, "-o", out)).toEqual({ code: undefined, said: [] });
    expect(run(["make", "other.yaml", "-q"], folder).code).toBe(0);
    expect(answer("make", plan, other, "-o", out).code).toBe(0);
  });
});

describe("everything else is left to the whole program, and nothing is said", () => {
  const nothing = { code: undefined, said: [] };

  test.each([
    ["a plan with a word more", ({ plan }: ReturnType<typeof copied>) => appendFileSync(plan, "# \n")],
    ["a printer with a word more", ({ folder }) => appendFileSync(join(folder, "workshop-petg.yaml"), "# \n")],
    ["a file that somebody changed", ({ out }) => appendFileSync(join(out, "copy-stand/report.json"), " ")],
    ["a file that is gone", ({ out }) => rmSync(join(out, "copy-stand/belts.svg"))],
    ["no set at all", ({ out }) => rmSync(out, { recursive: true })],
    ["no plan", ({ plan }) => rmSync(plan)],
    ["a manifest that is none", ({ out }) => writeFileSync(join(out, "copy-stand/manifest.json"), "{}")],
  ])("%s", (_, change) => {
    const all = copied();
    change(all);
    expect(answer("make", all.plan, "-o", all.out)).toEqual(nothing);
  });

  test.each([
    [["--json"]],
    [["--force"]],
    [["--dry-run"]],
    [["--help"]],
    [["--set", "motor.plateTop=7"]],
    [["--printer", resolve("presets/printers/workshop-petg.yaml")]],
    [["--quiet", "--verbose"]],
    [["--nonsense"]],
    [["--color", "mauve"]],
    [["screw-foot"]],
  ])("%j", (words) => {
    const { plan, out } = copied();
    expect(answer("make", plan, "-o", out, ...words)).toEqual(nothing);
  });

  test.each([[["check"]], [["report"]], [[]]])("another command: %j", (words) => {
    const { plan, out } = copied();
    expect(answer(...words, plan, "-o", out)).toEqual(nothing);
  });

  test("a plan that is named twice, or two plans of one name", () => {
    const { folder, plan, out } = copied();
    expect(answer("make", plan, plan, "-o", out)).toEqual(nothing);
    cpSync(plan, join(folder, "twin.yaml"));
    expect(answer("make", plan, join(folder, "twin.yaml"), "-o", out)).toEqual(nothing);
  });
});

describe("a glance at a command line", () => {
  const { plan, out } = copied();

  test.each([
    [["make", plan, "-o", out], "there"],
    [["make", plan, "--output", out], "there"],
    [["make", "-o", out, plan, "--quiet"], "there"],
    [["make", plan, "-o", out, "--force"], "new"],
    [["make", plan, "-o", out, "--json"], "new"],
    [["make", plan, "-o", join(out, "nowhere")], "new"],
    [["check", plan], undefined],
    [["make", "screw-foot"], undefined],
  ])("%j: machines %s", (argv, machines) => {
    expect(glanceAt(argv).machines).toBe(machines);
  });

  test("tells machines from parts, and anything from a folder that ends in .yaml", () => {
    expect(glanceAt(["check", plan]).ofMachine).toBe(true);
    expect(glanceAt(["compare"]).ofMachine).toBe(true);
    expect(glanceAt(["make", "screw-foot"]).ofMachine).toBe(false);
    expect(glanceAt(["make", "presets/parts/none.yaml", "."]).ofMachine).toBe(false);
  });
});
