import { describe, expect, test } from "vitest";
import { stringify } from "yaml";
import type { Diagnostic, Path } from "../../src/core/diagnostic.ts";
import { readYaml } from "../../src/presets/read.ts";
import { readStagePreset } from "../../src/presets/stage-preset.ts";
import { UNCALIBRATED } from "../../src/printing/printer.ts";
import { deriveStage } from "../../src/stage/index.ts";
import { WIDE } from "../support/plans.ts";

const PLAN = { format: 1, stage: "wide", ...WIDE };

interface Told {
  readonly complaints: number;
  readonly found: readonly Diagnostic[];
}

function toldOf(text: string): Told {
  const { value, complaints } = readStagePreset(readYaml("plan.yaml", text));
  if (value === undefined) throw new Error("nothing of the plan was read");
  const { diagnostics } = deriveStage(value.plan, () => UNCALIBRATED, value.unread);
  return { complaints: complaints.length, found: diagnostics };
}

/** Places of all values of a plan, those of lists by their numbers. */
function valuesOf(data: unknown, at: Path = []): Path[] {
  if (typeof data !== "object" || data === null) return [at];
  return Object.entries(data).flatMap(([key, value]) => valuesOf(value, [...at, Array.isArray(data) ? +key : key]));
}

function withValue(path: Path, value: unknown): string {
  const data = structuredClone(PLAN) as unknown;
  const holder = path.slice(0, -1).reduce<unknown>((at, step) => (at as Record<string, unknown>)[step], data);
  (holder as Record<string, unknown>)[path.at(-1) ?? ""] = value;
  return stringify(data);
}

const keyOf = ({ name, path }: Diagnostic) => `${name} ${path.join(".")}`;
const sound = new Set(toldOf(stringify(PLAN)).found.map(keyOf));

/** What is told beyond what the sound plan is told, and beyond the mistake itself. */
function followUps({ complaints, found }: Told, path: Path): string[] {
  const own = (one: Diagnostic) =>
    complaints === 0 && one.name === "preset-does-not-resolve" && one.path.join() === path.join();
  return found.filter((one) => !own(one) && !sound.has(keyOf(one))).map((one) => `${keyOf(one)}: ${one.says}`);
}

// Lists of numbers are read like one another: their first entries do.
const places = valuesOf(PLAN).filter(([key, ...rest]) => key !== "format" && key !== "stage" && rest.at(-1) !== 1);

describe("one mistake in a plan that is sound is told alone", () => {
  test("the plan has many values, and no error", () => {
    expect(places.length).toBeGreaterThan(100);
    const { complaints, found } = toldOf(stringify(PLAN));
    expect([complaints, found.filter(({ level }) => level === "error")]).toEqual([0, []]);
  });

  test("a value that is a word nobody knows", () => {
    let unread = 0;
    let strange = 0;
    for (const path of places) {
      const told = toldOf(withValue(path, "nowhere"));
      if (told.complaints > 0) unread++;
      else if (told.found.some((one) => one.path.join() === path.join())) strange++;
      expect([path.join("."), followUps(told, path)]).toEqual([path.join("."), []]);
      expect(told.complaints + told.found.filter(({ level }) => level === "error").length).toBeGreaterThan(0);
    }
    // Names of bars, posts, arms, nodes and loops lead nowhere; everything else is no value. One node is a second entry.
    expect(strange).toBe(3 + 3 + 4 + 4 + 1 + 2);
    expect(unread).toBe(places.length - strange);
  });

  test("two things of one name", () => {
    const text = stringify(PLAN);
    for (const [kind, one, other] of [
      ["bars", "left", "right"],
      ["bars", "arm-front", "arm-back"],
      ["screws", "A", "B"],
      ["screws", "B", "C"],
      ["loops", "low", "high"],
      ["plate.mounts", "one", "two"],
      ["carriages", "left", "right"],
    ] as const) {
      const block = text.indexOf(`${kind.split(".").at(-1)}:\n`);
      const at = text.indexOf(` ${other}:\n`, block);
      const twins = `${text.slice(0, at)} ${one}:\n${text.slice(at + other.length + 3)}`;
      const told = toldOf(twins);
      expect([kind, told.complaints]).toEqual([kind, 1]);
      expect([kind, followUps(told, [])]).toEqual([kind, []]);
    }
  });
});
