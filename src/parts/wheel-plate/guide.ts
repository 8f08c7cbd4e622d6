import type { Guide } from "../guide.ts";
import type { Parameters } from "./parameters.ts";

/** How a wheel plate is filled in. Source: common practice. */
export const guide: Guide<keyof Parameters> = {
  first: [
    "wheels",
    "barWidth",
    "barDepth",
    "module",
    "wheel",
    "bearing",
    "overWheels",
    "eccentric",
    "arm",
    "load",
    "overhang",
    "placeTemperature",
    "material",
  ],
  measure: {
    rowSpacing: "choose, or calipers: axle to axle along the travel, outermost rows",
    stagger: "choose: how far the second plate is shifted so that its bolts miss those of the first",
    barWidth: "calipers: across the bar, between the two faces the wheels run on, at three places; the mean",
    barDepth: "calipers: across the bar in the direction of the axles",
    module: "calipers: left edge of one groove to the left edge of the next; of a bar with one groove its width",
    overWheels:
      "press a wheel by hand into the groove on either side of the bar; calipers over both wheels, rim to rim, three times",
    spacerLength: "calipers: face to face of the spacer",
    spacerOutside: "calipers across the spacer",
    tipRoom: "ruler: back of the plate to the next thing that the nuts could meet",
    stock: "the lengths on the boxes in your drawer: under the head to the tip",
    plate: "choose: thickness of the printed plate",
    margin: "choose: plastic round the outermost axles",
    wheelRelief: "choose: 0 unless the tyre comes nearer to the plate than half a millimetre",
    armsAt: "ruler: middle of the plate up (down is negative) to the middle of each arm",
    armBoltAt: "ruler: middle of the plate to the bolt, along the arm",
    leeway: "square against the arm's cut end: gap at its far edge / width of the arm x 57 in degrees",
    load: "scales: weigh what hangs on this carriage; kg x 9.81",
    overhang: "ruler: middle of the bar to the middle of the load, parallel to the plate",
    offset: "ruler: middle of the wheels to the middle of the load, along the axles",
    preload: "spring balance on the wheel: the pull at which a hand just turns it on the bar",
    travelUp: "ruler: how far the carriage rises from where obstacles are measured",
    travelDown: "ruler: how far it sinks from there",
    obstacles:
      "ruler from the middle of the plate's wheel side: x across the bar, y along it, z along the axles, from and to",
    placeTemperature: "thermometer beside the carriage when the machine has been warm for an hour",
  },
};
