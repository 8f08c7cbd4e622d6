import { THIN_NUTS } from "../../src/catalogue/thin-nuts.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 4035, as tabulated on two reference pages",
  from: "seen",
  columns: ["acrossFlats", "height", "acrossCorners"],
  rows: [
    ["M2", 4, 1.2, 4.32],
    ["M2.5", 5, 1.6, 5.45],
    ["M3", 5.5, 1.8, 6.01],
    ["M4", 7, 2.2, 7.66],
    ["M5", 8, 2.7, 8.79],
    ["M6", 10, 3.2, 11.05],
    ["M8", 13, 4, 14.38],
    ["M10", 16, 5, 17.77],
    ["M12", 18, 6, 20.03],
  ],
} as const;

agrees(THIN_NUTS, SEEN);
