import { tidy } from "../../core/rounding.ts";
import type { Case, HardwareLine } from "../family.ts";
import { CAP } from "./derive/cap.ts";
import { HARDWARE_PLAY } from "./derive/fixing.ts";
import type { Derived } from "./derive/index.ts";
import type { Parameters } from "./parameters.ts";

type Foot = Case<Parameters, Derived>;

/** Returns what must be bought for one foot. */
export function hardware({ given, derived }: Foot): HardwareLine[] {
  const { bolt, washers, bearing } = derived.bought;
  const bolts = boltCount(given, derived);
  const bridged = given.style === "bridged";
  return [
    { item: `bearing ${given.bearing.key}`, count: bridged ? 2 : 1 },
    { item: `pulley ${given.pulley.key}, bore ${given.pulley.values.bore}`, count: 1 },
    ...washers.map(({ hole, outside, thickness }) => ({
      item: `metal ring ${hole} x ${outside} x ${thickness}`,
      count: 1,
      note: "on the bearing's inner ring",
    })),
    ...(given.thrust === "collar" ? [{ item: `clamp collar, bore ${bearing.bore}`, count: 1 }] : []),
    ...(derived.shim > 0 ? [{ item: `shim ring ${derived.shim} mm under the bearing`, count: 1 }] : []),
    { item: `${bolt.thread} x ${derived.boltLength} cap screw`, count: bolts, note: `to the ${given.bar.key} bar` },
    { item: `${bolt.thread} washer ${bolt.washerDiameter} x ${bolt.washerThickness}`, count: bolts },
    { item: `slot nut ${bolt.thread} for ${given.bar.key}`, count: bolts, ...nutNote(given, derived) },
    ...(bridged
      ? [
          { item: "M4 x 25 cap screw", count: 4 },
          { item: "M4 washer 9 x 0.8", count: 4 },
          { item: "M4 nut", count: 4 },
        ]
      : []),
    ...(given.cap
      ? [
          { item: "M3 x 8 countersunk screw", count: CAP.azimuths.length },
          { item: "M3 heat-set insert 5.7 long", count: CAP.azimuths.length },
        ]
      : []),
  ];
}

/** Where two nuts stand in one slot, their length counts. */
function nutNote({ mount }: Parameters, { boltsApart }: Derived): { note?: string } {
  const most = tidy(boltsApart - HARDWARE_PLAY);
  return mount === "in-corner" || mount === "on-post" ? { note: `at most ${most} mm long` } : {};
}

function boltCount({ mount }: Parameters, { rows }: Derived): number {
  if (mount === "on-side") return 2 * rows;
  if (mount === "in-corner") return 4 * rows;
  return mount === "on-post" ? 4 : 2;
}

/** Returns the figures for the sheet. */
export function limits({ given, derived }: Foot): string[] {
  const { bolt } = derived.bought;
  return [
    `${bolt.thread} on plastic: at most ${derived.torqueAllowed.toFixed(2)} N·m; retighten after a day`,
    `hub ${derived.hubPoints}, seat ${derived.seat.toFixed(2)} mm and belt ${derived.plane.toFixed(2)} mm over the bar's top`,
    `along the screw: at most ${derived.axialLimit.toFixed(0)} N through the bearing`,
    `${given.material.key} good to ${derived.bought.material.serviceLimit} °C under load`,
  ];
}
