import type { Defect } from "./defects.ts";

type Told = Pick<Defect, "what" | "why" | "set">;

/** Every defect for which a calculation refuses its inputs; what it prints then adds the numbers. */
export const CALCULATION_DEFECTS = {
  "input-not-a-number": {
    what: "an input of a calculation is no number, or an infinite one",
    why: "nothing follows from it",
    set: "the input as a number, in the unit that the calculation names",
  },
  "input-out-of-range": {
    what: "an input of a calculation is outside the range for which its formula holds",
    why: "beyond it the formula gives a number, and the number is wrong",
    set: "the input within the range that explain <calculation> prints",
  },
  "loop-node-count": {
    what: "a belt loop has fewer than two or more than twelve nodes",
    why: "a belt needs two pulleys, and a loop of more than twelve is not made",
    set: "2 to 12 nodes, at least two of them inside",
  },
  "loop-measure-missing": {
    what: "the place or radius of a node of a loop is no number",
    why: "no length follows from a place that is not known",
    set: "x, y and radius of every node, mm",
  },
  "node-without-radius": {
    what: "a node of a loop has no radius",
    why: "a belt does not bend round a point",
    set: "its pitch radius, or the radius of a smooth idler",
  },
  "too-few-inside-nodes": {
    what: "fewer than two nodes stand inside the loop",
    why: "outside nodes only push a belt inwards; two inside ones hold it open",
    set: "inside for the pulleys whose toothed side the belt lies on",
  },
  "nodes-overlap": {
    what: "two nodes of a loop stand nearer than their circles allow",
    why: "two pulleys cannot share one place, and no belt runs between them",
    set: "them further apart, or smaller ones",
  },
  "spans-cross": {
    what: "two spans of a loop cross",
    why: "spans that cross rub each other through",
    set: "another order of the nodes, or another place or side for one of them",
  },
  "span-through-node": {
    what: "a span of a loop runs through a node that it should pass",
    why: "a belt cannot run through a pulley",
    set: "that node further from the span, or into the loop where it is met",
  },
  "belt-misses-node": {
    what: "the belt does not touch a node: its wrap would be just under a full turn",
    why: "an idler that the belt does not touch neither guides nor tightens it",
    set: "the node further into the belt, or leave it out",
  },
  "node-order-wrong": {
    what: "no taut belt meets the nodes in the given order",
    why: "the belt would cross itself, or run on the wrong side of a pulley",
    set: "the nodes counter-clockwise, as the belt meets them",
  },
  "loop-too-large": {
    what: "the places of a loop are so large that no number holds its length",
    why: "no number holds its length",
    set: "places of ordinary size, in mm",
  },
  "belt-never-touches": {
    what: "nowhere on the slide does the belt touch every node",
    why: "there is no loop whose length could be chosen",
    set: "a loop that is sound first, then a slide round it",
  },
  "length-off-slide": {
    what: "the slide makes loops, but none of the wanted length",
    why: "the belt would hang slack, or would not go on",
    set: "another stock length, a longer slide, or another place for a screw or idler",
  },
  "slide-hardly-tightens": {
    what: "moving the node along its slide hardly changes the belt's length",
    why: "the belt's tolerance alone would need more slide than there is",
    set: "a direction of the slide nearer to the middle between the two spans",
  },
  "screws-in-line": {
    what: "three screws stand nearly in one line",
    why: "a stage on a line of screws tips to either side",
    set: "one screw well beside the line of the others",
  },
  "mass-outside-screws": {
    what: "the centre of mass lies outside the figure between the screws",
    why: "the stage tips over its loaded screws, and a corner lifts off its nut",
    set: "the centre of mass further in, or a screw further out",
  },
  "lead-not-whole-pitches": {
    what: "the lead of a screw is not a whole number of its pitches",
    why: "threads start a whole number of times, so lead or pitch was misread and the stage would rise wrongly",
    set: "the lead as stamped, or the pitch as measured over ten crests",
  },
  "lead-angle-too-steep": {
    what: "the thread climbs at 45 degrees or more",
    why: "the formulas hold for threads flatter than that, and no such lead screw is sold",
    set: "a smaller lead",
  },
  "screw-jams": {
    what: "with this friction and lead no torque raises the load",
    why: "the motor stalls at any current",
    set: "a smaller lead, or a greased nut",
  },
  "spring-already-solid": {
    what: "the coils of the spring touch at its free length",
    why: "a spring whose coils touch is a tube, and gives no travel",
    set: "a longer spring, fewer coils or thinner wire",
  },
  "spring-too-short": {
    what: "the spring is too short for the travel that is asked of it",
    why: "it would go solid at one end, or hang loose at the other",
    set: "a longer spring, or less travel",
  },
  "spring-band-empty": {
    what: "no set length gives enough force at the long end and room at the short end",
    why: "the plate would rattle loose, or the spring would go solid",
    set: "a stiffer spring, or less travel",
  },
  "heater-never-gets-there": {
    what: "the plate loses all the heat that it gets before it is warm",
    why: "it ends at the temperature where loss and power are equal, and stays there",
    set: "a stronger heater, insulation under the plate, or a cooler plate",
  },
} as const satisfies Readonly<Record<string, Told>>;

/** The name of such a defect; one without an entry above does not compile. */
export type CalculationDefect = keyof typeof CALCULATION_DEFECTS;
