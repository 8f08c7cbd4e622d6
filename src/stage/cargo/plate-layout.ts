import { THREADS } from "../../catalogue/threads.ts";
import type { Diagnostic } from "../../core/diagnostic.ts";
import { row } from "../../core/table.ts";
import { below } from "../../parts/check.ts";
import { fittings } from "../../parts/tram-mount/fittings.ts";
import type { Fact, Topic } from "../fact.ts";
import { told } from "../worked.ts";
import { type Box, besideBox, boxOf, HEATER_ROOM, nearHeater, outside, type Spot } from "./plate-box.ts";
import { sensorLayout } from "./sensor-layout.ts";
import type { SharedStage } from "./structure.ts";
import { tramMountsOf } from "./tram-mounts.ts";

/** A hole's middle to the plate's edge, in diameters. */
const EDGE = { error: 1.5, warning: 2 };
/** How unequal the margins round a heater may be, mm. Source: design rule. */
const OFF_CENTRE = 2;

/** Returns where holes and heater lie on the plate, and which are too near to an edge or to each other. */
export function plateLayout(stage: SharedStage): Topic {
  const { plan } = stage;
  const plate = boxOf(plan.plate.at, plan.plate.size);
  const own = plan.plate.heater;
  const heater = own === undefined ? undefined : boxOf(own.at ?? plan.plate.at, own.size);
  const holes = Object.entries(plan.plate.mounts).map(([name, { at }]) => ({ name, at, bore: boreOf(stage, name) }));
  const found = holes.map((hole) => {
    const edge = -outside(plate, hole.at);
    const room = heater === undefined ? undefined : outside(heater, hole.at) - hole.bore / 2;
    return {
      facts: holeFacts(hole, edge, room),
      diagnostics: [...nearEdge(hole, edge), ...underHeater(hole, room, heater)],
    };
  });
  const sensor = sensorLayout(plan, plate, heater);
  const centred = heater === undefined ? undefined : marginsOf(plate, heater);
  const many = holes.length < 3 ? tooFew(holes.length) : [];
  return {
    sections: [
      { title: "Plate", facts: [...found.flatMap(({ facts }) => facts), ...sensor.facts, ...(centred?.facts ?? [])] },
    ],
    diagnostics: [
      ...many,
      ...found.flatMap(({ diagnostics }) => diagnostics),
      ...sensor.diagnostics,
      ...(centred?.diagnostics ?? []),
    ],
  };
}

/** The hole of a mount's bolt in the plate, mm. */
function boreOf(stage: SharedStage, name: string): number {
  const mounts = tramMountsOf(stage);
  // A bracket that is left out is taken to be like the others.
  const mount = mounts.find((each) => each.mount === name) ?? mounts[0];
  return mount === undefined ? row(THREADS, "M5").values.mediumHole : fittings(mount.given).thread.mediumHole;
}

interface Hole {
  readonly name: string;
  readonly at: Spot;
  readonly bore: number;
}

function holeFacts({ name, bore }: Hole, edge: number, room: number | undefined): Fact[] {
  const wanted = { value: EDGE.warning * bore, kind: "at least" } as const;
  const free = { value: HEATER_ROOM, kind: "at least" } as const;
  const key = `mount.${name}`;
  return [
    { key: `${key}.edge`, label: `mount ${name}: hole to the plate's edge`, value: edge, unit: "mm", limit: wanted },
    ...(room === undefined
      ? []
      : [
          {
            key: `${key}.heater`,
            label: `mount ${name}: hole's edge to the heater`,
            value: room,
            unit: "mm",
            limit: free,
          } as const,
        ]),
  ];
}

function nearEdge({ name, bore }: Hole, edge: number): Diagnostic[] {
  const finding = below({
    value: edge,
    unit: "mm",
    error: EDGE.error * bore,
    warning: EDGE.warning * bore,
    says: (limit) =>
      edge < 0
        ? `the hole of ${name} lies ${(-edge).toFixed(1)} mm outside the plate`
        : `the hole of ${name} lies ${edge.toFixed(1)} mm from the plate's edge, under ${limit.toFixed(1)} mm`,
    set: `at: ${(EDGE.warning * bore).toFixed(1)} mm or more inside the plate`,
  });
  return told("hole-near-plate-edge", ["plate", "mounts", name, "at"], finding);
}

function underHeater(hole: Hole, room: number | undefined, heater: Box | undefined): Diagnostic[] {
  if (room === undefined || heater === undefined) return [];
  const { name } = hole;
  const finding = nearHeater(
    `the hole of ${name}`,
    room,
    `at: [${besideBox(heater, hole.at, HEATER_ROOM + hole.bore / 2).join(", ")}], ${HEATER_ROOM} mm outside the heater, or a smaller heater`,
  );
  return told("hole-under-heater", ["plate", "mounts", name, "at"], finding);
}

function tooFew(count: number): Diagnostic[] {
  return told("plate-on-too-few-mounts", ["plate", "mounts"], {
    level: "error",
    says: `${count} mounts hold the plate`,
    set: "mounts: three, one fixed, one slot, one free",
  });
}

function marginsOf(plate: Box, heater: Box) {
  const margins = {
    left: heater.left - plate.left,
    right: plate.right - heater.right,
    front: heater.front - plate.front,
    back: plate.back - heater.back,
  };
  const facts = Object.entries(margins).map(([side, value]): Fact => {
    return { key: `heater.margin.${side}`, label: `plate beside the heater, ${side}`, value, unit: "mm" };
  });
  return { facts, diagnostics: [...overhang(Math.min(...Object.values(margins))), ...offCentre(margins)] };
}

function overhang(least: number): Diagnostic[] {
  const says = () => `the heater sticks out ${(-least).toFixed(1)} mm over the plate`;
  const finding = below({
    value: least,
    unit: "mm",
    error: 0,
    says,
    set: "size: or at: of the heater, inside the plate",
  });
  return told("heater-overhangs-plate", ["plate", "heater", "size"], finding);
}

function offCentre({ left, right, front, back }: Record<"left" | "right" | "front" | "back", number>): Diagnostic[] {
  const [x, y] = [(right - left) / 2, (back - front) / 2];
  const off = 2 * Math.max(Math.abs(x), Math.abs(y));
  if (off <= OFF_CENTRE) return [];
  return told("heater-off-centre", ["plate", "heater", "at"], {
    level: "warning",
    says: `the margins round the heater are ${left.toFixed(1)} and ${right.toFixed(1)} mm along x, ${front.toFixed(1)} and ${back.toFixed(1)} mm along y`,
    set: "at: the middle of the plate, or leave it out",
    found: off,
    limit: OFF_CENTRE,
    unit: "mm",
  });
}
