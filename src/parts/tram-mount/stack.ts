import { layerAbove, layerBelow, layerNearest } from "../../printing/layers.ts";
import type { Printer } from "../../printing/printer.ts";
import { floorUnder, usualHeight } from "../thumb-wheel/wheel-size.ts";
import type { Fittings } from "./fittings.ts";
import type { Parameters } from "./parameters.ts";

/** What the bolt's slide is longer than the growth on each side, mm. Source: common practice. */
export const SLIDE_PLAY = 0.5;
/** Room over the nut in its pocket, and least plastic under it, mm. */
const POCKET_PLAY = 0.3;
const POCKET_FLOOR = 2;

/** The bolt's way through bracket and washers. All mm. */
export interface StackNumbers {
  readonly halfTravel: number;
  readonly openingWidth: number;
  readonly openingLength: number;
  readonly springWasherNeed: number;
  readonly springWasherOutside: number;
  readonly springWasherThickness: number;
  readonly sliderNeed: number;
  readonly thickness: number;
  readonly roof: number;
  readonly floorLeft: number;
  readonly wheelHeight: number;
  readonly wheelFloor: number;
  readonly headSunk: number;
  readonly stack: number;
}

/** Returns the openings, the washers, the bracket's thickness and the bolt's grip without the spring. */
export function stackNumbers(given: Parameters, parts: Fittings, printer: Printer): StackNumbers {
  const halfTravel = given.type === "fixed" ? 0 : (given.halfTravel ?? given.growth + SLIDE_PLAY);
  const { width, length } = openingOf(given, parts, halfTravel);
  const sideways = given.type === "free" ? 2 * halfTravel : 0;
  const springWasherNeed = width + sideways + 0.5;
  const { plainWasher, fender } = parts;
  const under = parts.springWasher ?? (plainWasher.outside >= springWasherNeed ? plainWasher : fender);
  const thickness = thicknessOf(given, parts, printer);
  const roof = thickness - layerBelow(thickness - leastRoof(parts), printer);
  const wheelHeight = usualHeight(parts.nut.height, printer);
  const body = {
    halfTravel,
    openingWidth: width,
    openingLength: length,
    springWasherNeed,
    springWasherOutside: under.outside,
    springWasherThickness: under.thickness,
    sliderNeed: given.type === "free" ? width + sideways + 2 : width + 4,
    thickness,
    roof,
    floorLeft: floorLeft(given, parts, thickness, roof),
    wheelHeight,
    wheelFloor: floorUnder(wheelHeight, parts.nut.height),
    headSunk:
      given.joint === "tapped-plate" ? given.headBelow : Math.min(given.headBelow, given.plate - parts.head.headHeight),
  };
  return { ...body, stack: gripWithoutSpring(given, parts, body) };
}

function openingOf(given: Parameters, { thread }: Fittings, halfTravel: number) {
  const { diameter, fineHole, mediumHole } = thread;
  if (given.type === "slot") return { width: mediumHole, length: mediumHole + 2 * halfTravel };
  const width = given.type === "fixed" ? fineHole : diameter + 2 * halfTravel;
  return { width, length: width };
}

const leastRoof = ({ thread }: Fittings) => Math.max(3, 0.6 * thread.diameter);

/** The least floor of a pocket is also at least four printed lines, so that a coarse nozzle raises no alarm. */
export const pocketFloor = (printer: Printer) => Math.max(POCKET_FLOOR, 4 * printer.line);

function thicknessOf(given: Parameters, parts: Fittings, printer: Printer): number {
  if (given.thickness !== undefined) return layerNearest(given.thickness, printer);
  const asked = {
    "thumb-wheel": 8,
    "tapped-plate": 8,
    "captive-nut": Math.max(8, leastRoof(parts) + parts.nut.height + POCKET_PLAY + pocketFloor(printer)),
    insert: Math.max(8, parts.insert.length + 3),
  };
  return layerAbove(asked[given.joint], printer);
}

function floorLeft(given: Parameters, { nut, insert }: Fittings, thickness: number, roof: number): number {
  if (given.joint === "captive-nut") return thickness - roof - nut.height - POCKET_PLAY;
  return given.joint === "insert" ? thickness - insert.length : thickness;
}

type Body = Pick<StackNumbers, "springWasherThickness" | "thickness" | "roof" | "wheelFloor" | "headSunk">;

/** From the head's face (or, from below, the head's seat) to the nut's near face, the spring left out. */
function gripWithoutSpring(given: Parameters, parts: Fittings, body: Body): number {
  const between = parts.heatWasher.thickness + body.springWasherThickness;
  const slider = parts.sliderWasher.thickness;
  if (given.joint === "tapped-plate") return slider + body.thickness + between;
  const above = given.plate - body.headSunk + between;
  if (given.joint === "captive-nut") return above + body.roof;
  if (given.joint === "insert") return above + body.thickness - parts.insert.length;
  return above + body.thickness + slider + body.wheelFloor;
}
