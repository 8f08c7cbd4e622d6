import { SET_SCREWS } from "../../src/catalogue/set-screws.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 4026 to 4029, as tabulated by a stockist",
  from: "seen",
  columns: ["key", "socketDepth"],
  rows: [
    ["M2", 0.9, 0.8],
    ["M2.5", 1.3, 1.2],
    ["M3", 1.5, 1.2],
    ["M4", 2, 1.5],
    ["M5", 2.5, 2],
    ["M6", 3, 2],
    ["M8", 4, 3],
  ],
} as const;

agrees(SET_SCREWS, SEEN);
