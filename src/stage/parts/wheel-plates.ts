import type { Diagnostic } from "../../core/diagnostic.ts";
import type { Derived } from "../../parts/wheel-plate/derive.ts";
import { wheelPlate } from "../../parts/wheel-plate/index.ts";
import type { Parameters } from "../../parts/wheel-plate/parameters.ts";
import type { Printer } from "../../printing/printer.ts";
import { worstWheelLoad } from "../cargo/wheel-load.ts";
import type { PlacedPart, PrinterOf } from "../machine.ts";
import type { Plan } from "../schema/index.ts";
import { told } from "../worked.ts";
import { angleOf, isUpright, rounded } from "./bar-frame.ts";
import { type CarriagePlace, carriagePlace } from "./carriage-place.ts";
import type { Made, Partless } from "./index.ts";
import { obstaclesOf } from "./obstacles.ts";
import { levelBar, readPart } from "./read-part.ts";

/** How far an arm may stand off the plate it is bolted to, mm. Source: design rule. */
const OFF_PLATE = 1;
/** Longest lever that the family takes, mm. */
const LEVER = 600;
/** Most obstacles that the family takes. */
const OBSTACLES = 20;

/** Returns the plate of each carriage. */
export function wheelPlates({ plan }: Partless, printer: PrinterOf): Made {
  const made = Object.keys(plan.carriages).map((name) => plateOf(plan, name, printer("wheel-plate")));
  return { parts: made.flatMap(({ parts }) => parts), diagnostics: made.flatMap(({ diagnostics }) => diagnostics) };
}

function plateOf(plan: Plan, name: string, printer: Printer): Made {
  const postName = plan.carriages[name]?.post ?? "";
  const post = plan.bars[postName];
  // Another bar than an upright one that stands still is told of among the references.
  if (post === undefined || !isUpright(post)) return { parts: [], diagnostics: [] };
  const place = carriagePlace(plan, name, post);
  const rough = readPart(asked(plan, name, place, undefined));
  if (rough.part === undefined) return { parts: [], diagnostics: rough.diagnostics };
  const known = wheelPlate.open.derive(rough.part.parameters, printer) as Derived;
  const obstacles = obstaclesOf(plan, postName, place, known).slice(0, OBSTACLES);
  const { part, diagnostics } = readPart(asked(plan, name, place, obstacles));
  if (part === undefined) return { parts: [], diagnostics };
  const { wheelPlane } = known;
  const [x, y] = [place.post.x + place.away.x * wheelPlane, place.post.y + place.away.y * wheelPlane];
  const placement = { origin: [x, y, place.height] as const, angle: angleOf(place.away) - 90, upright: true } as const;
  const placed: PlacedPart = { ...part, placement, moves: true };
  const wrong = [...armsOff(plan, name, place, known), ...runsOff(plan, name, place, part.parameters as Parameters)];
  return { parts: [placed], diagnostics: [...diagnostics, ...wrong] };
}

function asked(plan: Plan, name: string, place: CarriagePlace, obstacles: readonly unknown[] | undefined) {
  const path = ["carriages", name];
  const { post, arms = [], parameters = {} } = plan.carriages[name] ?? {};
  const load = worstWheelLoad(plan);
  const many = Object.keys(plan.carriages).length;
  const lever = (along: { readonly x: number; readonly y: number }) =>
    rounded(Math.min(LEVER, Math.abs(load.lever.x * along.x + load.lever.y * along.y)), 2);
  const follows = (value: unknown, ...where: string[]) => ({ value, path: where });
  const arm = arms[0] === undefined ? undefined : plan.bars[arms[0]];
  return {
    name: `carriage-${name.toLowerCase()}`,
    family: wheelPlate,
    path,
    blocks: [
      { values: plan.carriage, path: ["carriage"] },
      { values: parameters, path: [...path, "parameters"] },
    ],
    firm: {
      barWidth: follows(place.width, "bars", post ?? "", "bar"),
      barDepth: follows(place.depth, "bars", post ?? "", "bar"),
      module: follows(place.module, "bars", post ?? "", "bar"),
      arm: arm === undefined ? follows(undefined) : follows(levelBar(arm), "bars", arms[0] ?? "", "bar"),
      armsAt: follows(place.armsAt, ...path, "arms"),
      travelUp: follows(plan.travel.lift, "travel", "lift"),
      travelDown: follows(0, "travel", "lift"),
      count: follows(1, ...path),
    },
    usual: {
      load: follows(rounded(load.weight / Math.max(1, many), 2), ...path),
      overhang: follows(lever({ x: -place.away.y, y: place.away.x }), ...path),
      offset: follows(lever(place.away), ...path),
      obstacles: follows(obstacles, ...path, "post"),
      stock: follows(
        plan.stock.bolts?.filter((length) => length >= 5),
        "stock",
        "bolts",
      ),
    },
  };
}

/** Each arm must lie on the outer face of the plate. */
function armsOff(plan: Plan, name: string, { arms }: CarriagePlace, { wheelPlane, thickness }: Derived): Diagnostic[] {
  return arms.flatMap((arm) => {
    const wanted = wheelPlane + thickness + arm.wide / 2;
    const off = arm.distance - wanted;
    if (Math.abs(off) <= OFF_PLATE && !arm.skew) return [];
    const index = plan.carriages[name]?.arms.indexOf(arm.name) ?? 0;
    const where = `the middle of ${arm.name} stands ${arm.distance.toFixed(2)} mm beside the middle of the post`;
    return told("arm-off-carriage", ["carriages", name, "arms", index], {
      level: "error",
      says: arm.skew
        ? `${arm.name} does not run across the plate of carriage ${name}`
        : `${where}, and the plate wants ${wanted.toFixed(2)} mm`,
      set: `from: and to: of ${arm.name}, level, ${wanted.toFixed(2)} mm beside the middle of the post`,
      found: arm.distance,
      limit: wanted,
      unit: "mm",
    });
  });
}

/** The outermost wheels, over the whole travel, against the ends of the post. */
function runsOff(plan: Plan, name: string, place: CarriagePlace, { rowSpacing, wheel }: Parameters): Diagnostic[] {
  const half = rowSpacing / 2 + wheel.values.outside / 2;
  const low = place.height - half - place.bottom;
  const high = place.top - (place.height + half + plan.travel.lift);
  const least = Math.min(low, high);
  if (least >= 0) return [];
  return told("carriage-runs-off-post", ["carriages", name, "post"], {
    level: "error",
    says: `the wheels of carriage ${name} leave their post by ${(-least).toFixed(1)} mm at the ${low < high ? "bottom" : "top"} of the travel`,
    set: `a post at least ${Math.ceil(-least)} mm longer at its ${low < high ? "lower" : "upper"} end, or a smaller lift`,
  });
}
