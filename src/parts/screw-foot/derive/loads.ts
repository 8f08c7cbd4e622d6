import { bracketRootStress } from "../../../mechanics/bracket-root-stress.ts";
import { bracketSink } from "../../../mechanics/bracket-sink.ts";
import { hollowColumnStress } from "../../../mechanics/hollow-column-stress.ts";
import { rootMoment } from "../../../mechanics/root-moment.ts";
import { seatPressure } from "../../../mechanics/seat-pressure.ts";
import type { Bought } from "../bought.ts";
import type { Parameters } from "../parameters.ts";
import type { Fixing } from "./fixing.ts";
import { type Grip, gripOf } from "./grip.ts";
import type { Housing } from "./housing.ts";
import { BEYOND, outcomeOf } from "./outcome.ts";
import type { Stack } from "./stack.ts";

export interface Loads extends Grip {
  readonly thrust: number;
  readonly lever: number;
  readonly rootHeight: number;
  readonly moment: number;
  readonly rootWidth: number;
  readonly stress: number;
  readonly columnStress: number;
  readonly stressUse: number;
  readonly sink: number;
  readonly sinkDifference: number;
  readonly seatArea: number;
  readonly seatPressure: number;
}

/** Returns what thrust and belt pull do to the plastic and to the mount bolts: N, N mm, MPa, mm. */
export function loadsOf(parameters: Parameters, bought: Bought, foot: Housing & Fixing & Stack): Loads {
  const thrust = parameters.thrust === "hung" ? 0 : parameters.axialLoad;
  const root = rootOf(parameters, bought, foot);
  const pull = parameters.beltPull;
  const moment = outcomeOf(rootMoment, "moment", { axial: thrust, lever: root.lever, pull, height: root.height });
  const stress = outcomeOf(bracketRootStress, "stress", { moment, width: root.width, height: root.depth });
  const columnStress = columnOf(parameters, foot, thrust);
  const { inLayer, acrossLayers } = bought.material;
  const sink = sinkOf(bought, root, thrust);
  return {
    thrust,
    lever: root.lever,
    rootHeight: root.depth,
    moment,
    rootWidth: root.width,
    stress,
    columnStress,
    stressUse: Math.max(stress / inLayer, columnStress / acrossLayers),
    sink,
    sinkDifference: sinkDifferenceOf(parameters, sink, thrust),
    ...seatOf(foot, thrust, parameters),
    ...gripOf(parameters, bought, foot, thrust),
  };
}

/** Sink grows as the load does. Left out, the load of the others is not known, and not nothing. */
function sinkDifferenceOf({ steadyLoad, lightestLoad, otherSink }: Parameters, sink: number, thrust: number): number {
  if (thrust === 0) return 0;
  const under = (load: number) => (sink * load) / thrust;
  const other = otherSink ?? (lightestLoad === undefined ? undefined : under(lightestLoad));
  return other === undefined ? 0 : Math.max(0, under(steadyLoad ?? thrust) - other);
}

/** The section that bends: lever of the thrust, height of the belt above it, width, and depth the way it bends. */
interface Root {
  readonly lever: number;
  readonly height: number;
  readonly width: number;
  readonly depth: number;
}

function rootOf({ mount, offset }: Parameters, { bar, bolt }: Bought, foot: Housing & Fixing & Stack): Root {
  const { axis, axisB, housing, rim, bed, plane, plate, besides } = foot;
  switch (mount) {
    case "under": {
      // The plan narrows evenly from the bolts to the column; a chord of the hull, so a little less than its width.
      const atBolts = besides + bolt.washerDiameter / 2 + 3;
      const width = 2 * (housing + ((atBolts - housing) * axis) / (axis + bar.width / 2));
      return { lever: axis, height: plane + bar.height, width, depth: plate };
    }
    case "on-top":
      // Beside the bar the base stands out past the bar's edge and bends there.
      return offset > bar.width / 2
        ? { lever: offset - bar.width / 2, height: plane, width: 2 * housing, depth: plate }
        : { lever: 0, height: 0, width: 2 * housing, depth: plate };
    default:
      return { lever: Math.max(axis, axisB), height: plane - (rim + bed) / 2, width: 2 * housing, depth: rim - bed };
  }
}

/** Stress across the layers at the foot of the column that stands free: on top of a bar or below it. */
function columnOf({ mount, beltPull }: Parameters, foot: Housing & Stack, thrust: number): number {
  if (mount !== "on-top" && mount !== "under") return 0;
  const { housing, shoulder, plane, bed } = foot;
  const section = { outer: housing, inner: shoulder / 2 };
  return outcomeOf(hollowColumnStress, "stress", { pull: beltPull, lever: plane - bed, axial: thrust, ...section });
}

function sinkOf({ material }: Bought, { lever, width, depth }: Root, force: number): number {
  const { modulus, creepFactor: creep } = material;
  return outcomeOf(bracketSink, "sink", { force, lever, width, height: depth, modulus, creep });
}

/** A screw that stands on its tip puts nothing on the seat. */
function seatOf({ pocket, relief, shoulder }: Housing, thrust: number, { thrust: path }: Parameters) {
  const inputs = { force: path === "tip" ? 0 : thrust, pocket, relief, bore: shoulder };
  return {
    seatArea: outcomeOf(seatPressure, "area", inputs, 0),
    seatPressure: outcomeOf(seatPressure, "pressure", inputs, path === "tip" || thrust === 0 ? 0 : BEYOND),
  };
}
