import { BUTTON_SCREWS } from "../../src/catalogue/button-screws.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 7380-1:2011, as tabulated on a standards data sheet",
  from: "seen",
  columns: ["headDiameter", "headHeight", "key"],
  rows: [
    ["M3", 5.7, 1.65, 2],
    ["M4", 7.6, 2.2, 2.5],
    ["M5", 9.5, 2.75, 3],
    ["M6", 10.5, 3.3, 4],
    ["M8", 14, 4.4, 5],
    ["M10", 17.5, 5.5, 6],
    ["M12", 21, 6.6, 8],
  ],
} as const;

agrees(BUTTON_SCREWS, SEEN);
