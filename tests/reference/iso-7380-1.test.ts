import { BUTTON_SCREWS } from "../../src/catalogue/button-screws.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 7380-1:2011, as tabulated on a standards data sheet",
  from: "seen",
  columns: ["headDiameter", "headLeast", "headHeight", "headHeightLeast", "key", "socketDepth"],
  rows: [
    ["M3", 5.7, 5.4, 1.65, 1.4, 2, 1.04],
    ["M4", 7.6, 7.24, 2.2, 1.95, 2.5, 1.3],
    ["M5", 9.5, 9.14, 2.75, 2.5, 3, 1.56],
    ["M6", 10.5, 10.07, 3.3, 3, 4, 2.08],
    ["M8", 14, 13.57, 4.4, 4.1, 5, 2.6],
    ["M10", 17.5, 17.07, 5.5, 5.2, 6, 3.12],
    ["M12", 21, 20.48, 6.6, 6.24, 8, 4.16],
  ],
} as const;

agrees(BUTTON_SCREWS, SEEN);
