import type { Diagnostic } from "../../core/diagnostic.ts";
import { driveSpeed } from "../../mechanics/drive-speed.ts";
import { screwColumn } from "../../mechanics/screw-column.ts";
import { screwFloat } from "../../mechanics/screw-float.ts";
import { SHAFT_ENDS, screwWhirl } from "../../mechanics/screw-whirl.ts";
import { above, below } from "../../parts/check.ts";
import type { Fact } from "../fact.ts";
import { atLeast, atMost, told, worked } from "../worked.ts";
import { footWord, type ScrewDrive } from "./screw-drives.ts";
import { STEEL } from "./screws.ts";
import type { SharedStage } from "./structure.ts";

/** Yield strength of a screw whose steel is not known, MPa. */
const YIELD = 300;
const COLUMN = { error: 2, warning: 4 };
/** Speed over whirling speed, and what a nut needs past it on the screw, mm. */
const WHIRL = { error: 1, warning: 0.8 };
const PAST_NUT = 10;
/** What the frame may warm or cool by, K; expansion of an aluminium frame. Source: design rule. */
const WARMING = 20;
const FRAME_EXPANSION = 23.4;

interface Ends {
  readonly facts: readonly Fact[];
  readonly lines: readonly string[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Returns how the screw's ends are held and what follows: column, whirl, float, reach of the nut. */
export function screwEnds(stage: SharedStage, own: ScrewDrive): Ends {
  const { plan, feet } = stage;
  const { name } = own;
  const foot = feet.find(({ screw }) => screw === name);
  const seat = (foot?.seatOverDatum ?? 0) + (foot?.shim ?? 0);
  const highest = plan.travel.nut + plan.travel.lift - seat;
  // The screw goes through its bearing: what stands below the seat is missing above the nut.
  const over = own.plan.length - Number(foot?.part.parameters.tipLength ?? 0);
  const thrust = footWord(plan, name, "thrust") ?? "pulley";
  const pushed = thrust !== "hung";
  const column = pushed ? columnOf(stage, own, highest) : { facts: [], diagnostics: [] };
  const whirl = whirlOf(stage, own, highest, over - (plan.travel.nut - seat));
  const inputs = { frame: FRAME_EXPANSION, screw: STEEL.expansion, length: own.plan.length, warming: WARMING };
  const play = worked(screwFloat, inputs, {
    play: [
      `screw.${name}.float`,
      `screw ${name}: play along it that its ${floating(own, pushed)} needs, frame ${WARMING} K warmer or colder`,
    ],
  });
  return {
    facts: [...column.facts, ...whirl.facts, ...play.facts],
    lines: [pushed ? `${name} is pushed: its thrust is carried at the foot` : `${name} hangs: it is in tension`],
    diagnostics: [
      ...held(own, pushed),
      ...column.diagnostics,
      ...whirl.diagnostics,
      ...tooShort(own, highest, own.plan.length - over),
    ],
  };
}

/** Returns which end must be able to slide: the one that does not carry the thrust. */
function floating({ plan: { top } }: ScrewDrive, pushed: boolean): string {
  if (!pushed) return "foot";
  return top === "free" ? "free upper end" : `${top} upper end`;
}

function held({ name, plan: { top } }: ScrewDrive, pushed: boolean): Diagnostic[] {
  const path = ["screws", name, "top"];
  if (pushed && top === "held") {
    return told("screw-held-rigid-at-both-ends", path, {
      level: "error",
      says: `both ends of ${name} carry thrust: its foot and its head`,
      set: "top: steadied, or thrust: hung in its foot",
    });
  }
  if (pushed || top === "held") return [];
  return told("screw-thrust-carried-nowhere", path, {
    level: "error",
    says: `the foot of ${name} only steadies it, and its head carries no thrust`,
    set: "top: held, or another thrust than hung in its foot",
  });
}

/** The stage at its highest: the longest part of the screw is pressed. */
function columnOf({ loads }: SharedStage, { name, screw }: ScrewDrive, length: number) {
  const load = loads?.worst[name] ?? 0;
  const crash = loads?.crash ?? 0;
  const rod = { modulus: STEEL.modulus, yield: YIELD, root: screw.rootDiameter };
  const column = worked(
    screwColumn,
    { ends: SHAFT_ENDS.pinned.column, ...rod, length },
    {
      critical: [
        `screw.${name}.column`,
        `screw ${name}: load at which it buckles, stage at the top`,
        atLeast(Math.max(COLUMN.warning * load, crash)),
      ],
    },
  );
  const critical = column.values?.critical;
  if (critical === undefined) return { facts: column.facts, diagnostics: [] };
  const folds = foldsAtStall(name, critical, crash, screw.rootDiameter);
  if (!(load > 0)) return { facts: column.facts, diagnostics: folds };
  const factor = critical / load;
  const fact: Fact = {
    key: `screw.${name}.column-factor`,
    label: `screw ${name}: buckling load over the largest load`,
    value: factor,
    unit: "",
    limit: atLeast(COLUMN.warning),
  };
  const finding = below({
    value: factor,
    unit: "",
    ...COLUMN,
    says: (limit) =>
      `${name} buckles at ${critical.toFixed(0)} N over ${length.toFixed(0)} mm and carries up to ${load.toFixed(1)} N: ${factor.toFixed(2)} times, under ${limit}`,
    set: `a root diameter of ${(screw.rootDiameter * (COLUMN.warning / factor) ** 0.25).toFixed(1)} mm or more, or hang the screw from its head`,
  });
  return {
    facts: [...column.facts, fact],
    diagnostics: [...told("screw-near-buckling", ["screws", name, "screw"], finding), ...folds],
  };
}

/** A stage that jams on its way up is pressed on until the motor stalls. */
function foldsAtStall(name: string, critical: number, crash: number, root: number): Diagnostic[] {
  const finding = below({
    value: critical,
    unit: "N",
    warning: crash,
    says: (limit) =>
      `the stalled motor pushes ${name} with up to ${limit.toFixed(0)} N; it buckles at ${critical.toFixed(0)} N`,
    set: `a root diameter of ${(Math.ceil(10 * root * (crash / critical) ** 0.25) / 10).toFixed(1)} mm or more, or torque: of a weaker motor`,
  });
  return told("screw-buckles-at-stall", ["screws", name, "screw"], finding);
}

/** The slower of the two parts beside the nut, each at its longest. */
function whirlOf({ plan }: SharedStage, own: ScrewDrive, under: number, over: number) {
  const { name, screw, pulley } = own;
  const rod = { root: screw.rootDiameter, modulus: STEEL.modulus, density: STEEL.density };
  const turning = { speed: plan.motor.speed, ratio: own.ratio, lead: screw.lead, lift: plan.travel.lift };
  const speed = worked(driveSpeed, { ...turning, screwTeeth: pulley.values.teeth, pitch: pulley.values.pitch }, {});
  const top = own.plan.top === "free" ? SHAFT_ENDS["fixed-free"].whirl : SHAFT_ENDS.pinned.whirl;
  const turns = speed.values?.screw ?? 0;
  const naming = (part: string) =>
    [
      `screw.${name}.whirl-${part}`,
      `screw ${name}: whirling speed of the part ${part} the nut`,
      atLeast(turns / WHIRL.warning),
    ] as const;
  const parts = [
    worked(screwWhirl, { ends: SHAFT_ENDS.pinned.whirl, length: under, ...rod }, { speed: naming("under") }),
    worked(screwWhirl, { ends: top, length: over, ...rod }, { speed: naming("over") }),
  ];
  const slowest = Math.min(...parts.map(({ values }) => values?.speed ?? Number.POSITIVE_INFINITY));
  const use = turns / slowest;
  const fact: Fact = {
    key: `screw.${name}.whirl-use`,
    label: `screw ${name}: its speed over the whirling speed`,
    value: use,
    unit: "",
    limit: atMost(WHIRL.warning),
  };
  const finding = above({
    value: use,
    unit: "",
    ...WHIRL,
    says: (limit) =>
      `${name} turns at ${turns.toFixed(0)} rpm and whirls at ${slowest.toFixed(0)} rpm: over ${(100 * limit).toFixed(0)} % of it`,
    set: `speed: ${(Math.floor((100 * WHIRL.warning * plan.motor.speed) / use) / 100).toFixed(2)} mm/s or less, or top: steadied`,
  });
  const facts = [...parts.flatMap((part) => part.facts), fact];
  return { facts, diagnostics: told("screw-near-whirl", ["motor", "speed"], finding) };
}

function tooShort({ name, plan: { length } }: ScrewDrive, highest: number, tip: number): Diagnostic[] {
  const wanted = tip + highest + PAST_NUT;
  const finding = below({
    value: length,
    unit: "mm",
    error: wanted,
    says: (limit) => `${name} is ${length} mm long, and with the stage at the top its nut needs ${limit.toFixed(0)} mm`,
    set: `length: ${Math.ceil(wanted)} mm or more, or a smaller lift`,
  });
  return told("nut-runs-off-screw", ["screws", name, "length"], finding);
}
