import type { Guide } from "../guide.ts";
import type { Parameters } from "./parameters.ts";

/** How a screw foot is filled in. Source: common practice. */
export const guide: Guide<keyof Parameters> = {
  first: [
    "mount",
    "bar",
    "screw",
    "bearing",
    "pulley",
    "beltPlane",
    "thrust",
    "axialLoad",
    "beltPull",
    "placeTemperature",
    "material",
    "label",
  ],
  measure: {
    cornerAngle: "set a bevel gauge into the corner, inner face to inner face, and read it with a protractor",
    offset: "calipers: side of the bar to the near flank of the screw, plus half the screw, less half the bar's width",
    lowestZ: "ruler: from the top of the level bar up (down is negative) to the nearest thing below the foot",
    endDiameter: "calipers across the turned lower end, twice, a quarter turn apart",
    beltWidth: "calipers across the belt, teeth to one side, without squeezing",
    beltPlane:
      "with the motor in its place: straightedge on the bar's top, depth rod of the calipers from it to the belt's upper and lower edge; the mean of both",
    beltSpans:
      "from above, at the screw: 0 is along the bar to the right, 90 away from the bar; protractor along each span of the belt",
    keyAzimuth:
      "from above: the direction in which nothing stands before the pulley's set screw; 90 is away from the bar",
    framePosts:
      "ruler from the screw's axis to the middle of each post: x along the bar, y away from it; width by calipers",
    axisOffset: "calipers: mating face of the bar to the near flank of the screw, plus half the screw",
    axisOffsetB: "as axisOffset, from the face of the second bar",
    wall: "choose: more for a heavier load",
    floor: "choose: more for a heavier load",
    plate: "choose: thickness of plastic under the bolt heads",
    pocketDepth: "calipers: width of the bearing over both rings",
    shoulderBore: "calipers: face of the bearing's outer ring; the bore must clear the inner ring",
    tipLength: "ruler: lower face of the bearing to the screw's tip",
    tipRelief: "choose: air below the screw's tip",
    postAzimuths: "from above: two directions, opposite each other, where neither belt nor key passes",
    axialLoad: "scales: weigh the stage with its plate and heaviest print; kg x 9.81 / number of screws",
    lightestLoad: "as axialLoad, for the screw that carries least",
    steadyLoad: "as axialLoad, for this screw with nobody leaning on the plate; left out, axialLoad",
    otherSink: "dial gauge on the other foot: how far it gives when the stage's weight comes on it",
    beltPull: "twice the tension of a span where the belt turns back; 15 N is a usual tension for 6 mm",
    crashForce: "what the motor can push along the screw when the stage meets a stop; 0 with stop switches",
    bearingToNut: "ruler, stage at the bottom: bearing's upper face to the middle of the nut",
    nutFloat: "feeler gauge between the nut and its hole, one side, nut pushed to the other; halve it",
    stageLowest: "ruler, stage at the bottom: the bar's top to the lowest part of the stage",
    placeTemperature: "thermometer beside the foot when the machine has been warm for an hour",
    boltLengths: "the lengths on the boxes in your drawer: under the head to the tip",
  },
};
