import { COUNTERSUNK_SCREWS } from "../../src/catalogue/countersunk-screws.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 10642, as tabulated on four reference pages",
  from: "seen",
  columns: ["headDiameter", "headHeight", "key"],
  rows: [
    ["M3", 6.72, 1.86, 2],
    ["M4", 8.96, 2.48, 2.5],
    ["M5", 11.2, 3.1, 3],
    ["M6", 13.44, 3.72, 4],
    ["M8", 17.92, 4.96, 5],
    ["M10", 22.4, 6.2, 6],
    ["M12", 26.88, 7.44, 8],
  ],
} as const;

const REMEMBERED = {
  source: "ISO 10642, later editions",
  from: "memory",
  columns: ["headLeast", "socketDepth"],
  rows: [
    ["M3", 5.54, 1.1],
    ["M4", 7.53, 1.5],
    ["M5", 9.43, 1.9],
    ["M6", 11.34, 2.2],
    ["M8", 15.24, 3],
    ["M10", 19.22, 3.6],
    ["M12", 23.12, 4.3],
  ],
} as const;

agrees(COUNTERSUNK_SCREWS, SEEN);
agrees(COUNTERSUNK_SCREWS, REMEMBERED);
