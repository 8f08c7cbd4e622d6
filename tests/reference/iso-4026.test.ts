import { THREADS } from "../../src/catalogue/threads.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 4026 to 4029, as tabulated by a stockist",
  from: "seen",
  columns: ["setScrewKey"],
  rows: [
    ["M2.5", 1.3],
    ["M3", 1.5],
    ["M4", 2],
    ["M5", 2.5],
    ["M6", 3],
    ["M8", 4],
  ],
} as const;

agrees(THREADS, SEEN);
