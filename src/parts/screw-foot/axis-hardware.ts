import { rectangle } from "../../geometry/profile.ts";
import { cylinder, moved, prism, turned } from "../../geometry/solid.ts";
import type { Feature } from "../feature.ts";
import { type BearingSeat, bearingSeat } from "../features/bearing-seat.ts";
import { setScrewPath } from "../features/set-screw-path.ts";
import type { KeepOut } from "../piece.ts";
import { SPAN_LENGTH, type Span, spansOf } from "./derive/clearances.ts";
import { KEY_PATH, LONGEST_KEY } from "./derive/key-path.ts";
import { PAD } from "./derive/stack.ts";
import type { Foot } from "./modes/mounting.ts";
import { windows } from "./windows.ts";

/** Clearance that is an error to enter, and one that is a warning, mm; axially the pulley always has the same. */
const TIGHT = 1;
const ROOMY = 2;
const AXIAL = 0.8;
/** How far the screw is drawn above the pulley, mm. */
const SCREW_UP = 60;

/** Returns the bearing's pocket as this foot has it. */
export function seatOf({ given, derived }: Foot): BearingSeat {
  const { pocket, pocketDepth, shoulder, relief, seat, shim, bed, padDepth, bought } = derived;
  const tip = padDepth > 0;
  return {
    bearing: bought.bearing,
    pocket,
    depth: pocketDepth,
    shoulder,
    relief,
    seat,
    shim,
    bottom: tip ? seat - padDepth : bed,
    pad: tip ? { diameter: Math.min(PAD.recess, shoulder), height: PAD.thick } : undefined,
    pushOut: !tip && given.thrust !== "tip",
  };
}

/** Returns everything that stands on or moves round the screw's axis: cuts and the space it needs. */
export function axisHardware(foot: Foot): Feature {
  const { given, derived, printer } = foot;
  const spans = spansOf(given, derived.bought, derived.beltRadius);
  const seat = bearingSeat(seatOf(foot), printer);
  const key = setScrewPath(
    {
      azimuth: given.keyAzimuth,
      height: derived.setScrewHeight,
      hubRadius: derived.bought.pulley.hubDiameter / 2,
      diameter: KEY_PATH,
      reach: LONGEST_KEY,
    },
    printer,
  );
  return {
    adds: [],
    cuts: [...seat.cuts, ...key.cuts, ...windows(foot)],
    keepOuts: [
      ...seat.keepOuts,
      ...key.keepOuts,
      ...ringBodies(foot),
      ...pulleyBodies(foot),
      ...spans.map((span) => beltBody(span, foot)),
      ...screwBodies(foot),
    ],
  };
}

function ringBodies({ given, derived }: Foot): KeepOut[] {
  const { bought, bearingTop, washerStack, collarHeight } = derived;
  let from = bearingTop;
  const washers = bought.washers.map(({ outside, thickness }, index) => {
    const body = cylinder(outside / 2, from, from + thickness);
    from += thickness;
    return { name: `washer ${index + 1}`, body };
  });
  if (given.thrust !== "collar") return washers;
  const start = bearingTop + washerStack;
  const ring = (off: number) => cylinder(bought.collar.outside / 2 + off, start, start + collarHeight);
  return [...washers, { name: "clamp collar", body: ring(TIGHT), roomy: ring(ROOMY) }];
}

function pulleyBodies({ derived }: Foot): KeepOut[] {
  const { bought, hubPoints, pulleyBottom, pulleyTop, pulleyRadius } = derived;
  const { hubLength, hubDiameter } = bought.pulley;
  const split = hubPoints === "up" ? pulleyTop - hubLength : pulleyBottom + hubLength;
  const [low, high] = [pulleyBottom - AXIAL, pulleyTop + AXIAL];
  const hub = (off: number) =>
    hubPoints === "up" ? cylinder(hubDiameter / 2 + off, split, high) : cylinder(hubDiameter / 2 + off, low, split);
  const teeth = (off: number) =>
    hubPoints === "up"
      ? cylinder(pulleyRadius + off, low, split + AXIAL)
      : cylinder(pulleyRadius + off, split - AXIAL, high);
  const bodies = [{ name: "pulley", body: teeth(TIGHT), roomy: teeth(ROOMY) }];
  return hubLength > AXIAL ? [...bodies, { name: "pulley hub", body: hub(TIGHT), roomy: hub(ROOMY) }] : bodies;
}

function beltBody({ name, azimuth, from }: Span, { given, derived }: Foot): KeepOut {
  const { plane, bought } = derived;
  const swept = (off: number) => {
    const [across, high] = [bought.belt.thickness / 2 + off, given.beltWidth / 2 + TIGHT];
    const strip = prism(rectangle(0, -across, SPAN_LENGTH, across), plane - high, plane + high);
    return moved(turned(strip, "z", azimuth), [from[0], from[1], 0]);
  };
  return { name, body: swept(TIGHT), roomy: swept(ROOMY) };
}

/** The screw from its tip up; an end that is turned down is a body of its own. */
function screwBodies({ given, derived }: Foot): KeepOut[] {
  const { seat, shim, padDepth, bought, pulleyTop } = derived;
  const tip = seat + shim - given.tipLength;
  const from = padDepth > 0 ? Math.max(tip, seat - padDepth + PAD.thick) : tip;
  const top = pulleyTop + SCREW_UP;
  const round = (diameter: number, low: number, high: number) => cylinder((diameter + 1) / 2, low, high);
  const { end, screw } = bought;
  if (end >= screw.diameter) return [{ name: "lead screw", body: round(screw.diameter, from, top) }];
  const step = endTop(given.thrust, derived);
  return [
    { name: "turned end of the lead screw", body: round(end, from, step) },
    { name: "lead screw", body: round(screw.diameter, step, top) },
  ];
}

/** Where a turned end stops: at the shoulder on the rings, or above everything that sits on it. */
function endTop(
  thrust: Foot["given"]["thrust"],
  { bearingTop, washerStack, bridgeSeat, bought, posts, pulleyTop }: Foot["derived"],
) {
  if (thrust === "shoulder") return bearingTop + washerStack;
  return posts.length > 0 ? bridgeSeat + bought.bearing.width : pulleyTop;
}
