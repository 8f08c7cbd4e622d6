import type { Printer } from "../../../printing/printer.ts";
import { type Bought, boughtFor } from "../bought.ts";
import type { Parameters } from "../parameters.ts";
import { type Bridge, bridgeOf, type Posts, postsOf } from "./bridge.ts";
import { type Cap, capOf } from "./cap.ts";
import { type Clearances, clearancesOf } from "./clearances.ts";
import { type Corner, cornerOf } from "./corner.ts";
import { type Fixing, fixingOf } from "./fixing.ts";
import { type Housing, housingOf, pocketOf } from "./housing.ts";
import { type Loads, loadsOf } from "./loads.ts";
import { type Service, serviceOf } from "./service.ts";
import { type Stack, stackOf } from "./stack.ts";

/** Everything that follows from the parameters of a foot; numbers are explained one by one in the dimensions. */
export interface Derived extends Posts, Housing, Fixing, Stack, Corner, Bridge, Cap, Loads, Service, Clearances {
  readonly bought: Bought;
}

/** Returns everything that follows from the parameters: mm, N, MPa. Never throws on what the schema accepts. */
export function derive(given: Parameters, printer: Printer): Derived {
  const bought = boughtFor(given);
  const posts = postsOf(given, bought, pocketOf(given, bought));
  const housing = { ...posts, ...housingOf(given, bought, posts, printer) };
  const fixing = { ...housing, ...fixingOf(given, bought, housing, printer) };
  const stack = { ...fixing, ...stackOf(given, bought, fixing, printer) };
  const corner = { ...stack, ...cornerOf(given, bought, stack) };
  const bridge = { ...corner, ...bridgeOf(bought, corner, printer) };
  const cap = { ...bridge, ...capOf(given, bought, bridge) };
  const loads = { ...cap, ...loadsOf(given, bought, cap) };
  const service = { ...loads, ...serviceOf(given, bought, loads) };
  return { ...service, ...clearancesOf(given, bought, service), bought };
}
