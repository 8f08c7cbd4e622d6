import { THREADS } from "../../src/catalogue/threads.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 2306, as tabulated by tap makers",
  from: "seen",
  columns: ["pitch", "tapDrill", "nutMinor"],
  rows: [
    ["M2", 0.4, 1.6, 1.567],
    ["M2.5", 0.45, 2.05, 2.013],
    ["M3", 0.5, 2.5, 2.459],
    ["M3.5", 0.6, 2.9, 2.85],
    ["M4", 0.7, 3.3, 3.242],
    ["M5", 0.8, 4.2, 4.134],
    ["M6", 1, 5, 4.917],
    ["M8", 1.25, 6.8, 6.647],
    ["M10", 1.5, 8.5, 8.376],
    ["M12", 1.75, 10.2, 10.106],
  ],
} as const;

const LARGEST = {
  source: "ISO 965-5, an extract",
  from: "seen",
  columns: ["nutMinorLargest"],
  rows: [
    ["M10", 8.676],
    ["M12", 10.441],
  ],
} as const;

const REMEMBERED = {
  source: "ISO 965-1, tolerance 6H",
  from: "memory",
  columns: ["nutMinorLargest"],
  rows: [
    ["M2", 1.679],
    ["M2.5", 2.138],
    ["M3", 2.599],
    ["M3.5", 3.01],
    ["M4", 3.422],
    ["M5", 4.334],
    ["M6", 5.153],
    ["M8", 6.912],
  ],
} as const;

const DRILLS = {
  source: "ISO 2306",
  from: "memory",
  columns: ["tapDrill"],
  rows: [
    ["M7", 6],
    ["M14", 12],
    ["M16", 14],
  ],
} as const;

agrees(THREADS, SEEN);
agrees(THREADS, LARGEST);
agrees(THREADS, REMEMBERED);
agrees(THREADS, DRILLS);
