import { disc, hexagon, opening } from "../../geometry/profile.ts";
import { carve, cylinder, prism, revolved, type Solid, unite } from "../../geometry/solid.ts";
import { uprightHole } from "../../printing/compensation.ts";
import type { Printer } from "../../printing/printer.ts";
import type { Case } from "../family.ts";
import type { Piece } from "../piece.ts";
import type { Derived } from "./dimensions.ts";
import type { Parameters } from "./parameters.ts";

/** The flange of a flanged spacer: how much wider on the diameter, and how thick, mm. */
const FLANGE = { wider: 4, thick: 1.2 };
/** A dot on the hexagon's face over the thick side of a bush. */
const MARK = { diameter: 2, deep: 0.6 };

type Spacer = Case<Parameters, Derived>;

export function pieces(spacer: Spacer): Piece[] {
  const { given, derived } = spacer;
  const bush = given.kind === "bush";
  const height = bush ? given.hexHeight + derived.bodyLength : derived.length;
  const centre = bush ? given.offset : 0;
  return [
    {
      name: "",
      title: bush ? "eccentric bush" : `${given.kind} spacer`,
      solid: bush ? bushSolid(spacer) : ringSolid(spacer),
      count: given.count,
      keepOuts: [{ name: `${given.bolt} axle bolt`, body: boltBody(derived, centre, height) }],
      contacts: bush
        ? []
        : [{ name: "end", area: ringArea(derived), point: [0, 0, height], normal: [0, 0, 1], reach: 99 }],
      measures: [
        { what: bush ? "hexagon height" : "length", expected: bush ? given.hexHeight : derived.length, tolerance: 0.1 },
        {
          what: bush ? "body diameter" : "outside diameter",
          expected: bush ? derived.body : derived.outside,
          tolerance: 0.15,
        },
        { what: "bore", expected: derived.bore, tolerance: 0.15 },
      ],
      wall: { error: 1, warning: 1 },
    },
  ];
}

function ringSolid({ given, derived }: Spacer): Solid {
  const { outside, length, boreModelled } = derived;
  const tube = prism(disc(outside / 2), 0, length);
  const body =
    given.kind === "flanged" ? unite(tube, prism(disc((outside + FLANGE.wider) / 2), 0, FLANGE.thick)) : tube;
  return carve(body, [prism(opening(boreModelled), -1, length + 1)]);
}

/** The hexagon lies on the bed, centred on the axis of the body; the bore is off by the eccentricity along +x. */
function bushSolid({ given, derived, printer }: Spacer): Solid {
  const top = given.hexHeight + derived.bodyLength;
  const hex = prism(hexagon(derived.hexFlats), 0, given.hexHeight);
  const body = cylinder(derived.body / 2, 0, top);
  const bore = prism(opening(derived.boreModelled, [given.offset, 0]), -1, top + 1);
  return carve(unite(hex, body), [bore, mark(given, derived, printer)]);
}

/** The mark stands over the thick side, opposite the bore's shift. */
function mark(given: Parameters, derived: Derived, printer: Printer): Solid {
  const between = -(derived.body / 2 + derived.hexFlats / 2) / 2;
  const radius = uprightHole(MARK.diameter, printer) / 2;
  const dot = revolved(
    [
      [0, given.hexHeight - MARK.deep],
      [radius, given.hexHeight - MARK.deep],
      [radius, given.hexHeight + 1],
      [0, given.hexHeight + 1],
    ],
    "around",
  );
  return { kind: "placed", of: dot, placement: [1, 0, 0, between, 0, 1, 0, 0, 0, 0, 1, 0] };
}

function boltBody(derived: Derived, x: number, height: number): Solid {
  return prism(disc((derived.bore - 0.3) / 2, [x, 0]), -5, height + 5);
}

function ringArea(derived: Derived): number {
  return (Math.PI / 4) * (derived.outside ** 2 - derived.boreModelled ** 2);
}
