import type { Guide } from "../guide.ts";
import type { Parameters } from "./parameters.ts";

/** How a tram mount is filled in. Source: common practice. */
export const guide: Guide<keyof Parameters> = {
  first: [
    "mount",
    "type",
    "joint",
    "bar",
    "plate",
    "plateTemperature",
    "growth",
    "growthAngle",
    "share",
    "roomBelow",
    "material",
    "mountNumber",
  ],
  measure: {
    backPlate: "choose: thickness of plastic under the bolt heads",
    reach: "calipers: face of the bar to the middle of the hole in the plate",
    headBelow: "depth rod of the calipers: the plate's top down to the bolt's head, bolt seated",
    boltLength: "calipers: plate's top to the tip of the bolt; of a countersunk bolt all of it",
    stock: "the lengths on the boxes in your drawer",
    wheelDiameter: "choose: larger turns finer",
    fingerRoom: "ruler: rim of the wheel to whatever stands beside it",
    roomBelow: "ruler, stage at the bottom: the bracket's underside to whatever lies below",
    rate: "kitchen scales: stand the spring on them, press it 5 mm with a rod; kg read x 9.81 / 5",
    share: "kitchen scales: weigh plate, sheet and heater together; kg x 9.81 / number of mounts",
    range: "choose: how far the plate must be moved to come level; a millimetre to each side is usual",
    setLength: "calipers: the spring's length when the plate is level",
    push: "choose: 50 N is a hand that leans on the plate",
    plate: "calipers on the plate's edge, at three places; the thickest",
    plateTemperature: "a surface thermometer, or what the heater is set to",
    ambient: "thermometer beside the machine when it is cold",
    growth: "tape: this mount to the fixed one, mm x 0.000023 x (plate - air, in K) for aluminium; 0 at the fixed one",
    growthAngle: "from above: direction from the fixed mount to this one; 0 along the bar, 90 away from it",
    slotAngle: "from above: direction of the slot; 0 along the bar, 90 away from it",
    halfTravel: "calipers: how far the bolt is to slide from its middle to one end of the slot",
    thickness: "choose: more sinks less",
    cupDepth: "choose: deeper leads the spring better and leaves it less travel",
  },
};
