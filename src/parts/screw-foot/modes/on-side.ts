import type { Vec2 } from "../../../geometry/mesh.ts";
import { disc, hullOf, joined, type Profile, polygon, rectangle } from "../../../geometry/profile.ts";
import { alongX, alongY, prism, type Solid } from "../../../geometry/solid.ts";
import { levelHole } from "../../../printing/compensation.ts";
import { wanted } from "../../../printing/fits.ts";
import { together } from "../../feature.ts";
import { levelBolt } from "../../features/mount-bolt.ts";
import { keyStretches, slotKey } from "../../features/slot-key.ts";
import type { Contact, KeepOut } from "../../piece.ts";
import { outlineArea } from "../plan.ts";
import { box } from "../surroundings.ts";
import { beside, FOOT, type Foot, flankChamfers, type Mounting, mountBolt, nutBoss, standing } from "./mounting.ts";

/** Returns the foot that hangs on a bar's side: a solid pedestal on a back plate whose upper corners run in. */
export function onSide(foot: Foot): Mounting {
  const { given, derived, printer } = foot;
  const { axis, plate, boltX, rowHeights } = derived;
  const places = rowHeights.flatMap((row): Vec2[] => [
    [-boltX, row],
    [boltX, row],
  ]);
  const bolt = mountBolt(foot);
  const keyed = given.locate !== "none";
  return {
    adds: [
      ...bodies(foot),
      ...(keyed ? rowHeights.flatMap((row) => slotKey(derived.bought.bar, -axis, row, ribsAt(foot, row))) : []),
    ],
    cuts: [],
    bolts: together(...places.map((place) => levelBolt(bolt, place, -axis, plate, printer))),
    keepOuts: [...barBodies(foot), ...places.map((place) => nutBoss(place, -axis))],
    contacts: [matingFace(foot, keyed ? rowHeights.flatMap((row) => ribsAt(foot, row)) : [])],
  };
}

/** Where the rib runs in the slot at height `row`: over the housing's top there is nothing between the ears to carry it. */
function ribsAt({ given, derived }: Foot, row: number): [number, number][] {
  const { plateHalf, plateTop, boltX, besides, rim, bought } = derived;
  const top = row + wanted(bought.bar.slotMouth, "slotKey") / 2;
  if (given.style === "walled" || rim > plateTop || rim >= top)
    return keyStretches(-plateHalf, plateHalf, [-boltX, boltX]);
  return [...keyStretches(-plateHalf, -besides, [-boltX]), ...keyStretches(besides, plateHalf, [boltX])];
}

function bodies(foot: Foot): Solid[] {
  const { derived } = foot;
  const { housing, axis, plate, plateHalf, plateTop, bed, rim, besides } = derived;
  const front = -axis + plate;
  const walled = foot.given.style === "walled";
  const core = joined(hullOf(disc(housing), rectangle(-housing, -axis, housing, front)), ...beside(foot));
  const chamfers = flankChamfers(housing, front);
  const lower = Math.min(plateTop, rim);
  const ears: Profile = joined(
    rectangle(-plateHalf, -axis, -besides, front),
    rectangle(besides, -axis, plateHalf, front),
  );
  // The chamfer beside the housing ends where the plate, as it runs in, no longer carries it.
  const chamferTop = Math.min(rim, plateTop + Math.max(0, plateHalf - housing - 2));
  return [
    prism(joined(core, rectangle(-plateHalf, -axis, plateHalf, front), ...chamfers), bed, lower, FOOT),
    ...standing(core, plateTop, rim),
    ...(walled || rim > plateTop ? [alongY(polygon(gable(foot)), -axis, front)] : []),
    ...standing(ears, rim, plateTop),
    ...(chamfers.length > 0 ? standing(joined(...chamfers), plateTop, chamferTop) : []),
  ];
}

/** The plate over its bolts, seen from the front: it runs in at 45 degrees to what stands beside the bolts. */
function gable({ given, derived }: Foot): Vec2[] {
  const { plateHalf, plateTop, rim, besides, postTop } = derived;
  const top = given.style === "walled" ? postTop : rim;
  const end = Math.min(top, plateTop + plateHalf - besides);
  const narrow = plateHalf - (end - plateTop);
  const right: Vec2[] = [
    [plateHalf, Math.min(plateTop, rim) - 1],
    [plateHalf, plateTop],
    [narrow, end],
    ...(top > end + 1e-6 ? [[narrow, top] as const] : []),
  ];
  return [...right, ...[...right].reverse().map(([x, z]): Vec2 => [-x, z])];
}

/** The bar with its slots left open as wide as they are at the face. */
function barBodies({ derived }: Foot): KeepOut[] {
  const { axis, bought, rowHeights } = derived;
  const { width, height, slotMouth } = bought.bar;
  const edges = [0, ...rowHeights.flatMap((row) => [row + slotMouth / 2, row - slotMouth / 2]), -height];
  const bands = edges.flatMap((top, index) => (index % 2 === 0 ? [[top, edges[index + 1] ?? top] as const] : []));
  return bands.map(([top, bottom]) => ({
    name: "bar",
    body: alongX(polygon(box(-axis - width, bottom, -axis, top)), -200, 200),
  }));
}

function matingFace(foot: Foot, stretches: readonly (readonly [number, number])[]): Contact {
  const { given, derived, printer } = foot;
  const { axis, plateHalf, besides, plateTop, rim, bed, rowHeights, bought } = derived;
  const whole = given.style === "walled" || rim > plateTop;
  const lower = 2 * plateHalf * (Math.min(plateTop, rim) - bed - FOOT);
  const upper = whole ? outlineArea(gable(foot)) - 2 * plateHalf : 2 * (plateHalf - besides) * (plateTop - rim);
  const hole = 1.06 * (Math.PI / 4) * levelHole(bought.bolt.hole, printer) ** 2;
  // Windows and the key's path may open the wall; they take at most the part of it above the pulley's lower face.
  const windows = given.style === "walled" ? 2 * besides * (derived.postTop - rim) : 0;
  const { slotMouth } = bought.bar;
  const ribs = stretches.reduce((sum, [from, to]) => sum + (to - from) * wanted(slotMouth, "slotKey"), 0);
  const area = lower + upper - windows - rowHeights.length * 2 * hole - ribs;
  return { name: "face on the bar", area, point: [0, -axis, 0], normal: [0, -1, 0], reach: 300 };
}
