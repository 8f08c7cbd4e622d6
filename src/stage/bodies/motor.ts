import { CAP_SCREWS } from "../../catalogue/cap-screws.ts";
import { WASHERS } from "../../catalogue/washers.ts";
import { cosDeg, sinDeg } from "../../core/rounding.ts";
import type { Vec2 } from "../../geometry/mesh.ts";
import { placed, rectangle } from "../../geometry/profile.ts";
import { cylinder, prism, revolved, unite } from "../../geometry/solid.ts";
import { at, type Drawn } from "./body.ts";
import type { Machine } from "./machine-data.ts";
import { grooveOf, pulleySolid } from "./pulley-solid.ts";

/** Returns where the chosen loop puts the motor; without one, where the plan has it. */
function placeOf({ stage }: Machine, loop?: string): Vec2 {
  const loops = loop === undefined ? stage.loops : stage.loops.filter((one) => one.loop === loop);
  const node = loops.flatMap(({ nodes }) => nodes).find(({ name }) => name === "motor");
  const [x, y] = stage.plan.motor.at;
  return node === undefined ? [x, y] : [node.x, node.y];
}

/** Direction along which the motor slides, and to which it stands square, deg. */
function directionOf({ stage }: Machine): number {
  const { loops } = stage.plan;
  return Object.values(loops).find((loop) => loop.slide?.node === "motor")?.slide?.direction ?? 0;
}

/** Returns the motor under its plate, square to its slide, with its shaft. */
export function motors(machine: Machine): Drawn[] {
  const { motor } = machine.stage.plan;
  const { body, bodyLong, shaftDiameter, shaftLength } = motor.motor.values;
  const face = motor.plateTop - motor.plate;
  const square = placed(rectangle(-body / 2, -body / 2, body / 2, body / 2), [0, 0], directionOf(machine));
  const shaft = cylinder(shaftDiameter / 2, face - 1, face + shaftLength);
  const place = placeOf(machine);
  return [
    {
      name: "motor",
      solid: at(unite(prism(square, face - Math.max(bodyLong, 1), face), shaft), place),
      belongsTo: ["motor"],
      path: ["motor"],
      rooms: { shaft: at(shaft, place) },
    },
  ];
}

/** Diameters and heights of head and washer of a screw that is in no table, times the hole. common practice */
const UNLISTED = { head: 1.9, headHeight: 1.1, washer: 2.4, thickness: 0.2 };

/** Returns the screws that hold the motor, as they stand on its plate: washer and head. They move with the motor. */
export function motorScrews(machine: Machine): Drawn[] {
  const { motor } = machine.stage.plan;
  const { boltSquare, screw, hole } = motor.motor.values;
  const { headDiameter, headHeight } = CAP_SCREWS.rows.find(({ key }) => key === screw)?.values ?? {
    headDiameter: UNLISTED.head * hole,
    headHeight: UNLISTED.headHeight * hole,
  };
  const { outside, thickness } = WASHERS.rows.find(({ key }) => key === screw)?.values ?? {
    outside: UNLISTED.washer * hole,
    thickness: UNLISTED.thickness * hole,
  };
  const outline: Vec2[] = [
    [0, 0],
    [outside / 2, 0],
    [outside / 2, thickness],
    [headDiameter / 2, thickness],
    [headDiameter / 2, thickness + headHeight],
    [0, thickness + headHeight],
  ];
  const [x, y] = placeOf(machine);
  return [45, 135, 225, 315].map((corner, index): Drawn => {
    const [away, angle] = [boltSquare * Math.SQRT1_2, corner + directionOf(machine)];
    const place: Vec2 = [x + away * cosDeg(angle), y + away * sinDeg(angle)];
    const solid = at(revolved(outline, "inside"), place, motor.plateTop);
    return { name: `motor screw ${index + 1}`, solid, belongsTo: ["motor"], path: ["motor"] };
  });
}

/** Returns the pulleys on the motor's shaft. The flange that two share is the lower one's. */
export function motorPulleys(machine: Machine): Drawn[] {
  const { stage } = machine;
  return stage.pulleys.flatMap(({ loop, pulley, bottom, top, plane }, index): Drawn[] => {
    const line = stage.plan.loops[loop]?.belt.values.pitchLineDistance;
    if (line === undefined) return [];
    const shared = index > 0 && stage.plan.motor.pulleys[index]?.commonFlange === true;
    const low = shared ? plane - pulley.values.toothWidth / 2 : bottom;
    const place = placeOf(machine, loop);
    return [
      {
        name: `motor pulley of loop ${loop}`,
        solid: at(pulleySolid({ pulley: pulley.values, line, plane, low, high: top }), place),
        belongsTo: ["motor", `loop ${loop}`],
        path: ["motor", "pulleys", index],
        rooms: { groove: at(grooveOf(pulley.values, plane), place) },
      },
    ];
  });
}
