import { rectangle } from "../../geometry/profile.ts";
import { carve, prism, unite } from "../../geometry/solid.ts";
import type { Case } from "../family.ts";
import { springCup } from "../features/spring-cup.ts";
import { swept } from "../features/sweep.ts";
import type { KeepOut, Piece } from "../piece.ts";
import type { Derived } from "./derive.ts";
import { captiveNut } from "./joints/captive-nut.ts";
import { insert } from "./joints/insert.ts";
import { through } from "./joints/through.ts";
import { marks } from "./marks.ts";
import { end } from "./mounts/end.ts";
import { onSide } from "./mounts/on-side.ts";
import { onTop } from "./mounts/on-top.ts";
import type { Parameters } from "./parameters.ts";
import { type Subject, subjectOf } from "./subject.ts";

const MOUNTS = { "on-side": onSide, "on-top": onTop, end };
const JOINTS = { "thumb-wheel": through, "tapped-plate": through, "captive-nut": captiveNut, insert };

export function pieces(each: Case<Parameters, Derived>): Piece[] {
  const subject = subjectOf(each);
  const { given, derived, printer } = subject;
  const mount = MOUNTS[given.mount](subject);
  const joint = JOINTS[given.joint](subject);
  const cup = springCup(cupOf(subject), printer);
  return [
    {
      name: "",
      title: `tram mount, ${given.type}, ${given.mount}`,
      solid: carve(unite(...mount.body, ...cup.adds), [
        ...mount.bolts.cuts,
        ...joint.cuts,
        ...cup.cuts,
        ...marks(subject),
      ]),
      count: given.count,
      keepOuts: [...mount.bolts.keepOuts, ...joint.keepOuts, ...cup.keepOuts, ...above(subject), ...tramBolt(subject)],
      contacts: [...mount.contacts, ...joint.contacts],
      measures: [
        { what: "thickness of the bridge plate", expected: derived.thickness, tolerance: 0.15 },
        { what: "width of the bolt's opening", expected: derived.openingWidth, tolerance: 0.15 },
        { what: "width inside the cup", expected: derived.cupInside, tolerance: 0.2 },
      ],
      membranes: joint.membranes,
      // Cup wall and pocket floor are at least four lines by their formulas, everything else is thicker.
      wall: { error: 2 * printer.line, warning: 4 * printer.line },
    },
  ];
}

function cupOf({ derived, parts, sweep }: Subject) {
  return {
    inside: derived.cupInside,
    wall: derived.cupWall,
    depth: derived.cupDepth,
    sweep,
    springOutside: parts.spring.outside,
    springLength: derived.longest,
    washerOutside: derived.springWasherOutside,
    washerThickness: derived.springWasherThickness,
  };
}

/** Plate and heat washer at the lowest setting. */
function above({ derived, parts, sweep }: Subject): KeepOut[] {
  const { reach, plateHeight, range, halfWidth } = derived;
  const plate = plateHeight - range;
  const slab = (z: number) => prism(rectangle(-2 * halfWidth, -reach, 2 * halfWidth, 60), z, plate + 5);
  const { outside, thickness } = parts.heatWasher;
  return [
    { name: "hot plate at its lowest", body: slab(plate - 1), roomy: slab(plate - 2) },
    { name: "heat washer", body: prism(swept(outside / 2, sweep), plate - thickness, plate) },
  ];
}

/** The bolt over its slide; the membrane of a captive nut is pierced at assembly, so it is left out there. */
function tramBolt({ given, derived, parts, sweep, printer }: Subject): KeepOut[] {
  const outline = swept(parts.thread.diameter / 2, sweep);
  const bottom = -derived.thickness - Math.max(1, derived.under);
  const top = derived.plateHeight + derived.range;
  const name = `${parts.bolt} tram bolt`;
  if (given.joint !== "captive-nut") return [{ name, body: prism(outline, bottom, top) }];
  const closed = -derived.roof;
  return [{ name, body: unite(prism(outline, bottom, closed), prism(outline, closed + printer.layer, top)) }];
}
