import { FAMILIES } from "../../src/parts/index.ts";
import type { Fact, PlacedPart, Section, Stage } from "../../src/stage/index.ts";
import { widePlan } from "./plans.ts";

/** Returns a part of a machine, its parameters read by its family. */
export function placedPart(
  name: string,
  family: string,
  parameters: Readonly<Record<string, unknown>> = {},
  path: PlacedPart["path"] = ["screws", "A"],
): PlacedPart {
  const own = FAMILIES.find((one) => one.name === family);
  if (own === undefined) throw new Error(family);
  const placement = { origin: [1, 2, 3], angle: 90 } as const;
  return { name, family, parameters: own.schema.parse(parameters), derived: [], path, placement, moves: false };
}

/** Returns a machine with nothing worked out but what is given. */
export function handmade(changes: Partial<Stage> = {}): Stage {
  const nothing = { pulleys: [], loops: [], loads: undefined, feet: [], parts: [], sections: [], diagnostics: [] };
  return { plan: widePlan(), ...nothing, ...changes };
}

const share: Fact = {
  key: "screw.A.share",
  label: "largest share of the weight on screw A",
  value: 23.456,
  unit: "N",
  from: { calculation: "thread-travel", result: "turns", inputs: { pitch: 0.8, marks: 10, move: 0.192 } },
  limit: { value: 50, kind: "at most" },
};

/** A block of a report: every kind of limit, and a name and a meaning that are long. */
export const SECTION: Section = {
  title: "Loads",
  facts: [
    share,
    { key: "stage.weight", label: "weight that the screws carry", value: 61.2, unit: "N" },
    {
      key: "screw.C.column",
      label: "column factor of screw C, with the nut at the top of its travel and the end steadied",
      value: 1.5,
      unit: "",
      limit: { value: 2, kind: "at least" },
    },
    { key: "print.shift", label: "shift under a print", value: 0, unit: "mm", limit: { value: 0.2, kind: "at most" } },
  ],
  lines: [
    "the stage stands on three screws; a lean on a corner lifts none of them off, whatever lies on the plate here",
  ],
};
