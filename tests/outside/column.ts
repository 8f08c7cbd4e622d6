import { field, rows, solve } from "./ccx.ts";

export type Ends = "fixed-free" | "pinned" | "fixed-pinned" | "fixed-fixed";

/** A straight column or beam along x, of a rectangular section that is `width` across and `depth` up and down. */
export interface Column {
  readonly length: number;
  readonly width: number;
  readonly depth: number;
  readonly modulus: number;
  readonly poisson: number;
  /** Density, g/cm3. */
  readonly density: number;
  readonly ends: Ends;
}

const ELEMENTS = 40;
const LAST = 2 * ELEMENTS + 1;

/** Ways in which each end is held: 1 to 3 along x, y, z, 4 to 6 about them. */
const HELD: Readonly<Record<Ends, readonly string[]>> = {
  "fixed-free": ["1,1,6"],
  pinned: ["1,1,4", `${LAST},2,3`],
  "fixed-pinned": ["1,1,6", `${LAST},2,3`],
  "fixed-fixed": ["1,1,6", `${LAST},2,6`],
};

/** Quadratic beam elements, which the solver turns into bricks: bending, shear, buckling and vibration come from those. */
function deck({ length, width, depth, modulus, poisson, density, ends }: Column, step: readonly string[]): string {
  const nodes = Array.from(
    { length: LAST },
    (_, index) => `${index + 1},${field((length * index) / (LAST - 1))},0.,0.`,
  );
  const elements = Array.from({ length: ELEMENTS }, (_, index) => {
    const first = 2 * index + 1;
    return `${index + 1},${first},${first + 1},${first + 2}`;
  });
  return [
    "*NODE,NSET=ALL",
    ...nodes,
    "*ELEMENT,TYPE=B32R,ELSET=BEAM",
    ...elements,
    "*MATERIAL,NAME=M",
    "*ELASTIC",
    `${field(modulus)},${field(poisson)}`,
    "*DENSITY",
    // N, mm and s make the mass a tonne.
    field(density * 1e-9),
    "*BEAM SECTION,ELSET=BEAM,MATERIAL=M,SECTION=RECT",
    `${field(width)},${field(depth)}`,
    "0.,1.,0.",
    "*BOUNDARY",
    ...HELD[ends],
    "*STEP",
    ...step,
    "*END STEP",
    "",
  ].join("\n");
}

/** Returns the load along the axis at which it buckles, N. */
export function bucklingLoad(column: Column): number {
  const table = rows(solve(deck(column, ["*BUCKLE", "1", "*CLOAD", `${LAST},1,-1.`])));
  return table.find((row) => row.length === 2)?.[1] ?? Number.NaN;
}

/** Returns its lowest frequency of bending, Hz. */
export function bendingFrequency(column: Column): number {
  const table = rows(solve(deck(column, ["*FREQUENCY", "1"])));
  return table.find((row) => row.length === 5)?.[3] ?? Number.NaN;
}

/** Returns how far the free end sinks under a load across it, mm, shear included. */
export function tipSag(column: Column, force: number): number {
  const print = ["*NODE PRINT,NSET=ALL", "U"];
  const table = rows(solve(deck(column, ["*STATIC", "*CLOAD", `${LAST},3,${field(-force)}`, ...print])));
  return -(table.find(([node]) => node === LAST)?.[3] ?? Number.NaN);
}
