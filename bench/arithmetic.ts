import { isRefusal } from "../src/core/calculation.ts";
import { beltLoop, type LoopNode, stockLoops } from "../src/mechanics/index.ts";
import { inTurn, median, table, worked } from "./timing.ts";
import { type Variant, wholeDrive } from "./whole-drive.ts";

/** Six pulleys on a ring and two idlers that press on its spans. */
const ring = Array.from({ length: 6 }, (_, index): LoopNode => {
  const angle = (index * Math.PI) / 3;
  const place = { x: 420 * Math.cos(angle), y: 360 * Math.sin(angle) };
  return { name: `n${index}`, ...place, radius: (index % 2 === 0 ? 40 : 20) / Math.PI, inside: true };
});
const pressing = [0, 3].map((index): LoopNode => {
  const angle = ((index + 0.5) * Math.PI) / 3;
  return { name: `i${index}`, x: 330 * Math.cos(angle), y: 330 * Math.sin(angle), radius: 9.4, inside: false };
});
const eight = [
  ...ring.slice(0, 1),
  ...pressing.slice(0, 1),
  ...ring.slice(1, 4),
  ...pressing.slice(1),
  ...ring.slice(4),
];
const loop = beltLoop(eight);
if (isRefusal(loop)) throw new Error(loop.refused);

const nominal = 2 * Math.round(loop.length / 2);
const stock = Array.from({ length: 100 }, (_, index) => nominal - 60 + Math.round((120 * index) / 198) * 2);
const slides = ["n0", "n3", "i0"].map((node, index) => ({ node, direction: index * 120, from: -40, to: 40 }));

const variants = Array.from({ length: 1000 }, (_, index): Variant => {
  const motor = { x: -40 + (index % 10) * 8, y: -20 + (Math.floor(index / 10) % 10) * 4 };
  return { motor, motorTeeth: 16 + 4 * (index % 3), lead: [2, 4, 8][index % 3] ?? 8, mass: 2 + (index % 7) };
});
const LOOPS = 1000;

const [loops = [], choices = [], drives = []] = inTurn(
  [
    () => {
      for (let count = 0; count < LOOPS; count++) beltLoop(eight);
    },
    () => slides.map((slide) => stockLoops(eight, slide, 2, stock)),
    () => variants.map(wholeDrive),
  ],
  25,
  worked,
);
const each = (median(loops) * 1000) / LOOPS;
const met = (time: number, limit: number) => (time < limit ? "met" : "MISSED");
const fitting = slides.flatMap((slide) => {
  const offers = stockLoops(eight, slide, 2, stock);
  return isRefusal(offers) ? [] : offers.filter(({ position }) => !isRefusal(position));
});
const numbers = variants.map(wholeDrive);
if (Math.min(...numbers) < 60) throw new Error("a variant stopped before its end");
table(
  "Arithmetic of a drive, in time that one core worked",
  ["what", "took", "at most", "", "found"],
  [
    ["one exact loop of 8 nodes", `${each.toFixed(1)} us`, "20 us", met(each, 20), `${loop.length.toFixed(3)} mm`],
    [
      "a stock loop from 100, three members free",
      `${median(choices).toFixed(1)} ms`,
      "20 ms",
      met(median(choices), 20),
      `${fitting.length} that fit`,
    ],
    [
      "1000 variants of a whole drive",
      `${median(drives).toFixed(0)} ms`,
      "1000 ms",
      met(median(drives), 1000),
      `${Math.min(...numbers)} to ${Math.max(...numbers)} numbers each`,
    ],
  ],
);
