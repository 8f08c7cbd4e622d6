import { armsAt, grooves } from "./derive/arms.ts";
import { CORNERS } from "./derive/faces.ts";
import type { Derived } from "./derive.ts";
import { fittings } from "./fittings.ts";
import { wheelsOf } from "./layout.ts";
import type { Parameters } from "./parameters.ts";

type Span = readonly [number, number];

/** A box that something of the carriage fills: spans along x, y and z, in the plate's frame. mm. */
export interface Room {
  readonly name: string;
  readonly spans: readonly [Span, Span, Span];
}

/** Returns the rooms of everything that travels: wheels, axle ends, heads, plates. */
export function rooms(given: Parameters, derived: Derived): Room[] {
  const near = plateRooms(given, derived);
  if (derived.faces === 2) return [...near, ...near.map((room) => opposite(room, derived))];
  if (!given.sandwich) return near;
  const { sandwichGap, thickness } = derived;
  return [...near, slab("far plate", derived, [sandwichGap, sandwichGap + thickness])];
}

function slab(name: string, { width, length }: Derived, z: Span): Room {
  return { name, spans: [[-width / 2, width / 2], [-length / 2, length / 2], z] };
}

/** The same thing on the plate of the other face. */
function opposite({ name, spans: [x, y, z] }: Room, { faceDistance, stagger }: Derived): Room {
  return {
    name: `${name} of the second plate`,
    spans: [x, [y[0] + stagger, y[1] + stagger], [faceDistance - z[1], faceDistance - z[0]]],
  };
}

function plateRooms(given: Parameters, derived: Derived): Room[] {
  return [slab("plate", derived, [-derived.thickness, 0]), ...axleRooms(given, derived), ...armRooms(given, derived)];
}

const round = (name: string, x: number, y: number, radius: number, z: Span): Room => ({
  name,
  spans: [[x - radius, x + radius], [y - radius, y + radius], z],
});

function axleRooms(given: Parameters, derived: Derived): Room[] {
  const { nut, head, fender } = fittings(given);
  const { wheelPlane, thickness, boltLength, pastFixed } = derived;
  const { outside, width } = given.wheel.values;
  const corner = (CORNERS * nut.acrossFlats) / 2 + given.eccentric.values.offset;
  return wheelsOf(given).flatMap(({ side, y, kind }) => {
    const x = (side * derived.axisDistance) / 2;
    const tip = Math.max(derived.tipHeight, 0);
    const nutFrom = Math.max(0, tip - Math.max(0, pastFixed) - nut.height);
    const under = -thickness - fender.thickness - head.headHeight;
    const wheel: Span = [wheelPlane - (width + 1) / 2, wheelPlane + (width + 1) / 2];
    return [
      round(`${kind} wheel`, x, y, outside / 2 + 1, wheel),
      ...(boltLength > 0 ? [round("axle end", x, y, corner, [nutFrom, tip])] : []),
      round("axle head", x, y, fender.outside / 2, [under, -thickness]),
    ];
  });
}

function armRooms(given: Parameters, derived: Derived): Room[] {
  const { armWasher, armHead } = fittings(given);
  const top = armWasher.thickness + armHead.headHeight - derived.recessDepth;
  return armsAt(given).flatMap((at) =>
    grooves(given).flatMap((groove) =>
      [-1, 1].map((side) =>
        round("arm bolt", side * derived.armBoltX, at + groove, armWasher.outside / 2, [0, Math.max(0, top)]),
      ),
    ),
  );
}
