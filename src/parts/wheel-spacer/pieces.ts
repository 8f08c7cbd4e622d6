import { cosDeg } from "../../core/rounding.ts";
import { disc, hexagon, opening } from "../../geometry/profile.ts";
import { carve, cylinder, prism, type Solid, unite } from "../../geometry/solid.ts";
import { uprightHole } from "../../printing/compensation.ts";
import type { Case } from "../family.ts";
import type { Contact, Measure, Piece } from "../piece.ts";
import { type Derived, FLANGE } from "./derive.ts";
import type { Parameters } from "./parameters.ts";

/** The groove down one corner of a bush's hexagon, on its thick side, mm. */
const MARK = 2;
const OVERRUN = 1;

type Spacer = Case<Parameters, Derived>;

export function pieces(spacer: Spacer): Piece[] {
  const { given, derived } = spacer;
  const bush = given.kind === "bush";
  const height = bush ? derived.standoff + derived.bodyLength : derived.length;
  const centre = bush ? given.offset : 0;
  return [
    {
      name: "",
      title: bush ? "eccentric bush" : `${given.kind} spacer`,
      solid: bush ? bushSolid(spacer) : ringSolid(spacer),
      count: given.count,
      keepOuts: [{ name: `${given.bolt} axle bolt`, body: boltBody(derived, centre, height) }],
      contacts: bush ? bushContacts(spacer) : [end(derived.outside, derived.boreModelled, height)],
      measures: measures(derived, bush),
      // Its own check keeps the wall at 1.2 mm; the drawn bore may be 0.6 mm wider, and flats lie inside their circle.
      wall: { error: 0.85, warning: 0.85 },
    },
  ];
}

function ringSolid({ given, derived }: Spacer): Solid {
  const { outside, length, boreModelled } = derived;
  const tube = prism(disc(outside / 2), 0, length);
  const flange = () => prism(disc((outside + FLANGE.wider) / 2), 0, FLANGE.thick);
  const body = given.kind === "flanged" ? unite(tube, flange()) : tube;
  return carve(body, [prism(opening(boreModelled), -OVERRUN, length + OVERRUN)]);
}

/** The hexagon lies on the bed, centred on the axis of the body; the bore is off by the eccentricity along +x. */
function bushSolid({ given, derived, printer }: Spacer): Solid {
  const top = derived.standoff + derived.bodyLength;
  const hex = prism(hexagon(derived.hexFlats), 0, derived.standoff);
  const body = cylinder(derived.body / 2, 0, top);
  const bore = prism(opening(derived.boreModelled, [given.offset, 0]), -OVERRUN, top + OVERRUN);
  // On the flank, where it is seen beside the plate: down the corner opposite the bore's shift.
  const corner = -derived.hexFlats / 2 / cosDeg(30);
  const mark = prism(opening(uprightHole(MARK, printer), [corner, 0]), -OVERRUN, derived.standoff + OVERRUN);
  return carve(unite(hex, body), [bore, mark]);
}

function boltBody(derived: Derived, x: number, height: number): Solid {
  return prism(disc((derived.bore - 0.3) / 2, [x, 0]), -5, height + 5);
}

const round = (diameter: number) => (Math.PI / 4) * diameter ** 2;

function end(outside: number, hole: number, height: number): Contact {
  const area = round(outside) - round(hole);
  return { name: "end", area, point: [0, 0, height], normal: [0, 0, 1], reach: outside };
}

/** The hexagon's two faces: towards the wheel, on the bed, and round the body, on the plate. */
function bushContacts({ derived, printer }: Spacer): Contact[] {
  const { hexFlats, body, boreModelled, standoff } = derived;
  // A third of the mark's round lies inside the corner of 120 degrees.
  const hex = (Math.sqrt(3) / 2) * hexFlats ** 2 - round(uprightHole(MARK, printer)) / 3;
  return [
    { name: "wheel face", area: hex - round(boreModelled), point: [0, 0, 0], normal: [0, 0, -1], reach: hexFlats },
    { name: "plate face", area: hex - round(body), point: [0, 0, standoff], normal: [0, 0, 1], reach: hexFlats },
  ];
}

function measures(derived: Derived, bush: boolean): Measure[] {
  return [
    {
      what: bush ? "hexagon height" : "length",
      expected: bush ? derived.standoff : derived.length,
      tolerance: 0.1,
    },
    {
      what: bush ? "body diameter" : "outside diameter",
      expected: bush ? derived.body : derived.outside,
      tolerance: 0.15,
    },
    { what: "bore", expected: derived.bore, tolerance: 0.15 },
  ];
}
