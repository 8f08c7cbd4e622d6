import type { Diagnostic } from "../../core/diagnostic.ts";
import { above, below } from "../../parts/check.ts";
import type { Fact } from "../fact.ts";
import { rounded } from "../frame/footing.ts";
import type { Plan } from "../schema/index.ts";
import { atLeast, atMost, told } from "../worked.ts";
import { type Box, besideBox, HEATER_ROOM, nearHeater, outside } from "./plate-box.ts";

/** A sensor's hole: metal between it and the plate's edge in diameters, and left over its end, mm. common practice */
const EDGE = 1.5;
const ROOF = 1.5;

interface Found {
  readonly facts: readonly Fact[];
  readonly diagnostics: readonly Diagnostic[];
}

/**
 * Returns where the hole of the plate's temperature sensor lies: inside the plate, and outside the heater, which a hole
 * would cut, unless the plan says that it sits in or under the heater.
 */
export function sensorLayout({ plate }: Plan, outline: Box, heater: Box | undefined): Found {
  const { sensor } = plate;
  if (sensor === undefined) return { facts: [], diagnostics: [] };
  const { at, diameter, depth, underHeater } = sensor;
  const edge = rounded(-outside(outline, at));
  const checked = [
    nearEdge(edge, diameter),
    depth === undefined ? undefined : tooDeep(depth, plate.thickness),
    heater === undefined || underHeater ? undefined : beside(heater, at, diameter),
  ];
  const found = checked.filter((each) => each !== undefined);
  return { facts: found.flatMap(({ facts }) => facts), diagnostics: found.flatMap(({ diagnostics }) => diagnostics) };
}

function nearEdge(edge: number, diameter: number): Found {
  const least = EDGE * diameter;
  const label = "temperature sensor: middle of its hole to the plate's edge";
  const finding = below({
    value: edge,
    unit: "mm",
    error: least,
    says: (limit) =>
      edge < 0
        ? `the sensor lies ${(-edge).toFixed(1)} mm outside the plate`
        : `the sensor lies ${edge.toFixed(1)} mm from the plate's edge, under ${limit.toFixed(1)} mm`,
    set: `at: ${least.toFixed(1)} mm or more inside the plate`,
  });
  const facts: Fact[] = [{ key: "sensor.edge", label, value: edge, unit: "mm", limit: atLeast(least) }];
  return { facts, diagnostics: told("hole-near-plate-edge", ["plate", "sensor", "at"], finding) };
}

function tooDeep(depth: number, thickness: number): Found {
  const most = rounded(thickness - ROOF);
  const finding = above({
    value: depth,
    unit: "mm",
    error: most,
    says: (limit) => `the sensor's hole is ${depth} mm deep in a plate of ${thickness} mm, over ${limit} mm`,
    set: `depth: ${most} mm or less`,
  });
  const label = "temperature sensor: depth of its hole";
  const facts: Fact[] = [{ key: "sensor.depth", label, value: depth, unit: "mm", limit: atMost(most) }];
  return { facts, diagnostics: told("sensor-hole-too-deep", ["plate", "sensor", "depth"], finding) };
}

function beside(heater: Box, at: readonly [number, number], diameter: number): Found {
  const room = rounded(outside(heater, at) - diameter / 2);
  const place = besideBox(heater, at, HEATER_ROOM + diameter / 2).join(", ");
  const set = `at: [${place}], or underHeater: true where the sensor is part of the heater`;
  const finding = nearHeater("the sensor's hole", room, set);
  const label = "temperature sensor: edge of its hole to the heater";
  const facts: Fact[] = [{ key: "sensor.heater", label, value: room, unit: "mm", limit: atLeast(HEATER_ROOM) }];
  return { facts, diagnostics: told("sensor-under-heater", ["plate", "sensor", "at"], finding) };
}
