import { cosDeg, up } from "../../../core/rounding.ts";
import type { Bought } from "../bought.ts";
import type { Parameters } from "../parameters.ts";
import type { Stack } from "./stack.ts";

export interface Cap {
  readonly capBore: number;
  readonly capTop: number;
  readonly capGap: number;
  /** What turns lowest over the cap, in words. */
  readonly capMeets: string;
  /** Whether the pulley's hub turns inside the cap's bore when it points down. */
  readonly hubPasses: boolean;
  readonly capCircle: number;
}

/** Thickness of the cap, and how far its screws stand outside the pocket, mm. */
export const CAP = { thick: 3, screwsOff: 9, lobe: 4.2, azimuths: [90, 210, 330] };
/** Air round the cap, mm. */
export const CAP_AIR = 0.5;

/** Returns how far the lobes for the cap's screws reach in a direction (degrees), for a pocket of this diameter. */
export function lobeReach(pocket: number, azimuth: number): number {
  const shares = CAP.azimuths.map((each) => cosDeg(azimuth - each));
  return ((pocket + CAP.screwsOff) / 2) * Math.max(...shares) + CAP.lobe;
}

interface Stacked extends Stack {
  readonly pocket: number;
}

/** Returns the bearing cap's heights and the gap between it and the lowest thing that turns over it. */
export function capOf({ thrust }: Parameters, bought: Bought, stack: Stacked): Cap {
  const { bearing, pulley } = bought;
  const capBore = up(bearing.outerLand, 0.5);
  const capTop = stack.bearingTop + CAP.thick;
  // A hub that turns inside the bore is no obstacle; then the flange above it is the lowest face.
  const hubPasses = pulley.hubDiameter + 2 <= capBore;
  const inside = thrust !== "collar" && stack.hubPoints === "down" && hubPasses;
  const hubRoom = inside ? pulley.hubLength : 0;
  const capGap = stack.washerStack + hubRoom - CAP.thick;
  const hub = stack.hubPoints === "down" && !inside && pulley.hubLength > 0;
  const capMeets = thrust === "collar" ? "the clamp collar" : `the pulley's ${hub ? "hub" : "flange"}`;
  return { capBore, capTop, capGap, capMeets, hubPasses, capCircle: stack.pocket + CAP.screwsOff };
}
