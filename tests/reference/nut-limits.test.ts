import { NUT_LIMITS } from "../../src/catalogue/nut-limits.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 4032:2001 and ISO 4035, as tabulated on reference pages",
  from: "seen",
  columns: ["flatsLeast", "cornersLeast", "bearingFace", "heightLeast"],
  rows: [
    ["M2", 3.82, 4.32, 3.1, 1.35],
    ["M2.5", 4.82, 5.45, 4.1, 1.75],
    ["M3", 5.32, 6.01, 4.6, 2.15],
    ["M4", 6.78, 7.66, 5.9, 2.9],
    ["M5", 7.78, 8.79, 6.9, 4.4],
    ["M6", 9.78, 11.05, 8.9, 4.9],
    ["M8", 12.73, 14.38, 11.6, 6.44],
    ["M10", 15.73, 17.77, 14.6, 8.04],
    ["M12", 17.73, 20.03, 16.6, 10.37],
  ],
} as const;

const THIN = {
  source: "ISO 4035, as tabulated on two reference pages",
  from: "seen",
  columns: ["thinLeast"],
  rows: [
    ["M2", 0.95],
    ["M2.5", 1.35],
    ["M3", 1.55],
    ["M4", 1.95],
    ["M5", 2.45],
    ["M6", 2.9],
    ["M8", 3.7],
    ["M10", 4.7],
    ["M12", 5.7],
  ],
} as const;

agrees(NUT_LIMITS, SEEN);
agrees(NUT_LIMITS, THIN);
