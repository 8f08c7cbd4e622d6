import { FAMILIES } from "../../src/parts/index.ts";
import type { PlacedPart, PrinterOf, Stage } from "../../src/stage/machine.ts";
import type { Pulley, Walked } from "./datums.ts";
import { kernel } from "./kernel.ts";

/** What the mesh of a round room may be inside of it, and what rounding may do, mm. */
const PLAY = 0.06;

/** Chord tolerance of printed parts, of which only the corners are looked at, mm. */
const COARSE = 0.05;

/** Air that pulleys and belts need, along the axis and round them, mm. */
interface Air {
  readonly above: number;
  readonly round: number;
}

/** Returns the bars and printed parts that stand in the room of a pulley or of a belt. */
export function roomsEntered(
  stage: Stage,
  printer: PrinterOf,
  pulleys: readonly Pulley[],
  belts: readonly Walked[],
  air: Air,
): string[] {
  return [
    ...barsInRooms(stage, pulleys, air),
    ...stage.parts.flatMap((part) => {
      const corners = cornersOf(part, printer);
      return [...inPulleys(part, corners, pulleys, air), ...inBelts(part, corners, belts, air)];
    }),
  ];
}

/** Bars as boxes round their middle lines; only what is level or upright along an axis is looked at. */
export function boxesOf({ plan }: Stage) {
  return Object.entries(plan.bars).flatMap(([name, { bar, from, to, turned, moves }]) => {
    const axis = [0, 1, 2].filter((one) => Math.abs((from[one] ?? 0) - (to[one] ?? 0)) > 1e-9);
    if (axis.length !== 1 || moves) return [];
    const { width, height } = bar.values;
    const [across, up] = turned ? [height, width] : [width, height];
    const half =
      axis[0] === 2 ? [across / 2, up / 2, 0] : axis[0] === 0 ? [0, across / 2, up / 2] : [across / 2, 0, up / 2];
    const min = half.map((each, one) => Math.min(from[one] ?? 0, to[one] ?? 0) - each);
    const max = half.map((each, one) => Math.max(from[one] ?? 0, to[one] ?? 0) + each);
    return [{ name, min, max }];
  });
}

/** The rooms of a pulley: what is round the toothed part, and what is round the hub. */
function roomsOf({ low, high, level, groove, flange, radius, hub, hubUp }: Pulley, { above, round }: Air) {
  const [under, over] = [level - groove / 2 - flange, level + groove / 2 + flange];
  return [
    { radius: radius + round, low: under - above, high: over + above },
    hubUp
      ? { radius: hub + round, low: over, high: high + above }
      : { radius: hub + round, low: low - above, high: under },
  ];
}

function barsInRooms(stage: Stage, pulleys: readonly Pulley[], air: Air): string[] {
  return boxesOf(stage).flatMap(({ name, min, max }) =>
    pulleys.flatMap((pulley): string[] => {
      const aside = [pulley.x, pulley.y].map((value, axis) =>
        Math.max(0, (min[axis] ?? 0) - value, value - (max[axis] ?? 0)),
      );
      const entered = roomsOf(pulley, air).some(
        ({ radius, low, high }) =>
          Math.hypot(...aside) < radius - PLAY && low < (max[2] ?? 0) - PLAY && high > (min[2] ?? 0) + PLAY,
      );
      return entered ? [`bar ${name} in the room of the ${pulley.name}`] : [];
    }),
  );
}

type Corner = readonly [number, number, number];

function inPulleys({ name }: PlacedPart, corners: readonly Corner[], pulleys: readonly Pulley[], air: Air): string[] {
  return pulleys.flatMap((pulley): string[] => {
    const entered = roomsOf(pulley, air).some(({ radius, low, high }) =>
      corners.some(
        ([x, y, z]) => z > low + PLAY && z < high - PLAY && Math.hypot(x - pulley.x, y - pulley.y) < radius - PLAY,
      ),
    );
    return entered ? [`${name} in the room of the ${pulley.name}`] : [];
  });
}

function inBelts({ name }: PlacedPart, corners: readonly Corner[], belts: readonly Walked[], air: Air): string[] {
  return belts.flatMap(({ loop, spots, sizes }): string[] => {
    const [reach, half] = [sizes.back + air.round - PLAY, sizes.width / 2 + air.round - PLAY];
    const levels = spots.map(({ z }) => z);
    const [least, most] = [Math.min(...levels) - half, Math.max(...levels) + half];
    const entered = corners
      .filter(([, , z]) => z > least && z < most)
      .some(([x, y, z]) => spots.some((at) => Math.abs(z - at.z) < half && Math.hypot(x - at.x, y - at.y) < reach));
    return entered ? [`${name} in the room of belt ${loop.loop}`] : [];
  });
}

/** The corners of a printed part where it stands, by plain trigonometry. */
function cornersOf({ family, parameters, placement }: PlacedPart, printer: PrinterOf): Corner[] {
  const design = FAMILIES.find(({ name }) => name === family)?.design(parameters, printer(family));
  const pieces = (design?.pieces() ?? []).filter(({ name }) => family !== "wheel-plate" || name === "");
  const [c, s] = [Math.cos((placement.angle * Math.PI) / 180), Math.sin((placement.angle * Math.PI) / 180)];
  const [ox, oy, oz] = placement.origin;
  return pieces.flatMap(({ solid }) => {
    const { positions } = kernel.build(solid, (body) => body.mesh(), COARSE);
    return Array.from({ length: positions.length / 3 }, (_, corner): Corner => {
      const [px = 0, py = 0, pz = 0] = positions.subarray(3 * corner, 3 * corner + 3);
      const [x, y, z] = placement.upright === true ? [px, -pz, py] : [px, py, pz];
      return [ox + x * c - y * s, oy + x * s + y * c, oz + z];
    });
  });
}
