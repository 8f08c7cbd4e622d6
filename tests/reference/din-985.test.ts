import { LOCK_NUTS } from "../../src/catalogue/lock-nuts.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "DIN 985:1987, as tabulated on three reference pages",
  from: "seen",
  columns: ["acrossFlats", "acrossCorners", "height", "hexagonHeight"],
  rows: [
    ["M3", 5.5, 6.01, 4, 2.4],
    ["M4", 7, 7.66, 5, 2.9],
    ["M5", 8, 8.79, 5, 3.2],
    ["M6", 10, 11.05, 6, 3.4],
    ["M8", 13, 14.38, 8, 4.7],
    ["M10", 16, 17.77, 10, 6],
    ["M12", 18, 20.03, 12, 7.6],
  ],
} as const;

agrees(LOCK_NUTS, SEEN);
