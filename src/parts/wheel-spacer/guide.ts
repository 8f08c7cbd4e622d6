import type { Guide } from "../guide.ts";
import type { Parameters } from "./parameters.ts";

/** How a wheel spacer is filled in. Source: common practice. */
export const guide: Guide<keyof Parameters> = {
  first: ["kind", "bolt", "length", "against", "innerLand", "torque", "material", "count"],
  measure: {
    innerLand: "calipers: across the flat face of the bearing's inner ring, where the shield begins",
    outside: "calipers across the old spacer; left out, what the bolt's load needs",
    length: "calipers: face of the plate to the near face of the wheel's bearing, less the shim",
    setLengths: "as length, of the other spacers: a set that differs tilts the carriage",
    torque: "what your torque screwdriver is set to; without one leave the default",
    plate: "calipers on the plate's edge",
    body: "calipers: bore in the plate that the bush is to turn in",
    offset: "calipers over axle and edge, bush turned both ways: half the difference",
    hexFlats: "the spanner you have",
    hexHeight: "calipers: face of the plate to the near face of the wheel's bearing, less the shim",
  },
};
