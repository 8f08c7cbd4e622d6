import { BEARINGS, type Bearing } from "../../../catalogue/bearings.ts";
import type { Finding } from "../../check.ts";
import { distanceKnown } from "../derive/axles.ts";
import type { Derived } from "../derive.ts";
import { fittings } from "../fittings.ts";
import type { Parameters } from "../parameters.ts";

type Wrong = Pick<Finding, "says" | "set" | "path">;

const measured = (says: string, name: string): Wrong => ({ says, set: `${name}: as measured`, path: [name] });

/** Returns what two sizes cannot be together, and what to state; nothing when all agree. */
export function contradiction(given: Parameters, derived: Derived): Wrong | undefined {
  return distanceWrong(given) ?? eccentricWrong(given, derived) ?? wheelWrong(given) ?? ringsWrong(given, derived);
}

function distanceWrong(given: Parameters): Wrong | undefined {
  if (distanceKnown(given) !== "unknown") return undefined;
  const says = `the distance from axle to bar is not known for this wheel on a ${given.barWidth} mm bar`;
  return { says, set: "overWheels: the caliper reading over two wheels pressed on the bar", path: ["overWheels"] };
}

function eccentricWrong(given: Parameters, derived: Derived): Wrong | undefined {
  const { bolt, thread, eccentric } = fittings(given);
  const { offset, bore, body } = given.eccentric.values;
  const metal = given.eccentricKind === "metal";
  if (metal && body < bore + 2 * offset) {
    return measured(`a bore of ${bore} mm off by ${offset} mm breaks out of a body of ${body} mm`, "eccentric");
  }
  if (eccentric.hexFlats < derived.eccentricHole) {
    return measured(`a hexagon of ${eccentric.hexFlats} mm falls through its hole`, "eccentric");
  }
  return metal && bore < thread.diameter - 0.01
    ? measured(`an ${bolt} bolt does not go through a bore of ${bore} mm`, "eccentric")
    : undefined;
}

function wheelWrong(given: Parameters): Wrong | undefined {
  const { bolt, thread } = fittings(given);
  const { innerLand, outerLand, outside, width, overBearings } = given.wheel.values;
  const { key, values: bearing } = given.bearing;
  if (innerLand >= outerLand || innerLand <= thread.diameter) {
    return measured("the lands of the wheel's bearings contradict each other or the bolt", "wheel");
  }
  if (width > outside || outside <= outerLand) {
    return measured("no wheel is wider than its diameter, or smaller than its bearings", "wheel");
  }
  const fits = ({ bore, outside: round, width: wide }: Bearing) =>
    Math.abs(bore - thread.diameter) <= 0.01 && round < outside && 2 * wide <= overBearings + 0.05;
  if (fits(bearing)) return undefined;
  const says = fits({ ...bearing, width: 0 })
    ? `two ${key} bearings are wider than the ${overBearings} mm over them`
    : `${key} bearings do not go between this wheel and an ${bolt} bolt`;
  const others = BEARINGS.rows.filter(({ values }) => fits(values)).map((one) => one.key);
  return { says, set: `bearing: ${[...others, "as measured"].join(", or ")}`, path: ["bearing"] };
}

function ringsWrong(given: Parameters, derived: Derived): Wrong | undefined {
  const { bolt, thread, washer, fender } = fittings(given);
  const rings = { washer, eccentricWasher: fender, ...(given.shimmed ? { shim: given.shim.values } : {}) };
  for (const [name, { hole, outside }] of Object.entries(rings)) {
    if (hole >= thread.diameter - 0.01 && outside > hole + 1) continue;
    return measured(`a ring ${hole} x ${outside} does not go on an ${bolt} bolt`, name);
  }
  if (derived.spacerOutside >= derived.fixedHole + 1) return undefined;
  const says = `a spacer of ${derived.spacerOutside} mm has no wall round an ${bolt} bolt`;
  return { says, set: `spacerOutside: ${2 * thread.diameter} mm`, path: ["spacerOutside"] };
}
