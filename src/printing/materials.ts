import type { Row, Table } from "../core/table.ts";

/** What a printing material can bear for years, not for a minute. */
export type Material = {
  readonly modulus: number;
  readonly inLayer: number;
  readonly acrossLayers: number;
  readonly washerPressure: number;
  readonly serviceLimit: number;
  readonly shrink: number;
  readonly density: number;
  readonly creepFactor: number;
  readonly pressInterference: number;
};

type Numbers = [number, number, number, number, number, number, number, number, number];

function material(key: string, numbers: Numbers, note: string): Row<Material> {
  const [modulus, inLayer, acrossLayers, washerPressure, serviceLimit, shrink, density, creep, press] = numbers;
  const values = {
    modulus,
    inLayer,
    acrossLayers,
    washerPressure,
    serviceLimit,
    shrink,
    density,
    creepFactor: creep,
    pressInterference: press,
  };
  return { key, values, source: "material-data", standing: "typical", from: "memory", note };
}

const OLDER = "the older loaded limit was";

/** Sustained values, conservative. The service limit is the lower of an older practice figure and lowest HDT - 15. */
export const MATERIALS: Table<Material> = {
  name: "materials",
  item: "material",
  title: "Printed materials under a load that stays",
  fields: {
    modulus: { symbol: "E", unit: "MPa", meaning: "modulus of elasticity, short time" },
    inLayer: { symbol: "sigma_in", unit: "MPa", meaning: "sustained stress along the layers" },
    acrossLayers: { symbol: "sigma_x", unit: "MPa", meaning: "sustained stress across the layers" },
    washerPressure: { symbol: "p_s", unit: "MPa", meaning: "sustained pressure under a washer" },
    serviceLimit: { symbol: "T_s", unit: "°C", meaning: "service limit under load" },
    shrink: { symbol: "s", unit: "%", meaning: "shrink from hot to cold" },
    density: { symbol: "rho", unit: "g/cm3", meaning: "density" },
    creepFactor: { symbol: "f_c", unit: "", meaning: "how many times the first deflection after years" },
    pressInterference: { symbol: "i_max", unit: "%", meaning: "largest press interference, of the diameter" },
  },
  rows: [
    material("PLA", [3000, 8, 4, 12, 37, 0.2, 1.24, 3, 0.4], `${OLDER} 45; lowest HDT 52 - 15 = 37 is used`),
    material("PETG", [2000, 7, 3.5, 12, 50, 0.4, 1.27, 3, 0.6], `${OLDER} 60; lowest HDT 65 - 15 = 50 is used`),
    material("ABS", [2000, 7, 3, 12, 62, 0.7, 1.04, 2, 0.4], `${OLDER} 75; lowest HDT 77 - 15 = 62 is used`),
    material("ASA", [2000, 7, 3, 12, 71, 0.6, 1.07, 2, 0.4], `${OLDER} 80; lowest HDT 86 - 15 = 71 is used`),
    material("PC", [2200, 12, 6, 18, 110, 0.7, 1.2, 1.7, 0.4], "filament blends soften near 100: 85 for those"),
    material("PA-CF", [4500, 12, 5, 15, 100, 0.3, 1.1, 1.7, 0.6], "dry values; moisture lowers stiffness"),
  ],
  sketch: `
        load along the layers: sigma_in        load across: sigma_x
          <--- [=========] --->                     ^
               [=========]                       [=====]
               [=========]                       [=====]
        under a washer: p_s   stiffness: E  f_c  [=====]
        heat: T_s             on cooling: s         v
        weight: rho           pressed-in ring: i_max
`,
};

/** Materials whose spools are often blends that serve only to a lower limit, °C. Source: material-data, from memory. */
export const BLEND_LIMITS: Readonly<Record<string, number>> = { PC: 85 };
