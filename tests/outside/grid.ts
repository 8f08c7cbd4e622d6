import { field, rows, solve } from "./ccx.ts";

/** A level frame of bars that carries loads across its plane. Nodes are numbered as they stand in the list. */
export interface Grid {
  readonly nodes: readonly (readonly [x: number, y: number])[];
  readonly bars: readonly { from: number; to: number; modulus: number; inertia: number }[];
  /** Springs to the ground, up and down, N/mm. (The solver leaves out springs against turning.) */
  readonly springs: readonly { node: number; rate: number }[];
  readonly held: readonly { node: number; ways: readonly Way[] }[];
  /** Forces upwards, N, and moments about x or y, N·mm. */
  readonly loads: readonly { node: number; way: Way; amount: number }[];
}

export type Way = "up" | "aboutX" | "aboutY";

/** What a node does: mm upwards, and rad about x and y. */
export type Motion = Readonly<Record<Way, number>>;

const DEGREE: Readonly<Record<Way, number>> = { up: 3, aboutX: 4, aboutY: 5 };
/** Area of every bar, mm2, which nothing loads; and a shear factor so large that bars only bend, as in the tables. */
const AREA = 400;
const NO_SHEAR = 1e6;

/** Returns the motion of every node of a grid of beam elements. */
export function solveGrid({ nodes, bars, springs, held, loads }: Grid): Motion[] {
  const deck = [
    "*NODE,NSET=ALL",
    ...nodes.map(([x, y], node) => `${node + 1},${field(x)},${field(y)},0.`),
    "*USER ELEMENT,TYPE=U1,NODES=2,INTEGRATION POINTS=2,MAXDOF=6",
    ...bars.flatMap(({ from, to, modulus, inertia }, bar) => [
      `*ELEMENT,TYPE=U1,ELSET=B${bar}`,
      `${bar + 1},${from + 1},${to + 1}`,
      `*MATERIAL,NAME=M${bar}`,
      "*ELASTIC",
      `${field(modulus)},0.33`,
      `*BEAM SECTION,ELSET=B${bar},MATERIAL=M${bar},SECTION=GENERAL`,
      `${field(AREA)},${field(inertia)},0.,${field(inertia)},${field(NO_SHEAR)}`,
      "0.,0.,1.",
    ]),
    ...springs.flatMap(({ node, rate }, spring) => [
      `*ELEMENT,TYPE=SPRING1,ELSET=S${spring}`,
      `${bars.length + spring + 1},${node + 1}`,
      `*SPRING,ELSET=S${spring}`,
      `${DEGREE.up},`,
      `${field(rate)},0.`,
    ]),
    "*BOUNDARY",
    "ALL,1,2",
    "ALL,6,6",
    ...held.flatMap(({ node, ways }) => ways.map((way) => `${node + 1},${DEGREE[way]},${DEGREE[way]}`)),
    "*STEP",
    "*STATIC",
    "*CLOAD",
    ...loads.map(({ node, way, amount }) => `${node + 1},${DEGREE[way]},${field(amount)}`),
    "*NODE PRINT,NSET=ALL",
    "U",
    "*END STEP",
    "",
  ].join("\n");
  const table = rows(solve(deck));
  if (table.length !== nodes.length) throw new Error(`${table.length} of ${nodes.length} nodes came back`);
  return table.map(([, , , up = Number.NaN, aboutX = Number.NaN, aboutY = Number.NaN]) => ({ up, aboutX, aboutY }));
}

/** What the ground gives to a grid through each of its springs, N upwards. */
export function reactions({ springs }: Grid, motions: readonly Motion[]): number[] {
  return springs.map(({ node, rate }) => -rate * (motions[node]?.up ?? Number.NaN));
}

/** Moment with which a bar along x twists the node at its far end, N·mm; Poisson 0.33, torsion constant 2 I. */
export function twist(bar: Grid["bars"][number], length: number, motions: readonly Motion[]): number {
  const stiffness = ((bar.modulus / (2 * 1.33)) * 2 * bar.inertia) / length;
  return stiffness * ((motions[bar.from]?.aboutX ?? Number.NaN) - (motions[bar.to]?.aboutX ?? Number.NaN));
}
