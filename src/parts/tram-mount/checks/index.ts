import { engagementShort, headAbovePlate, noStockLength, threadTooShort, wheelOutOfReach } from "./bolt.ts";
import { colderPlate, creeps, gapTooSmall, meetsPlate, tooHot, torqueCrushes, wallTooThin } from "./bracket.ts";
import { cannotFloat, slotOffLine, slotTooShort, typesWrong, washerTooSmall } from "./growth.ts";
import {
  dataDisagrees,
  goesSolid,
  indexOutOfRange,
  type MountCheck,
  mayBuckle,
  overstressed,
  preloadTooLow,
} from "./spring.ts";

export const checks: readonly MountCheck[] = [
  goesSolid,
  preloadTooLow,
  slotTooShort,
  slotOffLine,
  mayBuckle,
  tooHot,
  colderPlate,
  headAbovePlate,
  wheelOutOfReach,
  typesWrong,
  engagementShort,
  indexOutOfRange,
  overstressed,
  washerTooSmall,
  cannotFloat,
  gapTooSmall,
  meetsPlate,
  threadTooShort,
  noStockLength,
  torqueCrushes,
  creeps,
  wallTooThin,
  dataDisagrees,
];
