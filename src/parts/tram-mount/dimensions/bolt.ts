import type { Dimension, Dimensions } from "../../../core/dimension.ts";
import type { BoltNumbers, SetLength } from "../bolt.ts";
import type { Parameters } from "../parameters.ts";

type Joint = Parameters["joint"];

const PAST = { "thumb-wheel": " - m", "captive-nut": " - m", insert: " - l_i", "tapped-plate": "" } as const;
const UNDER = {
  "thumb-wheel": "u_low + t_so + f_w + m",
  "captive-nut": "u_low - (t - h_r - m)",
  insert: "u_low",
  "tapped-plate": "t_so + k_x",
} as const;

const tapped = (joint: Joint) => joint === "tapped-plate";
const tail = (symbol: string, meaning: string, spring: string): Dimension<Parameters> => ({
  symbol,
  unit: "mm",
  meaning,
  formula: ({ joint }) => (tapped(joint) ? "0" : `L_b - S - ${spring}${PAST[joint]}`),
  source: "geometry",
});

type Bolt = Omit<SetLength, "tappedBolt"> & BoltNumbers;

export const boltDimensions: Dimensions<Parameters, Bolt> = {
  bandLow: {
    symbol: "B_low",
    unit: "mm",
    meaning: "shortest set length that spring and bolt allow",
    formula: ({ joint }) => (tapped(joint) ? "max(L_low, L_b - S - t_pl + 0.5 + R)" : "L_low"),
    source: "geometry",
  },
  bandHigh: {
    symbol: "B_high",
    unit: "mm",
    meaning: "longest set length that spring and bolt allow",
    formula: ({ joint }) => (tapped(joint) ? "min(L_high, L_b - S - d - R)" : "L_high"),
    source: "geometry",
  },
  setLength: {
    symbol: "L_set",
    unit: "mm",
    meaning: "length of the spring as set",
    formula: ({ setLength, joint }) => {
      if (setLength !== undefined) return `${setLength}`;
      return tapped(joint)
        ? '"the low end of the band, up to 0.1"'
        : '"the middle of the band, to 0.5 if that is inside, else to 0.1"';
    },
    source: "design-rule",
  },
  boltNeeded: {
    symbol: "L_need",
    unit: "mm",
    meaning: "least length of the tram bolt",
    formula: ({ joint }) => (tapped(joint) || joint === "insert" ? "S + L_max + d" : "S + L_max + m + 2 * p"),
    source: "common-practice",
  },
  boltMost: {
    symbol: "L_most",
    unit: "mm",
    meaning: "greatest length of a bolt in a tapped plate; 0 for other joints",
    formula: ({ joint }) => (tapped(joint) ? "S + L_min + t_pl - 0.5" : "0"),
    source: "common-practice",
  },
  boltLength: {
    symbol: "L_b",
    unit: "mm",
    meaning: "length of the tram bolt; 0 when none in stock will do",
    formula: ({ boltLength }) =>
      boltLength === undefined ? '"the shortest in stock that is long enough"' : `${boltLength}`,
    source: "iso-888",
  },
  shank: {
    symbol: "L_sh",
    unit: "mm",
    meaning: "length under the head without thread",
    formula: ({ joint, fullThread }) => (tapped(joint) || fullThread ? "0" : "L_b - min(2 * d + 12, L_b)"),
    source: "iso-4762: reference thread length, from memory",
  },
  nutAt: {
    symbol: "L_nut",
    unit: "mm",
    meaning: "where the nut's thread begins at the low end, from the head",
    formula: "S + L_min",
    source: "geometry",
  },
  engagement: {
    symbol: "E_t",
    unit: "mm",
    meaning: "thread in a tapped plate at the high end; 0 for other joints",
    formula: ({ joint }) => (tapped(joint) ? "L_b - S - L_max" : "0"),
    source: "geometry",
  },
  tipBelow: {
    symbol: "u_tip",
    unit: "mm",
    meaning: "bolt tip below the top of a tapped plate at the low end; 0 for other joints",
    formula: ({ joint }) => (tapped(joint) ? "S + L_min + t_pl - L_b" : "0"),
    source: "geometry",
  },
  tailSet: tail("u_set", "bolt beyond its nut as set, beyond the bracket with an insert", "L_set"),
  tailLow: tail("u_low", "bolt beyond its nut at the low end, beyond the bracket with an insert", "L_min"),
  under: {
    symbol: "u_all",
    unit: "mm",
    meaning: "lowest point under the bracket at the low end",
    formula: ({ joint }) => UNDER[joint],
    source: "geometry",
  },
};
