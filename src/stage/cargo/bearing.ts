import { bearingAxialLimit } from "../../mechanics/bearing-axial-limit.ts";
import { bearingHours } from "../../mechanics/bearing-hours.ts";
import { bearingLife } from "../../mechanics/bearing-life.ts";
import { bearingStaticLoad } from "../../mechanics/bearing-static-load.ts";
import { crashFactor } from "../../mechanics/crash-factor.ts";
import { cupPointHold } from "../../mechanics/cup-point-hold.ts";
import { driveSpeed } from "../../mechanics/drive-speed.ts";
import { CREST_SHARE, setScrewHold } from "../../mechanics/set-screw-hold.ts";
import { shaftPull } from "../../mechanics/shaft-pull.ts";
import type { Fact } from "../fact.ts";
import { atLeast, worked } from "../worked.ts";
import { footWord, type ScrewDrive } from "./screw-drives.ts";
import type { SharedStage } from "./structure.ts";
import { unjudged } from "./unjudged.ts";

/** A bearing up to this bore counts as small; a catalogue limits it to a quarter of C0 along the axis. mm */
const SMALL_BORE = 12;

/**
 * Returns the numbers of a foot's bearing and of the pulley's set screws. The family of feet judges them; where no foot
 * could be stacked, they are judged here.
 */
export function bearing(stage: SharedStage, own: ScrewDrive) {
  const facts = bearingFacts(stage, own);
  const hasFoot = stage.feet.some(({ screw }) => screw === own.name);
  return { facts, diagnostics: hasFoot ? [] : unjudged(own.name, facts) };
}

function bearingFacts(stage: SharedStage, own: ScrewDrive): readonly Fact[] {
  const { plan, loads } = stage;
  const { name } = own;
  const axial = loads?.worst[name] ?? 0;
  const item = footWord(plan, name, "bearing");
  if (item === undefined || !(axial > 0)) return [];
  const { bore, dynamicRating, staticRating } = item.values;
  const pull = pullOf(stage, own);
  const thrust = footWord(plan, name, "thrust") ?? "pulley";
  // A screw that hangs, or stands on its tip, puts nothing on its bearing along the axis.
  if (thrust === "hung" || thrust === "tip") return pull.facts;
  const radial = pull.values?.pull ?? 0;
  const key = `screw.${name}`;
  const limit = worked(
    bearingAxialLimit,
    { rating: staticRating, small: bore <= SMALL_BORE ? 1 : 0 },
    {
      limit: [`${key}.axial-limit`, `screw ${name}: largest load along the axis of a ${item.key}`, atLeast(axial)],
    },
  );
  const still = worked(
    bearingStaticLoad,
    { radial, axial, rating: staticRating },
    {
      safety: [`${key}.bearing-safety`, `screw ${name}: static safety of its ${item.key}`, atLeast(2)],
    },
  );
  const life = worked(
    bearingLife,
    { dynamic: dynamicRating, static: staticRating, radial, axial },
    {
      life: [`${key}.bearing-life`, `screw ${name}: rated life of its ${item.key}`],
    },
  );
  const hours = worked(
    bearingHours,
    { life: life.values?.life ?? 0, speed: speedOf(stage, own) },
    {
      hours: [`${key}.bearing-hours`, `screw ${name}: that life at the lifting speed`],
    },
  );
  return [
    ...pull.facts,
    ...limit.facts,
    ...still.facts,
    ...life.facts,
    ...hours.facts,
    ...setScrews(stage, own, axial),
  ];
}

function pullOf({ plan, loops }: SharedStage, { name, loop }: ScrewDrive) {
  const chosen = loops.find((each) => each.loop === loop);
  const index = chosen?.nodes.findIndex((node) => node.name === name) ?? -1;
  const wrap = chosen?.belt.wraps[index];
  const tension = plan.loops[loop]?.tension ?? 0;
  // Without a sound loop the belt is taken to go half round, which pulls most.
  return worked(
    shaftPull,
    { tension, wrap: wrap ?? 180 },
    {
      pull: [`screw.${name}.belt-pull`, `screw ${name}: pull of the belt at rest`],
    },
  );
}

function speedOf({ plan }: SharedStage, { ratio, screw, pulley }: ScrewDrive): number {
  const inputs = { speed: plan.motor.speed, ratio, lead: screw.lead, lift: plan.travel.lift };
  const turning = { ...inputs, screwTeeth: pulley.values.teeth, pitch: pulley.values.pitch };
  return worked(driveSpeed, turning, {}).values?.screw ?? 0;
}

/** Only where the weight hangs on the pulley. */
function setScrews({ plan, loads }: SharedStage, { name, pulley }: ScrewDrive, load: number): readonly Fact[] {
  if ((footWord(plan, name, "thrust") ?? "pulley") !== "pulley") return [];
  const { setScrew, setScrewCount } = pulley.values;
  const one = worked(cupPointHold, { diameter: Number(setScrew.replace(/^M/, "")) }, {});
  const inputs = { count: setScrewCount, each: one.values?.hold ?? 0, share: CREST_SHARE, load };
  const hold = worked(setScrewHold, inputs, {
    factor: [`screw.${name}.set-screws`, `screw ${name}: hold of the pulley's set screws over the load`, atLeast(3)],
  });
  const crash = worked(
    crashFactor,
    { hold: hold.values?.hold ?? 0, load, crash: loads?.crash ?? 0 },
    {
      factor: [
        `screw.${name}.set-screws-crash`,
        `screw ${name}: the same when the motor stalls; below 1 the pulley slips`,
        atLeast(1),
      ],
    },
  );
  return [...hold.facts, ...crash.facts];
}
