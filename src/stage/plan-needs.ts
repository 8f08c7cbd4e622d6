import { STOCK_LENGTHS } from "../catalogue/bolt-lengths.ts";
import { plainWasherName } from "../catalogue/washer-name.ts";
import { isRefusal } from "../core/calculation.ts";
import { tidy } from "../core/rounding.ts";
import { motorBoltWindow } from "../mechanics/motor-bolt-window.ts";
import { leadNut } from "./lead-nut.ts";
import type { Stage } from "./machine.ts";
import type { Plan } from "./schema/index.ts";

/** What a place of the machine needs, and how many. */
export interface Need {
  readonly item: string;
  readonly count: number;
  readonly usedBy: readonly string[];
  readonly note?: string;
}

/** Screws that hold a motor's face, and the washer under each, mm. common practice */
const MOTOR_SCREWS = 4;
const WASHER = 0.5;

/** Returns what a machine needs beside bars, screws, belts and printed parts, as far as the plan determines it. */
export function planNeeds(stage: Stage): Need[] {
  const { plan } = stage;
  return [...nutNeeds(plan), ...topNeeds(plan), ...motorScrews(plan), ...axleNeeds(stage), ...plateNeeds(plan)];
}

function nutNeeds(plan: Plan): Need[] {
  return Object.entries(plan.screws).map(([name, screw]) => {
    const { flange } = leadNut(screw, plan.travel.nut);
    const hand = screw.hand === "left" ? ", left-hand" : "";
    const material = screw.nut === "plastic" ? "plastic" : "brass";
    const note = `of the screw's lead${flange > 0 ? `; its flange is taken to be ${flange} mm across: measure` : ""}`;
    return { item: `lead nut ${screw.screw.key}${hand}, ${material}`, count: 1, usedBy: [`screw ${name}`], note };
  });
}

function topNeeds({ screws }: Plan): Need[] {
  return Object.entries(screws).flatMap(([name, { top, screw }]) => {
    if (top === "free") return [];
    const kind = top === "held" ? "bearing that carries thrust" : "bearing";
    const item = `${kind}, upper end of a screw, bore ${tidy(screw.values.diameter)}`;
    return [{ item, count: 1, usedBy: [`screw ${name}`], note: "its size and holder are not in the plan" }];
  });
}

/** The longest screw that is sold and does not meet the bottom of the thread. */
function motorScrews({ motor }: Plan): Need[] {
  const { screw, holeDepth } = motor.motor.values;
  const window = motorBoltWindow.compute({ grip: motor.plate + WASHER, depth: holeDepth });
  const sold = STOCK_LENGTHS[screw]?.lengths ?? [];
  const fits = isRefusal(window) ? [] : sold.filter((each) => each >= window.shortest && each <= window.longest);
  const length = fits.at(-1);
  const plate = `through a plate of ${tidy(motor.plate)} mm`;
  const note = length === undefined ? `${plate}: length not known, measure the thread in the motor` : plate;
  const item = length === undefined ? `${screw} cap screw, length as measured` : `${screw} x ${length} cap screw`;
  return [
    { item, count: MOTOR_SCREWS, usedBy: ["motor"], note },
    { item: plainWasherName(screw), count: MOTOR_SCREWS, usedBy: ["motor"] },
  ];
}

/** What lies under an idler is not in the plan, so its bolt is as long as that and the axle above it. */
function axleNeeds({ plan, sections }: Stage): Need[] {
  const facts = sections.flatMap((section) => section.facts);
  return Object.entries(plan.idlers).flatMap(([name, { idler }]) => {
    const thread = `M${tidy(idler.values.bore)}`;
    const usedBy = [`idler ${name}`];
    const above = facts.find(({ key }) => key === `idler.${name}.axle`)?.value;
    const length = above === undefined ? "" : `${above.toFixed(1)} mm above the idler's lower end, and `;
    const note = `length: ${length}what it stands on, which is not in the plan`;
    return [
      { item: `${thread} bolt, axle of an idler`, count: 1, usedBy, note },
      { item: `${thread} nut`, count: 1, usedBy },
      { item: plainWasherName(thread), count: 1, usedBy },
    ];
  });
}

function plateNeeds({ plate }: Plan): Need[] {
  const { size, thickness, metal, heater } = plate;
  const sizes = (of: readonly number[]) => of.map((each) => tidy(each)).join(" x ");
  const sheet = { item: `plate, ${metal.key}, ${sizes([...size, thickness])}`, count: 1, usedBy: ["plate"] };
  if (heater === undefined) return [sheet];
  const item = `heater, ${sizes(heater.size)}, ${tidy(heater.power)} W, ${tidy(heater.volts)} V`;
  const note = "with a thermal cut-out of its own, in its own circuit";
  return [sheet, { item, count: 1, usedBy: ["plate"], note }];
}

/** Something that has to be bought or made, and that the plan does not say enough of. */
export interface NotInPlan {
  readonly what: string;
  readonly usedBy: readonly string[];
  readonly note: string;
}

/** Returns what the buyer has to work out: the plan does not determine it. */
export function notInPlan({ plan }: Stage): NotInPlan[] {
  const names = Object.keys(plan.bars);
  const screws = Object.keys(plan.screws).map((name) => `screw ${name}`);
  const idlers = Object.keys(plan.idlers).map((name) => `idler ${name}`);
  const held = Object.entries(plan.screws).flatMap(([name, { top }]) => (top === "free" ? [] : [`screw ${name}`]));
  const all: NotInPlan[] = [
    {
      what: "joints of the bars",
      usedBy: names,
      note: "brackets with bolts and slot nuts, at least one at each joint",
    },
    { what: "motor plate", usedBy: ["motor"], note: `${tidy(plan.motor.plate)} mm thick, with its bolts to the frame` },
    {
      what: "joints of the nuts to the stage",
      usedBy: screws,
      note: "plate or angle with screws; see Nuts in the report",
    },
    { what: "holders of the upper bearings", usedBy: held, note: "with bolts to a bar over the screws" },
    { what: "stands of the idlers", usedBy: idlers, note: "what carries the axle at the height in the report" },
    { what: "wiring, control, power supply, switches", usedBy: ["motor", "plate"], note: "" },
  ];
  return all.filter(({ usedBy }) => usedBy.length > 0);
}
