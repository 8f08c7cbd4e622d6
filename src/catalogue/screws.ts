import type { Row, Table } from "../core/table.ts";
import { noted } from "./noted.ts";

/** A trapezoidal lead screw, its thread at basic size. */
export type Screw = {
  readonly diameter: number;
  readonly pitch: number;
  readonly starts: number;
  readonly lead: number;
  readonly pitchDiameter: number;
  readonly rootDiameter: number;
};

type Origin = Pick<Row, "source" | "standing" | "from">;

const SEEN: Origin = { source: "iso-2904", standing: "standard", from: "seen" };
const REMEMBERED: Origin = { ...SEEN, from: "memory" };
const TRADE: Origin = { source: "common-practice", standing: "typical", from: "memory" };

/** Nominal diameter, pitch, pitch diameter, root diameter: typed in, so that a test can hold them to the formulas. */
type Form = [number, number, number, number];

function screw(form: Form, starts: number, origin: Origin, note?: string): Row<Screw> {
  const [diameter, pitch, pitchDiameter, rootDiameter] = form;
  const lead = pitch * starts;
  const key = starts === 1 ? `Tr${diameter}x${pitch}` : `Tr${diameter}x${lead}(P${pitch})`;
  const values = { diameter, pitch, starts, lead, pitchDiameter, rootDiameter };
  return noted({ key, values, ...origin }, note);
}

const TR8: Form = [8, 2, 7, 5.5];
const NAME = "sold under one name with lead 2, 4 and 8: count the starts before you order a nut";
const BY_FORMULA = "not in the list of ISO 2902; sizes by the formulas of ISO 2904";
const OLDER = "an older size, still sold; sizes from two makers' tables";

export const SCREWS: Table<Screw> = {
  name: "screws",
  item: "lead screw",
  title: "Trapezoidal lead screws",
  fields: {
    diameter: { symbol: "d", unit: "mm", meaning: "outside diameter" },
    pitch: { symbol: "P", unit: "mm", meaning: "distance from thread to thread" },
    starts: { symbol: "n", unit: "", meaning: "number of starts" },
    lead: { symbol: "P_h", unit: "mm", meaning: "rise per turn" },
    pitchDiameter: { symbol: "d2", unit: "mm", meaning: "pitch diameter" },
    rootDiameter: { symbol: "d3", unit: "mm", meaning: "root diameter" },
  },
  rows: [
    screw([8, 1.5, 7.25, 6.2], 1, SEEN),
    screw(TR8, 1, TRADE, `${NAME}; ${BY_FORMULA}`),
    screw(TR8, 2, TRADE, `${NAME}; ${BY_FORMULA}`),
    screw(TR8, 4, TRADE, `${NAME}; ${BY_FORMULA}`),
    screw(TR8, 5, TRADE, `rarer; ${BY_FORMULA}`),
    screw([9, 2, 8, 6.5], 1, REMEMBERED, "the row is garbled where it was read; recomputed by the formulas"),
    screw([10, 1.5, 9.25, 8.2], 1, REMEMBERED, "the row is garbled where it was read; recomputed by the formulas"),
    screw([10, 2, 9, 7.5], 1, SEEN),
    screw([10, 2, 9, 7.5], 2, { ...SEEN, standing: "published" }, "a screw maker's table"),
    screw([10, 2, 9, 7.5], 4, TRADE, BY_FORMULA),
    screw([10, 3, 8.5, 6.5], 1, { ...SEEN, standing: "published" }, OLDER),
    screw([11, 2, 10, 8.5], 1, SEEN),
    screw([12, 2, 11, 9.5], 1, SEEN),
    screw([12, 2, 11, 9.5], 4, TRADE, BY_FORMULA),
    screw([12, 3, 10.5, 8.5], 1, SEEN),
    screw([12, 3, 10.5, 8.5], 2, { ...SEEN, standing: "published" }, "a screw maker's table"),
    screw([14, 2, 13, 11.5], 1, SEEN),
    screw([14, 3, 12.5, 10.5], 1, SEEN),
    screw([14, 4, 12, 9.5], 1, { ...SEEN, standing: "published" }, OLDER),
    screw([16, 2, 15, 13.5], 1, SEEN),
    screw([16, 3, 14.5, 12.5], 1, { ...REMEMBERED, standing: "published" }, `${BY_FORMULA}; some makers offer it`),
    screw([16, 4, 14, 11.5], 1, SEEN),
    screw([16, 4, 14, 11.5], 2, { ...SEEN, standing: "published" }, "a screw maker's table"),
    screw([18, 4, 16, 13.5], 1, SEEN),
    screw([20, 4, 18, 15.5], 1, SEEN),
  ],
  sketch: `
            |<------- d ------->|
            |  |<---- d2 --->|  |
            |  |  |< d3 >|   |  |
        ---  \\__  |      |  __/
         P      \\ |      | /
        ---   __/ |      | \\__         P_h = n P: one turn lifts so much,
             /    |      |    \\             n threads start at the end
`,
};
