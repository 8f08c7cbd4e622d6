import type { Belt } from "../../catalogue/belts.ts";
import type { Idler } from "../../catalogue/idlers.ts";
import type { Pulley } from "../../catalogue/pulleys.ts";
import { isRefusal } from "../../core/calculation.ts";
import type { Item } from "../../core/item.ts";
import { type Point, pitchRadius, smoothIdlerRadius } from "../../mechanics/index.ts";
import { schema as footSchema } from "../../parts/screw-foot/parameters.ts";
import type { BeltNode } from "../machine.ts";
import type { Plan, PlanLoop } from "../schema/index.ts";

/** A loop with its nodes where the plan has them, in the order in which they are listed. */
export interface LoopSetup {
  readonly name: string;
  readonly plan: PlanLoop;
  readonly nodes: readonly BeltNode[];
  /** Nodes whose hardware or place the plan does not tell: others complain of them. */
  readonly unknown: readonly string[];
}

/** The node that the motor's pulley of a loop is. */
export const MOTOR = "motor";

/** Returns a loop's nodes with their radii. */
export function setupOf(plan: Plan, name: string, loop: PlanLoop): LoopSetup {
  const read = loop.nodes.map((node) => nodeOf(plan, name, loop, node));
  return {
    name,
    plan: loop,
    nodes: read.filter((node) => typeof node !== "string"),
    unknown: read.filter((node) => typeof node === "string"),
  };
}

/** Returns the pulley on a screw, from what all feet have in common and the screw's own; undefined if it is none. */
export function screwPulley(plan: Plan, screw: string): Item<Pulley> | undefined {
  const { pulley } = { ...plan.foot, ...plan.screws[screw]?.foot };
  return footSchema.shape.pulley.safeParse(pulley).data;
}

function nodeOf(plan: Plan, loopName: string, loop: PlanLoop, name: string): BeltNode | string {
  const belt = loop.belt.values;
  if (name === MOTOR) {
    const pulley = plan.motor.pulleys.find((one) => one.loop === loopName)?.pulley;
    return pulley === undefined ? name : (toothed(name, "motor", place(plan.motor.at), pulley.values, belt) ?? name);
  }
  const screw = plan.screws[name];
  if (screw !== undefined) {
    const pulley = screwPulley(plan, name);
    return pulley === undefined ? name : (toothed(name, "screw", place(screw.at), pulley.values, belt) ?? name);
  }
  const idler = plan.idlers[name];
  return idler === undefined ? name : (idlerNode(name, place(idler.at), idler, belt) ?? name);
}

const place = ([x, y]: readonly [number, number]): Point => ({ x, y });

function toothed(
  name: string,
  kind: "motor" | "screw",
  at: Point,
  { teeth, pitch, flangeDiameter, toothWidth, flangeThickness }: Pulley,
  belt: Belt,
): BeltNode | undefined {
  const found = pitchRadius.compute({ teeth, pitch: belt.pitch });
  if (isRefusal(found)) return undefined;
  const body = { flange: flangeDiameter / 2, groove: toothWidth, rim: flangeThickness, pitch };
  return { name, kind, ...at, radius: found.radius, inside: true, teeth, ...body };
}

/** An idler: toothed and inside it meshes; on the back of the belt it is smooth, whatever teeth it has. */
function idlerNode(
  name: string,
  at: Point,
  { idler, side }: { readonly idler: Item<Idler>; readonly side: "inside" | "outside" },
  { pitch, thickness, toothHeight, pitchLineDistance }: Belt,
): BeltNode | undefined {
  const { teeth, runDiameter, flangeDiameter, height, runWidth, beltWidth } = idler.values;
  const groove = runWidth > 0 ? runWidth : beltWidth;
  const body = { flange: flangeDiameter / 2, groove, rim: Math.max(0, height - groove) / 2, runs: runDiameter, pitch };
  const node = { name, kind: "idler", ...at, inside: side === "inside", ...body } as const;
  const meshes = teeth > 0 && side === "inside";
  const smooth = { diameter: runDiameter, thickness, tooth: toothHeight, line: pitchLineDistance };
  const found = meshes ? pitchRadius.compute({ teeth, pitch }) : smoothIdlerRadius.compute(smooth);
  if (isRefusal(found)) return undefined;
  if ("radius" in found) return { ...node, radius: found.radius, teeth };
  return { ...node, radius: side === "inside" ? found.teeth : found.back };
}
