import type { Given } from "../../core/dimension.ts";
import type { Item } from "../../core/item.ts";
import { TORQUE_FACTOR } from "../../mechanics/clamp-force.ts";
import type { Case } from "../family.ts";
import { parameterGivens, printerGivens } from "../givens.ts";
import { slotCount } from "./derive/plate.ts";
import type { Derived } from "./derive.ts";
import { type Fittings, fittings } from "./fittings.ts";
import { wheelsOf } from "./layout.ts";
import { type Parameters, schema } from "./parameters.ts";

/** Returns the numbers that the formulas name: parameters, printer, and the rows of what is bought. */
export function givens({ given, printer }: Case<Parameters, Derived>): Given[] {
  const parts = fittings(given);
  return [
    ...parameterGivens(schema, given),
    ...printerGivens(printer),
    ...wheelGivens(given),
    ...axleGivens(given, parts),
    ...armGivens(given, parts),
    ...countGivens(given),
    ...materialGivens(given),
  ];
}

const mm = (symbol: string, value: number, meaning: string, source: string): Given => ({
  symbol,
  value,
  unit: "mm",
  meaning,
  source,
});

const stated = (item: unknown, standard: string) => (item === undefined ? standard : "your preset");
const from = (item: Item) => item.row?.source ?? "your preset";

function wheelGivens({ wheel, bearing }: Parameters): Given[] {
  const source = from(wheel);
  const { outside, overBearings, innerLand, axisToBarFace } = wheel.values;
  return [
    mm("OD", outside, "wheel diameter", source),
    mm("w_o", overBearings, "wheel over its bearings", source),
    mm("d1", innerLand, "inner land of the wheel's bearings", source),
    mm("o_w", axisToBarFace, "axle to the bar's face; 0 means not known", source),
    {
      symbol: "C_0",
      value: bearing.values.staticRating,
      unit: "N",
      meaning: "static rating of a wheel's bearing",
      source: from(bearing),
    },
  ];
}

function axleGivens(given: Parameters, parts: Fittings): Given[] {
  const { bolt, thread, nut, washer, fender, eccentric } = parts;
  const { shim, shimmed } = given;
  const source = from(given.eccentric);
  const ring = from(shim);
  return [
    mm("d", thread.diameter, `${bolt} diameter`, "iso-261"),
    mm("p", thread.pitch, `${bolt} pitch`, "iso-261"),
    mm("d_fine", thread.fineHole, `${bolt} fine hole`, "iso-273"),
    mm("m_n", nut.height, `${bolt} lock nut height`, "din-985"),
    mm("D_w", washer.outside, `${bolt} washer outside`, stated(given.washer, "iso-7089")),
    mm("t_w", washer.thickness, `${bolt} washer thickness`, stated(given.washer, "iso-7089")),
    mm("D_f", fender.outside, `${bolt} large washer outside`, stated(given.eccentricWasher, "iso-7093-1")),
    mm("t_f", fender.thickness, `${bolt} large washer thickness`, stated(given.eccentricWasher, "iso-7093-1")),
    mm("t_sh", shimmed ? shim.values.thickness : 0, "ring on each side of a wheel", ring),
    mm("OD_sh", shim.values.outside, "outside of that ring", ring),
    mm("d_be", given.eccentric.values.body, "body of a bought eccentric", source),
    mm("u_m", given.eccentric.values.height, "height of an eccentric beside the plate", source),
    mm("eps", given.eccentric.values.offset, "offset of an eccentric", source),
    mm(
      "AF_e",
      eccentric.hexFlats,
      "hexagon of the eccentric",
      given.eccentricKind === "metal" ? source : "design-rule",
    ),
  ];
}

function armGivens(given: Parameters, { armBolt, armThread, armWasher }: Fittings): Given[] {
  const source = from(given.arm);
  const { width, height, module } = given.arm.values;
  return [
    mm("H_a", height, "height of an arm, along the travel", source),
    mm("B_a", width, "width of an arm, along the axles", source),
    mm("U_a", module, "groove to groove of an arm", source),
    mm("d_a", armThread.diameter, `${armBolt} diameter`, "iso-261"),
    mm("d_ma", armThread.mediumHole, `${armBolt} medium hole`, "iso-273"),
    mm("D_wa", armWasher.outside, `${armBolt} washer outside`, "iso-7089"),
  ];
}

function countGivens(given: Parameters): Given[] {
  const wheels = wheelsOf(given);
  const fixed = wheels.filter(({ kind }) => kind === "fixed").length;
  const count = (symbol: string, value: number, meaning: string): Given => ({
    symbol,
    value,
    unit: "",
    meaning,
    source: "your preset",
  });
  return [
    count("n_X", fixed, "fixed axles of a plate"),
    count("n_E", wheels.length - fixed, "eccentric axles of a plate"),
    count("n_S", slotCount(given), "arm slots of a plate"),
  ];
}

function materialGivens({ material }: Parameters): Given[] {
  const { modulus, washerPressure } = material.values;
  const source = from(material);
  return [
    { symbol: "K", value: TORQUE_FACTOR, unit: "", meaning: "torque factor of a dry bolt", source: "shigley: 8-8" },
    { symbol: "p_s", value: washerPressure, unit: "MPa", meaning: "pressure the material bears for years", source },
    { symbol: "E", value: modulus, unit: "MPa", meaning: "modulus of the material", source },
  ];
}
