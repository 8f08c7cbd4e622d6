import { NUTS } from "../../src/catalogue/nuts.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 4032:2001, as tabulated on three reference pages",
  from: "seen",
  columns: ["acrossFlats", "height"],
  rows: [
    ["M2", 4, 1.6],
    ["M2.5", 5, 2],
    ["M3", 5.5, 2.4],
    ["M4", 7, 3.2],
    ["M5", 8, 4.7],
    ["M6", 10, 5.2],
    ["M8", 13, 6.8],
    ["M10", 16, 8.4],
    ["M12", 18, 10.8],
  ],
} as const;

agrees(NUTS, SEEN);
