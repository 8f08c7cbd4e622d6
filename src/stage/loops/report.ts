import { isRefusal } from "../../core/calculation.ts";
import { brief } from "../../mechanics/bounded.ts";
import { beltPull, pluckFrequency, requiredSlide, shaftPull, teethInMesh } from "../../mechanics/index.ts";
import { type Fact, factFrom, type Section } from "../fact.ts";
import type { BeltGap, BeltNode } from "../machine.ts";
import type { Plan } from "../schema/index.ts";
import { beltInputs } from "../searches.ts";
import { bends, MESH, workingLimit } from "./checks.ts";
import { loopLines } from "./lines.ts";
import type { SolvedLoop } from "./solve.ts";
import { spanName } from "./strips.ts";

/** Returns what the report says of a loop: every number with what it follows from. */
export function loopSection(plan: Plan, solved: SolvedLoop, gaps: readonly BeltGap[]): Section {
  const facts = [
    ...lengthFacts(solved),
    ...roomFacts(solved),
    ...solved.belt.spans.flatMap((_, at) => spanFacts(solved, at)),
    ...solved.nodes.flatMap((node, at) => nodeFacts(solved, node, at)),
    ...loadFacts(plan, solved),
    ...gapFacts(solved.ordered.name, gaps),
  ];
  return { title: `Loop ${solved.ordered.name}`, facts, lines: loopLines(plan, solved) };
}

/** A result of a calculation, or nothing where it refuses. */
function known<Input extends string, Result extends string>(...[of, inputs, result, words]: FactGivens<Input, Result>) {
  const fact = factFrom(of, inputs, result, words);
  return isRefusal(fact) ? [] : [fact];
}

type FactGivens<Input extends string, Result extends string> = Parameters<typeof factFrom<Input, Result>>;

const fromBelt = (nodes: readonly BeltNode[], result: string) => ({
  from: { calculation: "belt-loop", result, inputs: beltInputs(nodes) },
});

function lengthFacts({ ordered, nodes, slide, chosen }: SolvedLoop): Fact[] {
  const { name, nominal } = ordered;
  const length = { value: nominal.length, unit: "mm", ...fromBelt(ordered.nodes, "length") } as const;
  const facts: Fact[] = [{ key: `loop.${name}.nominal`, label: "way round, as placed in the plan", ...length }];
  if (chosen === undefined) return facts;
  const { loop } = chosen;
  facts.push({ key: `loop.${name}.length`, label: `loop to buy, ${loop.teeth} teeth`, value: loop.length, unit: "mm" });
  facts.push({ key: `loop.${name}.teeth`, label: "its teeth", value: loop.teeth, unit: "" });
  if (slide === undefined || isRefusal(loop.position)) return facts;
  const { at, sensitivity } = loop.position;
  // The slide counts from the node's place in the plan; another loop may have moved the motor before.
  const start = nodes.map(
    (node) => ordered.nodes.find(({ name }) => name === slide.node && name === node.name) ?? node,
  );
  const which = start.findIndex(({ name }) => name === slide.node) + 1;
  const { direction, from: low, to } = slide;
  const inputs = { ...beltInputs(start), n_slide: which, direction, from: low, to, L: loop.length };
  const from = (result: string) => ({ from: { calculation: "slide-for-length", result, inputs } });
  const label = `${slide.node} on its slide, from its place in the plan`;
  facts.push({ key: `loop.${name}.slide`, label, value: at, unit: "mm", ...from("at") });
  const change = "change of the loop for a millimetre of slide";
  facts.push({ key: `loop.${name}.sensitivity`, label: change, value: sensitivity, unit: "", ...from("sensitivity") });
  return facts;
}

/** What is left on the slide, each way, held against what is needed. */
function roomFacts({ ordered, chosen }: SolvedLoop): Fact[] {
  const room = chosen?.room;
  if (room === undefined) return [];
  const key = `loop.${ordered.name}`;
  const least = (value: number) => ({ kind: "at least", value }) as const;
  const needs = (["inward", "outward"] as const).flatMap((way) =>
    known(requiredSlide, room.inputs, way, {
      key: `${key}.${way}`,
      label: `slide needed to ${way === "inward" ? "slacken" : "tighten"} it`,
    }),
  );
  return [
    ...needs,
    {
      key: `${key}.leftInward`,
      label: "slide left to slacken it",
      value: room.hasInward,
      unit: "mm",
      limit: least(room.inward),
    },
    {
      key: `${key}.leftOutward`,
      label: "slide left to tighten it",
      value: room.hasOutward,
      unit: "mm",
      limit: least(room.outward),
    },
  ];
}

