import { type Answers, barIn, type Checked, sizeIn, USUAL } from "./answers.ts";
import type { Question } from "./question.ts";
import type { Given } from "./stage-questions.ts";
import { leastFrame, type Spot } from "./starter-plan.ts";

/** Outer sizes of frames and plates that a starter is laid out for, mm. */
const FRAME = { what: "frame", min: 300, max: 1100 };
const PLATE = { what: "plate", min: 120, max: 900 };
/** What a plate is usually smaller than the frame would let it be, mm: its corners then load no screw alone. */
const SMALLER = { mm: 80, in: 3.25 * 25.4 };
/** Larger plates are heavy and bend long bars, mm. */
const LARGEST_USUAL = 305;
/** To what usual sizes are rounded, mm. */
const ROUND = { mm: 10, in: 25.4 / 2 };

type Units = Answers["units"];

/** Returns the questions for the sizes of frame and plate: what is known of one decides what the other may be. */
export function sizeQuestions(given: Given, units: Units): readonly [frame: Question, plate: Question] {
  const bar = barOf(given, units);
  const plate = valueIn(plateSize(given.plate, units));
  const least = plate === undefined ? undefined : leastFrame({ bar, units, plate });
  const frame = valueIn(frameSize(given.frame, units)) ?? (least === undefined ? usualFrame(units) : undefined);
  const most = frame === undefined ? undefined : mostPlate(frame, bar, units);
  const long = units === "mm" ? "millimetres" : "inches";
  return [
    {
      flag: "frame",
      asks: `How large is the frame, width x depth over its outer faces, in ${long}?`,
      hint: "Tape, from outer face to outer face; the posts stand in the middle of left and right.",
      usual: least === undefined ? USUAL[units].frame : words(least, units, Math.ceil),
      check: (text) => notUnder(frameSize(text, units), least, { units, bar }),
    },
    {
      flag: "plate",
      asks: `How large is the plate, width x depth, in ${long}?`,
      hint: "Tape along its edges.",
      usual: most === undefined ? USUAL[units].plate : usualPlate(most, units),
      check: (text) => notOver(plateSize(text, units), most, units),
    },
  ];
}

const valueIn = (checked: Checked<Spot> | undefined) =>
  checked !== undefined && "value" in checked ? checked.value : undefined;

const usualFrame = (units: Units) => valueIn(frameSize(USUAL[units].frame, units));

function frameSize(text: string | undefined, units: Units): Checked<Spot> {
  return sizeIn(text ?? "", units, { ...FRAME, such: USUAL[units].frame });
}

function plateSize(text: string | undefined, units: Units): Checked<Spot> {
  return sizeIn(text ?? "", units, { ...PLATE, such: USUAL[units].plate });
}

function barOf(given: Given, units: Units): string {
  const checked = barIn(given.bar ?? USUAL[units].bar);
  return "value" in checked ? checked.value : USUAL[units].bar;
}

/** Returns the largest plate that a frame leaves room for. */
function mostPlate(frame: Spot, bar: string, units: Units): Spot {
  const [x, y] = leastFrame({ bar, units, plate: [0, 0] });
  return [frame[0] - x, frame[1] - y];
}

function usualPlate(most: Spot, units: Units): string {
  const size = most.map((one) => Math.min(LARGEST_USUAL, Math.max(PLATE.min, one - SMALLER[units]))) as [
    number,
    number,
  ];
  return words(size, units, (steps) => Math.floor(steps + 1e-9));
}

function words(size: Spot, units: Units, whole: (steps: number) => number): string {
  return size.map((one) => inUnits(whole(one / ROUND[units]) * ROUND[units], units)).join(" x ");
}

const inUnits = (size: number, units: Units) =>
  String(units === "mm" ? Math.floor(size + 1e-9) : Math.floor(size / 25.4 / 0.01 + 1e-9) / 100);

function notUnder(
  checked: Checked<Spot>,
  least: Spot | undefined,
  { units, bar }: { readonly units: Units; readonly bar: string },
): Checked<Spot> {
  const value = valueIn(checked);
  if (value === undefined || least === undefined || value.every((one, at) => one >= (least[at] ?? 0) - 1e-6))
    return checked;
  const size = least.map((one) => inUnits(Math.ceil(one), units)).join(" x ");
  const most = mostPlate(value, bar, units);
  const room = most.every((one) => one >= PLATE.min)
    ? `; the largest plate for this one is ${most.map((one) => inUnits(one, units)).join(" x ")} ${units}`
    : "";
  return { wrong: `the plate needs a frame of at least ${size} ${units}${room}` };
}

function notOver(checked: Checked<Spot>, most: Spot | undefined, units: Units): Checked<Spot> {
  const value = valueIn(checked);
  if (value === undefined || most === undefined || value.every((one, at) => one <= (most[at] ?? 0) + 1e-6))
    return checked;
  const size = most.map((one) => inUnits(one, units)).join(" x ");
  return { wrong: `the frame leaves room for a plate of ${size} ${units}, beside the screws, posts and carriages` };
}
