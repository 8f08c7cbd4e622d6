import { LOCK_NUTS } from "../../src/catalogue/lock-nuts.ts";
import { agrees } from "./agrees.ts";

const REMEMBERED = {
  source: "ISO 7040",
  from: "memory",
  columns: ["acrossFlats", "tallHeight"],
  rows: [
    ["M3", 5.5, 4.5],
    ["M4", 7, 6],
    ["M5", 8, 6.8],
    ["M6", 10, 8],
    ["M8", 13, 9.5],
    ["M10", 16, 11.9],
    ["M12", 18, 14.9],
  ],
} as const;

agrees(LOCK_NUTS, REMEMBERED);