function spanFacts({ ordered, nodes, belt }: SolvedLoop, at: number): Fact[] {
  const span = belt.spans[at] as (typeof belt.spans)[number];
  const { tension, width, belt: kind } = ordered.plan;
  const between = spanName({ nodes }, at);
  const key = `loop.${ordered.name}.span.${between.replaceAll(" ", "-")}`;
  const mass = kind.values.massPerMetrePerMm * width;
  const note = known(pluckFrequency, { tension, mass, span: span.length }, "frequency", {
    key: `${key}.pluck`,
    label: `note of the span ${between} at ${brief(tension)} N`,
  });
  return [
    { key, label: `span ${between}`, value: span.length, unit: "mm", ...fromBelt(nodes, `span ${between}`) },
    {
      key: `${key}.direction`,
      label: `its direction`,
      value: span.direction,
      unit: "deg",
      ...fromBelt(nodes, `direction ${between}`),
    },
    ...note,
  ];
}

function nodeFacts({ ordered, nodes, belt }: SolvedLoop, node: BeltNode, at: number): Fact[] {
  const { name, teeth, kind } = node;
  const wrap = belt.wraps[at] as number;
  const key = `loop.${ordered.name}.node.${name}`;
  const facts: Fact[] = [
    { key: `${key}.wrap`, label: `wrap on ${name}`, value: wrap, unit: "deg", ...fromBelt(nodes, `wrap ${name}`) },
  ];
  const pull = known(shaftPull, { tension: ordered.plan.tension, wrap }, "pull", {
    key: `${key}.pull`,
    label: `pull of the belt on ${name}`,
  });
  facts.push(...pull);
  if (teeth !== undefined) {
    const limit = { value: kind === "idler" ? MESH.warning : MESH.error, kind: "at least" } as const;
    const meshed = known(teethInMesh, { teeth, wrap }, "mesh", {
      key: `${key}.mesh`,
      label: `teeth in mesh on ${name}`,
      limit,
    });
    const rated = known(teethInMesh, { teeth, wrap }, "rating", {
      key: `${key}.rating`,
      label: `share of the tooth rating left on ${name}`,
    });
    facts.push(...meshed, ...rated);
  }
  return [...facts, ...bendFact(ordered.plan, node, key)];
}

function bendFact({ belt }: SolvedLoop["ordered"]["plan"], node: BeltNode, key: string): Fact[] {
  const { pitch, minTeeth, minBackIdler } = belt.values;
  const limit = (value: number) => ({ limit: { value, kind: "at least" } }) as const;
  if (node.inside) {
    const label = `teeth of the pulley that bends the belt as ${node.name} does`;
    return [{ key: `${key}.bend`, label, value: bends(node, pitch), unit: "", ...limit(minTeeth) }];
  }
  const label = `diameter round which ${node.name} bends the belt backwards`;
  return [{ key: `${key}.bend`, label, value: node.runs ?? 0, unit: "mm", ...limit(minBackIdler) }];
}

function loadFacts(plan: Plan, { ordered, nodes }: SolvedLoop): Fact[] {
  const { name, plan: loop } = ordered;
  const limit = { value: workingLimit(loop), kind: "at most" } as const;
  const facts: Fact[] = [
    { key: `loop.${name}.tension`, label: "tension of each span, installed", value: loop.tension, unit: "N", limit },
  ];
  const motor = nodes.find(({ kind }) => kind === "motor");
  if (plan.motor.torque === undefined || motor?.teeth === undefined) return facts;
  const inputs = { torque: plan.motor.torque, teeth: motor.teeth, pitch: loop.belt.values.pitch };
  const label = "difference of its spans at the motor with all the torque that the motor has";
  const pull = known(beltPull, inputs, "pull", { key: `loop.${name}.motorPull`, label });
  return [...facts, ...pull];
}

const AIR = {
  "belts-too-close": "height between",
  "belt-too-near-foreign-flange": "air between",
  "belt-too-near-upright": "air between",
  "belt-too-near-bar": "air between",
  "spans-of-loop-too-close": "air between",
  "pulley-bodies-collide": "air between",
} as const;

/** The narrowest gap of each kind. */
function gapFacts(name: string, gaps: readonly BeltGap[]): Fact[] {
  return Object.keys(AIR).flatMap((defect) => {
    const [gap] = gaps.filter((one) => one.defect === defect);
    if (gap === undefined) return [];
    const label = `${AIR[gap.defect]} ${gap.between.join(" and ")}`;
    const limit = { value: gap.error, kind: "at least" } as const;
    const from = gap.from === undefined ? {} : { from: gap.from };
    return [{ key: `loop.${name}.gap.${defect}`, label, value: gap.gap, unit: "mm", limit, ...from }];
  });
}
