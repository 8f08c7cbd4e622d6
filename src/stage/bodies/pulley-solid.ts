import type { Pulley } from "../../catalogue/pulleys.ts";
import type { Vec2 } from "../../geometry/mesh.ts";
import { cylinder, revolved, type Solid } from "../../geometry/solid.ts";
import { pulleyOutside } from "../../mechanics/pulley-outside.ts";
import { orElse } from "../../parts/or-else.ts";

/** A pulley as it stands: its ends and the middle of its belt, mm over the datum. */
interface Standing {
  readonly pulley: Pulley;
  /** Pitch line of the belt over the foot of its teeth. */
  readonly line: number;
  readonly plane: number;
  readonly low: number;
  readonly high: number;
}

/** Returns a pulley about the z axis, stepped: hub, flange, teeth, flange. Its bore is left out. */
export function pulleySolid({ pulley, line, plane, low, high }: Standing): Solid {
  const { teeth, pitch, flangeDiameter, flangeThickness, toothWidth, hubDiameter } = pulley;
  const standIn = { pitchDiameter: flangeDiameter, outside: flangeDiameter };
  const { outside } = orElse(pulleyOutside, { teeth, pitch, line }, standIn);
  const [flange, hub, tooth] = [flangeDiameter / 2, hubDiameter / 2, outside / 2];
  const [under, over] = [plane - toothWidth / 2, plane + toothWidth / 2];
  const [bottom, top] = [under - flangeThickness, over + flangeThickness];
  const steps: Vec2[] = [
    ...(low < bottom - 1e-6 ? step(hub, low, bottom) : []),
    ...(low < under - 1e-6 ? step(flange, Math.max(low, bottom), under) : []),
    ...step(tooth, under, over),
    ...(high > over + 1e-6 ? step(flange, over, Math.min(high, top)) : []),
    ...(high > top + 1e-6 ? step(hub, top, high) : []),
  ];
  const [start = 0, end = 0] = [steps[0]?.[1], steps.at(-1)?.[1]];
  return revolved([[0, start], ...steps, [0, end]], "inside");
}

function step(radius: number, from: number, to: number): Vec2[] {
  return [
    [radius, from],
    [radius, to],
  ];
}

/** Returns the groove between the flanges, where the belt of the pulley runs. */
export function grooveOf({ flangeDiameter, toothWidth }: Pulley, plane: number): Solid {
  return cylinder(flangeDiameter / 2 + 1, plane - toothWidth / 2, plane + toothWidth / 2);
}
