import { GRAVITY } from "../../mechanics/centre-of-mass.ts";
import { LEAN } from "../../stage/cargo/cases.ts";
import type { Fact, Stage } from "../../stage/index.ts";
import { grid } from "./grid.ts";
import { hanging } from "./hanging.ts";
import { shown } from "./shown.ts";

/**
 * Returns how a number of the machine comes about that no one formula gives, in words and numbers: a sum, the largest
 * of several cases, a quotient of two numbers of the report. Undefined for one that was placed or counted.
 */
export function factAccount(stage: Stage, fact: Fact): string[] | undefined {
  const { key } = fact;
  if (key === "stage.weight") return weight(stage, fact);
  if (key === "motor.margin") return margin(stage, fact);
  const [, screw, which] = /^screw\.(.+)\.(share|worst|least)$/.exec(key) ?? [];
  return screw === undefined ? undefined : load(stage, screw, which ?? "");
}

const factsOf = ({ sections }: Stage) => sections.flatMap(({ facts }) => facts);

function weight(stage: Stage, { value }: Fact): string[] | undefined {
  const masses = factsOf(stage).filter(({ key }) => key.startsWith("mass."));
  if (masses.length === 0) return undefined;
  const total = masses.reduce((sum, one) => sum + one.value, 0);
  return [
    `  weight = g x (sum of the masses) = ${GRAVITY} m/s2 x ${shown(total, "kg")} kg = ${shown(value, "N")} N`,
    "",
    ...grid(
      ["with", ">value", "unit", "name"],
      masses.map((one) => [one.label, shown(one.value, "kg"), "kg", one.key]),
    ),
  ];
}

function margin({ plan, sections }: Stage, { value }: Fact): string[] | undefined {
  const lift = sections.flatMap(({ facts }) => facts).find(({ key }) => key === "motor.lift")?.value;
  if (lift === undefined) return undefined;
  const has = plan.motor.torque ?? plan.motor.motor.values.torqueSmall;
  const from = plan.motor.torque === undefined ? "the weakest motor of this size that is sold" : "motor.torque";
  return [
    "  margin = torque that the motor has / torque to lift the fullest stage",
    `    = ${shown(has, "N·m")} / ${shown(lift, "N·m")}`,
    `    = ${shown(value, "")}`,
    "",
    ...grid(
      ["with", ">value", "unit", "name"],
      [
        [`the motor has, ${from}`, shown(has, "N·m"), "N·m", ""],
        ["to lift the stage with its heaviest print", shown(lift, "N·m"), "N·m", "motor.lift"],
      ],
    ),
  ];
}

const WHICH: Readonly<Record<string, string>> = {
  share: "the load of the empty stage",
  worst: "the largest load of all cases",
  least: "the least load of all cases",
};

function load({ plan, loads }: Stage, screw: string, which: string): string[] | undefined {
  if (loads === undefined) return undefined;
  const four = Object.keys(plan.screws).length > 3;
  const twist =
    "a twist moves load between four screws: least and most are the cases in which only three of them carry";
  return [
    ...hanging("  ", `${WHICH[which]}; a print is ${plan.print} kg, a hand leans with ${LEAN} N`),
    ...(four ? hanging("  ", twist) : []),
    "",
    ...grid(
      ["case", ">least N", ">most N"],
      loads.cases.map(({ name, least, shares }) => [name, newtons(least[screw]), newtons(shares[screw])]),
    ),
  ];
}

/** What rounds to nought is nought, whatever its sign. */
const newtons = (force = 0) => (Math.round(10 * force) / 10 + 0).toFixed(1);
