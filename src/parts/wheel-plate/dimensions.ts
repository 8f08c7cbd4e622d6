import type { Dimensions } from "../../core/dimension.ts";
import type { Derived } from "./derive.ts";
import { armDimensions } from "./dimensions/arms.ts";
import { axleDimensions } from "./dimensions/axles.ts";
import { faceDimensions } from "./dimensions/faces.ts";
import { forceDimensions } from "./dimensions/forces.ts";
import { plateDimensions } from "./dimensions/plate.ts";
import type { Parameters } from "./parameters.ts";

export const dimensions: Dimensions<Parameters, Derived> = {
  ...axleDimensions,
  ...armDimensions,
  ...plateDimensions,
  ...faceDimensions,
  ...forceDimensions,
};
