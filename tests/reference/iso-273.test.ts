import { THREADS } from "../../src/catalogue/threads.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 273:1979, as tabulated on two reference pages",
  from: "seen",
  columns: ["fineHole", "mediumHole", "coarseHole"],
  rows: [
    ["M2.5", 2.7, 2.9, 3.1],
    ["M3", 3.2, 3.4, 3.6],
    ["M4", 4.3, 4.5, 4.8],
    ["M5", 5.3, 5.5, 5.8],
    ["M6", 6.4, 6.6, 7],
    ["M8", 8.4, 9, 10],
    ["M10", 10.5, 11, 12],
    ["M12", 13, 13.5, 14.5],
  ],
} as const;

agrees(THREADS, SEEN);
