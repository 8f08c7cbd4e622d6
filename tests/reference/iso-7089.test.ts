import { WASHERS } from "../../src/catalogue/washers.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 7089, as tabulated on five reference pages",
  from: "seen",
  columns: ["hole", "outside", "thickness"],
  rows: [
    ["M3", 3.2, 7, 0.5],
    ["M4", 4.3, 9, 0.8],
    ["M5", 5.3, 10, 1],
    ["M6", 6.4, 12, 1.6],
    ["M8", 8.4, 16, 1.6],
    ["M10", 10.5, 20, 2],
    ["M12", 13, 24, 2.5],
  ],
} as const;

const REMEMBERED = {
  source: "ISO 7089",
  from: "memory",
  columns: ["hole", "outside", "thickness"],
  rows: [
    ["M2", 2.2, 5, 0.3],
    ["M2.5", 2.7, 6, 0.5],
  ],
} as const;

agrees(WASHERS, SEEN);
agrees(WASHERS, REMEMBERED);
