import type { Vec2 } from "../../geometry/mesh.ts";
import { placed, rectangle } from "../../geometry/profile.ts";
import { cylinder, prism, unite } from "../../geometry/solid.ts";
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

/** Returns the motor under its plate, square to its slide, with its shaft. */
export function motors(machine: Machine): Drawn[] {
  const { motor, loops } = machine.stage.plan;
  const { body, bodyLong, shaftDiameter, shaftLength } = motor.motor.values;
  const face = motor.plateTop - motor.plate;
  const slide = Object.values(loops).find((loop) => loop.slide?.node === "motor")?.slide;
  const square = placed(rectangle(-body / 2, -body / 2, body / 2, body / 2), [0, 0], slide?.direction ?? 0);
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
