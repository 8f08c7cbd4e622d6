import { isSetCollar } from "../bought.ts";
import type { Parameters } from "../parameters.ts";
import { mm, of } from "./entry.ts";

const LIMIT = '"0.25 C0 for bores up to 12 and light series, 0.5 C0 otherwise"';
const TILT =
  '"play of the nut over its distance, plus the bend of the screw under the belt; 0 when the distance is not given"';

/** Whether a thrust hangs on the points of set screws. */
const onPoints = ({ axialLoad, thrust, collar }: Parameters) =>
  axialLoad > 0 && (thrust === "pulley" || (thrust === "collar" && isSetCollar(collar)));

/** How the bearing, the set screws and the moving things round the foot fare. */
export const serviceDimensions = {
  bearingThrust: of(
    "N",
    "F_b",
    "thrust through the bearing",
    ({ thrust }) => (thrust === "tip" ? "0" : "F_t"),
    "statics",
  ),
  bearingLoad: of("N", "P0", "static equivalent load", "max(F_r, 0.6 * F_r + 0.5 * F_b)", "iso-76"),
  bearingSafety: of(
    "",
    "s_0",
    "static safety of the bearing",
    ({ beltPull }) => (beltPull > 0 ? "C0 / P0" : '"C0 over the static load"'),
    "iso-76",
  ),
  axialLimit: of("N", "F_lim", "axial load the bearing bears", LIMIT, "bearing-makers"),
  holdCount: of(
    "",
    "n_hold",
    "set screws that carry the thrust",
    '"those of the pulley, or the one of a set collar; 0 where a clamp collar, a shoulder or the tip carries"',
    "statics",
  ),
  holdEach: of("N", "F_ss", "axial hold of one of them", '"cup point of the nearest inch size"', "shigley: Table 7-4"),
  hold: of("N", "F_hold", "axial hold of those set screws on thread crests", "n_hold * F_ss * 0.3", "common-practice"),
  holdFactor: of(
    "",
    "k_hold",
    "hold over the thrust",
    (given) => (onPoints(given) ? "F_hold / F_t" : '"hold over the thrust; no thrust hangs on set screws"'),
    "statics",
  ),
  crashFactor: of(
    "",
    "k_crash",
    "hold over thrust and crash",
    (given) =>
      onPoints(given) ? "F_hold / (F_t + F_crash)" : '"hold over thrust and crash; no thrust hangs on set screws"',
    "statics",
  ),
  interference: of("%", "i_p", "press interference, of the diameter", "(D - D_p) / D * 100", "geometry"),
  beltHeight: mm("h_b", "bearing's middle to the belt", "z_pl - s - t_shim - B / 2", "geometry"),
  tilt: of("deg", "theta", "tilt of the screw at the pulley", TILT, "shigley: Table A-9"),
  tipGap: mm("g_tip", "screw's tip to what lies below", '"tip over the bar, or the free depth asked for"', "geometry"),
  lowestOutside: mm(
    "d_low",
    "width of what lies on the bearing",
    '"lowest ring, else collar, hub or flange"',
    "geometry",
  ),
  clearance: mm(
    "c_min",
    "smallest gap round pulley and belt",
    '"least distance of flange, hub and belt to bar, plates, walls and posts"',
    "geometry",
  ),
  keyLength: mm(
    "l_key",
    "way of the hex key to the set screw past the frame",
    '"along the key\'s azimuth, 0 when it is free at once"',
    "geometry",
  ),
};
