import { WASHER_LIMITS } from "../../src/catalogue/washer-limits.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 7089 and ISO 7093-1, limits as tabulated on a reference page",
  from: "seen",
  columns: ["holeMost", "outsideLeast", "thicknessMost", "largeThicknessMost"],
  rows: [
    ["M4", 4.48, 8.64, 0.9, 1.1],
    ["M10", 10.77, 19.48, 2.2, 2.7],
  ],
} as const;

const REMEMBERED = {
  source: "ISO 7089 and ISO 7093-1, limits by ISO 4759-3",
  from: "memory",
  columns: ["holeMost", "outsideLeast", "thicknessMost"],
  rows: [
    ["M2", 2.34, 4.7, 0.35],
    ["M2.5", 2.84, 5.7, 0.55],
    ["M3", 3.38, 6.64, 0.55],
    ["M5", 5.48, 9.64, 1.1],
    ["M6", 6.62, 11.57, 1.8],
    ["M8", 8.62, 15.57, 1.8],
    ["M12", 13.27, 23.48, 2.7],
  ],
} as const;

agrees(WASHER_LIMITS, SEEN);
agrees(WASHER_LIMITS, REMEMBERED);
