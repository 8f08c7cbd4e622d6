import { SET_SCREWS } from "../../catalogue/set-screws.ts";
import { nominal } from "../../core/item.ts";
import { tidy } from "../../core/rounding.ts";
import { findRow } from "../../core/table.ts";
import type { Case, HardwareLine } from "../family.ts";
import { isSetCollar } from "./bought.ts";
import { CAP } from "./derive/cap.ts";
import { HARDWARE_PLAY } from "./derive/fixing.ts";
import type { Derived } from "./derive/index.ts";
import { ON_CRESTS } from "./derive/service.ts";
import type { Parameters } from "./parameters.ts";
import { shimLines } from "./shim-lines.ts";

type Foot = Case<Parameters, Derived>;

/** Returns what must be bought for one foot. */
export function hardware({ given, derived }: Foot): HardwareLine[] {
  const { bolt, bearing } = derived.bought;
  const washers = given.washers?.map(nominal) ?? derived.bought.washers;
  const bolts = boltCount(given, derived);
  const bridged = given.style === "bridged";
  return [
    { item: `bearing ${given.bearing.key}`, count: bridged ? 2 : 1 },
    { item: `pulley ${given.pulley.key}, bore ${nominal(given.pulley).bore}`, count: 1 },
    ...washers.map(({ hole, outside, thickness }) => ({
      item: `metal ring ${hole} x ${outside} x ${thickness}`,
      count: 1,
      note: "on the bearing's inner ring",
    })),
    ...(given.thrust === "collar" ? [{ item: collarToBuy(given, derived), count: 1 }] : []),
    ...shimLines(bearing, derived.shim),
    { item: `${bolt.thread} x ${derived.boltLength} cap screw`, count: bolts, note: `to the ${given.bar.key} bar` },
    { item: `${bolt.thread} washer ${bolt.washerDiameter} x ${bolt.washerThickness}`, count: bolts },
    { item: `slot nut ${bolt.thread} for ${given.bar.key}${nutLength(given, derived)}`, count: bolts },
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

function collarToBuy({ collar }: Parameters, { bought }: Derived): string {
  const { bore, outside, width } = collar === undefined ? bought.collar : nominal(collar);
  const kind = isSetCollar(collar) ? "set collar" : "clamp collar";
  return `${kind}, bore ${bore}, ${outside} x ${width}`;
}

/** Where two nuts stand in one slot, their length counts. */
function nutLength({ mount }: Parameters, { boltsApart }: Derived): string {
  const most = tidy(boltsApart - HARDWARE_PLAY);
  return mount === "in-corner" || mount === "on-post" ? `, at most ${most} long` : "";
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
    ...holdOf({ given, derived }),
    `${given.material.key} good to ${derived.bought.material.serviceLimit} °C under load`,
  ];
}

const UNKNOWN = "not known: measure";

/** What holds the load on the screw: set screws with their torque, or a collar; where no table knows it, that. */
function holdOf({ given, derived }: Pick<Foot, "given" | "derived">): string[] {
  const { pulley, collar } = derived.bought;
  if (given.thrust === "pulley") {
    const { count, thread } = { count: Math.round(pulley.setScrewCount), thread: pulley.setScrew };
    return [
      `set screws of the pulley, ${count} x ${thread}: torque ${torqueOf(thread)}; hold ${holdText(derived.hold)}`,
    ];
  }
  if (given.thrust !== "collar") return [];
  if (!isSetCollar(given.collar)) return [`clamp collar, ${collar.screw}: torque and hold on the screw ${UNKNOWN}`];
  const one = findRow(SET_SCREWS, collar.screw)?.values.holdingForce ?? 0;
  return [`set collar, ${collar.screw}: torque ${torqueOf(collar.screw)}; hold ${holdText(ON_CRESTS * one)}`];
}

function torqueOf(thread: string): string {
  const values = findRow(SET_SCREWS, thread)?.values;
  if (values === undefined) return UNKNOWN;
  return `${values.torque > 0 ? `${values.torque} N·m` : UNKNOWN}, key ${values.key}`;
}

const holdText = (hold: number) => (hold > 0 ? `${hold.toFixed(0)} N on thread crests` : UNKNOWN);
