import { down } from "../../core/rounding.ts";
import type { Vec2 } from "../../geometry/mesh.ts";
import { rectangle } from "../../geometry/profile.ts";
import { cylinder, prism, revolved, type Solid } from "../../geometry/solid.ts";
import { uprightHole } from "../../printing/compensation.ts";
import type { Printer } from "../../printing/printer.ts";
import type { Feature } from "../feature.ts";
import type { KeepOut } from "../piece.ts";

/** Lead-in at the rim, mm, and the most the relief groove is deep, in whole layers: deeper leaves a thin ridge. */
const LEAD = 0.6;
const RELIEF_DEEP = 0.4;
const OVERRUN = 1;
/** Nothing printed may come this near the inner ring: wider on the diameter, above and below its faces, mm. */
const INNER = { wider: 1, off: 0.6 };
/** Below this outside diameter the push-out slots are narrower. */
const SMALL = 20;
/** How far above the rim the bearing needs a free way in, mm. */
const WAY_IN = 40;

/** A bearing in a pocket that opens upwards, its axis through the origin. Sizes in mm, wanted. */
export interface BearingSeat {
  readonly bearing: {
    readonly outside: number;
    readonly width: number;
    readonly innerLand: number;
  };
  readonly pocket: number;
  readonly depth: number;
  readonly shoulder: number;
  /** Width of the groove at the pocket's edge, so that the ring's corner cannot ride on a blob of plastic. */
  readonly relief: number;
  /** Height of the seat, and of the shim on it. */
  readonly seat: number;
  readonly shim: number;
  /** Where the bore under the seat ends. */
  readonly bottom: number;
  /** A wider or narrower recess at the end of the bore, for a hard pad. */
  readonly pad?: { readonly diameter: number; readonly height: number } | undefined;
  /** Slots through which a blade from below pushes the outer ring out. */
  readonly pushOut: boolean;
}

/** Returns the stepped pocket as one tool, the push-out slots, and the space of the bearing. */
export function bearingSeat(seat: BearingSeat, printer: Printer): Feature {
  const cuts = [pocketTool(seat, printer)];
  if (seat.pushOut) cuts.push(slots(seat, printer));
  return { adds: [], cuts, keepOuts: keepOutsOf(seat) };
}

function pocketTool({ pocket, depth, shoulder, relief, seat, bottom, pad }: BearingSeat, printer: Printer): Solid {
  const [radius, bore] = [uprightHole(pocket, printer) / 2, uprightHole(shoulder, printer) / 2];
  const rim = seat + depth;
  const groove = seat - Math.max(printer.layer, down(RELIEF_DEEP, printer.layer));
  const edge = radius - relief;
  const padRadius = pad === undefined ? 0 : uprightHole(pad.diameter, printer) / 2;
  const start: Vec2[] =
    pad === undefined
      ? [
          [0, bottom - OVERRUN],
          [bore, bottom - OVERRUN],
        ]
      : [
          [0, bottom],
          [padRadius, bottom],
          [padRadius, bottom + pad.height],
          [bore, bottom + pad.height],
        ];
  // Where the groove would eat the whole ring there is none: a check has already said that the ring is too narrow.
  const ring: Vec2[] =
    edge > bore
      ? [
          [bore, seat],
          [edge, seat],
          [edge, groove],
          [radius, groove],
        ]
      : [
          [bore, seat],
          [radius, seat],
        ];
  const rest: Vec2[] = [
    [radius, rim - LEAD],
    [radius + LEAD, rim],
    [radius + LEAD, rim + OVERRUN],
    [0, rim + OVERRUN],
  ];
  return revolved([...start, ...ring, ...rest], "around", radius);
}

function slots({ bearing, pocket, seat, depth, bottom }: BearingSeat, printer: Printer): Solid {
  const half = (bearing.outside < SMALL ? 2 : 3) / 2;
  const reach = Math.sqrt((uprightHole(pocket, printer) / 2) ** 2 - half ** 2);
  // They end inside the pocket: ending level with its floor would leave a skin as thin as rounding.
  const top = seat + Math.min(OVERRUN, depth / 2);
  return prism(rectangle(-reach, -half, reach, half), bottom - OVERRUN, top);
}

function keepOutsOf({ bearing, seat, shim, depth, pad, bottom }: BearingSeat): KeepOut[] {
  const [from, to] = [seat + shim, seat + shim + bearing.width];
  const inner = (bearing.innerLand + INNER.wider) / 2;
  const low = pad === undefined ? bottom : bottom + pad.height;
  const below = Math.max(from - INNER.off, low);
  return [
    { name: "bearing", body: cylinder(bearing.outside / 2, from, to) },
    { name: "way of the bearing into its pocket", body: cylinder(bearing.outside / 2, to, seat + depth + WAY_IN) },
    { name: "inner ring, from above", body: cylinder(inner, to, to + INNER.off) },
    ...(below < from ? [{ name: "inner ring, from below", body: cylinder(inner, below, from) }] : []),
  ];
}

/** Returns the drawn area of the shoulder ring in mm2: groove and push-out slots taken off. */
export function shoulderArea(seat: BearingSeat, printer: Printer): number {
  const [outer, inner] = [uprightHole(seat.pocket, printer) / 2 - seat.relief, uprightHole(seat.shoulder, printer) / 2];
  if (outer <= inner) return 0;
  const width = seat.bearing.outside < SMALL ? 2 : 3;
  const lost = seat.pushOut ? 2 * width * (outer - inner) : 0;
  return Math.max(0, Math.PI * (outer ** 2 - inner ** 2) - lost);
}
