import { carriageTipDrop } from "../../mechanics/carriage-tip-drop.ts";
import { distance } from "../../mechanics/point.ts";
import { rowForce } from "../../mechanics/row-force.ts";
import type { Fact } from "../fact.ts";
import type { Plan } from "../schema/index.ts";
import { worked } from "../worked.ts";
import { mountsOf } from "./mount-shares.ts";
import type { SharedStage } from "./structure.ts";
import { numberOf } from "./tram-mounts.ts";
import { wheelLoads } from "./wheel-load.ts";
import { type Carriage, carriagesOf } from "./wheels.ts";

/** Stiffness of a polymer wheel pressed on a bar, N/mm. From memory, and coarse. */
const WHEEL_STIFFNESS = 300;

/** Returns how far the farthest mount drops because wheels and carriage plates give, from empty to full, mm. */
export function wheelGive(stage: SharedStage): { readonly facts: readonly Fact[]; readonly drop: number } {
  const carriages = carriagesOf(stage);
  const moment = momentChange(stage.plan) / Math.max(1, Object.keys(stage.plan.carriages).length);
  if (!(moment > 1e-6)) return { facts: [], drop: 0 };
  const each = carriages.map((carriage) => giveOf(stage.plan, carriage, moment));
  return { facts: each.flatMap(({ facts }) => facts), drop: Math.max(0, ...each.map(({ drop }) => drop)) };
}

/** How much more moment the wheels hold with the print, wherever it stands, than empty. N·mm */
function momentChange(plan: Plan): number {
  const [empty, ...others] = wheelLoads(plan).filter(({ name }) => !name.startsWith("hand"));
  if (empty === undefined) return 0;
  const changes = others.map(({ weight, lever }) => {
    const x = weight * lever.x - empty.weight * empty.lever.x;
    return Math.hypot(x, weight * lever.y - empty.weight * empty.lever.y);
  });
  return Math.max(0, ...changes);
}

function giveOf(plan: Plan, { name, part, design, given }: Carriage, moment: number) {
  const spacing = given.rowSpacing;
  const squares = Math.max(numberOf(design, "squares"), spacing ** 2 / 4);
  const faces = Math.max(1, numberOf(design, "faces"));
  const row = worked(
    rowForce,
    { moment, outermost: spacing / 2, squares, faces },
    {
      force: [`carriage.${name}.row-change`, `carriage ${name}: force of the print on its outermost row`],
    },
  );
  const force = row.values?.force ?? 0;
  // Both wheels of a row are pressed on and give together.
  const give = force / (2 * WHEEL_STIFFNESS);
  const [x, y] = part.placement.origin;
  const length = Math.max(1, ...mountsOf(plan).map((mount) => distance(mount, { x, y })));
  const wheels = worked(
    carriageTipDrop,
    { upper: give, lower: give, spacing, length },
    {
      drop: [`carriage.${name}.wheel-drop`, `carriage ${name}: drop of the farthest mount, wheels giving`],
      turn: [`carriage.${name}.turn`, `carriage ${name}: its turn`],
    },
  );
  const joint = jointDrop(design, force, length);
  const fact: Fact = {
    key: `carriage.${name}.joint-drop`,
    label: `carriage ${name}: the same, its plate bending`,
    value: joint,
    unit: "mm",
  };
  return { facts: [...row.facts, ...wheels.facts, fact], drop: (wheels.values?.drop ?? 0) + joint };
}

/** The plate's bend under its own largest row force, by its family, in proportion to this force. */
function jointDrop(design: Carriage["design"], force: number, length: number): number {
  const [row, bend, arm] = [numberOf(design, "rowAxial"), numberOf(design, "bend"), numberOf(design, "bendLength")];
  return row > 0 && arm > 0 ? ((bend / arm) * length * force) / row : 0;
}
