import { polygon } from "../../geometry/profile.ts";
import { carve, cylinder, moved, prism, type Solid, unite } from "../../geometry/solid.ts";
import { shoulderArea } from "../features/bearing-seat.ts";
import { heatSetBore } from "../features/heat-set-bore.ts";
import type { Measure, Piece } from "../piece.ts";
import { axisHardware, seatOf } from "./axis-hardware.ts";
import { bridgePiece, postCuts, postNuts } from "./bridge.ts";
import { capInsert, capKeepOut, capPiece } from "./cap.ts";
import { CAP } from "./derive/cap.ts";
import { DOWEL } from "./derive/extents.ts";
import { engraving } from "./engraving.ts";
import { inCorner } from "./modes/in-corner.ts";
import { type Foot, type Mounting, OVERLAP, onCircle } from "./modes/mounting.ts";
import { onPost } from "./modes/on-post.ts";
import { onSide } from "./modes/on-side.ts";
import { onTop } from "./modes/on-top.ts";
import { under } from "./modes/under.ts";
import type { Parameters } from "./parameters.ts";

const MOUNTINGS: Readonly<Record<Parameters["mount"], (foot: Foot) => Mounting>> = {
  "on-side": onSide,
  "on-top": onTop,
  "in-corner": inCorner,
  "on-post": onPost,
  under,
};

export function pieces(foot: Foot): Piece[] {
  const { given } = foot;
  return [
    footPiece(foot),
    ...(given.style === "bridged" ? [bridgePiece(foot)] : []),
    ...(given.cap ? [capPiece(foot)] : []),
  ];
}

function footPiece(foot: Foot): Piece {
  const { given, derived, printer } = foot;
  const mounting = MOUNTINGS[given.mount](foot);
  const hardware = axisHardware(foot);
  const seat = seatOf(foot);
  const body = unite(...mounting.adds, ...posts(foot));
  const tools = [...mounting.cuts, ...mounting.bolts.cuts, ...hardware.cuts, ...postCuts(foot), ...inserts(foot)];
  const nuts = postNuts(foot);
  const inner = (derived.shoulder + derived.pocket) / 2;
  return {
    name: "",
    title: `screw foot, ${given.mount}, ${given.style}`,
    solid: carve(body, [...tools, ...engraving(foot)]),
    count: 1,
    keepOuts: [
      ...hardware.keepOuts,
      ...mounting.bolts.keepOuts,
      ...mounting.keepOuts,
      ...nuts.keepOuts,
      ...(given.cap ? [capKeepOut(foot)] : []),
    ],
    contacts: [
      {
        name: "seat of the bearing",
        area: shoulderArea(seat, printer),
        point: [0, 0, derived.seat],
        normal: [0, 0, 1],
        reach: inner,
      },
      ...mounting.contacts,
    ],
    measures: measuresOf(foot),
    membranes: nuts.membranes,
    // Walls that carry are held to four lines by their own checks; this is the least a printer can lay down.
    wall: { error: 2 * printer.line, warning: 2 * printer.line },
  };
}

function measuresOf({ given, derived }: Foot): Measure[] {
  const across: Measure =
    given.mount === "on-top" || given.mount === "on-post"
      ? { what: "outside diameter of the housing", expected: 2 * derived.housing, tolerance: 0.3 }
      : {
          what: "mating face to the far side of the housing",
          expected: derived.axis + derived.housing,
          tolerance: 0.3,
        };
  return [
    { what: "diameter of the bearing's pocket", expected: derived.pocket, tolerance: 0.1 },
    { what: "bed face to the bearing's seat", expected: derived.seat - derived.bed, tolerance: 0.15 },
    across,
  ];
}

/** The uprights of a bridge above the rim, each with its dowel. */
function posts({ derived }: Foot): Solid[] {
  const { rim, postTop } = derived;
  return derived.posts.flatMap(({ section, centre }) => [
    prism(polygon(section), rim - OVERLAP, postTop),
    moved(cylinder(DOWEL.diameter / 2, postTop - OVERLAP, postTop + DOWEL.height), [centre[0], centre[1], 0]),
  ]);
}

/** Bores for the inserts that hold the bearing's cap. */
function inserts({ given, derived, printer }: Foot): Solid[] {
  if (!given.cap) return [];
  const bore = heatSetBore({ ...capInsert(), mouth: derived.rim, into: "down" }, printer);
  return CAP.azimuths.map((azimuth) => {
    const [x, y] = onCircle(derived.capCircle / 2, azimuth);
    return moved(bore, [x, y, 0]);
  });
}
