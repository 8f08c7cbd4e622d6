import type { Design } from "../../parts/family.ts";
import type { Parameters } from "../../parts/wheel-plate/parameters.ts";
import type { Fact, Limit, Section } from "../fact.ts";
import type { PlacedPart } from "../machine.ts";
import { atLeast, atMost } from "../worked.ts";
import type { SharedStage } from "./structure.ts";
import { momentOf, worstWheelLoad } from "./wheel-load.ts";

/** A carriage as its family has worked it out. */
export interface Carriage {
  /** Its name in the plan. */
  readonly name: string;
  readonly part: PlacedPart;
  readonly design: Design;
  readonly given: Parameters;
}

/** Returns the carriages of the machine; one whose parameters were refused is left out. */
export function carriagesOf({ designed }: Pick<SharedStage, "designed">): readonly Carriage[] {
  return designed.flatMap(({ part, design }) => {
    if (part.family !== "wheel-plate") return [];
    return [{ name: String(part.path[1]), part, design, given: part.parameters as Parameters }];
  });
}

/** Returns what the wheels hold, and the preload and forces that their family works out from it. */
export function wheels(stage: SharedStage): Section {
  const load = worstWheelLoad(stage.plan);
  const carriages = carriagesOf(stage);
  const moment: Fact = {
    key: "wheels.moment",
    label: `moment that the wheels hold together, most in the case: ${load.name}`,
    value: momentOf(load),
    unit: "N·mm",
  };
  return { title: "Wheels", facts: carriages.length === 0 ? [] : [moment, ...carriages.flatMap(factsOf)] };
}

function factsOf({ name, design, given }: Carriage): Fact[] {
  const least = design.dimensions.find(({ key }) => key === "preloadLeast")?.value ?? 0;
  const limits: Readonly<Record<string, Limit | undefined>> = {
    preload: atLeast(least),
    largest: atMost(given.wheel.values.forceLimit),
    smallest: atLeast(0),
    rowRadial: undefined,
    rowAxial: undefined,
    flank: undefined,
  };
  return design.dimensions.flatMap(({ key, meaning, value, unit }) => {
    if (!(key in limits)) return [];
    const limit = limits[key];
    const fact: Fact = { key: `carriage.${name}.${key}`, label: `carriage ${name}: ${meaning}`, value, unit };
    return [limit === undefined ? fact : { ...fact, limit }];
  });
}
