import { CAP_SCREWS } from "../../catalogue/cap-screws.ts";
import { NUTS } from "../../catalogue/nuts.ts";
import { THREADS } from "../../catalogue/threads.ts";
import { WASHERS } from "../../catalogue/washers.ts";
import { row } from "../../core/table.ts";
import type { Box, Vec2 } from "../../geometry/mesh.ts";
import { disc, hullOf, opening, polygon } from "../../geometry/profile.ts";
import { carve, moved, prism, type Solid } from "../../geometry/solid.ts";
import { uprightHole } from "../../printing/compensation.ts";
import { wanted } from "../../printing/fits.ts";
import { type BearingSeat, bearingSeat, shoulderArea } from "../features/bearing-seat.ts";
import { type MountBolt, uprightBolt } from "../features/mount-bolt.ts";
import { membraneRoom, nutPocket } from "../features/nut-pocket.ts";
import type { KeepOut, Piece } from "../piece.ts";
import { POST, type Post } from "./derive/bridge.ts";
import { DOWEL } from "./derive/extents.ts";
import { FOOT, type Foot } from "./modes/mounting.ts";

/** The bolts of the bridge: size, where they stand on a post, depth of their hole, middle of the nut below the top. */
export const BRIDGE_BOLT = { thread: "M4", length: 25, aside: 8, deep: 16, nutBelow: 8 };

/** A post that is nearer than this to the mating face stands on it, mm. */
const TOUCHING = 1;

function boltData(): MountBolt {
  const { diameter, mediumHole } = row(THREADS, BRIDGE_BOLT.thread).values;
  const { headDiameter, headHeight, key } = row(CAP_SCREWS, BRIDGE_BOLT.thread).values;
  const { outside, thickness } = row(WASHERS, BRIDGE_BOLT.thread).values;
  const head = { headDiameter, headHeight, key, washerDiameter: outside, washerThickness: thickness };
  return { thread: BRIDGE_BOLT.thread, diameter, hole: mediumHole, ...head, counterbore: 0 };
}

/** Returns where the two bolts of a post stand. */
function boltPlaces({ centre, section }: Post): readonly Vec2[] {
  const [a = centre, , , b = centre] = section;
  const [dx, dy] = [(b[0] - a[0]) / POST.tangential, (b[1] - a[1]) / POST.tangential];
  return [-BRIDGE_BOLT.aside, BRIDGE_BOLT.aside].map((off): Vec2 => [centre[0] + off * dx, centre[1] + off * dy]);
}

/**
 * Returns the direction in which the nut pockets of a post open: outwards, but to the screw where a bar in the way of
 * the nuts has its edge relieved, since the groove would leave the roof of the pocket without a hold.
 */
function pocketOpening({ azimuth, section }: Post, { given, derived: { axis } }: Foot): number {
  const onMatingFace = section.some(([, y]) => y < -axis + TOUCHING);
  return given.mount === "on-post" && onMatingFace ? azimuth + 180 : azimuth;
}

/** The nut pocket of a post's bolts, its axis through the origin. */
function pocketOf(post: Post, foot: Foot) {
  const { derived, printer } = foot;
  const nut = row(NUTS, BRIDGE_BOLT.thread).values;
  const half = wanted(nut.height, "sideSlotHeight") / 2;
  const middle = derived.postTop - BRIDGE_BOLT.nutBelow;
  const [roof, floor] = [middle + half, middle - half];
  const mouth = POST.radial / 2 + 1;
  const { acrossFlats, height: nutHeight } = nut;
  const pocket = { acrossFlats, nutHeight, excursion: 0, roof, floor, towards: pocketOpening(post, foot), mouth };
  return { roof, floor, ...nutPocket(pocket, printer) };
}

/**
 * Returns what is cut into the posts: bolt holes from above, nut pockets from the outer face. Between the pocket's roof
 * and the hole one layer stays, or the roof would print in mid-air; the bolt pierces it.
 */
export function postCuts(foot: Foot): Solid[] {
  const { derived, printer } = foot;
  const { postTop } = derived;
  const diameter = uprightHole(boltData().hole, printer);
  return derived.posts.flatMap((post) => {
    const { cut, roof, floor } = pocketOf(post, foot);
    return boltPlaces(post).flatMap((place) => [
      prism(opening(diameter, place), roof + printer.layer, postTop + 1),
      prism(opening(diameter, place), postTop - BRIDGE_BOLT.deep, floor + 0.1),
      moved(cut, [place[0], place[1], 0]),
    ]);
  });
}

/** Returns the nuts in the posts, and the rooms of the layers that close the holes over them. */
export function postNuts(foot: Foot): { keepOuts: KeepOut[]; membranes: Box[] } {
  const { derived, printer } = foot;
  const across = uprightHole(boltData().hole, printer);
  const each = derived.posts.flatMap((post) => {
    const { keepOut, roof } = pocketOf(post, foot);
    const room = membraneRoom(across, across, 0, roof, roof + printer.layer);
    return boltPlaces(post).map(([x, y]) => ({
      keepOut: { ...keepOut, body: moved(keepOut.body, [x, y, 0]) },
      room: {
        min: [room.min[0] + x, room.min[1] + y, room.min[2]] as const,
        max: [room.max[0] + x, room.max[1] + y, room.max[2]] as const,
      },
    }));
  });
  return { keepOuts: each.map(({ keepOut }) => keepOut), membranes: each.map(({ room }) => room) };
}

/** Returns the bridge: a plate on the posts with a second bearing, pushed in from above. */
export function bridgePiece(foot: Foot): Piece {
  const { derived, printer } = foot;
  const { housing, postTop, bridgeThickness, bridgeSeat, bought, shoulder, relief, pocketDepth, posts } = derived;
  const top = postTop + bridgeThickness;
  const pocket = wanted(bought.bearing.outside, "push");
  const seat: BearingSeat = {
    bearing: bought.bearing,
    pocket,
    depth: pocketDepth,
    shoulder,
    relief,
    seat: bridgeSeat,
    shim: 0,
    bottom: postTop,
    pushOut: true,
  };
  const held = bearingSeat(seat, printer);
  const bolts = posts.flatMap(boltPlaces).map((place) => uprightBolt(boltData(), place, postTop, top, printer));
  const plate = prism(hullOf(disc(housing), ...posts.map(({ section }) => polygon(section))), postTop, top, FOOT);
  const dowels = posts.map(({ centre }) =>
    prism(opening(uprightHole(DOWEL.hole, printer), centre), postTop - 1, postTop + DOWEL.deep),
  );
  return {
    name: "bridge",
    title: "bridge over the pulley, for the second bearing",
    solid: carve(plate, [...held.cuts, ...dowels, ...bolts.flatMap(({ cuts }) => cuts)]),
    count: 1,
    keepOuts: [...held.keepOuts, ...bolts.flatMap(({ keepOuts }) => keepOuts)],
    contacts: [
      {
        name: "seat of the second bearing",
        area: shoulderArea(seat, printer),
        point: [0, 0, bridgeSeat],
        normal: [0, 0, 1],
        reach: (shoulder + pocket) / 2,
      },
    ],
    measures: [
      { what: "diameter of the bearing's pocket", expected: pocket, tolerance: 0.1 },
      { what: "thickness", expected: bridgeThickness, tolerance: 0.15 },
      { what: "bed face to the bearing's seat", expected: bridgeThickness - pocketDepth, tolerance: 0.15 },
    ],
    wall: { error: 2 * printer.line, warning: 2 * printer.line },
  };
}
