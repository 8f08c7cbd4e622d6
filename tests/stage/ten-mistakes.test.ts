import { readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, test } from "vitest";
import { locatedIn } from "../../src/presets/preset-file.ts";
import { type Located, readYaml } from "../../src/presets/read.ts";
import { readStagePreset } from "../../src/presets/stage-preset.ts";
import { UNCALIBRATED } from "../../src/printing/printer.ts";
import { deriveStage } from "../../src/stage/index.ts";

const text = readFileSync(join(import.meta.dirname, "ten-mistakes.yaml"), "utf8");

/** Everything that one run tells of a plan. */
function toldOf(plan: string): Located[] {
  const file = readYaml("plan.yaml", plan);
  const { value, complaints } = readStagePreset(file);
  if (value === undefined) return [...complaints];
  const { diagnostics } = deriveStage(value.plan, () => UNCALIBRATED, value.unread);
  return [...complaints, ...diagnostics.map((one) => locatedIn(file, one))];
}

const told = toldOf(text);

/** What is on the line, how it is told, and a cure that takes it away, where one word does. */
const MISTAKES: readonly (readonly [kind: string, line: RegExp, says: RegExp, set: RegExp])[] = [
  ["an unknown screw", /spare: \{/, /^there is no motor, screw or idler Q$/, /^one of motor, A, B, C, press, guide$/],
  ["an unknown bar", /one: \{/, /^there is no bar arm-frnt$/, /^arm-front$/],
  ["two things of one name", /nuts: .*0\.3 kg/, /^nuts: this key is there twice, first in line \d+$/, /another name/],
  ["a loop without the motor", /upper: \{/, /does not run round the motor/, /^nodes: \[motor, press, guide\]$/],
  ["unequal leads", /C: .*Tr8x8/, /^C lifts 4\.4444 mm per motor turn, A 1\.1111 mm$/, /^screw: Tr8x2, as for A$/],
  [
    "three screws in line",
    /B: \{ at/,
    /three screws stand 0\.0 mm from one line/,
    /^at: \[380, 450\] and bar: back, beside that line$/,
  ],
  [
    "a plane under the floor",
    /A: \{ at/,
    /the seat comes to -29\.00 mm; the floor allows -23/,
    /motor\.plateTop: -6 \(prints 3 parts anew/,
  ],
  ["no loop to be bought", /main: \{/, /^no stock loop fits the 1185\.85 mm/, /^slide: \{ .*from: /],
  [
    "a mount under the heater",
    /three: \{/,
    /the hole of three lies under the heater/,
    /^at: \[380, 441\.3\], 6 mm outside/,
  ],
  ["bars in one another", /left: .*540/, /^back and left share 9000 mm3/, /^left: to: \[15, 530, -15\]$/],
];

describe("ten mistakes in one plan", () => {
  test.each(MISTAKES)("%s is told with its line, why, and what to set", (_, line, says, set) => {
    const own = told.filter(({ place, diagnostic }) => line.test(place?.text ?? "") && says.test(diagnostic.says));
    expect(own).toHaveLength(1);
    const [{ place, diagnostic }] = own as [Located];
    expect(text.split("\n")[(place?.line ?? 0) - 1]).toMatch(line);
    expect(diagnostic.level).toBe("error");
    expect(diagnostic.why.length).toBeGreaterThan(20);
    expect(diagnostic.set).toMatch(set);
  });

  test("nothing else is an error but what follows from the places that were typed", () => {
    const errors = told.filter(({ diagnostic }) => diagnostic.level === "error");
    const others = errors.filter(
      ({ place, diagnostic }) =>
        !MISTAKES.some(([, line, says]) => line.test(place?.text ?? "") && says.test(diagnostic.says)),
    );
    // The plane is under the floor of all three feet, and a belt that runs straight past B turns no pulley.
    expect(others.map(({ diagnostic: { name, path } }) => `${name} ${path.join(".")}`)).toEqual([
      "too-few-teeth-in-mesh screws.B",
      "belt-plane-below-lowest-seat screws.B",
      "belt-plane-below-lowest-seat screws.C",
    ]);
  });

  test("what is to be set, set, is told no longer", () => {
    const cured = [
      ["nodes: [motor, Q]", "nodes: [motor, press]"],
      ["bar: arm-frnt", "bar: arm-front"],
      ["  nuts: { mass: 0.3 kg", "  more: { mass: 0.3 kg"],
      ["nodes: [press, guide]", "nodes: [motor, guide]"],
      ["screw: Tr8x8(P2)", "screw: Tr8x2"],
      ["B: { at: [380, 62]", "B: { at: [380, 194]"],
      ["plateTop: -14", "plateTop: -8"],
      ["from: -0.2, to: 0.2", "from: -19.3, to: 0.2"],
      ["at: [380, 430]", "at: [380, 441.3]"],
      ["to: [15, 540, -15]", "to: [15, 530, -15]"],
    ] as const;
    for (const [index, [before, after]] of cured.entries()) {
      expect(text).toContain(before);
      const [, line, says] = MISTAKES[index] as (typeof MISTAKES)[number];
      const left = toldOf(text.replace(before, after)).filter(
        ({ place, diagnostic }) => line.test(place?.text ?? "") && says.test(diagnostic.says),
      );
      expect(left).toEqual([]);
    }
  });
});
