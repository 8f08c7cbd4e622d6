import type { Path } from "../../core/diagnostic.ts";
import { cylinder, revolved } from "../../geometry/solid.ts";
import { at, type Drawn } from "./body.ts";
import type { FootAxis, Machine } from "./machine-data.ts";
import { grooveOf, pulleySolid } from "./pulley-solid.ts";

/** How much larger a bearing may be than the pocket it is pressed into, all round, mm. Source: common practice. */
const PRESS = 0.1;

const pathOf = ({ choice }: FootAxis): Path => ["screws", choice.screw];

/** Returns the lead screws, from the tip below the bearing up. */
export function screws({ stage, feet }: Machine): Drawn[] {
  return feet.flatMap((foot): Drawn[] => {
    const screw = stage.plan.screws[foot.choice.screw];
    if (screw === undefined) return [];
    const { seat, shim } = foot.derived;
    const tip = foot.base + seat + shim - foot.given.tipLength;
    const body = cylinder(screw.screw.values.diameter / 2, tip, tip + screw.length);
    const name = `screw ${foot.choice.screw}`;
    return [{ name, solid: at(body, foot.at), belongsTo: [name], path: pathOf(foot) }];
  });
}

/** Returns the bearings: one on each seat, and one in each bridge. */
export function bearings({ feet }: Machine): Drawn[] {
  return feet.flatMap((foot) => {
    const { derived, choice, base } = foot;
    const { bearing } = derived.bought;
    const seats = [
      { name: `bearing of screw ${choice.screw}`, from: derived.seat + derived.shim },
      ...(derived.posts.length > 0
        ? [{ name: `upper bearing of screw ${choice.screw}`, from: derived.bridgeSeat }]
        : []),
    ];
    return seats.map(({ name, from }): Drawn => {
      const radius = bearing.outside / 2;
      const [low, high] = [base + from, base + from + bearing.width];
      const press = revolved(
        [
          [radius - PRESS, low],
          [radius + PRESS, low],
          [radius + PRESS, high],
          [radius - PRESS, high],
        ],
        "around",
      );
      return {
        name,
        solid: at(cylinder(radius, low, high), foot.at),
        belongsTo: [`screw ${choice.screw}`],
        path: pathOf(foot),
        rooms: { press: at(press, foot.at) },
      };
    });
  });
}

/** Returns the rings between bearing and pulley, each stack as one body. */
export function rings({ feet }: Machine): Drawn[] {
  return feet.flatMap((foot): Drawn[] => {
    const stack = foot.derived.bought.washers.filter(({ thickness }) => thickness > 0);
    if (stack.length === 0) return [];
    let from = foot.base + foot.derived.bearingTop;
    const outline = stack.flatMap(({ outside, thickness }): [number, number][] => {
      const low = from;
      from += thickness;
      return [
        [outside / 2, low],
        [outside / 2, from],
      ];
    });
    const solid = revolved([[0, foot.base + foot.derived.bearingTop], ...outline, [0, from]], "inside");
    return [
      {
        name: `rings of screw ${foot.choice.screw}`,
        solid: at(solid, foot.at),
        belongsTo: [`screw ${foot.choice.screw}`],
        path: pathOf(foot),
      },
    ];
  });
}

/** Returns the clamp collars that carry the screws on their bearings. */
export function collars({ feet }: Machine): Drawn[] {
  return feet.flatMap((foot): Drawn[] => {
    const { bearingTop, washerStack, collarHeight, bought } = foot.derived;
    if (collarHeight <= 0) return [];
    const from = foot.base + bearingTop + washerStack;
    return [
      {
        name: `collar of screw ${foot.choice.screw}`,
        solid: at(cylinder(bought.collar.outside / 2, from, from + collarHeight), foot.at),
        belongsTo: [`screw ${foot.choice.screw}`],
        path: pathOf(foot),
      },
    ];
  });
}

/** Returns the pulleys on the screws. */
export function screwPulleys({ feet }: Machine): Drawn[] {
  return feet.map((foot): Drawn => {
    const { derived, choice, base } = foot;
    const { pulley, belt } = derived.bought;
    const plane = base + derived.plane;
    const [low, high] = [base + derived.pulleyBottom, base + derived.pulleyTop];
    const sizes = { pulley, line: belt.pitchLineDistance, plane, low, high };
    return {
      name: `pulley of screw ${choice.screw}`,
      solid: at(pulleySolid(sizes), foot.at),
      belongsTo: [`screw ${choice.screw}`, `loop ${choice.loop}`],
      path: pathOf(foot),
      rooms: { groove: at(grooveOf(pulley, plane), foot.at) },
    };
  });
}
