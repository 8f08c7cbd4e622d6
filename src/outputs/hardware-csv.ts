import { tidy } from "../core/rounding.ts";
import type { Design } from "../parts/family.ts";
import type { Plan, Stage } from "../stage/index.ts";
import { notInPlan, planNeeds } from "../stage/plan-needs.ts";
import { type Bought, grouped, type Need } from "./buying.ts";
import { stockBars } from "./stock-bars.ts";

/** A printed part with what it needs. */
export interface PartDesign {
  readonly name: string;
  readonly design: Pick<Design, "hardware">;
}

const HEAD = ["item", "length mm", "teeth", "needed", "spares", "pack", "buy", "used by", "notes"];

/** Returns the hardware list of a machine as CSV (RFC 4180: CRLF, quotes doubled), a line for each thing to buy. */
export function hardwareCsv(stage: Stage, parts: readonly PartDesign[]): string {
  const rows = boughtFor(stage, parts).map((one) => [
    one.item,
    one.length === undefined ? "" : String(tidy(one.length)),
    one.teeth === undefined ? "" : String(one.teeth),
    String(one.needed),
    String(one.spares),
    String(one.pack),
    String(one.buy),
    one.usedBy.join("; "),
    one.notes.join("; "),
  ]);
  // Behind the list, with no number: what has to be had besides.
  const open = notInPlan(stage).map(({ what, usedBy, note }) => [
    `not in the plan: ${what}`,
    ...["", "", "", "", "", ""],
    usedBy.join("; "),
    note,
  ]);
  return [HEAD, ...rows, ...open].map((cells) => `${cells.map(cell).join(",")}\r\n`).join("");
}

/** Text programs take what begins with these signs for a formula; a blank in front makes it text. */
const FORMULA = /^[=+\-@\t\r\n]/;

function cell(text: string): string {
  const plain = FORMULA.test(text) && !/^-?\d+(?:\.\d+)?$/.test(text) ? ` ${text}` : text;
  return /[",\r\n]/.test(plain) ? `"${plain.replaceAll('"', '""')}"` : plain;
}

/** Returns everything to buy for a machine: of the plan itself, and of its printed parts. */
export function boughtFor(stage: Stage, parts: readonly PartDesign[]): Bought[] {
  const { plan } = stage;
  const ofParts = parts.flatMap(({ name, design }) => design.hardware.map((line) => ({ ...line, usedBy: [name] })));
  const needs = [
    ...barNeeds(plan),
    ...screwNeeds(plan),
    ...motorNeeds(plan),
    ...beltNeeds(stage),
    ...planNeeds(stage),
    ...ofParts,
  ];
  return grouped(needs, plan.stock.spares);
}

function barNeeds({ bars }: Plan): Need[] {
  const all = Object.entries(bars).map(([name, { bar, from, to }]) => {
    const length = Math.hypot(...from.map((at, axis) => (to[axis] ?? 0) - at));
    return { name, kind: bar.key, length: Number(length.toFixed(2)) };
  });
  return [...new Set(all.map(({ kind }) => kind))].flatMap((kind) => {
    const cuts = all.filter((one) => one.kind === kind);
    const stock = stockBars(cuts.map(({ length }) => length));
    const patterns = new Map(stock.map((one) => [JSON.stringify(one), one]));
    return [...patterns].map(([pattern, { length, cuts: held }]) => {
      const count = stock.filter((one) => JSON.stringify(one) === pattern).length;
      const note = `${count} cut into ${held.join(" + ")} mm`;
      const usedBy = cuts.filter((cut) => held.includes(cut.length)).map(({ name }) => name);
      return { item: `bar ${kind}`, count, length, usedBy, note };
    });
  });
}

function screwNeeds({ screws }: Plan): Need[] {
  return Object.entries(screws).map(([name, { screw, length, hand }]) => ({
    item: `lead screw ${screw.key}${hand === "left" ? ", left-hand" : ""}`,
    count: 1,
    length,
    usedBy: [`screw ${name}`],
  }));
}

function motorNeeds({ motor, idlers }: Plan): Need[] {
  return [
    { item: `motor ${motor.motor.key}`, count: 1, usedBy: ["motor"] },
    ...motor.pulleys.map(({ pulley, loop }) => ({
      item: `pulley ${pulley.key}, bore ${tidy(motor.motor.values.shaftDiameter)}`,
      count: 1,
      usedBy: [`motor, loop ${loop}`],
    })),
    ...Object.entries(idlers).map(([name, { idler }]) => ({
      item: `idler ${idler.key}`,
      count: 1,
      usedBy: [`idler ${name}`],
    })),
  ];
}

function beltNeeds({ plan, loops }: Stage): Need[] {
  return Object.entries(plan.loops).map(([name, { belt, width }]) => {
    const found = loops.find(({ loop }) => loop === name);
    const length = found?.bought ?? found?.nominal;
    const sizes = length === undefined ? {} : { length, teeth: Math.round(length / belt.values.pitch) };
    const note =
      found !== undefined && found.bought === undefined ? { note: "no loop that is sold fits: length as placed" } : {};
    return {
      item: `belt ${belt.key}, ${tidy(width)} wide, closed`,
      count: 1,
      usedBy: [`loop ${name}`],
      ...sizes,
      ...note,
    };
  });
}
