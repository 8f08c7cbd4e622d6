import { LOCK_NUTS } from "../../src/catalogue/lock-nuts.ts";
import { agrees } from "./agrees.ts";

const REMEMBERED = {
  source: "ISO 7040 and ISO 10511",
  from: "memory",
  columns: ["acrossFlats", "tallHeight", "thinHeight"],
  rows: [
    ["M3", 5.5, 4.5, 3.9],
    ["M4", 7, 6, 5],
    ["M5", 8, 6.8, 5],
    ["M6", 10, 8, 6],
    ["M8", 13, 9.5, 6.76],
    ["M10", 16, 11.9, 8.56],
    ["M12", 18, 14.9, 10.23],
  ],
} as const;

const TWIN = {
  source: "ASME B18.16.3M, top insert, the metric twin of ISO 7040",
  from: "seen",
  columns: ["tallHeight"],
  rows: [
    ["M3", 4.5],
    ["M4", 6],
    ["M5", 6.8],
    ["M6", 8],
    ["M8", 9.5],
    ["M10", 11.9],
  ],
} as const;

agrees(LOCK_NUTS, REMEMBERED);
agrees(LOCK_NUTS, TWIN);
