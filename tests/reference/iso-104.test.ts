import { THRUST_BEARINGS } from "../../src/catalogue/thrust-bearings.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 104, as listed on distributors pages",
  from: "seen",
  columns: ["bore", "outside", "height"],
  rows: [
    ["51100", 10, 24, 9],
    ["51101", 12, 26, 9],
    ["51102", 15, 28, 9],
    ["51104", 20, 35, 10],
  ],
} as const;

const REMEMBERED = {
  source: "ISO 104",
  from: "memory",
  columns: ["bore", "outside", "height"],
  rows: [
    ["51103", 17, 30, 9],
    ["51105", 25, 42, 11],
    ["F3-8M", 3, 8, 3.5],
    ["F4-9M", 4, 9, 4],
    ["F5-10M", 5, 10, 4],
    ["F5-11M", 5, 11, 4.5],
    ["F6-12M", 6, 12, 4.5],
    ["F6-14M", 6, 14, 5],
    ["F7-13M", 7, 13, 4.5],
    ["F8-16M", 8, 16, 5],
    ["F8-22M", 8, 22, 7],
    ["F10-18M", 10, 18, 5.5],
  ],
} as const;

agrees(THRUST_BEARINGS, SEEN);
agrees(THRUST_BEARINGS, REMEMBERED);
