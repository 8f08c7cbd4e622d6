import { LOCK_NUTS } from "../../src/catalogue/lock-nuts.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "DIN 985:1987, as tabulated on three reference pages",
  from: "seen",
  columns: ["acrossFlats", "height"],
  rows: [
    ["M3", 5.5, 4],
    ["M4", 7, 5],
    ["M5", 8, 5],
    ["M6", 10, 6],
    ["M8", 13, 8],
    ["M10", 16, 10],
    ["M12", 18, 12],
  ],
} as const;

agrees(LOCK_NUTS, SEEN);
