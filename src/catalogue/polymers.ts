import { differing } from "../core/disagreement.ts";
import type { Row, Table } from "../core/table.ts";

/** A printing polymer as its data sheets have it, short time: the low and the high end of what was met. */
export type Polymer = {
  readonly densityLow: number;
  readonly densityHigh: number;
  readonly modulusLow: number;
  readonly modulusHigh: number;
  readonly strengthLow: number;
  readonly strengthHigh: number;
  readonly acrossLow: number;
  readonly acrossHigh: number;
  readonly softensLow: number;
  readonly softensHigh: number;
  readonly glassLow: number;
  readonly glassHigh: number;
  readonly shrinkLow: number;
  readonly shrinkHigh: number;
  readonly expansionLow: number;
  readonly expansionHigh: number;
  readonly conductivityLow: number;
  readonly conductivityHigh: number;
  readonly specificHeat: number;
  readonly creepModulus: number;
  readonly serviceLimit: number;
};

type Range = [low: number, high: number];
type Strength = { density: Range; modulus: Range; strength: Range; across: Range };
type Heat = { softens: Range; glass: Range; shrink: Range; expansion: Range; conductivity: Range };
/** Specific heat, creep modulus after 1000 h, service limit. */
type Singles = [number, number, number];

function polymer(key: string, strength: Strength, heat: Heat, singles: Singles, note: string, limits: number[]) {
  const [specificHeat, creepModulus, serviceLimit] = singles;
  const values: Polymer = {
    densityLow: strength.density[0],
    densityHigh: strength.density[1],
    modulusLow: strength.modulus[0],
    modulusHigh: strength.modulus[1],
    strengthLow: strength.strength[0],
    strengthHigh: strength.strength[1],
    acrossLow: strength.across[0],
    acrossHigh: strength.across[1],
    softensLow: heat.softens[0],
    softensHigh: heat.softens[1],
    glassLow: heat.glass[0],
    glassHigh: heat.glass[1],
    shrinkLow: heat.shrink[0],
    shrinkHigh: heat.shrink[1],
    expansionLow: heat.expansion[0],
    expansionHigh: heat.expansion[1],
    conductivityLow: heat.conductivity[0],
    conductivityHigh: heat.conductivity[1],
    specificHeat,
    creepModulus,
    serviceLimit,
  };
  const row: Row<Polymer> = { key, values, source: "material-data", standing: "typical", from: "memory", note };
  if (limits.length === 0) return row;
  const by = "older practice, or the lowest T_h less 15";
  return { ...row, differs: differing<Polymer>("lower", by, { serviceLimit: limits }) };
}

