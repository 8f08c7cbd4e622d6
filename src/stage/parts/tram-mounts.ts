import type { Diagnostic, Path } from "../../core/diagnostic.ts";
import type { Derived } from "../../parts/tram-mount/derive.ts";
import { tramMount } from "../../parts/tram-mount/index.ts";
import type { Printer } from "../../printing/printer.ts";
import { growthOf } from "../cargo/growth.ts";
import { plateShares } from "../cargo/mount-shares.ts";
import type { PlacedPart, PrinterOf } from "../machine.ts";
import type { Plan, PlanBar } from "../schema/index.ts";
import { told } from "../worked.ts";
import { isLevel, nearestMovingBar, rounded, wrapped } from "./bar-frame.ts";
import type { Made, Partless } from "./index.ts";
import { type MountPlace, mountPlace, placementOf } from "./mount-place.ts";
import { levelBar, readPart } from "./read-part.ts";

const ORDER = ["fixed", "slot", "free"];

/** How far the bolt of a bracket may be from its hole in the plate, mm. Source: design rule. */
const OFF_HOLE = 0.05;

/** Returns a bracket for each mount of the plate. */
export function tramMounts({ plan }: Partless, printer: PrinterOf): Made {
  const made = Object.keys(plan.plate.mounts).map((name) => bracket(plan, name, printer("tram-mount")));
  return { parts: made.flatMap(({ parts }) => parts), diagnostics: made.flatMap(({ diagnostics }) => diagnostics) };
}

type Mount = Plan["plate"]["mounts"][string];

function bracket(plan: Plan, name: string, printer: Printer): Made {
  const mount = plan.plate.mounts[name] as Mount;
  const path = ["plate", "mounts", name];
  const barName = mount.bar ?? nearestMovingBar(plan, { x: mount.at[0], y: mount.at[1] });
  const bar = barName === undefined ? undefined : plan.bars[barName];
  // Another bar than a level one that moves is told of among the references.
  if (barName === undefined || bar === undefined || !isLevel(bar)) return { parts: [], diagnostics: [] };
  const kind = String(mount.parameters.mount ?? plan.mount.mount ?? "on-side");
  const place = mountPlace(bar, { x: mount.at[0], y: mount.at[1] }, kind);
  const { part, diagnostics } = readPart(asked(plan, name, mount, { bar, barName, place, kind }));
  if (part === undefined) return { parts: [], diagnostics };
  const derived = tramMount.open.derive(part.parameters, printer) as Derived;
  const placement = placementOf(bar, place, kind, derived);
  const placed: PlacedPart = { ...part, placement, moves: true };
  return { parts: [placed], diagnostics: [...diagnostics, ...offHole(name, place, derived, [...path, "at"])] };
}

interface On {
  readonly bar: PlanBar;
  readonly barName: string;
  readonly place: MountPlace;
  readonly kind: string;
}

function asked(plan: Plan, name: string, mount: Mount, { bar, barName, place, kind }: On) {
  const path = ["plate", "mounts", name];
  const { plate } = plan;
  const growth = growthOf(plan)[name];
  const angle = growth?.direction === undefined ? undefined : wrapped(growth.direction - place.angle);
  const types = Object.values(plate.mounts).map(({ type }) => type);
  const follows = (value: unknown, ...where: string[]) => ({ value, path: where });
  const under = bar.from[2];
  return {
    name: `mount-${name.toLowerCase()}`,
    family: tramMount,
    path,
    blocks: [
      { values: plan.mount, path: ["mount"] },
      { values: mount.parameters, path: [...path, "parameters"] },
    ],
    firm: {
      type: { value: mount.type, path: [...path, "type"] },
      bar: follows(levelBar(bar), "bars", barName, "bar"),
      plate: follows(plate.thickness, "plate", "thickness"),
      plateTemperature: follows(plate.temperature, "plate", "temperature"),
      ambient: follows(plate.ambient, "plate", "ambient"),
      growthAngle: { value: angle, path: [...path, "at"] },
      allTypes: follows(allTypes(types), "plate", "mounts"),
      mountNumber: { value: numberOf(plan, name), path },
      count: { value: 1, path },
    },
    usual: {
      mount: { value: kind, path },
      share: follows(rounded(Math.max(1, plateShares(plan)[name] ?? 1), 2), "plate", "size"),
      growth: { value: rounded(Math.min(5, Math.abs(growth?.growth ?? 0)), 3), path: [...path, "at"] },
      reach: { value: place.room >= 8 ? rounded(place.room, 3) : undefined, path: [...path, "at"] },
      roomBelow: { value: rounded(Math.min(500, Math.max(0, under)), 1), path: ["bars", barName, "from"] },
      stock: { value: plan.stock.bolts?.filter((length) => length >= 6), path: ["stock", "bolts"] },
    },
  };
}

/** The types of all mounts, in an order that does not depend on the plan's; only where the family takes so many. */
function allTypes(types: readonly string[]): readonly string[] | undefined {
  const sorted = [...types].sort((one, other) => ORDER.indexOf(one) - ORDER.indexOf(other));
  return sorted.length >= 3 && sorted.length <= 6 ? sorted : undefined;
}

/** The fixed mount is 1, the others follow counter-clockwise round the plate, whatever they are called. */
function numberOf({ plate }: Plan, name: string): number {
  const angle = ({ at }: Mount) => Math.atan2(at[1] - plate.at[1], at[0] - plate.at[0]);
  const fixed = Object.values(plate.mounts).find(({ type }) => type === "fixed");
  const first = fixed === undefined ? 0 : angle(fixed);
  const turn = (mount: Mount) => (angle(mount) - first + 4 * Math.PI + 1e-9) % (2 * Math.PI);
  const order = Object.entries(plate.mounts).sort(([, one], [, other]) => turn(one) - turn(other));
  return order.findIndex(([each]) => each === name) + 1;
}

function offHole(name: string, place: MountPlace, { reach }: Derived, path: Path): Diagnostic[] {
  const short = reach - place.room;
  if (Math.abs(short) <= OFF_HOLE) return [];
  const [x, y] = [place.at.x + short * place.away.x, place.at.y + short * place.away.y];
  return told("mount-too-near-bar", path, {
    level: short > 0.5 ? "error" : "warning",
    says: `mount ${name} stands ${place.room.toFixed(2)} mm from its bar's face, and the bracket reaches ${reach.toFixed(1)} mm`,
    set: `at: [${rounded(x, 2)}, ${rounded(y, 2)}]`,
    found: place.room,
    limit: reach,
    unit: "mm",
  });
}
