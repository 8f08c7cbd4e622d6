import { METALS } from "../../catalogue/metals.ts";
import type { Diagnostic } from "../../core/diagnostic.ts";
import { row } from "../../core/table.ts";
import { type Locking, NUT_FRICTION, screwLocking } from "../../mechanics/screw-locking.ts";
import { screwTorque } from "../../mechanics/screw-torque.ts";
import type { Fact, Topic } from "../fact.ts";
import { told, worked } from "../worked.ts";
import { bearing } from "./bearing.ts";
import { FLANK } from "./crash.ts";
import type { ScrewDrive } from "./screw-drives.ts";
import { screwEnds } from "./screw-ends.ts";
import type { SharedStage } from "./structure.ts";

export const STEEL = row(METALS, "steel").values;
/** Vibration asks for this much more friction than standing still. common practice */
const VIBRATION = 1.3;

/** Returns torque, locking, column, whirl, bearing and set screws of each screw. */
export function screws(stage: SharedStage): Topic {
  const each = stage.drives.map((own) => {
    const thread = torqueOf(stage, own);
    const ends = screwEnds(stage, own);
    const held = bearing(stage, own);
    const facts = [...thread.facts, ...ends.facts, ...held.facts];
    const section = { title: `Screw ${own.name}`, facts, lines: [...thread.lines, ...ends.lines] };
    return { section, diagnostics: [...thread.diagnostics, ...ends.diagnostics, ...held.diagnostics] };
  });
  return {
    sections: each.map(({ section }) => section),
    diagnostics: each.flatMap(({ diagnostics }) => diagnostics),
  };
}

interface Found {
  readonly facts: readonly Fact[];
  readonly lines: readonly string[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Torque of the most loaded case, over the friction that the nut may have. */
function torqueOf({ loads }: SharedStage, { name, screw, plan }: ScrewDrive): Found {
  const load = loads?.worst[name] ?? 0;
  const [low, high] = NUT_FRICTION[plan.nut];
  const inputs = { load, pitchDiameter: screw.pitchDiameter, lead: screw.lead, flank: FLANK };
  const key = `screw.${name}`;
  const slippery = worked(
    screwTorque,
    { ...inputs, friction: low },
    {
      lower: [`${key}.lower`, `screw ${name}: torque to lower at a friction of ${low}; negative runs down`],
      critical: [
        `${key}.critical`,
        `screw ${name}: friction below which it runs down`,
        { value: low / VIBRATION, kind: "at most" },
      ],
      efficiency: [`${key}.efficiency`, `screw ${name}: efficiency at a friction of ${low}`],
    },
  );
  const sticky = worked(
    screwTorque,
    { ...inputs, friction: high },
    {
      raise: [`${key}.raise`, `screw ${name}: torque to raise at a friction of ${high}`],
    },
  );
  const facts = [...sticky.facts, ...slippery.facts];
  const refusal = sticky.refusal ?? slippery.refusal;
  if (refusal?.defect !== undefined && load > 0) {
    return { facts, lines: [], diagnostics: [{ ...refusal.defect, path: ["screws", name, "screw"] }] };
  }
  const critical = slippery.values?.critical;
  const verdict = critical === undefined ? undefined : screwLocking(critical, low, high);
  if (critical === undefined || typeof verdict !== "string") return { facts, lines: [], diagnostics: [] };
  const lines = [`${name} ${verdict} without power: ${plan.nut}, friction ${low} to ${high}`];
  return { facts, lines, diagnostics: runsDown(name, verdict, critical, low, screw.pitchDiameter) };
}

function runsDown(name: string, verdict: Locking, critical: number, low: number, diameter: number): Diagnostic[] {
  if (verdict === "locks") return [];
  const lead = (low / VIBRATION) * Math.PI * diameter * (1 / Math.cos((FLANK * Math.PI) / 180));
  return told("stage-runs-down-unpowered", ["screws", name, "screw"], {
    level: "warning",
    says: `${name} ${verdict}: it holds from a friction of ${critical.toFixed(3)} on, and ${(VIBRATION * critical).toFixed(3)} with vibration; its nut has ${low} at least`,
    set: `a screw with a lead of at most ${(Math.floor(100 * lead) / 100).toFixed(2)} mm, a brake on the motor, or a prop under the stage`,
    found: low,
    limit: VIBRATION * critical,
    unit: "",
  });
}
