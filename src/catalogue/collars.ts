import type { Row, Table } from "../core/table.ts";
import { noted } from "./noted.ts";

/** A collar that is clamped or screwed on a shaft or lead screw. */
export type Collar = {
  readonly bore: number;
  readonly outside: number;
  readonly width: number;
  readonly screw: string;
};

type Sizes = [number, number, number];

function clamp([bore, outside, width]: Sizes, screw: string, more?: string): Row<Collar> {
  const values = { bore, outside, width, screw };
  const crests = "on a lead screw it touches the thread's crests only: check that it runs true";
  const note = more === undefined ? crests : `${more}; ${crests}`;
  return { key: `${bore} clamp`, values, source: "common-practice", standing: "typical", from: "memory", note };
}

function solid([bore, outside, width]: Sizes, screw: string, note?: string): Row<Collar> {
  const values = { bore, outside, width, screw };
  return noted({ key: `${bore} set screw`, values, source: "din-705", standing: "standard", from: "memory" }, note);
}

export const COLLARS: Table<Collar> = {
  name: "collars",
  item: "collar",
  title: "Shaft collars: split clamps, and rings with a set screw",
  fields: {
    bore: { symbol: "d", unit: "mm", meaning: "bore" },
    outside: { symbol: "D", unit: "mm", meaning: "outside diameter" },
    width: { symbol: "b", unit: "mm", meaning: "width" },
    screw: { symbol: "M_c", unit: "", meaning: "thread of its screw" },
  },
  rows: [
    clamp([6, 16, 9], "M3"),
    clamp([8, 18, 9], "M3", "low-cost ones are 18 to 20 by 8 to 10, with M3 or M4"),
    clamp([10, 24, 9], "M3", "low-cost ones are 20 to 24 by 9 to 10"),
    clamp([12, 28, 11], "M4", "low-cost ones are 24 to 28 by 10 to 11"),
    clamp([15, 34, 13], "M5"),
    solid([6, 12, 8], "M4"),
    solid([8, 16, 8], "M4", "its point marks a lead screw's thread: the clamp form is kinder"),
    solid([10, 20, 10], "M5"),
    solid([12, 22, 12], "M6"),
  ],
  sketch: `
              |<----- D ----->|        |<- b ->|
               ______________          +-------+
              /    ____      \\         |       |
             |    / d  \\ ==== | M_c    +-------+
             |    \\____/      |        +-------+
              \\______________/         |       |
                                       +-------+
`,
};
