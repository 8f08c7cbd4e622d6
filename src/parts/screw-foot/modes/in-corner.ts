import { cosDeg, sinDeg } from "../../../core/rounding.ts";
import type { Vec2 } from "../../../geometry/mesh.ts";
import { disc, hullOf, joined, type Profile, polygon } from "../../../geometry/profile.ts";
import { alongX, prism, type Solid } from "../../../geometry/solid.ts";
import { levelHole } from "../../../printing/compensation.ts";
import { wanted } from "../../../printing/fits.ts";
import { type Feature, relocated, together } from "../../feature.ts";
import { cornerRelief } from "../../features/corner-relief.ts";
import { levelBolt } from "../../features/mount-bolt.ts";
import { keyStretches, slotKey } from "../../features/slot-key.ts";
import type { Contact, KeepOut } from "../../piece.ts";
import { alongSecondBar, box } from "../surroundings.ts";
import { beside, FOOT, type Foot, flankChamfers, type Mounting, mountBolt, nutBoss, standing } from "./mounting.ts";

/** Groove along the corner, and the stretch beside it that stays without a key, mm. */
const RELIEF = 3;
const KEY_FROM_CORNER = 8;

/** One leg of the corner in the frame of its own bar: x along it from the axis' foot, y away from it. */
interface Leg {
  readonly axis: number;
  readonly toCorner: number;
  /** How much further from the corner the other bar's face lies for each mm off this one: 0 in a right corner. */
  readonly lean: number;
  readonly bolts: readonly number[];
  readonly end: number;
  /** Takes a body, or a point in plan, from the leg's frame to the foot's. */
  readonly place: (solid: Solid) => Solid;
  readonly point: (point: Vec2) => Vec2;
  /** Whether the leg's frame is the other hand. */
  readonly mirrors: boolean;
  readonly normal: Vec2;
  readonly keyed: boolean;
}

/** Returns the foot that fills the corner of two bars: a plate along each, both solid with the housing. */
export function inCorner(foot: Foot): Mounting {
  const { derived } = foot;
  const { bed, rim, plateTop, postTop } = derived;
  const legs = legsOf(foot);
  const corner: Vec2 = [derived.cornerX, -derived.axis];
  const parts = legs.map((leg) => legParts(leg, foot));
  const highest = Math.max(rim, plateTop, postTop);
  return {
    adds: [...bodies(foot, legs), ...parts.flatMap(({ keys }) => keys)],
    cuts: [cornerRelief(corner, RELIEF, bed, highest)],
    bolts: together(...parts.map(({ bolts }) => bolts)),
    keepOuts: parts.flatMap(({ keepOuts }) => keepOuts),
    contacts: legs.map((leg) => matingFace(leg, foot)),
  };
}

function legsOf({ given, derived }: Foot): readonly [Leg, Leg] {
  const { axis, axisB, cornerToAxis, cornerToAxisB, bolt1, bolt2, bolt1B, bolt2B, plateLength, plateLengthB } = derived;
  const gamma = given.cornerAngle;
  const [c, s] = [cosDeg(gamma), sinDeg(gamma)];
  const keyed = given.locate !== "none";
  const first: Leg = {
    axis,
    toCorner: cornerToAxis,
    lean: c / s,
    bolts: [bolt1 - cornerToAxis, bolt2 - cornerToAxis],
    end: plateLength - cornerToAxis,
    place: (solid) => solid,
    point: (point) => point,
    mirrors: false,
    normal: [0, -1],
    keyed,
  };
  const second: Leg = {
    axis: axisB,
    toCorner: cornerToAxisB,
    lean: c / s,
    bolts: [bolt1B - cornerToAxisB, bolt2B - cornerToAxisB],
    end: plateLengthB - cornerToAxisB,
    place: (of) => ({ kind: "placed", of, placement: [c, s, 0, 0, s, -c, 0, 0, 0, 0, 1, 0] }),
    point: alongSecondBar(gamma),
    mirrors: true,
    normal: [-s, c],
    // Two keys must fit two slots at once, which only a measured angle makes sure.
    keyed: keyed && given.cornerMeasured,
  };
  return [first, second];
}

/** Returns the outline in plan of what lies on a leg's bar from x0 to x1, `thick` mm off its face. */
function strip(leg: Leg, x0: number, x1: number, thick: number): Profile {
  return outlineOf(leg, box(x0, -leg.axis, x1, -leg.axis + thick));
}

/** The same from the corner on: its end follows the face of the other bar, be the corner narrow or wide. */
function fromCorner(leg: Leg, x1: number, thick: number): Profile {
  const { axis, toCorner, lean } = leg;
  const [low = [0, 0], ...rest] = box(-toCorner, -axis, x1, -axis + thick);
  return outlineOf(leg, [low, ...rest.slice(0, 2), [-toCorner + lean * thick, -axis + thick]]);
}

