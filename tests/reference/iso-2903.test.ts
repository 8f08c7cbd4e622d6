import { SCREW_LIMITS } from "../../src/catalogue/screw-limits.ts";
import { agrees } from "./agrees.ts";

const SEEN = {
  source: "ISO 2903, class 7e, a reference table and two screw makers' tables",
  from: "seen",
  columns: ["outsideMost", "outsideLeast", "pitchMost", "pitchLeast", "rootMost", "rootLeast"],
  rows: [
    ["Tr8x1.5", 8, 7.85, 7.183, 7.013, 6.2, 5.921],
    ["Tr10x2", 10, 9.82, 8.929, 8.739, 7.5, 7.191],
    ["Tr10x3", 10, 9.764, 8.415, 8.203, 6.5, 6.15],
    ["Tr12x2", 12, 11.82, 10.929, 10.729, 9.5, 9.179],
    ["Tr12x3", 12, 11.764, 10.415, 10.191, 8.5, 8.135],
    ["Tr14x3", 14, 13.764, 12.415, 12.191, 10.5, 10.135],
    ["Tr14x4", 14, 13.7, 11.905, 11.64, 9.5, 9.074],
    ["Tr16x4", 16, 15.7, 13.905, 13.64, 11.5, 11.074],
    ["Tr18x4", 18, 17.7, 15.905, 15.64, 13.5, 13.074],
    ["Tr20x4", 20, 19.7, 17.905, 17.64, 15.5, 15.074],
  ],
} as const;

agrees(SCREW_LIMITS, SEEN);
