import type { Vec2 } from "../../geometry/mesh.ts";
import { cylinder, revolved } from "../../geometry/solid.ts";
import { besideBar, placedBars, topOf } from "../frame/placed-bar.ts";
import type { Plan } from "../schema/index.ts";
import { at, type Drawn } from "./body.ts";
import { type Machine, planeAt } from "./machine-data.ts";

/** Side play of a belt in an idler whose width between the flanges is not known, mm. Source: common practice. */
const PLAY = 1;

/** What stands on an idler's axle over it, washer and nut, mm. Source: common practice. */
const NUT = { diameter: 1.8, height: 6 };

/** Returns the height of an idler's lower end: as the plan states it, else with its middle on the belt's plane. */
function lowerEnd({ idlers }: Plan, name: string, plane: number): number {
  const own = idlers[name];
  return own?.bottom ?? plane - (own?.idler.values.height ?? 0) / 2;
}

/**
 * Returns what the idlers stand on: an axle with its spacers, from the plate that the motor hangs from, or from a bar
 * under it, up to its nut.
 */
export function idlerAxles(machine: Machine): Drawn[] {
  const { plan, loops } = machine.stage;
  return loops.flatMap(({ loop, nodes }) =>
    nodes.flatMap(({ name, x, y }): Drawn[] => {
      const own = plan.idlers[name];
      const plane = planeAt(machine, loop, name);
      if (own === undefined || plane === undefined) return [];
      const { bore, height } = own.idler.values;
      const low = lowerEnd(plan, name, plane);
      const foot = Math.min(low, standsOn(plan, [x, y], low));
      const nut = low + height;
      const top = Math.max(nut + NUT.height, low + (own.axle ?? 0));
      const [axle, spacer] = [bore / 2, (NUT.diameter * bore) / 2];
      const outline: Vec2[] = [
        [0, foot],
        [spacer, foot],
        [spacer, low],
        [axle, low],
        [axle, nut],
        [spacer, nut],
        [spacer, nut + NUT.height],
        [axle, nut + NUT.height],
        [axle, top],
        [0, top],
      ];
      const solid = at(revolved(outline, "inside"), [x, y]);
      return [{ name: `axle of idler ${name}`, solid, belongsTo: [`idler ${name}`], path: ["idlers", name] }];
    }),
  );
}

/** The top of the highest level bar that stands still under a place, else the top of the motor's plate. */
function standsOn(plan: Plan, place: Vec2, below: number): number {
  const tops = placedBars(plan).flatMap((bar) => {
    const { along, off } = besideBar(bar, place);
    const over =
      bar.kind === "level" && !bar.moves && along >= 0 && along <= bar.length && Math.abs(off) < bar.wide / 2;
    const top = over ? topOf(bar, along) : Number.POSITIVE_INFINITY;
    return top <= below ? [top] : [];
  });
  return tops.length > 0 ? Math.max(...tops) : plan.motor.plateTop;
}

/** Returns the idlers, each with its middle on the plane of its loop, where the chosen loop puts it. */
export function idlers(machine: Machine): Drawn[] {
  return machine.stage.loops.flatMap(({ loop, nodes }) =>
    nodes.flatMap(({ name, x, y }): Drawn[] => {
      const idler = machine.stage.plan.idlers[name]?.idler.values;
      const plane = planeAt(machine, loop, name);
      if (idler === undefined || plane === undefined) return [];
      const { runDiameter, flangeDiameter, height, runWidth, beltWidth } = idler;
      const run = Math.min(height, runWidth > 0 ? runWidth : beltWidth + PLAY) / 2;
      const low = lowerEnd(machine.stage.plan, name, plane);
      const [high, middle, tread, flange] = [low + height, low + height / 2, runDiameter / 2, flangeDiameter / 2];
      const outline: Vec2[] = [
        [0, low],
        [flange, low],
        [flange, middle - run],
        [tread, middle - run],
        [tread, middle + run],
        [flange, middle + run],
        [flange, high],
        [0, high],
      ];
      return [
        {
          name: `idler ${name}`,
          solid: at(revolved(outline, "inside"), [x, y]),
          belongsTo: [`idler ${name}`, `loop ${loop}`],
          path: ["idlers", name],
          rooms: { groove: at(cylinder(flange + 1, middle - run, middle + run), [x, y]) },
        },
      ];
    }),
  );
}
