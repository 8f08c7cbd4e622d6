import { cosDeg, sinDeg } from "../../core/rounding.ts";
import type { Vec2 } from "../../geometry/mesh.ts";
import { disc, hexagon, polygon, rectangle, slotAlong } from "../../geometry/profile.ts";
import { prism, type Solid } from "../../geometry/solid.ts";
import { keyPath } from "../features/mount-bolt.ts";
import type { KeepOut } from "../piece.ts";
import { armsAt } from "./derive/arms.ts";
import { fittings } from "./fittings.ts";
import type { PlateWheel } from "./layout.ts";
import { axles, type Sheet, slots } from "./outline.ts";

/** How far a hex key must reach straight out of a head, mm. */
const KEY_REACH = 40;
/** A spanner on the hexagon: how far it sweeps out, and how far to each side, mm and degrees. */
const SPANNER = { radius: 30, half: 60 };

const rod = (diameter: number, at: Vec2, from: number, to: number): Solid => prism(disc(diameter / 2, at), from, to);

/** Returns the space that axles, wheels, arms and the bar need round a plate. `far` is the far plate of a sandwich. */
export function hardwareRooms(sheet: Sheet, far: boolean): KeepOut[] {
  const each = axles(sheet).flatMap(({ at, wheel }) => [
    ...wheelRooms(sheet, at, wheel, far),
    ...outside(sheet, at, wheel),
    ...(far ? farStack(sheet, at) : nearStack(sheet, at, wheel)),
  ]);
  return [...each, bar(sheet, far), ...armRooms(sheet)];
}

const named = (what: string, [x, y]: Vec2) => `${what} at x ${x.toFixed(1)}, y ${y.toFixed(1)}`;

function wheelRooms({ given, derived }: Sheet, at: Vec2, { kind }: PlateWheel, far: boolean): KeepOut[] {
  const middle = far ? derived.sandwichGap - derived.wheelPlane : derived.wheelPlane;
  const { outside: diameter, width } = given.wheel.values;
  const from = middle - (width + 1) / 2;
  const to = middle + (width + 1) / 2;
  const name = named(`${kind} wheel`, at);
  return [{ name, body: rod(diameter + 2, at, from, to), roomy: rod(diameter + 4, at, from, to) }];
}

/** Washer, head and key on the face away from the wheels; the nut of a far plate needs less. */
function outside({ given, derived }: Sheet, at: Vec2, { kind }: PlateWheel): KeepOut[] {
  const { washer, fender, head, bolt } = fittings(given);
  const ring = kind === "fixed" ? washer : fender;
  const face = -derived.thickness;
  const under = face - ring.thickness;
  const top = under - head.headHeight;
  return [
    { name: named("axle washer", at), body: rod(ring.outside, at, under, face), fastener: true },
    { name: named(`${bolt} head`, at), body: rod(head.headDiameter, at, top, under), fastener: true },
    { name: named("hex key to the axle", at), body: rod(keyPath(head.key), at, top - KEY_REACH, top) },
  ];
}

function nearStack({ given, derived, hand }: Sheet, at: Vec2, { kind, side }: PlateWheel): KeepOut[] {
  const { thread, eccentric } = fittings(given);
  const { thickness, standoff, spacerOutside, spacerLength } = derived;
  if (kind === "fixed") {
    return [
      { name: named("axle bolt", at), body: rod(thread.diameter, at, -thickness - 5, derived.wheelPlane) },
      { name: named("spacer", at), body: rod(spacerOutside, at, 0, spacerLength) },
    ];
  }
  const sweep = prism(spanner(at, side * hand === 1 ? 0 : 180), 0, standoff);
  return [
    { name: named("eccentric", at), body: rod(eccentric.body, at, -thickness - 1, 0) },
    { name: named("hexagon of the eccentric", at), body: prism(hexagon(eccentric.hexFlats, at), 0, standoff) },
    { name: named("spanner on the eccentric", at), body: sweep },
  ];
}

function spanner([x, y]: Vec2, towards: number) {
  const steps = Array.from({ length: 9 }, (_, step) => towards - SPANNER.half + (SPANNER.half / 4) * step);
  const { radius } = SPANNER;
  return polygon([[x, y], ...steps.map((angle): Vec2 => [x + radius * cosDeg(angle), y + radius * sinDeg(angle)])]);
}

function farStack({ given, derived }: Sheet, at: Vec2): KeepOut[] {
  const { thread, fender } = fittings(given);
  const { thickness, spacerOutside, spacerLength } = derived;
  const top = fender.thickness + spacerLength;
  return [
    { name: named("axle bolt", at), body: rod(thread.diameter, at, -thickness - 5, top) },
    { name: named("large washer", at), body: rod(fender.outside, at, 0, fender.thickness) },
    { name: named("spacer", at), body: rod(spacerOutside, at, fender.thickness, top) },
  ];
}

function bar({ given, derived }: Sheet, far: boolean): KeepOut {
  const from = (far ? derived.farGap : derived.barGap) - 1;
  const half = given.barWidth / 2;
  return {
    name: "bar",
    body: prism(rectangle(-half, -derived.length, half, derived.length), from, from + 1 + given.barDepth),
  };
}

function armRooms(sheet: Sheet): KeepOut[] {
  const { given, derived, arms } = sheet;
  if (!arms) return [];
  const { armBolt, armWasher, armHead, armThread } = fittings(given);
  const { height, width } = given.arm.values;
  const face = -derived.thickness;
  // The bolt may stand anywhere in its slot.
  const swept = (diameter: number, [x, y]: Vec2, from: number, to: number) =>
    prism(slotAlong([x, y], 90, diameter, diameter + derived.clearance), from, to);
  const bolts = slots(sheet).flatMap((at): KeepOut[] => {
    const seat = -derived.recessDepth;
    const head = seat + armWasher.thickness;
    const key = head + armHead.headHeight;
    return [
      { name: named(`${armBolt} arm bolt`, at), body: swept(armThread.diameter, at, face, seat) },
      { name: named("washer of an arm bolt", at), body: swept(armWasher.outside, at, seat, head), fastener: true },
      { name: named("head of an arm bolt", at), body: swept(armHead.headDiameter, at, head, key), fastener: true },
      { name: named("hex key to an arm bolt", at), body: swept(keyPath(armHead.key), at, key, key + KEY_REACH) },
    ];
  });
  const bars = armsAt(given).map((at): KeepOut => {
    const section = rectangle(-derived.width, at - height / 2, derived.width, at + height / 2);
    return { name: `arm at y ${at.toFixed(1)}`, body: prism(section, face - width, face) };
  });
  return [...bolts, ...bars];
}
