import { THREADS } from "../../src/catalogue/threads.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 273:1979, as tabulated on two reference pages",
  from: "seen",
  columns: ["fineHole", "mediumHole", "coarseHole"],
  rows: [
    ["M2", 2.2, 2.4, 2.6],
    ["M2.5", 2.7, 2.9, 3.1],
    ["M3", 3.2, 3.4, 3.6],
    ["M3.5", 3.7, 3.9, 4.2],
    ["M4", 4.3, 4.5, 4.8],
    ["M5", 5.3, 5.5, 5.8],
    ["M6", 6.4, 6.6, 7],
    ["M7", 7.4, 7.6, 8],
    ["M8", 8.4, 9, 10],
    ["M10", 10.5, 11, 12],
    ["M12", 13, 13.5, 14.5],
  ],
} as const;

const REMEMBERED = {
  source: "ISO 273:1979",
  from: "memory",
  columns: ["fineHole", "mediumHole", "coarseHole"],
  rows: [
    ["M14", 15, 15.5, 16.5],
    ["M16", 17, 17.5, 18.5],
  ],
} as const;

agrees(THREADS, SEEN);
agrees(THREADS, REMEMBERED);
