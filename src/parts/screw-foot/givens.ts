import { BARS } from "../../catalogue/bars.ts";
import { BEARINGS } from "../../catalogue/bearings.ts";
import { BELTS } from "../../catalogue/belts.ts";
import { PULLEYS } from "../../catalogue/pulleys.ts";
import type { Given } from "../../core/dimension.ts";
import { MATERIALS } from "../../printing/materials.ts";
import type { Case } from "../family.ts";
import { itemGivens, parameterGivens, printerGivens } from "../givens.ts";
import type { Derived } from "./derive/index.ts";
import { type Parameters, schema } from "./parameters.ts";

const mm = (symbol: string, value: number, meaning: string, source: string): Given => ({
  symbol,
  value,
  unit: "mm",
  meaning,
  source,
});

/** Returns the numbers that the formulas name: parameters, printer, and the rows of what is bought. */
export function givens({ given, derived, printer }: Case<Parameters, Derived>): Given[] {
  const { bolt, collar } = derived.bought;
  const { bore, ...bearing } = BEARINGS.fields;
  const { width, height: barHeight, module, nutLength } = BARS.fields;
  const {
    teeth,
    pitch,
    flangeDiameter,
    toothWidth,
    flangeThickness,
    hubLength,
    hubDiameter,
    height,
    setScrewCount,
    setScrewFromEnd,
  } = PULLEYS.fields;
  const pulley = {
    teeth,
    pitch,
    flangeDiameter,
    toothWidth,
    flangeThickness,
    hubLength,
    hubDiameter,
    height,
    setScrewCount,
    setScrewFromEnd,
  };
  const { thickness, toothHeight, pitchLineDistance } = BELTS.fields;
  const { modulus, inLayer, acrossLayers, washerPressure, creepFactor } = MATERIALS.fields;
  return [
    ...parameterGivens(schema, given),
    ...printerGivens(printer),
    ...itemGivens(given.bearing, bearing),
    ...itemGivens(given.pulley, pulley, {
      teeth: "z",
      pitch: "p",
      flangeDiameter: "D_f",
      toothWidth: "w_t",
      flangeThickness: "t_f",
      hubLength: "h_hub",
      hubDiameter: "D_h",
      height: "H_p",
      setScrewCount: "n_ss",
      setScrewFromEnd: "h_ss",
    }),
    ...itemGivens(
      given.belt,
      { thickness, toothHeight, pitchLineDistance },
      { thickness: "t_belt", toothHeight: "t_tooth", pitchLineDistance: "PLD" },
    ),
    ...itemGivens(
      given.bar,
      { width, height: barHeight, module, nutLength },
      { width: "W", height: "H", module: "m_bar", nutLength: "l_nut" },
    ),
    ...itemGivens(given.material, { modulus, inLayer, acrossLayers, washerPressure, creepFactor }),
    mm("d_bolt", bolt.diameter, "diameter of the mount bolts", "iso-261"),
    mm("d_hole", bolt.hole, "hole of the mount bolts", "iso-273"),
    mm("D_w", bolt.washerDiameter, "washer of the mount bolts", "iso-7089"),
    mm("D_collar", collar.outside, "outside of the clamp collar", "common-practice"),
    mm("w_collar", collar.width, "width of the clamp collar", "common-practice"),
  ];
}
