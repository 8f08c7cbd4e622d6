import { type Disagreement, differing } from "../core/disagreement.ts";
import type { Row, Table } from "../core/table.ts";

/** A metal, or the glass of a bed, as heat and weight see it. */
export type Metal = {
  readonly density: number;
  readonly modulus: number;
  readonly strength: number;
  readonly expansion: number;
  readonly specificHeat: number;
  readonly conductivity: number;
};

type Numbers = [number, number, number, number, number, number];

function metal(
  key: string,
  numbers: Numbers,
  from: "seen" | "memory",
  note: string,
  differs: Disagreement[] = [],
): Row<Metal> {
  const [density, modulus, strength, expansion, specificHeat, conductivity] = numbers;
  const values = { density, modulus, strength, expansion, specificHeat, conductivity };
  const row: Row<Metal> = { key, values, source: "material-data", standing: "typical", from, note };
  return differs.length === 0 ? row : { ...row, differs };
}

/** What other data pages have. */
const other = (settled: "lower" | "middle" | "usual", others: Partial<Record<keyof Metal, number[]>>) =>
  differing<Metal>(settled, "other data pages", others);

export const METALS: Table<Metal> = {
  name: "metals",
  item: "metal",
  title: "Metals of plates, bars and screws",
  fields: {
    density: { symbol: "rho", unit: "g/cm3", meaning: "density" },
    modulus: { symbol: "E", unit: "MPa", meaning: "modulus of elasticity" },
    strength: { symbol: "R_m", unit: "MPa", meaning: "tensile strength, the low end" },
    expansion: { symbol: "alpha", unit: "1e-6/K", meaning: "thermal expansion" },
    specificHeat: { symbol: "c", unit: "J/(kg·K)", meaning: "specific heat" },
    conductivity: { symbol: "k", unit: "W/(m·K)", meaning: "thermal conductivity" },
  },
  rows: [
    metal("aluminium", [2.7, 69000, 186, 23.4, 896, 167], "memory", "alloy not known: what most alloys have"),
    metal(
      "aluminium 6061-T6",
      [2.7, 68900, 310, 23.6, 896, 167],
      "seen",
      "yield 276 MPa",
      other("usual", { modulus: [68000], expansion: [23.2], specificHeat: [897], conductivity: [151, 202] }),
    ),
    metal(
      "aluminium 6063-T5",
      [2.69, 69000, 186, 23.4, 900, 209],
      "memory",
      "bars; yield 145 MPa",
      other("lower", { modulus: [70000], strength: [245] }),
    ),
    metal(
      "aluminium 6082-T6",
      [2.7, 70000, 290, 23.4, 900, 170],
      "seen",
      "yield 250 to 260 MPa",
      other("lower", { strength: [310], conductivity: [220] }),
    ),
    metal("aluminium 5083", [2.65, 70300, 290, 24, 900, 117], "seen", "cast plate", [
      ...other("middle", { modulus: [68000, 72000], expansion: [22.3, 25] }),
      ...other("lower", { density: [2.66], strength: [300], conductivity: [121] }),
    ]),
    metal("steel", [7.85, 205000, 360, 12, 490, 45], "memory", "plain carbon steel", [
      ...other("lower", { modulus: [210000], strength: [510], conductivity: [52] }),
      ...other("usual", { expansion: [11.7] }),
    ]),
    metal("stainless steel", [7.9, 193000, 500, 17.3, 500, 15], "memory", "1.4301", [
      ...other("lower", { modulus: [200000], strength: [700] }),
      ...other("usual", { expansion: [16] }),
    ]),
    metal(
      "glass",
      [2.5, 70000, 30, 8.5, 840, 1],
      "memory",
      "soda-lime float glass, for beds; all but the expansion is coarse",
    ),
  ],
  sketch: `
        +----------------------------+    rho: weigh it, divide by its volume
        |                            |--> alpha: grows when warm
        +----------------------------+    c: heat it takes to warm it
          ^ k: heat passes through        E, R_m: how it stretches, tears
`,
};
