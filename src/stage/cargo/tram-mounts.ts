import type { Design } from "../../parts/family.ts";
import type { Parameters } from "../../parts/tram-mount/parameters.ts";
import type { PlacedPart } from "../machine.ts";
import type { SharedStage } from "./structure.ts";

/** A tram mount as its family has worked it out. */
export interface TramMount {
  /** Its name in the plan. */
  readonly mount: string;
  readonly part: PlacedPart;
  readonly design: Design;
  readonly given: Parameters;
}

/** Returns the tram mounts of the machine; one whose parameters were refused is left out. */
export function tramMountsOf({ designed }: Pick<SharedStage, "designed">): readonly TramMount[] {
  return designed.flatMap(({ part, design }) => {
    if (part.family !== "tram-mount") return [];
    return [{ mount: String(part.path[2]), part, design, given: part.parameters as Parameters }];
  });
}

/** Returns a number of a part by its name; 0 where it has none. */
export const numberOf = ({ dimensions }: Design, name: string) =>
  dimensions.find(({ key }) => key === name)?.value ?? 0;
