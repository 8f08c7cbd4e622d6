import { HEX_SCREWS } from "../../src/catalogue/hex-screws.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 4017:2011, as tabulated on a reference page of DIN 933, equal from M3 to M8",
  from: "seen",
  columns: ["acrossFlats", "headHeight"],
  rows: [
    ["M3", 5.5, 2],
    ["M4", 7, 2.8],
    ["M5", 8, 3.5],
    ["M6", 10, 4],
    ["M8", 13, 5.3],
  ],
} as const;

const REMEMBERED = {
  source: "ISO 4017:2011",
  from: "memory",
  columns: ["acrossFlats", "headHeight"],
  rows: [
    ["M2.5", 5, 1.7],
    ["M10", 16, 6.4],
    ["M12", 18, 7.5],
  ],
} as const;

agrees(HEX_SCREWS, SEEN);
agrees(HEX_SCREWS, REMEMBERED);
