import { boreChecks } from "./bores.ts";
import { loadChecks } from "./load.ts";
import { type FootCheck, seatChecks } from "./seat.ts";
import { serviceChecks } from "./service.ts";

export const checks: readonly FootCheck[] = [...seatChecks, ...boreChecks, ...serviceChecks, ...loadChecks];
