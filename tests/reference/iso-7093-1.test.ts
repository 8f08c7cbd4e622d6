import { LARGE_WASHERS } from "../../src/catalogue/large-washers.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 7093-1, as tabulated on a reference page",
  from: "seen",
  columns: ["hole", "outside", "thickness"],
  rows: [
    ["M3", 3.2, 9, 0.8],
    ["M4", 4.3, 12, 1],
    ["M10", 10.5, 30, 2.5],
  ],
} as const;

const REMEMBERED = {
  source: "ISO 7093-1",
  from: "memory",
  columns: ["hole", "outside", "thickness"],
  rows: [
    ["M6", 6.4, 18, 1.6],
    ["M8", 8.4, 24, 2],
    ["M12", 13, 37, 3],
  ],
} as const;

agrees(LARGE_WASHERS, SEEN);
agrees(LARGE_WASHERS, REMEMBERED);
