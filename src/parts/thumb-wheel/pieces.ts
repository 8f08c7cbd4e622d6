import { cosDeg, sinDeg } from "../../core/rounding.ts";
import { lettering } from "../../geometry/lettering.ts";
import {
  disc,
  hexagon,
  joined,
  opening,
  type Profile,
  placed,
  polygon,
  rectangle,
  without,
} from "../../geometry/profile.ts";
import { carve, cylinder, prism, revolved, type Solid } from "../../geometry/solid.ts";
import type { Case } from "../family.ts";
import { bedOpening } from "../features/bed-opening.ts";
import { ENGRAVING_DEPTH } from "../features/engraving.ts";
import type { Contact, KeepOut, Piece } from "../piece.ts";
import { type Derived, LOBES, nutOf, washerOf } from "./dimensions.ts";
import type { Parameters } from "./parameters.ts";

type Wheel = Case<Parameters, Derived>;

/** Chamfer of the bed edge; it stays outside the washer, mm. */
const FOOT = 0.4;
const STEP = 360 / LOBES;
/** Marks on the lobes: width of a plain one and of the index, length, mm. */
const MARK = { width: 0.5, index: 1.6, length: 4 };
/** Letters inside the scallops: what lettering calls their height, what they measure, and their play, mm. */
const LETTERS = { height: 2.6, tall: 3.5, play: 0.4 };
/** The way down: the letters stand inside the scallops, clockwise from this one, and the arrow after them. */
const WORD = { letters: [..."LOW"], first: 3 };

export function pieces(wheel: Wheel): Piece[] {
  const { given, derived } = wheel;
  return [
    {
      name: "",
      title: `thumb wheel ${given.bolt}`,
      solid: carve(body(derived), [...cuts(wheel), marks(derived)]),
      count: given.count,
      keepOuts: keepOuts(given, derived),
      contacts: [sliderFace(wheel)],
      measures: [
        { what: "height", expected: derived.height, tolerance: 0.1 },
        { what: "across two opposite lobes", expected: 2 * derived.radius, tolerance: 0.2 },
        { what: "pocket across flats", expected: derived.flats, tolerance: 0.1 },
      ],
      // The analytic checks keep 2 mm at the nut and 3 mm under it; nothing of a sound wheel is thinner.
      wall: { error: 1.8, warning: 1.8 },
    },
  ];
}

/** The outline is drawn flat, lobes and scallops at once. */
function body({ radius, height, scallopRadius, scallopCentre }: Derived): Solid {
  const scallops = Array.from({ length: LOBES }, (_, lobe) => {
    const azimuth = STEP / 2 + STEP * lobe;
    return opening(2 * scallopRadius, [scallopCentre * cosDeg(azimuth), scallopCentre * sinDeg(azimuth)]);
  });
  return prism(without(disc(radius), ...scallops), 0, height);
}

/** Takes the bed edge off the lobes at 45 degrees; the face between them stays whole. */
function bedEdge({ radius }: Derived): Solid {
  return revolved(
    [
      [radius - FOOT - 1, -1],
      [radius + 1, -1],
      [radius + 1, FOOT + 1],
    ],
    "inside",
    radius,
  );
}

function cuts({ derived, printer }: Wheel): Solid[] {
  const { height, pocketDepth, flatsModelled, boreModelled } = derived;
  return [
    bedEdge(derived),
    prism(hexagon(flatsModelled), height - pocketDepth, height + 1),
    prism(opening(boreModelled), -1, height),
    // The first layer spreads into the bore; the washer lies on this face, so it has no chamfer.
    prism(opening(boreModelled + 2 * bedOpening(printer)), -1, printer.firstLayer),
  ];
}

/** The outer face: a mark on each lobe, the index on the first, and the way down between them where there is room. */
function marks(derived: Derived): Solid {
  const { radius, height } = derived;
  const inner = radius - MARK.length;
  const lobes = Array.from({ length: LOBES }, (_, lobe) =>
    placed(lobe === 0 ? index(inner, radius) : line(inner, radius), [0, 0], STEP * lobe),
  );
  return prism(joined(...lobes, ...wayDown(derived)), height - ENGRAVING_DEPTH, height + 1);
}

const line = (inner: number, radius: number) => rectangle(inner, -MARK.width / 2, radius + 1, MARK.width / 2);

const index = (inner: number, radius: number) =>
  polygon([
    [inner, 0],
    [radius, -MARK.index / 2],
    [radius + 1, -MARK.index / 2],
    [radius + 1, MARK.index / 2],
    [radius, MARK.index / 2],
  ]);

function wayDown({ corner, scallopCentre, scallopRadius }: Derived): Profile[] {
  const outer = scallopCentre - scallopRadius;
  const room = outer - corner - LETTERS.tall - 2 * LETTERS.play;
  const middle = room < 0 ? (corner + outer) / 2 : outer - LETTERS.play - LETTERS.tall / 2;
  const azimuth = (place: number) => STEP / 2 + STEP * (WORD.first - place);
  const inGap = (profile: Profile, place: number, turn: number) =>
    placed(profile, [middle * cosDeg(azimuth(place)), middle * sinDeg(azimuth(place))], azimuth(place) + turn);
  const arrow = inGap(arrowHead(), WORD.letters.length, 0);
  if (room < 0) return [arrow];
  const letters = WORD.letters.flatMap((letter, place) => {
    const profile = lettering(letter, LETTERS.height);
    return profile === undefined ? [] : [inGap(profile, place, -90)];
  });
  return [...letters, arrow];
}

/** Points clockwise seen on the outer face: towards smaller azimuth. */
const arrowHead = () =>
  polygon([
    [0, -1.2],
    [1.2, 1.2],
    [-1.2, 1.2],
  ]);

function keepOuts(given: Parameters, { height, pocketDepth, bore }: Derived): KeepOut[] {
  const nut = nutOf(given);
  const bottom = height - pocketDepth;
  return [
    { name: `${given.bolt} tram bolt`, body: cylinder(bore / 2 - 0.25, -5, height + 5) },
    { name: "nut", body: prism(hexagon(nut.acrossFlats), bottom, bottom + nut.height) },
    { name: "slider washer", body: cylinder(washerOf(given).outside / 2, -washerOf(given).thickness, 0) },
  ];
}

/** The washer bears on the ring between the widened first layer of the bore and its own rim. */
function sliderFace({ given, derived, printer }: Wheel): Contact {
  const outer = derived.face / 2;
  const bore = derived.boreModelled / 2 + bedOpening(printer);
  const reach = Math.min(outer / Math.SQRT2, washerOf(given).outside / 2);
  return {
    name: "slider face",
    area: (2 * reach) ** 2 - Math.PI * bore ** 2,
    point: [0, 0, 0],
    normal: [0, 0, -1],
    reach,
  };
}
