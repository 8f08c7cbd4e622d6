import type { AnyFamily } from "./family.ts";
import { wheelSpacer } from "./wheel-spacer/index.ts";

/** Every family, in the order `parts` lists them. */
export const FAMILIES: readonly AnyFamily[] = [wheelSpacer];
