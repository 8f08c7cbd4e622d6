import { spawnSync } from "node:child_process";
import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { grammar } from "../../src/cli/completion/grammar.ts";
import { COMMANDS, SHELLS } from "../../src/cli/help.ts";
import { ALL_TABLES } from "../../src/cli/stock/tables.ts";
import { FAMILIES } from "../../src/parts/index.ts";
import { fresh, run } from "./program.ts";

const families = FAMILIES.map(({ name }) => name);
const SCRIPT = Object.fromEntries(SHELLS.map((shell) => [shell, run(["completion", shell]).out]));

const present = (shell: string) => spawnSync(shell, ["-c", "exit 0"], { stdio: "ignore" }).error === undefined;

/** A folder with a preset, a drawing, a hidden folder and one that is not, and the scripts. */
function bench(): string {
  const folder = fresh();
  for (const name of ["presets", ".hidden"]) mkdirSync(join(folder, name));
  for (const name of ["my-foot.yaml", "my plan.yml", "notes.txt"]) writeFileSync(join(folder, name), "");
  for (const [shell, script] of Object.entries(SCRIPT)) writeFileSync(join(folder, `.completion.${shell}`), script);
  return folder;
}

const FOLDER = bench();

/** Returns what bash offers for words of which the last one is being typed. */
function offered(...words: readonly string[]): string[] {
  // biome-ignore lint/suspicious/noTemplateCurlyInString: bash reads it.
  const list = 'printf "%s\\n" "${COMPREPLY[@]}"';
  const program =
    'source .completion.bash; COMP_WORDS=("$@"); COMP_CWORD=$(($# - 1)); ' +
    '"$(complete -p tramwright | sed "s/.*-F \\([^ ]*\\) .*/\\1/")"; ' +
    list;
  const { stdout, stderr } = spawnSync("bash", ["--norc", "-c", program, "bash", "tramwright", ...words], {
    cwd: FOLDER,
    encoding: "utf8",
  });
  expect(stderr, words.join(" ")).toBe("");
  return stdout.split("\n").filter((line) => line !== "");
}

describe("completion in bash", () => {
  test("offers commands, and those that begin with what is typed", () => {
    expect(offered("")).toEqual(expect.arrayContaining([...Object.keys(COMMANDS), "help", "--help", "--version"]));
    expect(offered("co")).toEqual(["compare", "completion"]);
    expect(offered("help", "ma")).toEqual(["make"]);
    expect(offered("--color", "always", "ma")).toEqual(["make"]);
  });

  test.each(Object.entries(COMMANDS))("offers every option of %s, and no other", (name, { options }) => {
    const own = options.flatMap(([flag]) => flag.match(/(?<![\w-])--?[a-z][a-z-]*/g) ?? []);
    expect(offered(name, "-").sort()).toEqual(own.sort());
    expect(own).toContain("--help");
  });

  test.each([
    [
      ["make", "x", "--color", ""],
      ["auto", "always", "never"],
    ],
    [["make", "--color", "=", "al"], ["always"]],
    [
      ["make", "--color", "="],
      ["auto", "always", "never"],
    ],
    [
      ["check", "--messages", ""],
      ["full", "short", "json"],
    ],
    [
      ["new", "stage", "--screws", ""],
      ["2", "3", "4"],
    ],
    [
      ["new", "stage", "--bar", "30x30 slot"],
      ["30x30 slot 8", "30x30 slot 6"],
    ],
    [["make", "--set", ""], []],
  ])("%j: values where they are closed", (words, wanted) => {
    expect(offered(...words)).toEqual(wanted);
  });

  test.each([
    [["make", "screw"], ["screw-foot"]],
    [["make", "wheel-spacer", "tram"], ["tram-mount"]],
    [
      ["parts", ""],
      [...families, "printer", "stage"],
    ],
    [
      ["schema", ""],
      [...families, "stage", "printer"],
    ],
    [["completion", ""], [...SHELLS]],
    [
      ["stock", "bearing"],
      ["bearings", "bearing-shoulders"],
    ],
    [
      ["stock", "bars", "20x"],
      ["20x20 slot 6", "20x40 slot 6", "20x20 slot 5"],
    ],
    [["stock", "bars", "'20x4"], ["20x40 slot 6"]],
    [["stock", "bearings", "--b"], ["--bore"]],
    [["explain", "screw-foot.seatW"], ["screw-foot.seatWanted"]],
    [["explain", "washer-spans"], ["washer-spans-both-rings"]],
  ])("%j: names from the tables", (words, wanted) => {
    expect(offered(...words)).toEqual(wanted);
  });

  test.each([
    [
      ["make", "my"],
      ["my plan.yml", "my-foot.yaml"],
    ],
    [
      ["check", ""],
      [...families, "my plan.yml", "my-foot.yaml", "presets"],
    ],
    [["report", "no"], []],
    [["make", "-o", ""], ["presets"]],
    [["make", "--output", "=", "pre"], ["presets"]],
    [["check", "--printer", "my-"], ["my-foot.yaml"]],
    [["make", ".h"], [".hidden"]],
  ])("%j: files where files are taken", (words, wanted) => {
    expect(offered(...words).sort()).toEqual([...wanted].sort());
  });
});

describe("completion scripts", () => {
  test.each(SHELLS)("for %s hold every command, every option and every table", (shell) => {
    const script = SCRIPT[shell] ?? "";
    const { commands, tables } = grammar();
    expect(commands.length).toBe(Object.keys(COMMANDS).length + 1);
    expect(tables.length).toBe(ALL_TABLES.length);
    const own = (name: string) =>
      shell === "fish" ? name.replace(/^--?/, name.startsWith("--") ? "-l " : "-s ") : name;
    for (const { name, options } of commands) {
      expect(script).toContain(name);
      for (const option of options.flatMap(({ names }) => names)) expect(script).toContain(own(option));
    }
    for (const { name, rows } of tables) for (const word of [name, ...rows.slice(0, 1)]) expect(script).toContain(word);
  });

  test.runIf(present("zsh"))("zsh reads its own", () => {
    expect(spawnSync("zsh", ["-n", ".completion.zsh"], { cwd: FOLDER, encoding: "utf8" })).toMatchObject({
      status: 0,
      stderr: "",
    });
  });

  test.runIf(present("fish"))("fish completes by its own", () => {
    const ask = (line: string) =>
      spawnSync("fish", ["--no-config", "-c", `source .completion.fish; complete -C '${line}'`], {
        cwd: FOLDER,
        encoding: "utf8",
      })
        .stdout.split("\n")
        .map((one) => one.split("\t")[0]);
    expect(ask("tramwright comp")).toEqual(expect.arrayContaining(["compare", "completion"]));
    expect(ask("tramwright make --color ")).toEqual(expect.arrayContaining(["auto", "always", "never"]));
    expect(ask("tramwright stock bars 20x4")).toContain("20x40 slot 6");
    expect(ask("tramwright make my-")).toContain("my-foot.yaml");
  });

  test.runIf(present("pwsh"))("PowerShell completes by its own", () => {
    const line = "tramwright make --color a";
    const ask = `. ./.completion.powershell.ps1; (TabExpansion2 '${line}' ${line.length}).CompletionMatches.CompletionText`;
    writeFileSync(join(FOLDER, ".completion.powershell.ps1"), SCRIPT.powershell ?? "");
    const { stdout } = spawnSync("pwsh", ["-NoProfile", "-Command", ask], { cwd: FOLDER, encoding: "utf8" });
    expect(stdout.trim().split(/\r?\n/)).toEqual(["auto", "always"]);
  });
});
