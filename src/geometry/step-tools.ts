import type { Vec2 } from "./mesh.ts";
import type { Profile } from "./profile.ts";
import { moved, type Solid, turned } from "./solid.ts";

type Turned = Extract<Solid, { kind: "revolved" }>;

/** A round thing about an upright axis through `at`, which may be drawn out by `reach` mm both ways along `azimuth`. */
interface Round {
  readonly turned: Turned;
  readonly at: Vec2;
  readonly reach: number;
  /** Degrees from +x, 0 to 180. */
  readonly azimuth: number;
}

const SAME = 1e-6;

/**
 * Returns tools that cut the same as these: those that are round, or round and drawn out along one line, about one
 * upright axis become a single stepped tool. A counterbore and its hole overlap, and cutting overlapping tools one by
 * one is what costs the kernel most.
 */
export function stepTools(tools: readonly Solid[]): Solid[] {
  const rest: Solid[] = [];
  const groups: Round[][] = [];
  for (const tool of tools) {
    const round = roundOf(tool);
    if (round === undefined) {
      rest.push(tool);
      continue;
    }
    const group = groups.find(([first]) => first !== undefined && coaxial(first, round));
    if (group === undefined) groups.push([round]);
    else group.push(round);
  }
  return [...groups.map(stepped), ...rest];
}

function stepped(group: readonly Round[]): Solid {
  const [first] = group;
  if (first === undefined) throw new RangeError("a stepped tool needs a step");
  const tool: Turned = {
    ...first.turned,
    sections: group.flatMap((round) => round.turned.sections),
    sizing: Math.max(...group.map((round) => round.turned.sizing)),
    drawn: first.reach,
  };
  return moved(turned(tool, "z", first.azimuth), [...first.at, 0]);
}

function coaxial(one: Round, other: Round): boolean {
  return (
    one.turned.fit === other.turned.fit &&
    near(one.at, other.at) &&
    Math.abs(one.reach - other.reach) < SAME &&
    Math.abs(one.azimuth - other.azimuth) < SAME
  );
}

const near = ([x0, y0]: Vec2, [x1, y1]: Vec2) => Math.hypot(x1 - x0, y1 - y0) < SAME;

function roundOf(solid: Solid): Round | undefined {
  switch (solid.kind) {
    case "revolved":
      return solid.drawn === 0 ? { turned: solid, at: [0, 0], reach: 0, azimuth: 0 } : undefined;
    case "prism":
      return solid.foot === 0 ? pinOf(solid.profile, solid.z0, solid.z1) : undefined;
    case "placed":
      return shifted(roundOf(solid.of), solid.placement);
    case "hull":
      return solid.parts.length === 2 ? drawn(solid.parts.map(roundOf)) : undefined;
    default:
      return undefined;
  }
}

function pinOf(profile: Profile, z0: number, z1: number): Round | undefined {
  if (profile.kind === "hull" && profile.parts.length === 2) return drawn(profile.parts.map((p) => pinOf(p, z0, z1)));
  if (profile.kind !== "disc") return undefined;
  const { radius, at, fit } = profile;
  const section: Vec2[] = [
    [0, z0],
    [radius, z0],
    [radius, z1],
    [0, z1],
  ];
  return { turned: { kind: "revolved", sections: [section], fit, sizing: radius, drawn: 0 }, at, reach: 0, azimuth: 0 };
}

/** A thing that was only shifted. */
function shifted(round: Round | undefined, placement: readonly number[]): Round | undefined {
  const [a, b, c, x = 0, d, e, f, y = 0, g, h, i, z = 0] = placement;
  if (round === undefined || [a, b, c, d, e, f, g, h, i].join() !== "1,0,0,0,1,0,0,0,1") return undefined;
  const sections = round.turned.sections.map((points) => points.map(([r, height]): Vec2 => [r, height + z]));
  return { ...round, turned: { ...round.turned, sections }, at: [round.at[0] + x, round.at[1] + y] };
}

/** The hull of one round thing at two places is that thing drawn out, if its section is convex. */
function drawn([one, other]: readonly (Round | undefined)[]): Round | undefined {
  if (one === undefined || other === undefined || one.reach !== 0 || other.reach !== 0) return undefined;
  const { sections, fit, sizing } = one.turned;
  const alike = JSON.stringify([sections, fit, sizing]) === JSON.stringify(sectionsOf(other.turned));
  if (!alike || !sections.every(isConvex)) return undefined;
  const [dx, dy] = [one.at[0] - other.at[0], one.at[1] - other.at[1]];
  const at: Vec2 = [(one.at[0] + other.at[0]) / 2, (one.at[1] + other.at[1]) / 2];
  const reach = Math.hypot(dx, dy) / 2;
  if (reach < SAME) return { ...one, at };
  // The same line either way round; a turn of almost 180 degrees is none.
  const azimuth = ((Math.atan2(dy, dx) * 180) / Math.PI + 360) % 180;
  return { ...one, at, reach, azimuth: 180 - azimuth < SAME ? 0 : azimuth };
}

const sectionsOf = ({ sections, fit, sizing }: Turned) => [sections, fit, sizing];

/** Whether a counter-clockwise outline has no corner that turns inwards. */
function isConvex(points: readonly Vec2[]): boolean {
  return points.every(([x, y], index) => {
    const [x1, y1] = points[(index + 1) % points.length] ?? [x, y];
    const [x2, y2] = points[(index + 2) % points.length] ?? [x, y];
    return (x1 - x) * (y2 - y1) - (y1 - y) * (x2 - x1) >= -SAME;
  });
}
