import { CAP_SCREWS } from "../../src/catalogue/cap-screws.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 4762:2004, as tabulated on two reference pages",
  from: "seen",
  columns: ["headDiameter", "headHeight", "key", "threadLength"],
  rows: [
    ["M2.5", 4.5, 2.5, 2, 17],
    ["M3", 5.5, 3, 2.5, 18],
    ["M4", 7, 4, 3, 20],
    ["M5", 8.5, 5, 4, 22],
    ["M6", 10, 6, 5, 24],
    ["M8", 13, 8, 6, 28],
    ["M10", 16, 10, 8, 32],
    ["M12", 18, 12, 10, 36],
  ],
} as const;

agrees(CAP_SCREWS, SEEN);
