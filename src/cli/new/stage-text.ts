import { PLAN_MEASURES } from "../../stage/plan-measures.ts";
import { presetValue } from "../explain/preset-value.ts";
import { alsoLines } from "./also-lines.ts";
import type { Answers } from "./answers.ts";
import { comment } from "./comment.ts";
import { modeline } from "./heading.ts";
import { inUnit } from "./in-unit.ts";
import type { Place } from "./part-text.ts";
import { plateSection } from "./stage-plate.ts";
import { driveOf } from "./starter-drive.ts";
import { type Attempt, barsOf, type Frame, frameOf, screwSpots } from "./starter-plan.ts";

/** What writes the values of one plan: in its unit, on one line each. */
export interface Pen {
  readonly frame: Frame;
  readonly answers: Answers;
  /** Returns a value in mm as the plan holds it. */
  readonly value: (mm: unknown, key?: string) => string;
  /** Returns one line for each thing under its name. */
  readonly named: (things: Readonly<Record<string, unknown>>) => string[];
}

const SKETCH: readonly string[] = [
  "          back                    from above",
  "  +------------------+   ^ y",
  "  |                  |   |      z goes up from the top of the frame's level bars;",
  "  |left         right|   |      x and y from the outer corner in front, left.",
  "  |                  |   |",
  "  +------------------+   +---> x",
  "         front",
];

/** Returns the plan of a stage to fill in, which works out as it stands. */
export function stageText(answers: Answers, attempt: Attempt, place: Place): string {
  const value = (mm: unknown, key = "") => presetValue(inUnit(mm, answers.units, key));
  const named: Pen["named"] = (things) => Object.entries(things).map(([name, one]) => `  ${name}: ${value(one)}`);
  const pen: Pen = { frame: frameOf(answers), answers, value, named };
  return [
    ...heading(pen, place),
    ...barSection(pen),
    ...screwSection(pen, attempt),
    ...motorSection(pen, attempt),
    ...plateSection(pen, attempt),
    "",
  ].join("\n");
}

function heading({ answers, value }: Pen, { name, file, schema }: Place): string[] {
  const { units, screws, bar, loops } = answers;
  const [outer, size] = [answers.frame, answers.plate].map((one) => one.map((side) => value(side)).join(" x "));
  const belts = loops === 1 ? "one belt" : "two belts";
  return [
    modeline(schema),
    ...comment(
      "",
      "",
      `A stage on ${screws} screws: a frame of ${outer} ${units} of ${bar} bar, a plate of ${size} ${units}, one motor, ${belts}.`,
    ),
    "#",
    ...comment(
      "",
      "",
      "It works out as it stands, but nothing in it has been measured: replace each figure by yours, one section after the other, and check it in between.",
    ),
    ...comment("", "  ", `tramwright check ${file}`),
    ...comment("", "  ", `tramwright report ${file}     the numbers, with limit and margin`),
    ...comment("", "  ", `tramwright make ${file}       parts, hardware list, drawing of the belts`),
    "#",
    ...SKETCH.map((line) => `# ${line}`),
    "#",
    ...comment(
      "",
      "",
      `Bare lengths are in ${units === "mm" ? "millimetres" : "inches"}; others with their unit: 26 mm, 1 1/32 in. A bought item is a row of tramwright stock, or what you measured laid over one: { row: "608", width: 6.98 mm, measured: true }. Names are yours; what refers to a thing names it.`,
    ),
    "format: 1",
    `stage: ${presetValue(name)}`,
    `units: ${units}`,
    "# printer: my-printer.yaml     (tramwright new printer writes one)",
  ];
}

function barSection({ frame, answers, named }: Pen): string[] {
  return [
    "",
    ...comment("", "", "---- Bars. from and to are the ends of each bar's middle line, [x, y, z]."),
    ...comment("", "measure  ", PLAN_MEASURES.bars),
    ...comment("", "         ", "moves: true are those of the stage, where they are at the bottom of the travel."),
    ...alsoLines("", "bars", ["bar", "from", "to", "moves"]),
    "bars:",
    ...named(barsOf(frame, answers)),
  ];
}

function screwSection({ frame, answers, named, value }: Pen, { inset }: Attempt): string[] {
  const { lowest, snap } = frame;
  const length = lowest + answers.lift + snap(70);
  const screws = Object.entries(screwSpots(frame, answers.screws, inset)).map(([name, { at, bar }]) => [
    name,
    { at, screw: "Tr8x1.5", length, bar },
  ]);
  const travel = { lowest, lift: answers.lift, nut: lowest + snap(25) };
  return [
    "",
    "# ---- Lead screws",
    ...comment("", "measure  ", PLAN_MEASURES.screws),
    ...comment("", "         ", "bar: the one that carries its foot"),
    ...alsoLines("", "screws", ["at", "screw", "length", "bar"]),
    "screws:",
    ...named(Object.fromEntries(screws)),
    ...comment("", "", "What all feet have in common: any parameter that tramwright parts screw-foot lists."),
    "foot:",
    "  thrust: collar  # a clamp collar carries the weight; pulley: its set screws do",
    `  pulley: ${FOOT_PULLEY[answers.screws]}`,
    "  material: PETG",
    ...comment("", "measure  ", PLAN_MEASURES.travel),
    `travel: ${value(travel)}`,
  ];
}

/** Larger wheels turn the screws slower; between two screws a large one leaves the belt room beside the posts. */
const FOOT_PULLEY = { 2: "40 teeth 2 mm", 3: "36 teeth 2 mm", 4: "36 teeth 2 mm" } as const;

function motorSection({ frame, answers, value, named }: Pen, attempt: Attempt): string[] {
  const { motor, pulleys, loops, idlers } = driveOf(frame, answers, attempt);
  const plateTop = frame.snap(answers.loops === 2 ? 10 : answers.screws === 2 ? 4.5 : 2.5);
  return [
    "",
    "# ---- Motor: it hangs shaft up from a plate on the frame",
    ...comment("", "measure  ", PLAN_MEASURES.motor),
    ...alsoLines("", "motor", ["motor", "at", "plateTop", "torque", "speed", "pulleys"]),
    "motor:",
    ...Object.entries({ ...motor, plateTop }).map(([key, one]) => `  ${key}: ${value(one, key)}`),
    "  torque: 0.3 N m",
    "  speed: 3  # mm/s",
    ...comment("  ", "", "From the lowest up. hub: which way it points."),
    ...alsoLines("  ", "motor.pulleys", ["loop", "pulley", "hub"]),
    "  pulleys:",
    ...pulleys.map((one) => `    - ${value(one)}`),
    "",
    ...comment(
      "",
      "",
      "---- Belts: closed loops of 2 mm pitch. nodes: what each runs round; the tool finds the order, the length and the loop to buy. slide: the slot that tightens it, and its direction from +x.",
    ),
    ...comment("", "measure  ", PLAN_MEASURES.loops),
    ...alsoLines("", "loops", ["nodes", "slide"]),
    "loops:",
    ...named(loops),
    ...comment("", "measure  ", PLAN_MEASURES.idlers),
    "idlers:",
    ...named(idlers),
  ];
}
