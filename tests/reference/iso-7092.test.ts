import { SMALL_WASHERS } from "../../src/catalogue/small-washers.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 7092, as tabulated on a reference page",
  from: "seen",
  columns: ["hole", "outside", "thickness"],
  rows: [
    ["M4", 4.3, 8, 0.5],
    ["M10", 10.5, 18, 1.6],
  ],
} as const;

const REMEMBERED = {
  source: "ISO 7092",
  from: "memory",
  columns: ["hole", "outside", "thickness"],
  rows: [
    ["M2", 2.2, 4.5, 0.3],
    ["M2.5", 2.7, 5, 0.5],
    ["M3", 3.2, 6, 0.5],
    ["M5", 5.3, 9, 1],
    ["M6", 6.4, 11, 1.6],
    ["M8", 8.4, 15, 1.6],
    ["M12", 13, 20, 2],
  ],
} as const;

agrees(SMALL_WASHERS, SEEN);
agrees(SMALL_WASHERS, REMEMBERED);