export const POLYMERS: Table<Polymer> = {
  name: "polymers",
  item: "polymer",
  title: "Printing polymers by their data sheets",
  fields: {
    densityLow: { symbol: "rho_1", unit: "g/cm3", meaning: "density, low end" },
    densityHigh: { symbol: "rho_2", unit: "g/cm3", meaning: "density, high end" },
    modulusLow: { symbol: "E_1", unit: "MPa", meaning: "modulus of elasticity, low end" },
    modulusHigh: { symbol: "E_2", unit: "MPa", meaning: "modulus of elasticity, high end" },
    strengthLow: { symbol: "R_1", unit: "MPa", meaning: "tensile strength along the layers, low end" },
    strengthHigh: { symbol: "R_2", unit: "MPa", meaning: "tensile strength along the layers, high end" },
    acrossLow: { symbol: "Z_1", unit: "MPa", meaning: "tensile strength across the layers, low end" },
    acrossHigh: { symbol: "Z_2", unit: "MPa", meaning: "tensile strength across the layers, high end" },
    softensLow: { symbol: "T_h", unit: "°C", meaning: "heat deflection temperature at 0.45 MPa, low end" },
    softensHigh: { symbol: "T_h2", unit: "°C", meaning: "heat deflection temperature at 0.45 MPa, high end" },
    glassLow: { symbol: "T_g", unit: "°C", meaning: "glass transition, low end" },
    glassHigh: { symbol: "T_g2", unit: "°C", meaning: "glass transition, high end" },
    shrinkLow: { symbol: "s_1", unit: "%", meaning: "shrink from hot to cold, low end" },
    shrinkHigh: { symbol: "s_2", unit: "%", meaning: "shrink from hot to cold, high end" },
    expansionLow: { symbol: "a_1", unit: "1e-6/K", meaning: "thermal expansion, low end" },
    expansionHigh: { symbol: "a_2", unit: "1e-6/K", meaning: "thermal expansion, high end" },
    conductivityLow: { symbol: "k_1", unit: "W/(m·K)", meaning: "thermal conductivity, low end" },
    conductivityHigh: { symbol: "k_2", unit: "W/(m·K)", meaning: "thermal conductivity, high end" },
    specificHeat: { symbol: "c", unit: "J/(kg·K)", meaning: "specific heat" },
    creepModulus: { symbol: "E_c", unit: "MPa", meaning: "modulus after 1000 h, low end; 0 when not known" },
    serviceLimit: { symbol: "T_s", unit: "°C", meaning: "service limit under load" },
  },
  rows: [
    polymer(
      "PLA",
      { density: [1.22, 1.31], modulus: [2000, 4000], strength: [23, 65], across: [12, 45] },
      { softens: [52, 65], glass: [53, 65], shrink: [0.2, 0.4], expansion: [68, 101], conductivity: [0.13, 0.13] },
      [1800, 0, 37],
      "creeps at room temperature under a load that stays; a matte one has 1.31 g/cm3, 2.0 GPa, 23 and 12 MPa",
      [45],
    ),
    polymer(
      "PETG",
      { density: [1.25, 1.29], modulus: [2000, 3000], strength: [44, 56], across: [25, 38] },
      { softens: [65, 75], glass: [75, 85], shrink: [0.2, 0.5], expansion: [68, 68], conductivity: [0.29, 0.29] },
      [1200, 0, 50],
      "sheets give HDT 65 to 75",
      [60],
    ),
    polymer(
      "ABS",
      { density: [1.02, 1.08], modulus: [2000, 2900], strength: [30, 50], across: [15, 28] },
      { softens: [77, 113], glass: [105, 105], shrink: [0.5, 0.8], expansion: [81, 94], conductivity: [0.19, 0.19] },
      [1400, 1200, 62],
      "longest service 62 to 77 by sheets; across the layers and creep from memory",
      [75],
    ),
    polymer(
      "ASA",
      { density: [1.05, 1.07], modulus: [1900, 2600], strength: [35, 54], across: [18, 30] },
      { softens: [86, 106], glass: [98, 112], shrink: [0.4, 0.7], expansion: [80, 110], conductivity: [0.17, 0.18] },
      [1300, 1250, 71],
      "upper values from a moulded sheet, annealed; printed low ends from memory",
      [80],
    ),
    polymer(
      "PC",
      { density: [1.18, 1.22], modulus: [2000, 3000], strength: [58, 75], across: [35, 52] },
      { softens: [125, 140], glass: [140, 150], shrink: [0.5, 0.7], expansion: [65, 70], conductivity: [0.2, 0.35] },
      [1200, 1600, 110],
      "filament blends have HDT 100 to 115: 85 for those",
      [],
    ),
    polymer(
      "PA12",
      { density: [1.01, 1.02], modulus: [1200, 1800], strength: [40, 50], across: [35, 48] },
      { softens: [115, 150], glass: [40, 55], shrink: [0.8, 1.5], expansion: [100, 120], conductivity: [0.23, 0.23] },
      [2000, 0, 80],
      "moisture lowers stiffness strongly; filament is weaker across layers",
      [100],
    ),
    polymer(
      "PA12-CF",
      { density: [1.1, 1.1], modulus: [5000, 6000], strength: [58, 72], across: [46, 58] },
      { softens: [150, 175], glass: [40, 55], shrink: [0.2, 0.5], expansion: [30, 60], conductivity: [0.4, 0.4] },
      [1700, 0, 110],
      "upper values from sintered parts; filament grades 3 to 8 GPa",
      [135],
    ),
    polymer(
      "PA6-CF",
      { density: [1.15, 1.2], modulus: [5000, 9000], strength: [80, 110], across: [30, 45] },
      { softens: [180, 215], glass: [50, 60], shrink: [0.2, 0.5], expansion: [20, 60], conductivity: [0.4, 0.4] },
      [1700, 0, 120],
      "dry values; a moulded one is far stiffer than a printed one",
      [165],
    ),
  ],
  sketch: `
        R_1, R_2: pull along the layers        Z_1, Z_2: pull across them
          <--- [=========] --->                     ^
               [=========]                       [=====]
               [=========]                       [=====]
        E_1, E_2: stiff at first                 [=====]
        E_c: after 1000 h                           v
        T_g, T_g2: glass    T_h, T_h2: bends under load    T_s: use below
        s_1, s_2: shrinks   a_1, a_2: grows when warm      c, k_1, k_2: heat
        rho_1, rho_2: weight
`,
};
