import { THREADS } from "../../src/catalogue/threads.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 2306, as tabulated by tap makers",
  from: "seen",
  columns: ["pitch", "tapDrill"],
  rows: [
    ["M2.5", 0.45, 2.05],
    ["M3", 0.5, 2.5],
    ["M4", 0.7, 3.3],
    ["M5", 0.8, 4.2],
    ["M6", 1, 5],
    ["M8", 1.25, 6.8],
    ["M10", 1.5, 8.5],
    ["M12", 1.75, 10.2],
  ],
} as const;

agrees(THREADS, SEEN);
