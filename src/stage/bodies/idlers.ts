import type { Vec2 } from "../../geometry/mesh.ts";
import { cylinder, revolved } from "../../geometry/solid.ts";
import { at, type Drawn } from "./body.ts";
import { type Machine, planeAt } from "./machine-data.ts";

/** Side play of a belt in an idler whose width between the flanges is not known, mm. Source: common practice. */
const PLAY = 1;

/** Returns the idlers, each with its middle on the plane of its loop, where the chosen loop puts it. */
export function idlers(machine: Machine): Drawn[] {
  return machine.stage.loops.flatMap(({ loop, nodes }) =>
    nodes.flatMap(({ name, x, y }): Drawn[] => {
      const idler = machine.stage.plan.idlers[name]?.idler.values;
      const plane = planeAt(machine, loop, name);
      if (idler === undefined || plane === undefined) return [];
      const { runDiameter, flangeDiameter, height, runWidth, beltWidth } = idler;
      const run = Math.min(height, runWidth > 0 ? runWidth : beltWidth + PLAY) / 2;
      const [low, high, tread, flange] = [plane - height / 2, plane + height / 2, runDiameter / 2, flangeDiameter / 2];
      const outline: Vec2[] = [
        [0, low],
        [flange, low],
        [flange, plane - run],
        [tread, plane - run],
        [tread, plane + run],
        [flange, plane + run],
        [flange, high],
        [0, high],
      ];
      return [
        {
          name: `idler ${name}`,
          solid: at(revolved(outline, "inside"), [x, y]),
          belongsTo: [`idler ${name}`, `loop ${loop}`],
          path: ["idlers", name],
          rooms: { groove: at(cylinder(flange + 1, plane - run, plane + run), [x, y]) },
        },
      ];
    }),
  );
}
