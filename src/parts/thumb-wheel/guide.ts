import type { Guide } from "../guide.ts";
import type { Parameters } from "./parameters.ts";

/** How a thumb wheel is filled in. Source: common practice. */
export const guide: Guide<keyof Parameters> = {
  first: ["bolt", "barDistance", "excursion", "material", "count"],
  measure: {
    diameter: "choose: larger turns finer; calipers across two opposite lobes of the old one",
    height: "calipers: face to face of the old one; at least that of the nut and a floor",
    excursion:
      "tape: this mount to the fixed one, mm x 0.000023 x (plate - air, in K) for aluminium, half a millimetre more",
    barDistance: "calipers, machine cold: face of the bar to the near side of the bolt, plus half the bolt",
  },
};
