import type { Plan } from "../schema/index.ts";
import { placedBar } from "./placed-bar.ts";
import { touchedNames, type Unread } from "./unread.ts";

/** Returns the bars of a plan that are bodies and that were read as they were typed. */
export function soundBars({ bars }: Plan, unread: Unread = []): Plan["bars"] {
  const touched = touchedNames(unread, "bars");
  const sound = Object.entries(bars).filter(([name, bar]) => {
    const { length, wide, high } = placedBar(name, bar);
    return length > 0 && wide > 0 && high > 0 && !touched.includes(name);
  });
  return Object.fromEntries(sound);
}
