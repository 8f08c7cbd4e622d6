import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";
import { describe, expect, test } from "vitest";
import { progressLine } from "../../src/cli/progress.ts";
import { hasTool } from "../support/outside-tool.ts";
import { folderWith, fresh, PROGRAM } from "./program.ts";

const TYPIST = resolve("tests/support/at-terminal.py");
const PLAN = resolve("presets/stages/seed-bench.yaml");
const ERASE = "\r\u001b[2K";
const BAD = "format: 1\npart: wheel-spacer\nname: bad\nparameters: { lenght: 3 }\n";

/** Runs a line of sh at a terminal of its own and returns what that showed. */
function shown(line: string, folder = fresh(), environment: Record<string, string> = {}, keys: readonly string[] = []) {
  const { NO_COLOR: _, FORCE_COLOR: __, ...env } = process.env;
  const { status, stdout } = spawnSync(
    "python3",
    [TYPIST, folder, JSON.stringify(keys), "sh", "-c", line.replaceAll("TOOL", `node ${PROGRAM}`)],
    {
      encoding: "utf8",
      env: { ...env, ...environment },
    },
  );
  return { status, text: stdout, folder };
}

describe.runIf(hasTool("python3"))("at a terminal", () => {
  test("work of more than half a second has one line of progress, which is gone at the end", () => {
    const { status, text } = shown(`TOOL make ${PLAN} --force`);
    expect(status).toBe(0);
    const steps = text.split(ERASE).slice(1);
    expect(steps.filter((step) => /^(building|working out)/.test(step)).length).toBeGreaterThan(0);
    // Nothing but the next step, or its end, follows a step: no line is written behind it.
    for (const step of steps) expect(step.startsWith("building") && step.includes("\n")).toBe(false);
    expect(text.trimEnd().split("\n").at(-1)).toMatch(/errors, \d+ warnings/);
  });

  test.each([
    ["a quiet run", `TOOL make ${PLAN} --force -q`, {}],
    ["a terminal without cursor", `TERM=dumb TOOL make ${PLAN} --force`, {}],
    ["short work", "TOOL parts", {}],
  ])("%s has none", (_, line, environment) => {
    const { status, text } = shown(line, fresh(), environment);
    expect(status).toBe(0);
    expect(text).not.toContain(ERASE);
  });

  test("a file gets no progress and no colour, the terminal beside it its colour", () => {
    const { folder, text } = shown(
      `TOOL make ${PLAN} --force 2>err.txt; TOOL check bad.yaml >out.txt; true`,
      folderWith({ "bad.yaml": BAD }),
    );
    for (const name of ["err.txt", "out.txt"]) {
      const file = readFileSync(join(folder, name), "utf8");
      expect(file.length).toBeGreaterThan(0);
      expect(file).not.toContain("\u001b");
    }
    expect(text).not.toContain(ERASE);
    expect(shown("TOOL check bad.yaml", folder).text).toContain("\u001b[31merror:");
    expect(shown("TOOL check bad.yaml --color never", folder).text).not.toContain("\u001b[3");
    expect(shown("NO_COLOR=1 TOOL check bad.yaml", folder).text).not.toContain("\u001b[3");
  });

  test("Ctrl-C ends a run that waits for what is typed, with 130", () => {
    const { text } = shown("trap : INT; echo ready; TOOL check -; echo code $?", fresh(), {}, ["\u0003"]);
    expect(text).toContain("code 130");
  });

  test("a preset that comes slowly through a pipe is waited for", () => {
    const { status, text } = shown(
      "(sleep 1; cat bad.yaml) | TOOL check - --messages short",
      folderWith({ "bad.yaml": BAD }),
    );
    expect(status).toBe(1);
    expect(text).toContain("standard input:4:");
  });

  test("data for programs holds no sign that steers the terminal, in a pipe it is as it was", () => {
    const folder = folderWith({ "odd.yaml": 'format: 1\npart: "a\\u009b31m"\nname: x\n' });
    expect(shown("TOOL check odd.yaml --json", folder).text).not.toContain("\u009b");
    const piped = spawnSync("node", [PROGRAM, "check", "odd.yaml", "--json"], { cwd: folder, encoding: "utf8" }).stdout;
    const says = (text: string) => (JSON.parse(text) as { messages: { says: string }[] }).messages[0]?.says;
    expect(says(shown("TOOL check odd.yaml --json", folder).text)).toBe(says(piped));
  });
});

test("the line of progress waits for half a second, fits the terminal and is taken away once", () => {
  const drawn: string[] = [];
  let now = 0;
  const line = progressLine(
    (text) => drawn.push(text),
    20,
    () => now,
  );
  now = 400;
  line.step("early");
  line.clear();
  expect(drawn).toEqual([]);
  now = 600;
  line.step("building 3 of 12 bodies of a machine");
  line.clear();
  line.clear();
  expect(drawn).toEqual([`${ERASE}building 3 of 12 bo`, ERASE]);
});
