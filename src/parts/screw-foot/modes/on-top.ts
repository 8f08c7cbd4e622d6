import type { Vec2 } from "../../../geometry/mesh.ts";
import { disc, hullOf, joined, type Profile, polygon, rectangle } from "../../../geometry/profile.ts";
import { alongX, carve, prism, type Solid, turned } from "../../../geometry/solid.ts";
import { together } from "../../feature.ts";
import { uprightBolt } from "../../features/mount-bolt.ts";
import { baseRadius, RIBS, TALL_SEAT, uprightBolts } from "../derive/extents.ts";
import { bedHole } from "./bed-hole.ts";
import { columnChamfer } from "./column-chamfer.ts";
import { beside, FOOT, type Foot, type Mounting, mountBolt, OVERLAP, standing } from "./mounting.ts";

/** Play round a washer that a rib must leave, mm. */
const WASHER_PLAY = 1;

/** Returns the foot that stands on a bar: a base with a bolt on either side of a round column. */
export function onTop(foot: Foot): Mounting {
  const { given, derived, printer } = foot;
  const { housing, plate, rim, bought } = derived;
  const places = uprightBolts(given, bought, derived);
  const bolt = mountBolt(foot);
  const around = bought.bolt.washerDiameter / 2 + 3;
  const base = hullOf(disc(baseRadius(derived)), ...places.map((place) => disc(around, place)));
  const column = joined(disc(housing), ...beside(foot));
  return {
    adds: [
      prism(joined(base, ...beside(foot)), 0, plate, FOOT),
      ...standing(column, plate, rim),
      ...stiffening(foot, base, places),
    ],
    cuts: places.map((place) => bedHole(place, bolt.hole, 0, printer)),
    bolts: together(...places.map((place) => uprightBolt(bolt, place, 0, plate, printer))),
    keepOuts: [barBody(foot)],
    contacts: [],
  };
}

/** A chamfer round the column's foot; ribs as well where the seat is high. */
function stiffening({ derived }: Foot, base: Profile, places: readonly Vec2[]): Solid[] {
  const { housing, plate, seat, bought } = derived;
  const cone = columnChamfer(housing, plate, base);
  if (seat <= TALL_SEAT) return [cone];
  // A little short of the base's edge, so that the rib's square end stays on it.
  const edge = baseRadius(derived) - OVERLAP;
  const root = housing - OVERLAP;
  const flank = polygon([
    [root, plate - OVERLAP],
    [edge, plate - OVERLAP],
    [edge, plate],
    [root, plate + edge - root],
  ]);
  // Drawn along +y, so a quarter turn back puts azimuth 0 at +x.
  const rib = alongX(flank, -RIBS.thick / 2, RIBS.thick / 2);
  const ribs = RIBS.azimuths.map((azimuth) => turned(rib, "z", azimuth - 90));
  const clear = bought.bolt.washerDiameter / 2 + WASHER_PLAY;
  const washers = places.map((place) => prism(disc(clear, place), plate, plate + edge));
  return [cone, ...ribs.map((each) => carve(each, washers))];
}

/** The bar below, its top slot left open. */
function barBody({ given, derived }: Foot) {
  const { width, height } = derived.bought.bar;
  const body = prism(rectangle(-200, -given.offset - width / 2, 200, -given.offset + width / 2), -height, 0);
  return { name: "bar", body };
}
