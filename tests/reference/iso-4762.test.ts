import { CAP_SCREWS } from "../../src/catalogue/cap-screws.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 4762:2004, as tabulated on two reference pages",
  from: "seen",
  columns: [
    "headDiameter",
    "knurledDiameter",
    "headLeast",
    "headHeight",
    "headHeightLeast",
    "key",
    "socketDepth",
    "socketCorners",
    "threadLength",
  ],
  rows: [
    ["M2", 3.8, 3.98, 3.62, 2, 1.86, 1.5, 1, 1.733, 16],
    // biome-ignore lint/suspicious/noApproximativeNumericConstant: the corners of a socket of 2, not a logarithm
    ["M2.5", 4.5, 4.68, 4.32, 2.5, 2.36, 2, 1.1, 2.303, 17],
    ["M3", 5.5, 5.68, 5.32, 3, 2.86, 2.5, 1.3, 2.873, 18],
    ["M4", 7, 7.22, 6.78, 4, 3.82, 3, 2, 3.443, 20],
    ["M5", 8.5, 8.72, 8.28, 5, 4.82, 4, 2.5, 4.583, 22],
    ["M6", 10, 10.22, 9.78, 6, 5.7, 5, 3, 5.723, 24],
    ["M8", 13, 13.27, 12.73, 8, 7.64, 6, 4, 6.863, 28],
    ["M10", 16, 16.27, 15.73, 10, 9.64, 8, 5, 9.149, 32],
    ["M12", 18, 18.27, 17.73, 12, 11.57, 10, 6, 11.429, 36],
  ],
} as const;

agrees(CAP_SCREWS, SEEN);
