import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { sizeIn } from "../../src/cli/new/answers.ts";
import { answersOf, questions } from "../../src/cli/new/stage-questions.ts";
import { frameOf } from "../../src/cli/new/starter-plan.ts";
import { starterStage } from "../../src/cli/new/starter-stage.ts";
import { readYaml } from "../../src/presets/read.ts";
import { readStagePreset } from "../../src/presets/stage-preset.ts";
import { runs, someOf } from "../support/thorough.ts";

const PLACE = { name: "machine", file: "machine.yaml", schema: "stage.json" };

/** Returns the starter for some answers, its plan read back. */
function starter(given: Readonly<Record<string, string>>) {
  for (const { flag, check } of questions(given)) {
    const typed = given[flag];
    if (typed !== undefined) expect([flag, typed, check(typed)]).toHaveProperty("2.value");
  }
  const answers = answersOf("machine", given);
  const made = starterStage(answers, PLACE);
  const { value, complaints } = readStagePreset(readYaml("machine.yaml", made.text));
  expect(complaints).toEqual([]);
  if (value === undefined) throw new Error("the plan cannot be read");
  return { answers, ...made, plan: value.plan };
}

describe("the plan of a new stage", () => {
  const sizes = {
    mm: ["420 x 400", "500 x 480", "560 x 400", "60 x 50 cm", "600 x 600"],
    in: ["18 x 17", "21 x 20", "24 x 22"],
  };
  const grid = (["mm", "in"] as const).flatMap((units) =>
    sizes[units].flatMap((frame) => ["2", "3", "4"].map((screws) => ({ units, frame, screws }))),
  );

  test.each(someOf(grid))("of a frame of $frame $units on $screws screws works out without an error", (given) => {
    const { errors, plan, answers } = starter(given);
    expect(errors).toBe(0);
    // The frame that was asked for is the one whose outer bars are written.
    const right = Math.max(...Object.values(plan.bars).flatMap(({ from, to }) => [from[0], to[0]]));
    expect(right).toBeCloseTo(answers.frame[0], 2);
    expect(Object.keys(plan.screws)).toHaveLength(Number(given.screws));
  });

  test("of any frame and plate that goes into it works out without an error", () => {
    const side = fc.integer({ min: 42, max: 60 });
    fc.assert(
      fc.property(side, side, fc.constantFrom("2", "3", "4"), fc.nat(8), (width, depth, screws, smaller) => {
        const plate = [width - 20, depth - 19].map((one) => Math.max(12, one - smaller));
        const given = { frame: `${width} x ${depth} cm`, plate: `${plate.join(" x ")} cm`, screws };
        const { errors, plan, answers } = starter(given);
        expect([given, errors]).toEqual([given, 0]);
        // The plate lies inside the frame.
        const { width: outer, depth: deep } = frameOf(answers);
        const [x, y] = plan.plate.at;
        expect(x - plan.plate.size[0] / 2).toBeGreaterThan(0);
        expect(x + plan.plate.size[0] / 2).toBeLessThan(outer);
        expect(y - plan.plate.size[1] / 2).toBeGreaterThan(0);
        expect(y + plan.plate.size[1] / 2).toBeLessThan(deep);
      }),
      { numRuns: runs(8, 3), seed: 29 },
    );
  });
});

describe("a size in two numbers", () => {
  const limits = { what: "plate", such: "220 x 200", min: 10, max: 1000 };
  test.each([
    ["26 x 22 cm", "mm", [260, 220]],
    ["26x22cm", "in", [260, 220]],
    ["260 x 220", "mm", [260, 220]],
    ["10 x 8", "in", [254, 203.2]],
    ["10 1/2 x 8 in", "mm", [266.7, 203.2]],
    ['10 x 8"', "mm", [254, 203.2]],
    ["10 in x 200 mm", "mm", [254, 200]],
    ["26 cm × 22 cm", "in", [260, 220]],
  ] as const)("%s in a plan in %s is %j mm", (text, units, value) => {
    expect(sizeIn(text, units, limits)).toEqual({ value });
  });

  test.each([
    ["26 cm x 22", /unit behind one number only/],
    ["26 x", /width x depth, such as 220 x 200/],
    ["26 x 22 N", /N measures a force/],
    ["26 x 22 xx", /not a unit known here/],
  ])("%s is refused", (text, wrong) => {
    expect(sizeIn(text, "mm", limits)).toHaveProperty("wrong", expect.stringMatching(wrong));
  });
});
