import type { Given } from "../../core/dimension.ts";
import { TORQUE_FACTOR } from "../../mechanics/clamp-force.ts";
import type { Case } from "../family.ts";
import { parameterGivens, printerGivens } from "../givens.ts";
import type { Derived } from "./derive.ts";
import { type Fittings, fittings } from "./fittings.ts";
import { type Parameters, schema } from "./parameters.ts";

type Mount = Case<Parameters, Derived>;

/** Returns the numbers that the formulas name: parameters, printer, and the rows of what is bought. */
export function givens({ given, printer }: Mount): Given[] {
  const parts = fittings(given);
  return [
    ...parameterGivens(schema, given),
    ...printerGivens(printer),
    ...boltGivens(given, parts),
    ...springGivens(given, parts),
    ...mountGivens(given, parts),
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

function boltGivens(given: Parameters, parts: Fittings): Given[] {
  const { bolt, thread, nut, head, hexHead, insert, heatWasher, sliderWasher, wheel } = parts;
  const nutSource = stated(given.nut, given.lockNut ? "din-985" : "iso-4032");
  return [
    mm("d", thread.diameter, `${bolt} diameter`, "iso-261"),
    mm("p", thread.pitch, `${bolt} pitch`, "iso-261"),
    mm("d_fine", thread.fineHole, `${bolt} fine hole`, "iso-273"),
    mm("d_medium", thread.mediumHole, `${bolt} medium hole`, "iso-273"),
    mm("m", nut.height, `${bolt} nut height`, nutSource),
    mm("k_h", head.headHeight, `${bolt} countersunk head height`, "iso-10642"),
    mm("k_x", hexHead.headHeight, `${bolt} hexagon head height`, "iso-4017"),
    mm("l_i", insert.length, `${bolt} insert length`, stated(given.insert, "fastener-suppliers")),
    mm("t_hw", heatWasher.thickness, "heat washer thickness", stated(given.heatWasher, "iso-7093-1")),
    mm("t_so", sliderWasher.thickness, "slider washer thickness", stated(given.sliderWasher, "iso-7093-1")),
    mm("OD_w", sliderWasher.outside, "slider washer outside", stated(given.sliderWasher, "iso-7093-1")),
    ...(given.wheelDiameter === undefined ? [mm("D_k", wheel, "thumb wheel diameter", "design-rule")] : []),
  ];
}

function springGivens(given: Parameters, { spring }: Fittings): Given[] {
  const source = stated(given.spring, "common-practice");
  return [
    mm("d_w", spring.wire, "spring wire", source),
    mm("D_e", spring.outside, "spring outside", source),
    mm("L0", spring.freeLength, "spring free length", source),
    { symbol: "N_t", value: spring.totalCoils, unit: "", meaning: "spring coils in all", source },
    { symbol: "G", value: spring.shearModulus, unit: "MPa", meaning: "shear modulus of the wire", source },
    { symbol: "A_w", value: spring.strengthA, unit: "MPa", meaning: "strength of wire 1 mm thick", source },
    { symbol: "m_w", value: spring.strengthM, unit: "", meaning: "exponent of the wire's strength", source },
  ];
}

function mountGivens(given: Parameters, { mount }: Fittings): Given[] {
  const { washerPressure } = given.material.values;
  const bar = given.bar.row?.source ?? "your preset";
  return [
    mm("d_b", mount.thread.diameter, "mount bolt diameter", "iso-261"),
    mm("d_bh", mount.thread.mediumHole, "mount bolt hole", "iso-273"),
    mm("D_w", mount.washer.outside, "mount bolt washer", "iso-7089"),
    mm("W", given.bar.values.width, "bar width", bar),
    { symbol: "K", value: TORQUE_FACTOR, unit: "", meaning: "torque factor of a dry bolt", source: "shigley: 8-8" },
    {
      symbol: "p_s",
      value: washerPressure,
      unit: "MPa",
      meaning: "pressure the material bears for years",
      source: "material-data",
    },
  ];
}
