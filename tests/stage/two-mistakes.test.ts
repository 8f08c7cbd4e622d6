import { describe, expect, test } from "vitest";
import { stringify } from "yaml";
import { readYaml } from "../../src/presets/read.ts";
import { readStagePreset } from "../../src/presets/stage-preset.ts";
import { UNCALIBRATED } from "../../src/printing/printer.ts";
import { deriveStage } from "../../src/stage/index.ts";
import { deepMerge } from "../support/deep-merge.ts";
import { WIDE } from "../support/plans.ts";
import { someOf } from "../support/thorough.ts";

/** A mistake as changes of a sound plan, and how it is told. */
interface Mistake {
  readonly changes: Readonly<Record<string, unknown>>;
  readonly says: RegExp;
  /** Mistakes beside which it cannot be known. */
  readonly hiddenBy?: readonly string[];
}

const MISTAKES: Readonly<Record<string, Mistake>> = {
  "an unknown screw": {
    changes: { loops: { high: { nodes: ["motor", "CC"] } } },
    says: /no motor, screw or idler CC$/,
  },
  "an unknown bar": { changes: { plate: { mounts: { one: { bar: "arm-frnt" } } } }, says: /no bar arm-frnt$/ },
  "an unknown motor": { changes: { motor: { motor: { row: "NEMA 177" } } }, says: /NEMA 177/ },
  "a length that is none": { changes: { screws: { A: { length: "long" } } }, says: /long/ },
  "a pulley that is none": { changes: { foot: { pulley: "36 tooth" } }, says: /36 tooth/ },
  "a travel that is none": { changes: { travel: { lift: "far" } }, says: /far/ },
  "unequal leads": { changes: { screws: { C: { screw: "Tr8x8(P2)" } } }, says: /^C lifts .* [AB] .* mm/ },
  "unlike hands": { changes: { screws: { B: { hand: "left" } } }, says: /are not of the same hand$/ },
  "a loop without the motor": {
    changes: { loops: { low: { nodes: ["A", "B", "press"] } } },
    says: /^low does not run round the motor$/,
  },
  "three screws in line": {
    changes: { screws: { C: { at: [380, 62], bar: "front" } } },
    says: /from one line, under/,
    // A screw of which something is missing is left out whole.
    hiddenBy: ["a length that is none"],
  },
  "a plane under the floor": {
    changes: { motor: { plateTop: -30 } },
    says: /the floor allows/,
    // The seat lies below the belt by what the pulley measures.
    hiddenBy: ["a pulley that is none"],
  },
  "no loop to be bought": {
    changes: { loops: { high: { slide: { direction: 90, from: -0.2, to: 0.2 } } } },
    says: /^no stock loop fits/,
    // The length of a loop follows from all of its pulleys.
    hiddenBy: ["an unknown screw", "a pulley that is none"],
  },
  "a mount under the heater": {
    changes: { plate: { mounts: { three: { at: [380, 380] } } } },
    says: /the hole of three lies under the heater/,
  },
  "bars in one another": { changes: { bars: { left: { to: [15, 545, -15] } } }, says: /^back and left share/ },
};

function toldOf(changes: readonly Readonly<Record<string, unknown>>[]): string[] {
  const plan = changes.reduce(deepMerge, { format: 1, stage: "wide", ...WIDE } as Record<string, unknown>);
  const { value, complaints } = readStagePreset(readYaml("plan.yaml", stringify(plan)));
  if (value === undefined) throw new Error("nothing of the plan was read");
  const found = deriveStage(value.plan, () => UNCALIBRATED, value.unread).diagnostics;
  return [...complaints.map(({ diagnostic }) => diagnostic), ...found].map(({ says }) => says);
}

// Each mistake by itself is among the pairs: beside itself.
describe("two mistakes in one plan are both told", () => {
  const names = Object.keys(MISTAKES);
  for (const [index, name] of names.entries())
    test(name, () => {
      const missed = someOf(names.slice(index), 2).flatMap((other) => {
        const told = toldOf([name, other].map((one) => (MISTAKES[one] as Mistake).changes));
        return [
          [name, other],
          [other, name],
        ].flatMap(([one = "", beside = ""]) => {
          const { says, hiddenBy = [] } = MISTAKES[one] as Mistake;
          const isTold = told.some((words) => says.test(words));
          return isTold === hiddenBy.includes(beside) ? [`${one} beside ${beside}`] : [];
        });
      });
      expect(missed).toEqual([]);
    });
});
