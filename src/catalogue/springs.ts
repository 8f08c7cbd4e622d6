import type { Row, Table } from "../core/table.ts";
import { noted } from "./noted.ts";

/** A compression spring with closed and ground ends. Its wire tears at A / d^m, in MPa with the wire in mm. */
export type Spring = {
  readonly wire: number;
  readonly outside: number;
  readonly freeLength: number;
  readonly totalCoils: number;
  readonly shearModulus: number;
  readonly strengthA: number;
  readonly strengthM: number;
  readonly forThread: string;
};

const MUSIC_WIRE = { shearModulus: 81500, strengthA: 2211, strengthM: 0.145 };
const STAINLESS = { shearModulus: 73000, strengthA: 1867, strengthM: 0.146 };

type Sizes = [number, number, number, number];

function spring([wire, outside, freeLength, totalCoils]: Sizes, forThread: string, note?: string): Row<Spring> {
  const values = { wire, outside, freeLength, totalCoils, ...MUSIC_WIRE, forThread };
  const key = `${wire.toFixed(1)} x ${outside} x ${freeLength}`;
  return noted({ key, values, source: "common-practice", standing: "typical", from: "memory" }, note);
}

function stainlessSpring(sizes: Sizes, forThread: string, note: string): Row<Spring> {
  const plain = spring(sizes, forThread, note);
  return { ...plain, key: `${plain.key} stainless`, values: { ...plain.values, ...STAINLESS } };
}

const SOFT = "not to be closed solid if the wire is the softer EN 10270-1 SM";

export const SPRINGS: Table<Spring> = {
  name: "springs",
  item: "spring",
  title: "Compression springs, ends closed and ground",
  fields: {
    wire: { symbol: "d_w", unit: "mm", meaning: "wire diameter" },
    outside: { symbol: "D_e", unit: "mm", meaning: "outside diameter" },
    freeLength: { symbol: "L_0", unit: "mm", meaning: "free length" },
    totalCoils: { symbol: "N_t", unit: "", meaning: "coils in all, both dead ends counted" },
    shearModulus: { symbol: "G", unit: "MPa", meaning: "shear modulus of the wire" },
    strengthA: { symbol: "A", unit: "MPa", meaning: "tensile strength of wire 1 mm thick" },
    strengthM: { symbol: "m", unit: "", meaning: "how fast the strength falls with the wire's thickness" },
    forThread: { symbol: "M_b", unit: "", meaning: "largest usual bolt inside it" },
  },
  rows: [
    spring([0.8, 6, 15, 8], "M3"),
    spring([1.0, 8, 20, 8], "M4", "also used on M3"),
    spring([1.2, 10, 25, 8], "M5"),
    spring([1.2, 9, 20, 7], "M4", SOFT),
    spring([1.5, 10, 25, 8], "M5", SOFT),
    stainlessSpring([0.8, 6, 20, 9], "M3", "not to be closed solid: stop its travel at 11.1"),
    stainlessSpring([1.2, 8, 25, 9], "M4", "not to be closed solid: stop its travel at 12.0"),
  ],
  sketch: `
             |<-- D_e -->|
        ---  (===========)
              \\\\       \\\\       d_w: diameter of the wire
        L_0    \\\\       \\\\      N_t: count the coils, flat ends too
              //       //       M_b: bolt that passes inside
        ---  (===========)
         G, A, m: the wire's steel; it tears at A / d_w^m
`,
};
