import { results } from "../../core/calculation.ts";
import type { Diagnostic, Path } from "../../core/diagnostic.ts";
import type { Unit } from "../../core/unit.ts";
import { pitchRadius, teethInMesh } from "../../mechanics/index.ts";
import { above, below } from "../../parts/check.ts";
import type { BeltNode } from "../machine.ts";
import type { Plan } from "../schema/index.ts";
import { type StageDefect, stageDefect } from "../stage-defects.ts";
import type { SolvedLoop } from "./solve.ts";

/** Teeth in mesh below which a pulley is wrong, and had better not be. belt makers' practice */
export const MESH = { error: 4, warning: 6 };
/** Larger pulleys than this are no way out. */
const MOST_TEETH = 120;
/** Angle over which a belt had better lie on an outside idler, deg. common practice */
const WRAP = { least: 5, most: 170 };
/** Room that a belt needs between the flanges of an idler, mm. common practice */
const SIDE_PLAY = 0.5;

type Finding = ReturnType<typeof below>;

/** Returns a finding as a defect of the machine; nothing when there is none. */
export function found(name: StageDefect, path: Path, unit: Unit, finding: Finding): Diagnostic[] {
  if (finding === undefined) return [];
  const { level, says, set, found: value, limit } = finding;
  const amounts =
    value === undefined || limit === undefined ? {} : { found: { value, unit }, limit: { value: limit, unit } };
  return [stageDefect(name, { level, path, says, set, ...amounts })];
}

/** Returns what is wrong with how a belt lies on its pulleys and what it carries. */
export function beltDefects(plan: Plan, solved: SolvedLoop): Diagnostic[] {
  return [
    ...solved.nodes.flatMap((node, index) => nodeDefects(plan, solved, node, solved.belt.wraps[index] as number)),
    ...overload(solved),
  ];
}

/** Where in the plan the hardware of a node is told. */
export function pathOf(plan: Plan, loop: string, { name, kind }: Pick<BeltNode, "name" | "kind">): Path {
  if (kind === "motor") {
    const at = plan.motor.pulleys.findIndex((pulley) => pulley.loop === loop);
    return ["motor", "pulleys", Math.max(0, at), "pulley"];
  }
  if (kind === "idler") return ["idlers", name];
  return "pulley" in (plan.screws[name]?.foot ?? {}) ? ["screws", name, "foot", "pulley"] : ["screws", name];
}

function nodeDefects(plan: Plan, { ordered }: SolvedLoop, node: BeltNode, wrap: number): Diagnostic[] {
  const path = pathOf(plan, ordered.name, node);
  const { belt, width } = ordered.plan;
  const { pitch, minTeeth, minBackIdler } = belt.values;
  const { name, kind, teeth, inside, runs = 0, groove } = node;
  const defects: Diagnostic[] = [];
  if (Math.abs(node.pitch - pitch) > 1e-6) {
    const says = `the pulley of ${name} has teeth ${node.pitch} mm apart, and the belt of ${ordered.name} ${pitch} mm`;
    const set = `a pulley of ${pitch} mm pitch, or a belt of ${node.pitch} mm`;
    defects.push(stageDefect("pulley-of-another-pitch", { level: "error", path, says, set }));
  }
  if (teeth !== undefined) defects.push(...meshDefects(plan, ordered.name, node, wrap));
  if (inside) {
    const says = () =>
      `the belt of ${ordered.name} bends round ${name} as on ${(bends(node, pitch)).toFixed(1)} teeth, and stands ${minTeeth}`;
    const limits = { error: minTeeth, warning: minTeeth * 1.1 };
    const set = `a pulley of ${Math.ceil(minTeeth * 1.1)} teeth or more`;
    defects.push(
      ...found("belt-bent-too-tight", path, "", below({ value: bends(node, pitch), unit: "", ...limits, says, set })),
    );
  } else {
    const says = () =>
      `${name} bends the belt of ${ordered.name} backwards round ${runs} mm, and it stands ${minBackIdler}`;
    const limits = { error: minBackIdler, warning: minBackIdler * 1.1 };
    const set = `an idler that the belt runs on at ${(minBackIdler * 1.1).toFixed(1)} mm or more`;
    defects.push(...found("belt-bent-too-tight", path, "mm", below({ value: runs, unit: "mm", ...limits, says, set })));
  }
  return kind === "idler" ? [...defects, ...idlerDefects(ordered.name, node, wrap, groove - width)] : defects;
}

