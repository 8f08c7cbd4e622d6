import { type Refusal, refuse } from "../core/calculation.ts";
import { brief } from "./bounded.ts";

/** Refuses a spring whose coils touch already, both lengths in mm. */
export function springSolid(solidLength: number, freeLength: number): Refusal {
  const coils = `its coils fill ${brief(solidLength)} mm`;
  return refuse({
    name: "spring-already-solid",
    says: `the spring is solid at its free length: ${brief(freeLength)} mm, and ${coils}`,
    found: { value: freeLength, unit: "mm" },
    limit: { value: solidLength, unit: "mm" },
    set: `a free length of over ${brief(solidLength)} mm, fewer coils or thinner wire`,
  });
}
