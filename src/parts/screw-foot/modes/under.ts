import type { Vec2 } from "../../../geometry/mesh.ts";
import { disc, hullOf, joined, type Profile, rectangle } from "../../../geometry/profile.ts";
import { carve, mirrored, prism, type Solid } from "../../../geometry/solid.ts";
import { relocated, together } from "../../feature.ts";
import { uprightBolt } from "../../features/mount-bolt.ts";
import { keyStretches } from "../../features/slot-key.ts";
import { uprightKey } from "../../features/upright-key.ts";
import { uprightBolts } from "../derive/extents.ts";
import { bedHole } from "./bed-hole.ts";
import { columnChamfer } from "./column-chamfer.ts";
import { beside, FILLET, type Foot, type Mounting, mountBolt, standing } from "./mounting.ts";

/** The chamfer round the column keeps this far off the bar's side, mm. */
const AIR = 0.3;

/** Returns the foot that hangs below a bar: the base is drawn up against it, the column stands beside it. */
export function under(foot: Foot): Mounting {
  const { given, derived, printer } = foot;
  const { housing, plate, rim, bed, bought, axis } = derived;
  const { width, height } = bought.bar;
  const places = uprightBolts(given, bought, derived);
  const bolt = mountBolt(foot);
  const around = bought.bolt.washerDiameter / 2 + 3;
  const base = hullOf(disc(housing), ...places.map((place) => disc(around, place)));
  const [boltX, row] = [Math.abs(places[0]?.[0] ?? 0), -axis - width / 2];
  const stretches = given.locate !== "none" ? keyStretches(-boltX, boltX, [-boltX, boltX]) : [];
  // The heads are below the plate: the bolt of an upright plate, turned over.
  const hung = (place: Vec2) =>
    relocated(uprightBolt(bolt, place, height, height + plate, printer), (solid) => mirrored(solid, "z"));
  return {
    adds: [
      // The washers lie on the bed face, so its edge only loses what the first layer gains.
      prism(joined(base, ...beside(foot)), bed, -height, printer.firstLayerSpread),
      ...standing(joined(disc(housing), ...beside(foot)), -height, rim),
      chamfer(foot, base),
      ...uprightKey(bought.bar, -height, row, stretches),
    ],
    cuts: places.map((place) => bedHole(place, bolt.hole, bed, printer)),
    bolts: together(...places.map(hung)),
    keepOuts: barBodies(foot),
    contacts: [],
  };
}

/** The chamfer round the column's foot, left away where the bar is. */
function chamfer({ derived: { housing, axis, bought } }: Foot, base: Profile): Solid {
  const { height } = bought.bar;
  const beyond = prism(rectangle(-200, -200, 200, -axis + AIR), -height, -height + FILLET + 1);
  return carve(columnChamfer(housing, -height, base), [beyond]);
}

/** The bar with its lower slot left open. */
function barBodies({ derived: { axis, bought } }: Foot) {
  const { width, height, slotMouth } = bought.bar;
  const middle = -axis - width / 2;
  const half = (from: number, to: number) => ({
    name: "bar",
    body: prism(rectangle(-200, from, 200, to), -height, 0),
  });
  return [half(-axis - width, middle - slotMouth / 2), half(middle + slotMouth / 2, -axis)];
}
