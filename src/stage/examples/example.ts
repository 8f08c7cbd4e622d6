import type { Level } from "../../core/diagnostic.ts";
import type { ExamplePlan } from "./plans.ts";

/** The smallest change of a plan that brings a defect of a machine about: test, example and demonstration in one. */
export interface StageExample {
  readonly level: Level;
  readonly plan: ExamplePlan;
  /** What is laid over the plan, as `--set` takes it; nothing where the plan has the defect as it stands. */
  readonly set: readonly string[];
  /** Where the defect is between the bodies of the assembled machine: what is told then, which only building shows. */
  readonly built?: string;
}

type Example = StageExample;

/** Returns an example on the wide machine. */
export const onStage = (level: Level, ...set: string[]): Example => ({ level, plan: "example-stage.yaml", set });

/** Returns an example on the plan with one belt. */
export const onBelt = (level: Level, ...set: string[]): Example => ({ level, plan: "one-belt.yaml", set });

/** Returns an example on the wide machine that is told only once it is built. */
export const onceBuilt = (level: Level, built: string, ...set: string[]): Example => ({
  ...onStage(level, ...set),
  built,
});
