import { isRefusal } from "../../../core/calculation.ts";
import { cosDeg, down, sinDeg, tidy, up } from "../../../core/rounding.ts";
import { pitchRadius } from "../../../mechanics/pitch-radius.ts";
import { uprightHole } from "../../../printing/compensation.ts";
import { type Fit, wanted } from "../../../printing/fits.ts";
import type { Printer } from "../../../printing/printer.ts";
import type { Bought } from "../bought.ts";
import type { Parameters } from "../parameters.ts";
import { type Posts, postReach } from "./bridge.ts";

export interface Housing {
  readonly pocket: number;
  readonly pocketModelled: number;
  readonly pocketDepth: number;
  readonly housing: number;
  readonly shoulder: number;
  readonly shoulderModelled: number;
  readonly ring: number;
  readonly relief: number;
  readonly pitchRadius: number;
  readonly beltRadius: number;
  readonly plate: number;
  readonly axis: number;
  readonly axisB: number;
}

const FIT_OF: Readonly<Record<Parameters["pocketFit"], Fit>> = { "drop-in": "dropIn", push: "push", press: "press" };
/** The bearing stands this much proud, so that the rim cannot reach the washer. */
const PROUD = 0.3;
/** What the relief groove is wider than the ring's corner radius, mm. */
export const RELIEF = { wider: 0.3, deep: 0.4 };
/** Offsets of the axis are whole steps, mm. */
const STEP = 0.5;

/** Returns the bearing's housing and how far its axis stands off the bar. */
export function housingOf(given: Parameters, bought: Bought, posts: Posts, printer: Printer): Housing {
  const { bearing } = bought;
  const pocket = wanted(bearing.outside, FIT_OF[given.pocketFit]);
  const housing = pocket / 2 + given.wall;
  const shoulder = given.shoulderBore ?? up(bearing.outerLand, 0.1);
  const radii = { housing, pocket, ...pulleyRadii(bought) };
  const plate = given.plate ?? usualPlate(given, bought);
  const { axis, axisB } = axes(given, radii, posts, plate);
  return {
    ...radii,
    pocketModelled: uprightHole(pocket, printer),
    pocketDepth: Math.max(printer.layer, down(given.pocketDepth ?? bearing.width - PROUD, printer.layer)),
    shoulder,
    shoulderModelled: uprightHole(shoulder, printer),
    ring: (pocket - shoulder) / 2,
    relief: bearing.cornerRadius + RELIEF.wider,
    plate,
    axis,
    axisB,
  };
}

function pulleyRadii({ pulley, belt }: Bought) {
  const outcome = pitchRadius.compute({ teeth: pulley.teeth, pitch: pulley.pitch });
  const radius = isRefusal(outcome) ? (pulley.teeth * pulley.pitch) / (2 * Math.PI) : outcome.radius;
  return { pitchRadius: radius, beltRadius: radius + belt.thickness - belt.toothHeight - belt.pitchLineDistance };
}

/** The plates that take a stock bolt without a counterbore; the base below a bar is thicker, since it bends. */
function usualPlate({ mount }: Parameters, { bolt }: Bought): number {
  if (mount === "under") return bolt.thread === "M6" ? 9 : 10;
  return bolt.thread === "M6" ? 8 : 6;
}

interface Radii {
  readonly housing: number;
  readonly pocket: number;
  readonly beltRadius: number;
}

function axes(given: Parameters, radii: Radii, posts: Posts, plate: number): { axis: number; axisB: number } {
  const { mount, cornerAngle } = given;
  if (mount === "on-top") return { axis: 0, axisB: 0 };
  const air = mount === "under" ? STEP : 0;
  const own = ownOffset(given, radii, posts, plate);
  const towards = (x: number, y: number) => up(Math.max(own, postReach(posts.posts, [x, y]) + air), STEP);
  const axis = given.axisOffset ?? towards(0, -1);
  const second = given.axisOffsetB ?? towards(-sinDeg(cornerAngle), cosDeg(cornerAngle));
  return { axis, axisB: mount === "in-corner" ? second : 0 };
}

/** The offset before rounding: room for housing, flange and belt, behind them the wall or the posts of a bridge. */
function ownOffset(given: Parameters, { housing, pocket, beltRadius }: Radii, posts: Posts, plate: number): number {
  const open = Math.max(housing + 0.5, posts.pulleyRadius + 3, beltRadius + 3);
  if (given.style === "walled") {
    return tidy(Math.max(open, plate + posts.pulleyRadius + 2, plate + beltRadius + 3, plate + pocket / 2 + 1));
  }
  return tidy(given.style === "bridged" ? Math.max(open, posts.pulleyRadius + 14) : open);
}