/** Teeth of the pulley that bends the belt as this inside node does. */
export function bends({ radius, teeth }: BeltNode, pitch: number): number {
  return teeth ?? (radius / results(pitchRadius, { teeth: 10, pitch }).radius) * 10;
}

/** Returns the teeth of a node that the belt lies on; undefined for a smooth one. */
export function meshOf({ teeth }: BeltNode, wrap: number): number | undefined {
  return teeth === undefined ? undefined : results(teethInMesh, { teeth, wrap }).mesh;
}

function meshDefects(plan: Plan, loop: string, node: BeltNode, wrap: number): Diagnostic[] {
  const { name, kind } = node;
  const mesh = meshOf(node, wrap) ?? 0;
  const says = () => `the belt of ${loop} lies on ${mesh.toFixed(2)} teeth of ${name}`;
  const needed = Math.ceil((MESH.warning * 360) / wrap);
  const idler = `an outside idler beside ${name} that makes more wrap`;
  const set = needed <= MOST_TEETH ? `${idler}, or a pulley of ${needed} teeth or more` : idler;
  const path = pathOf(plan, loop, node);
  if (kind !== "idler") {
    return found("too-few-teeth-in-mesh", path, "", below({ value: mesh, unit: "", ...MESH, says, set }));
  }
  const gentle = below({
    value: mesh,
    unit: "",
    warning: MESH.warning,
    says,
    set: "a smooth idler outside, on the belt's back",
  });
  return found("toothed-idler-barely-meshes", path, "", gentle);
}

function idlerDefects(loop: string, { name, teeth, inside }: BeltNode, wrap: number, play: number): Diagnostic[] {
  const path = ["idlers", name];
  const defects: Diagnostic[] = [];
  if (inside && teeth === undefined) {
    const says = `${name} is smooth and runs on the toothed side of the belt of ${loop}`;
    const set = `idler: one with teeth, or side: outside`;
    defects.push(stageDefect("smooth-idler-on-teeth", { level: "warning", path: [...path, "idler"], says, set }));
  }
  const says = () => `the belt of ${loop} lies on ${name} over ${wrap.toFixed(1)} deg`;
  const set = `at: of ${name} so that it wraps over ${WRAP.least} to ${WRAP.most} deg`;
  const least = inside ? undefined : below({ value: wrap, unit: "deg", warning: WRAP.least, says, set });
  const most = inside ? undefined : above({ value: wrap, unit: "deg", warning: WRAP.most, says, set });
  const pinch = below({
    value: play,
    unit: "mm",
    error: SIDE_PLAY,
    says: () => `${name} leaves the belt of ${loop} ${play.toFixed(2)} mm between its flanges`,
    set: `idler: one with ${SIDE_PLAY} mm more room than the belt is wide, or runWidth: as measured`,
  });
  return [
    ...defects,
    ...found("idler-wrap-out-of-range", [...path, "at"], "deg", least ?? most),
    ...found("idler-flanges-pinch-belt", [...path, "idler"], "mm", pinch),
  ];
}

/** What a belt of a width may be tightened to for good, N. */
export function workingLimit({ belt, width }: SolvedLoop["ordered"]["plan"]): number {
  return belt.values.workTension * width;
}

function overload({ ordered }: SolvedLoop): Diagnostic[] {
  const { name, plan } = ordered;
  const most = workingLimit(plan);
  const says = () =>
    `the spans of ${name} are tightened to ${plan.tension} N, and ${plan.width} mm of this belt may work at ${most.toFixed(1)} N`;
  const set = `tension: ${(Math.floor(most * 0.8 * 10) / 10).toFixed(1)} N or less, or a wider belt`;
  const limits = { error: most, warning: most * 0.8 };
  return found(
    "belt-overloaded",
    ["loops", name, "tension"],
    "N",
    above({ value: plan.tension, unit: "N", ...limits, says, set }),
  );
}
