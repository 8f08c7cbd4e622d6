import type { Dimensions } from "../../../core/dimension.ts";
import type { Derived } from "../derive/index.ts";
import type { Parameters } from "../parameters.ts";
import { bodyDimensions } from "./body.ts";
import { loadDimensions } from "./loads.ts";
import { serviceDimensions } from "./service.ts";
import { stackDimensions } from "./stack.ts";

export const dimensions: Dimensions<Parameters, Derived> = {
  ...bodyDimensions,
  ...stackDimensions,
  ...loadDimensions,
  ...serviceDimensions,
};
