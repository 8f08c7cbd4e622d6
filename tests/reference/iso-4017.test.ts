import { HEX_SCREWS } from "../../src/catalogue/hex-screws.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 4017:2011, as tabulated on a reference page of DIN 933, equal from M3 to M8",
  from: "seen",
  columns: ["acrossFlats", "headHeight", "acrossCorners", "bearingFace"],
  rows: [
    ["M3", 5.5, 2, 6.01, 4.57],
    ["M4", 7, 2.8, 7.66, 5.88],
    ["M5", 8, 3.5, 8.79, 6.88],
    ["M6", 10, 4, 11.05, 8.88],
    ["M8", 13, 5.3, 14.38, 11.63],
  ],
} as const;

const REMEMBERED = {
  source: "ISO 4017:2011",
  from: "memory",
  columns: ["acrossFlats", "headHeight", "acrossCorners", "bearingFace"],
  rows: [
    ["M2", 4, 1.4, 4.32, 3.07],
    ["M2.5", 5, 1.7, 5.45, 4.07],
    ["M10", 16, 6.4, 17.77, 14.63],
    ["M12", 18, 7.5, 20.03, 16.63],
  ],
} as const;

agrees(HEX_SCREWS, SEEN);
agrees(HEX_SCREWS, REMEMBERED);
