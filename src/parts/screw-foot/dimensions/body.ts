import type { Parameters } from "../parameters.ts";
import { mm, of } from "./entry.ts";

const ADDS = { "drop-in": "D + 0.12", push: "D", press: "D - 0.08" };
const OPEN = "R_h + 0.5, R_t + 3, r_b + 3";

/** The offset follows what stands behind the pulley; round the posts of a bridge it is found by their corners. */
function offset(given: Parameters, own: number | undefined, towards: string): string {
  if (own !== undefined) return `${own}`;
  if (given.mount === "on-top") return "0";
  if (given.style === "bridged") return '"room for housing, flange, belt and the posts of the bridge, up to 0.5"';
  const lobes = given.cap ? `(D_p + 9) / 2 * max(cosd(${towards} - 210), cosd(${towards} - 330)) + 4.2` : "0";
  const air = given.mount === "under" ? " + 0.5" : "";
  const wayIn = given.cap ? `max(R_h, ${lobes}${air}) + 0.5` : "D_p / 2 + 1";
  const walled = `, t_bp + max(R_t + 2, r_b + 3, ${wayIn})`;
  const cap = given.cap ? `, ${lobes}${air}` : "";
  return `up(max(${OPEN}${given.style === "walled" ? walled : ""}${cap}), 0.5)`;
}

function usualPlate({ mount, bar, plate }: Parameters): string {
  if (plate !== undefined) return `${plate}`;
  const wide = bar.values.mountBolt === "M6";
  if (mount === "under") return wide ? "9" : "10";
  return wide ? "8" : "6";
}

const CHOSEN = '"the shortest stock length inside the slot\'s window, or the longest below it with a counterbore"';

function besides({ style, cap, mount }: Parameters): string {
  if (style === "bridged") return '"the housing, what turns + 2, the posts of the bridge, the lobes of a cap"';
  if (!cap) return "max(R_h, R_t + 2)";
  return `max(R_h, R_t + 2, (D_p + 9) / 2 * ${mount === "in-corner" ? "1" : "cosd(30)"} + 4.2 - 1.5)`;
}

/** The housing, the plates and the bolts that hold them. */
export const bodyDimensions = {
  pulleyRadius: mm("R_f", "radius of the pulley's flange", "D_f / 2", "geometry"),
  turningRadius: mm(
    "R_t",
    "widest thing that turns",
    ({ thrust }) => (thrust === "collar" ? "max(R_f, D_h / 2, D_collar / 2)" : "max(R_f, D_h / 2)"),
    "geometry",
  ),
  postRadius: mm("R_post", "centre of a bridge post from the axis", ({ cap }) =>
    cap ? "max(R_t + 8, max(R_h, (D_p + 9) / 2 + 4.2) + 6.5)" : "max(R_t + 8, D_p / 2 + 7.6)",
  ),
  pocket: mm("D_p", "pocket of the bearing, wanted", ({ pocketFit }) => ADDS[pocketFit]),
  pocketModelled: mm("D_pm", "pocket as modelled, on the flats", "D_p + holeShrinkV * (1 - shrink / 100)", "geometry"),
  housing: mm("R_h", "radius of the housing", "D_p / 2 + t_wall"),
  pitchRadius: mm("r_p", "pitch radius of the pulley", "z * p / (2 * pi)", "geometry"),
  beltRadius: mm("r_b", "outside of the belt on the pulley", "r_p + t_belt - t_tooth - PLD", "geometry"),
  pocketDepth: mm(
    "d_p",
    "depth of the pocket in whole layers: the bearing stands proud",
    ({ pocketDepth }) => `max(layer, down(${pocketDepth ?? "B - 0.3"}, layer))`,
  ),
  shoulder: mm("d_sh", "bore of the shoulder", ({ shoulderBore }) =>
    shoulderBore === undefined ? "up(D2, 0.1)" : `${shoulderBore}`,
  ),
  shoulderModelled: mm(
    "d_shm",
    "bore of the shoulder as modelled",
    "d_sh + holeShrinkV * (1 - shrink / 100)",
    "geometry",
  ),
  ring: mm("w_ring", "width of the shoulder's ring", "(D_p - d_sh) / 2", "geometry"),
  relief: mm("w_rel", "width of the groove that frees the bearing's corner", "r_s + 0.3"),
  plate: mm("t_bp", "plate against the bar", usualPlate),
  axis: mm("a", "mating face to the screw's axis", (given) => offset(given, given.axisOffset, "270")),
  axisB: mm("a_x", "second mating face to the screw's axis", (given) =>
    given.mount === "in-corner" ? offset(given, given.axisOffsetB, "(gamma + 90)") : "0",
  ),
  besides: mm("R_x", "half width that stands beside the bolts", besides),
  margin: mm("m_e", "bolt to the end of the plate", "max(8, D_w / 2 + 3)"),
  boltX: mm("x_b", "bolts to each side of the axis", ({ mount }) => (mount === "under" ? "R_x" : "R_x + 2 + D_w / 2")),
  boltsApart: mm("s_b", "bolt to bolt along one slot", "max(16, D_w + 1, l_nut + 1)"),
  plateHalf: mm("w_half", "half width of the plate", "x_b + m_e"),
  plateTop: mm("z_w", "top of the plate at the bolts", "-m_bar / 2 + D_w / 2 + 3"),
  rows: of("", "n_r", "rows of bolts", "max(1, min(12, floor(H / m_bar + 0.000001)))", "design-rule"),
  boltLength: mm("L_bolt", "length of the mount bolts, 0 when none fits", CHOSEN),
  counterbore: mm("c_b", "depth of the bolts' counterbore", CHOSEN),
  torque: of("N·m", "T_b", "torque of the mount bolts", ({ bar }) => `T_${bar.values.mountBolt}`, "common-practice"),
  clamp: of("N", "F_c", "clamp force of a bolt", "1000 * T_b / (0.2 * d_bolt)", "shigley: 8"),
  washerArea: of("mm2", "A_w", "plastic under a washer", "pi / 4 * (D_w^2 - d_hole^2)", "geometry"),
  torqueAllowed: of(
    "N·m",
    "T_max",
    "largest torque the plastic bears for years",
    "p_s * A_w * 0.2 * d_bolt / 1000",
    "shigley: 8",
  ),
  cornerX: mm("x_K", "corner of the bars along the first", "-u_a", "geometry"),
  cornerToAxis: mm(
    "u_a",
    "corner to the axis along the first bar",
    "(a_x + a * cosd(gamma)) / sind(gamma)",
    "geometry",
  ),
  cornerToAxisB: mm(
    "u_b",
    "corner to the axis along the second bar",
    "(a + a_x * cosd(gamma)) / sind(gamma)",
    "geometry",
  ),
  bolt1: mm("u_1", "first bolt from the corner", "max(25, u_a + R_x + 2 + D_w / 2)"),
  bolt2: mm("u_2", "second bolt from the corner", "u_1 + s_b"),
  bolt1B: mm("u_3", "first bolt of the second bar", "max(25, u_b + R_x + 2 + D_w / 2)"),
  bolt2B: mm("u_4", "second bolt of the second bar", "u_3 + s_b"),
  plateLength: mm("l_A", "plate along the first bar", "u_2 + m_e"),
  plateLengthB: mm("l_B", "plate along the second bar", "u_4 + m_e"),
  sizeX: mm("X", "width on the bed", '"extent of the outline in plan"', "geometry"),
  sizeY: mm("Y", "depth on the bed", '"extent of the outline in plan"', "geometry"),
  sizeZ: mm("Z", "height on the bed", '"highest face less the bed level"', "geometry"),
};
