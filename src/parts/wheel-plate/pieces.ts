import { carve, prism } from "../../geometry/solid.ts";
import type { Case } from "../family.ts";
import { bedOpening } from "../features/bed-opening.ts";
import { engraveTop } from "../features/engraving.ts";
import type { Contact, Measure, Piece } from "../piece.ts";
import type { Derived } from "./derive.ts";
import { hardwareRooms } from "./hardware-rooms.ts";
import { armSlots, axleHoles, axles, holeModelled, outline, reliefs, type Sheet, slots } from "./outline.ts";
import type { Parameters } from "./parameters.ts";

/** Chamfer of the edge that stands on the bed, mm. */
const FOOT = 0.4;
/** Share of a land's radius whose square still lies wholly on the land. */
const SQUARE = 0.7;

interface Kind {
  readonly letter: string;
  readonly name: string;
  readonly title: string;
  readonly hand: 1 | -1;
  readonly arms: boolean;
}

const NEAR: Kind = { letter: "A", name: "", title: "wheel plate, lettered A", hand: 1, arms: true };
const OTHER: Kind = {
  letter: "B",
  name: "other-hand",
  title: "wheel plate of the other hand, lettered B",
  hand: -1,
  arms: true,
};
const FAR: Kind = { letter: "F", name: "far", title: "far plate of the sandwich, lettered F", hand: -1, arms: false };

export function pieces(each: Case<Parameters, Derived>): Piece[] {
  const kinds = [NEAR, ...(each.derived.faces === 2 ? [OTHER] : []), ...(each.given.sandwich ? [FAR] : [])];
  return kinds.map((kind) => piece(each, kind));
}

/** Each plate is modelled wheel side up. Laid on the other face of the bar, that makes it the other hand. */
function piece({ given, derived, printer, mark = "" }: Case<Parameters, Derived>, kind: Kind): Piece {
  const sheet: Sheet = { given, derived, printer, hand: kind.hand, arms: kind.arms };
  const body = prism(outline(sheet), -derived.thickness, 0, FOOT);
  const label = engraveTop(`${kind.letter}${mark}`, [0, 0], 0, [roomBeside(sheet), 6]);
  // A washer wider than a land lies on the far plate, and the tyres are well off it.
  const pockets = kind === FAR ? [] : reliefs(sheet);
  return {
    name: kind.name,
    title: kind.title,
    solid: carve(body, [...axleHoles(sheet), ...armSlots(sheet), ...pockets, ...label]),
    count: given.count,
    keepOuts: hardwareRooms(sheet, kind === FAR),
    contacts: [outerFace(sheet), ...lands(sheet)],
    measures: measures(sheet),
    // The strip beside an axle hole is the narrowest place, and a check keeps it at 2 mm or more.
    wall: { error: 2 * printer.line, warning: 4 * printer.line },
  };
}

/** Returns the width that is free for the label between the two columns of holes. mm. */
function roomBeside({ given, derived }: Sheet): number {
  const pocket = given.wheel.values.outside / 2 + 1;
  const land = derived.relief > 0 ? pocket : derived.reliefLand / 2;
  const free = Math.min(derived.axisDistance / 2 - land, derived.armBoltX - derived.recessWidth / 2);
  return Math.max(0, 2 * free - 2);
}

/** The face on the bed, which carries the arms and the axles' washers. */
function outerFace(sheet: Sheet): Contact {
  const { width, length, corner, thickness, slotWidthModelled, clearance } = sheet.derived;
  const wider = 2 * bedOpening(sheet.printer);
  const block = (width - 2 * FOOT) * (length - 2 * FOOT) - (4 - Math.PI) * (corner - FOOT) ** 2;
  const holes = axles(sheet).map(({ wheel }) => round(holeModelled(sheet, wheel) + wider));
  const slot = round(slotWidthModelled + wider) + clearance * (slotWidthModelled + wider);
  const area = block - holes.reduce((sum, hole) => sum + hole, 0) - slots(sheet).length * slot;
  return { name: "outer face", area, point: [0, 0, -thickness], normal: [0, 0, -1], reach: Math.max(width, length) };
}

/** The land of each spacer and hexagon, on the wheel side: the square inside it, its hole taken off. */
function lands(sheet: Sheet): Contact[] {
  const reach = (SQUARE * sheet.derived.reliefLand) / 2;
  return axles(sheet).flatMap(({ at: [x, y], wheel }): Contact[] => {
    const hole = holeModelled(sheet, wheel);
    if (hole / 2 > reach) return [];
    const area = (2 * reach) ** 2 - round(hole);
    return [{ name: `land of a ${wheel.kind} axle`, area, point: [x, y, 0], normal: [0, 0, 1], reach }];
  });
}

const round = (diameter: number) => (Math.PI / 4) * diameter ** 2;

function measures(sheet: Sheet): Measure[] {
  const { given, derived } = sheet;
  // The left side of every layout has two wheels or more, all of one kind.
  const kind = axles(sheet)[0]?.wheel.kind ?? "fixed";
  const hole = kind === "eccentric" ? derived.eccentricHole : derived.fixedHole;
  return [
    { what: "thickness", expected: derived.thickness, tolerance: 0.1 },
    { what: "hole of an eccentric axle", expected: derived.eccentricHole, tolerance: 0.1 },
    { what: `far edges of the outermost ${kind} holes`, expected: given.rowSpacing + hole, tolerance: 0.3 },
  ];
}
