import type { Defect } from "../../core/defects.ts";

/** What can be wrong with the belts of a machine, in plan and between their planes. */
export const LOOP_DEFECTS = {
  "loop-tangled-or-not-touching": {
    what: "no taut belt meets the nodes of a loop on the sides they stand on",
    why: "the belt would cross itself, run through a pulley, or leave a node untouched",
    set: "another place or side for one of the nodes, or the loop without it",
    excusable: false,
  },
  "no-stock-loop-within-slide": {
    what: "no loop that can be bought fits the way round the nodes within the slide",
    why: "the belt would not go on, or would hang slack and jump teeth",
    set: "a longer slide, a foot moved along its bar, or another loop in stock:",
    excusable: false,
  },
  "loop-tolerance-not-known": {
    what: "a loop is longer than 2000 mm, where the usual tolerances of belts end",
    why: "by how much a loop may come out longer or shorter decides how much slide it needs",
    set: "lengthTolerance: of the loop, as its seller states it",
    excusable: false,
  },
  "stock-loops-not-listed": {
    what: "no list of loops is known for this pitch, so every whole number of teeth is taken as one that can be bought",
    why: "shops keep few lengths, and the machine is laid out for one that may not be among them",
    set: "stock: the lengths that you can buy",
    excusable: true,
  },
  "slide-disturbs-other-loop": {
    what: "the slide that tightens one loop also changes the length of another",
    why: "tightening the one slackens or overstretches the other: the motor stands in one place only",
    set: "an idler with a slide of its own in the other loop, or a slide across its spans",
    excusable: true,
  },
  "slide-moves-a-screw": {
    what: "a loop is to be tightened by moving a screw",
    why: "the screw stands where the nut on the stage is; moved by itself it binds",
    set: "slide: of the motor or of an idler",
    excusable: false,
  },
  "pulley-of-another-pitch": {
    what: "the teeth of a pulley are not those of the belt that runs on it",
    why: "the belt climbs out of the teeth within one turn",
    set: "pulley: and belt: of one pitch",
    excusable: false,
  },
  "too-few-teeth-in-mesh": {
    what: "a belt lies on too few teeth of a pulley that it turns or that turns it",
    why: "below six teeth each missing one costs a fifth of what the belt may carry; then it jumps, and the stage tilts",
    set: "an outside idler beside the pulley, or more teeth",
    excusable: true,
  },
  "toothed-idler-barely-meshes": {
    what: "a belt lies on fewer than six teeth of a toothed idler",
    why: "with so few its teeth ride up and the idler ticks",
    set: "a smooth idler on the belt's back, or a place with more wrap",
    excusable: true,
  },
  "smooth-idler-on-teeth": {
    what: "a smooth idler runs on the toothed side of a belt",
    why: "the teeth hum and wear on it, and the length is not exact",
    set: "an idler with teeth, or side: outside",
    excusable: true,
  },
  "idler-wrap-out-of-range": {
    what: "a belt lies on an idler over hardly any angle, or nearly doubles back round it",
    why: "with hardly any wrap it flutters off; with very much it is bent back hard",
    set: "at: of the idler, further into the belt or further out of it",
    excusable: true,
  },
  "idler-flanges-pinch-belt": {
    what: "the room between the flanges of an idler is less than half a millimetre wider than the belt",
    why: "the flanges scrape the belt's edges to fluff",
    set: "a wider idler, or a narrower belt",
    excusable: true,
  },
  "idler-off-belt-plane": {
    what: "an idler stands so high or low that a flange of it lies in the plane of its belt",
    why: "the belt climbs the flange, or runs off the face where there is none",
    set: "bottom: of the idler, by the height that the message names, or leave it out",
    excusable: true,
  },
  "idler-axle-too-short": {
    what: "the axle of an idler ends inside its nut, or below it",
    why: "a nut on half its threads works loose, and the belt throws the idler off",
    set: "axle: of the idler, a longer bolt",
    excusable: true,
  },
  "belt-bent-too-tight": {
    what: "a belt bends round a smaller pulley, or backwards round a smaller idler, than its cords stand",
    why: "the cords break one by one, within months",
    set: "a pulley with more teeth, or a larger idler",
    excusable: true,
  },
  "belt-overloaded": {
    what: "a belt is tightened beyond the tension it may work at",
    why: "it stretches, its teeth shear, and the bearings take the rest",
    set: "tension: lower, or a wider belt",
    excusable: true,
  },
  "motor-shaft-overloaded": {
    what: "the belts pull harder on the motor's shaft, each as far from its face as it runs, than the motor is rated for",
    why: "the front bearing wears out, and a thin shaft bends until the pulley runs out of true",
    set: "belts nearer to the motor's face, less tension, or a motor rated for more",
    excusable: true,
  },
  "belts-too-close": {
    what: "two belts pass over one another with too little air",
    why: "belts wander between their flanges and flutter; two that touch saw each other through",
    set: "planes further apart: gap: of the upper motor pulley",
    excusable: true,
  },
  "belt-too-near-foreign-flange": {
    what: "a belt passes too near a pulley or idler of another loop",
    why: "a flange is a saw for a belt that is not its own",
    set: "planes further apart, or places that take the belt past it",
    excusable: true,
  },
  "belt-too-near-upright": {
    what: "a span passes too near a screw, or the bolt of an idler, that it does not run round",
    why: "a thread files the belt through",
    set: "an idler that leads the span past it, or other places",
    excusable: true,
  },
  "belt-too-near-bar": {
    what: "a belt or its pulley passes too near a bar that stands in its plane",
    why: "the edge of the bar cuts the belt",
    set: "an idler that leads the span past it, or another place or plane",
    excusable: true,
  },
  "spans-of-loop-too-close": {
    what: "two spans of one loop, or a span and a pulley of the same loop that it does not run round, pass too near",
    why: "they run against each other and rub",
    set: "the idler that presses the span further out",
    excusable: true,
  },
  "pulley-bodies-collide": {
    what: "two pulleys or idlers that share a height, or one of them and a screw, stand too near each other",
    why: "flanges that touch jam the drive",
    set: "places further apart, or another plane",
    excusable: true,
  },
  "loop-must-go-on-first": {
    what: "a loop can only be put on before a part that then closes its way",
    why: "a closed belt does not go over a screw that is held at both ends, nor round a post of a closed frame",
    set: "it on before that part is bolted on, when you assemble; leave a spare loop round it",
    excusable: true,
  },
} as const satisfies Readonly<Record<string, Defect>>;
