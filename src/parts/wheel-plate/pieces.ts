import type { Vec2 } from "../../geometry/mesh.ts";
import { disc, hullOf, joined, opening, type Profile, slotAlong, without } from "../../geometry/profile.ts";
import { carve, cylinder, mirrored, moved, prism, type Solid } from "../../geometry/solid.ts";
import { levelHole } from "../../printing/compensation.ts";
import type { Case } from "../family.ts";
import type { KeepOut, Measure, Piece } from "../piece.ts";
import { armsAt, grooves } from "./derive/arms.ts";
import type { Derived } from "./derive.ts";
import { fittings } from "./fittings.ts";
import { type PlateWheel, wheelsOf } from "./layout.ts";
import type { Parameters } from "./parameters.ts";

type Carriage = Case<Parameters, Derived>;

/** Bed-edge chamfer and what a cutter sticks out of a face, mm. */
const FOOT = 0.4;
const OVERRUN = 1;

/** The plates of one carriage: one, a pair of hands on two faces, or two with the wheels between them. */
export function pieces(carriage: Carriage): Piece[] {
  const { given, derived } = carriage;
  const first = platePiece(carriage, "", "carriage plate", true);
  if (derived.faces === 2) {
    const solid = mirrored(first.solid, "y");
    const keepOuts = first.keepOuts.map(({ name, body }) => ({ name, body: mirrored(body, "y") }));
    return [first, { ...first, name: "other-hand", title: "carriage plate, other hand", solid, keepOuts }];
  }
  return given.sandwich ? [first, platePiece(carriage, "far", "far plate of the axles", false)] : [first];
}

function platePiece(carriage: Carriage, name: string, title: string, arms: boolean): Piece {
  const { given, derived, printer } = carriage;
  const holes = [...wheelsOf(given).map((wheel) => axleHole(wheel, carriage)), ...(arms ? armSlots(carriage) : [])];
  const tools: Solid[] = [prism(joined(...holes), -derived.thickness - OVERRUN, OVERRUN)];
  const recesses = arms && derived.recessDepth > 0 ? armRecesses(carriage) : [];
  if (recesses.length > 0) tools.push(prism(joined(...recesses), -derived.recessDepth, OVERRUN));
  const reliefs = derived.relief > 0 ? wheelsOf(given).map((wheel) => reliefRing(wheel, carriage)) : [];
  if (reliefs.length > 0) tools.push(prism(joined(...reliefs), -derived.relief, OVERRUN));
  return {
    name,
    title,
    solid: carve(prism(outline(derived), -derived.thickness, 0, FOOT), tools),
    count: given.count,
    keepOuts: [...axleKeepOuts(carriage), ...(arms ? armKeepOuts(carriage) : [])],
    contacts: [],
    measures: measuresOf(carriage),
    // Floors and webs are held to four lines by their own checks; this is the least a printer can lay down.
    wall: { error: 2 * printer.line, warning: 2 * printer.line },
  };
}

function outline({ width, length, corner }: Derived): Profile {
  const [x, y] = [width / 2 - corner, length / 2 - corner];
  const at: Vec2[] = [
    [-x, -y],
    [x, -y],
    [x, y],
    [-x, y],
  ];
  return hullOf(...at.map((centre) => disc(corner, centre)));
}

const centreOf = ({ side, y }: PlateWheel, { axisDistance }: Derived): Vec2 => [(side * axisDistance) / 2, y];

function axleHole(wheel: PlateWheel, { derived }: Carriage): Profile {
  const { fixedHoleModelled, eccentricHoleModelled } = derived;
  return opening(wheel.kind === "fixed" ? fixedHoleModelled : eccentricHoleModelled, centreOf(wheel, derived));
}

/** A ring under the tyre, so that a bowed plate cannot touch it; the land inside carries spacer or hexagon. */
function reliefRing(wheel: PlateWheel, { given, derived }: Carriage): Profile {
  const centre = centreOf(wheel, derived);
  return without(disc(given.wheel.values.outside / 2 + 1, centre), disc(derived.reliefLand / 2, centre));
}

function armBolts({ given, derived }: Carriage): Vec2[] {
  return armsAt(given).flatMap((at) =>
    grooves(given).flatMap((groove): Vec2[] => [
      [-derived.armBoltX, at + groove],
      [derived.armBoltX, at + groove],
    ]),
  );
}

function armSlots(carriage: Carriage): Profile[] {
  const { slotWidthModelled, slotWidth, slotLength } = carriage.derived;
  return armBolts(carriage).map((at) =>
    slotAlong(at, 90, slotWidthModelled, slotLength + slotWidthModelled - slotWidth),
  );
}

function armRecesses(carriage: Carriage): Profile[] {
  const { derived, printer } = carriage;
  const grown = levelHole(0, { ...printer, holeShrinkHorizontal: printer.holeShrinkVertical });
  return armBolts(carriage).map((at) => slotAlong(at, 90, derived.recessWidth + grown, derived.recessLength + grown));
}

function axleKeepOuts({ given, derived }: Carriage): KeepOut[] {
  const { thread, washer, fender, bolt } = fittings(given);
  const { outside, width } = given.wheel.values;
  return wheelsOf(given).flatMap((wheel) => {
    const [x, y] = centreOf(wheel, derived);
    const under = wheel.kind === "fixed" ? washer : fender;
    const place = (body: Solid) => moved(body, [x, y, 0]);
    const where = `${wheel.kind} axle at x ${x.toFixed(1)}, y ${y.toFixed(1)}`;
    const [from, to] = [derived.wheelPlane - (width + 1) / 2, derived.wheelPlane + (width + 1) / 2];
    return [
      { name: `${bolt} bolt of the ${where}`, body: place(cylinder(thread.diameter / 2, -derived.thickness - 5, 30)) },
      {
        name: `washer of the ${where}`,
        body: place(cylinder(under.outside / 2, -derived.thickness - under.thickness, -derived.thickness)),
      },
      { name: `wheel of the ${where}`, body: place(cylinder(outside / 2 + 1, from, to)) },
    ];
  });
}

function armKeepOuts(carriage: Carriage): KeepOut[] {
  const { given, derived } = carriage;
  const { armBolt, armWasher, armHead } = fittings(given);
  const seat = -derived.recessDepth;
  const head = seat + armWasher.thickness;
  const reach = derived.clearance / 2;
  return armBolts(carriage).flatMap(([x, y]) => {
    const swept = (radius: number, z0: number, z1: number) =>
      prism(hullOf(disc(radius, [x, y - reach]), disc(radius, [x, y + reach])), z0, z1);
    const where = `${armBolt} arm bolt at x ${x.toFixed(1)}, y ${y.toFixed(1)}`;
    return [
      { name: `washer of the ${where}`, body: swept(armWasher.outside / 2, seat, head) },
      { name: `head of the ${where}`, body: swept(armHead.headDiameter / 2, head, head + armHead.headHeight) },
    ];
  });
}

function measuresOf({ derived }: Carriage): Measure[] {
  return [
    { what: "axle to axle across the bar", expected: derived.axisDistance, tolerance: 0.15 },
    { what: "diameter of a fixed axle's hole", expected: derived.fixedHole, tolerance: 0.1 },
    { what: "thickness", expected: derived.thickness, tolerance: 0.15 },
  ];
}
