import { expect, test } from "vitest";
import { plainWasherName, washerName } from "../../src/catalogue/washer-name.ts";
import { readTarget } from "../../src/cli/load.ts";
import { loadStage } from "../../src/cli/load-stage.ts";
import { boughtFor } from "../../src/outputs/hardware-csv.ts";

// ISO 7089: M5 10 x 1; DIN 9021: M5 15 x 1.2. from memory
test("a washer has one name, wherever it goes", () => {
  expect(plainWasherName("M5")).toBe("M5 washer 10 x 1");
  expect(washerName("M5", { outside: 15, thickness: 1.2 })).toBe("M5 large washer 15 x 1.2");
  expect(washerName("M5", { outside: 14.8, thickness: 1.2 })).toBe("M5 washer 14.8 x 1.2");
});

test.each(["seed-bench", "copy-stand"])("%s: washers of one size are one line of the list", (plan) => {
  const target = readTarget(`presets/stages/${plan}.yaml`);
  const { machine } = loadStage(target, { set: [], printer: undefined, version: "1" });
  if (machine === undefined) throw new Error("the plan does not load");
  const designs = machine.parts.map(({ request, designed }) => ({ name: request.name, design: designed.design }));
  const washers = boughtFor(machine.stage, designs).filter(({ item }) => /washer/.test(item));
  expect(washers.length).toBeGreaterThan(1);
  const sizes = washers.map(({ item }) => item.replace("large ", ""));
  expect(new Set(sizes).size).toBe(sizes.length);
  for (const { item } of washers) expect(item).toMatch(/^M\d+ (?:large )?washer [\d.]+ x [\d.]+$/);
});
