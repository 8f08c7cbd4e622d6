import * as z from "zod";
import { BARS } from "../../catalogue/bars.ts";
import { SCREWS } from "../../catalogue/screws.ts";
import { itemOf } from "../../core/item.ts";
import { angle, choice, flag, hardware, meaning } from "../../core/parameter.ts";
import { row } from "../../core/table.ts";
import { block, mm, named, place, reference, spot } from "./words.ts";

const bar = z.strictObject({
  bar: hardware(BARS, "the bar"),
  from: place,
  to: place,
  turned: flag(
    "turned",
    "a level bar that lies on its broad side, or an upright one with width and height exchanged",
  ).default(false),
  facing: angle({ symbol: "psi", meaning: "an upright bar: direction of its width", min: -360, max: 360 }).default(0),
  moves: flag(
    "moves",
    "whether the bar is part of the stage; then it is placed as at the bottom of the travel",
  ).default(false),
});

const screw = z.strictObject({
  at: spot,
  screw: hardware(SCREWS, "the lead screw").default(itemOf(row(SCREWS, "Tr8x2"))),
  length: mm("L_s", "length of the screw", 50, 3000),
  hand: choice("hand", "hand of the thread", { right: "right-hand", left: "left-hand" }).default("right"),
  top: choice("top", "how the upper end is held", {
    free: "not at all",
    steadied: "in a bearing that lets it slide",
    held: "in a bearing that carries thrust",
  }).default("steadied"),
  nut: choice("nut", "what its nut is of, which decides the friction", {
    "greased brass": "brass or bronze, greased",
    "dry brass": "brass or bronze, dry",
    plastic: "plastic on steel",
  }).default("greased brass"),
  bar: reference("the bar its foot is bolted to; left out, the nearest that can carry it").optional(),
  foot: block(
    "screw-foot",
    "what this foot has of its own: any parameter of a screw-foot that the plan does not derive",
  ),
});

export const frame = {
  bars: named(bar, "bars of the frame and of the stage", 40),
  screws: named(screw, "lead screws", 4),
  foot: block(
    "screw-foot",
    "what all feet have in common: any parameter of a screw-foot that the plan does not derive",
  ),
  travel: meaning(
    z.strictObject({
      lowest: mm("z_low", "lowest part of the stage, at the bottom of its travel", -500, 3000).default(60),
      lift: mm("H", "how far the stage rises", 1, 3000).default(200),
      nut: mm("z_nut", "middle of the nuts, at the bottom of the travel", -500, 3000).default(100),
    }),
    "where the stage goes",
  ).prefault({}),
};