function outlineOf({ point, mirrors }: Leg, outline: readonly Vec2[]): Profile {
  const corners = outline.map(point);
  return polygon(mirrors ? corners.reverse() : corners);
}

function bodies(foot: Foot, legs: readonly Leg[]): Solid[] {
  const { given, derived } = foot;
  const { housing, plate, plateTop, bed, rim, besides, postTop } = derived;
  const skin = 0.01;
  const faces = legs.map((leg) => fromCorner(leg, housing, skin));
  const core = joined(hullOf(disc(housing), ...faces), ...beside(foot));
  const plates = legs.map((leg) => fromCorner(leg, leg.end, plate));
  const chamfers = legs.flatMap((leg) => chamferOf(leg, foot));
  const ears = joined(...legs.map((leg) => strip(leg, besides, leg.end, plate)));
  const walls = joined(...legs.map((leg) => fromCorner(leg, besides, plate)));
  return [
    prism(joined(core, ...plates, ...chamfers), bed, Math.min(plateTop, rim), FOOT),
    ...standing(core, plateTop, rim),
    ...standing(ears, rim, plateTop),
    ...(given.style === "walled" ? standing(walls, Math.min(plateTop, rim), postTop) : []),
  ];
}

/** The chamfer on the free side of the housing; the other side is the corner itself. */
function chamferOf(leg: Leg, { derived }: Foot): Profile[] {
  const [one] = flankChamfers(derived.housing, -leg.axis + derived.plate, [1]);
  return one?.kind === "polygon" ? [outlineOf(leg, one.points)] : [];
}

function legParts(leg: Leg, foot: Foot): { keys: Solid[]; bolts: Feature; keepOuts: readonly KeepOut[] } {
  const { derived, printer } = foot;
  const { plate, rowHeights, bought } = derived;
  const { axis, bolts, place, keyed } = leg;
  const bolt = mountBolt(foot);
  const places = rowHeights.flatMap((row) => bolts.map((x): Vec2 => [x, row]));
  const ribs = (row: number) => (keyed ? stretchesOf(leg, foot, row) : []);
  const keepOuts = [...barBodies(leg, foot), ...places.map((at) => nutBoss(at, -axis))];
  return {
    keys: rowHeights.flatMap((row) => slotKey(bought.bar, -axis, row, ribs(row))).map(place),
    bolts: relocated(together(...places.map((at) => levelBolt(bolt, at, -axis, plate, printer))), place),
    keepOuts: relocated({ adds: [], cuts: [], keepOuts }, place).keepOuts,
  };
}

/** Where the rib runs in the slot at height `row`: over the housing's top only the ears can carry it. */
function stretchesOf({ toCorner, bolts, end }: Leg, { given, derived }: Foot, row: number): [number, number][] {
  const { rim, besides, bought } = derived;
  const top = row + wanted(bought.bar.slotMouth, "slotKey") / 2;
  const from = given.style === "walled" || rim >= top ? -toCorner + KEY_FROM_CORNER : besides;
  return keyStretches(
    from,
    end,
    bolts.filter((bolt) => bolt > from),
  );
}

function barBodies({ axis }: Leg, { derived: { bought, rowHeights } }: Foot): KeepOut[] {
  const { width, height, slotMouth } = bought.bar;
  const edges = [0, ...rowHeights.flatMap((row) => [row + slotMouth / 2, row - slotMouth / 2]), -height];
  const bands = edges.flatMap((top, index) => (index % 2 === 0 ? [[top, edges[index + 1] ?? top] as const] : []));
  return bands.map(([top, bottom]) => ({
    name: "bar",
    body: alongX(polygon(box(-axis - width, bottom, -axis, top)), -200, 200),
  }));
}

function matingFace(leg: Leg, foot: Foot): Contact {
  const { derived, printer } = foot;
  const { plateTop, rim, bed, rowHeights, bought } = derived;
  const { axis, toCorner, end, bolts, normal, keyed } = leg;
  const plates = (end + toCorner - RELIEF) * (Math.min(plateTop, rim) - bed - FOOT);
  const hole = 1.06 * (Math.PI / 4) * levelHole(bought.bolt.hole, printer) ** 2;
  const rib = wanted(bought.bar.slotMouth, "slotKey");
  const stretches = keyed ? rowHeights.flatMap((row) => stretchesOf(leg, foot, row)) : [];
  const ribs = stretches.reduce((sum, [from, to]) => sum + (to - from) * rib, 0);
  const area = plates - rowHeights.length * bolts.length * hole - ribs;
  const point = [normal[0] * axis, normal[1] * axis, 0] as const;
  const name = leg.mirrors ? "face on the second bar" : "face on the bar";
  return { name, area, point, normal: [normal[0], normal[1], 0], reach: 300 };
}
