import type { Dimensions } from "../../../core/dimension.ts";
import type { Derived } from "../derive.ts";
import type { Parameters } from "../parameters.ts";
import { boltDimensions } from "./bolt.ts";
import { frameDimensions } from "./frame.ts";
import { springDimensions } from "./spring.ts";
import { stackDimensions } from "./stack.ts";

export const dimensions: Dimensions<Parameters, Derived> = {
  ...stackDimensions,
  ...springDimensions,
  ...boltDimensions,
  ...frameDimensions,
};
