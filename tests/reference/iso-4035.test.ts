import { THIN_NUTS } from "../../src/catalogue/thin-nuts.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 4035, as tabulated on two reference pages",
  from: "seen",
  columns: ["acrossFlats", "height"],
  rows: [
    ["M2.5", 5, 1.6],
    ["M3", 5.5, 1.8],
    ["M4", 7, 2.2],
    ["M5", 8, 2.7],
    ["M6", 10, 3.2],
    ["M8", 13, 4],
    ["M10", 16, 5],
    ["M12", 18, 6],
  ],
} as const;

agrees(THIN_NUTS, SEEN);
