import { boreChecks } from "./bores.ts";
import { letteringChecks } from "./lettering.ts";
import { loadChecks } from "./load.ts";
import { mountingChecks } from "./mounting.ts";
import { type FootCheck, seatChecks } from "./seat.ts";
import { serviceChecks } from "./service.ts";
import { settingChecks } from "./settings.ts";

export const checks: readonly FootCheck[] = [
  ...settingChecks,
  ...seatChecks,
  ...boreChecks,
  ...serviceChecks,
  ...loadChecks,
  ...mountingChecks,
  ...letteringChecks,
];
