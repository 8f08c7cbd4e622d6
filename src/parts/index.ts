import type { AnyFamily } from "./family.ts";
import { screwFoot } from "./screw-foot/index.ts";
import { thumbWheel } from "./thumb-wheel/index.ts";
import { tramMount } from "./tram-mount/index.ts";
import { wheelPlate } from "./wheel-plate/index.ts";
import { wheelSpacer } from "./wheel-spacer/index.ts";

/** Every family, in the order `parts` lists them. */
export const FAMILIES: readonly AnyFamily[] = [screwFoot, tramMount, thumbWheel, wheelPlate, wheelSpacer];
