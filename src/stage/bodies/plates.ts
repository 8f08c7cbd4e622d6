import { rectangle } from "../../geometry/profile.ts";
import { prism } from "../../geometry/solid.ts";
import { derive } from "../../parts/tram-mount/derive.ts";
import type { Parameters } from "../../parts/tram-mount/parameters.ts";
import type { Drawn } from "./body.ts";
import type { Machine } from "./machine-data.ts";

/** Thickness of a heating mat, mm. Source: common practice. */
const HEATER = 1.5;

/** Returns the height of the plate's underside at the bottom of the travel; undefined without a mount that holds it. */
function undersideOf({ stage, printer }: Machine): number | undefined {
  const mount = stage.parts.find(({ family }) => family === "tram-mount");
  if (mount === undefined) return undefined;
  return mount.placement.origin[2] + derive(mount.parameters as Parameters, printer(mount.family)).plateHeight;
}

/** Returns the plate on its mounts. */
export function plates(machine: Machine): Drawn[] {
  const under = undersideOf(machine);
  if (under === undefined) return [];
  const { at, size, thickness } = machine.stage.plan.plate;
  const solid = prism(around(at, size), under, under + thickness);
  return [{ name: "plate", solid, moves: true, belongsTo: ["plate"], path: ["plate"] }];
}

/** Returns the heater, stuck under the plate. */
export function heaters(machine: Machine): Drawn[] {
  const under = undersideOf(machine);
  const { at, heater } = machine.stage.plan.plate;
  if (under === undefined || heater === undefined) return [];
  const solid = prism(around(heater.at ?? at, heater.size), under - HEATER, under);
  return [{ name: "heater", solid, moves: true, belongsTo: ["plate"], path: ["plate", "heater"] }];
}

function around([x, y]: readonly [number, number], [width, depth]: readonly [number, number]) {
  return rectangle(x - width / 2, y - depth / 2, x + width / 2, y + depth / 2);
}
